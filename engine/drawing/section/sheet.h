#pragma once
// What the section's parts share, and the parts themselves, each in the file its name says.
// Coordinates: along the plane, and z with 0 at the plate's underside.
#include "drawing/drawings.h"
#include "drawing/section/fastener.h"
#include "drawing/section/profile.h"

#include <string>
#include <vector>

namespace toehold::catalog {
struct Anchor;
}
namespace toehold::model {
struct Plate;
}

namespace toehold::drawing {

/// A hole the plane goes through.
struct CutHole {
    std::string id;
    double at_in = 0.0;                       ///< its centre, along the plane
    double low_in = 0.0, high_in = 0.0;       ///< what the plane cuts of it
    const catalog::Anchor* anchor = nullptr;  ///< in it, where resolved
};

struct Interval {
    double low_in = 0.0, high_in = 0.0;
};

struct SectionSheet {
    const Subject& subject;
    SectionPlane plane;
    std::vector<Interval> plate;   ///< what the plane cuts of the plate, holes not taken out
    std::vector<CutHole> holes;    ///< from left to right
    std::vector<Profile> framing;  ///< cut or behind, the farthest first
    double layers_in = 0.0;        ///< thickness of all between plate and framing
    Box shown;
};
[[nodiscard]] SectionSheet section_sheet(const Subject& subject, const SectionPlane& plane);

// plane.cpp
[[nodiscard]] std::vector<Interval> plate_cut(const model::Plate& plate, const SectionPlane& plane);
[[nodiscard]] std::vector<CutHole> holes_cut(const Subject& subject, const SectionPlane& plane);

// plate.cpp
void add_cut_plate(Scene& scene, const SectionSheet& sheet);
void add_post_foot(Scene& scene, const SectionSheet& sheet);
/// Height of the post that the section shows above the plate.
[[nodiscard]] double post_stub_in(const SectionSheet& sheet);

// framing.cpp
void add_framing_behind(Scene& scene, const SectionSheet& sheet);
void add_cut_framing(Scene& scene, const SectionSheet& sheet);
void add_layers(Scene& scene, const SectionSheet& sheet);

// spacers.cpp
void add_packing(Scene& scene, const SectionSheet& sheet);
void add_lower_plates(Scene& scene, const SectionSheet& sheet);

// anchor.cpp
void add_anchors(Scene& scene, const SectionSheet& sheet);

/// Heights of an anchor's stations above the plate's underside.
[[nodiscard]] AnchorStations stations(const SectionSheet& sheet, const catalog::Anchor& anchor);

// dimensions.cpp
void add_section_dimensions(Scene& scene, const SectionSheet& sheet);
// notes.cpp
void add_section_notes(Scene& scene, const SectionSheet& sheet);
// forces.cpp
void add_bearing(Scene& scene, const SectionSheet& sheet);
void add_pulls(Scene& scene, const SectionSheet& sheet);
void add_bent_plate(Scene& scene, const SectionSheet& sheet);

}  // namespace toehold::drawing
