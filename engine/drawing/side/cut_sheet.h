#pragma once
// What the parts of the section share: cut along y through the post's axis. Coordinates: y outward to the right, z up.
#include "drawing/section/profile.h"
#include "drawing/side/shape.h"

namespace toehold::drawing::side {

struct CutSheet {
    const Subject& subject;
    Shape shape;
    std::vector<Fixing> fixings;
    std::vector<Profile> framing;  ///< cut or behind, the farthest first; a stringer as deep as it is plumb
    Box shown;

    /// 1 where the post stands to the right of the member.
    [[nodiscard]] double post_side() const { return -shape.towards_y; }
};
[[nodiscard]] CutSheet cut_sheet(const Subject& subject);

/// Fixings at one height, which the section shows one behind another.
struct Level {
    double z_in = 0.0;
    double half_in = 0.0;   ///< of what is at their heads, up the face
    double out_y_in = 0.0;  ///< outermost of heads and the post's face: where words and arrows begin
    std::vector<Fixing> fixings;
};
/// From the top down.
[[nodiscard]] std::vector<Level> levels(const CutSheet& sheet);

/// Ties at one height, by their numbers in the mount.
struct TieLevel {
    double below_top_in = 0.0;
    std::vector<std::size_t> ties;
};
[[nodiscard]] std::vector<TieLevel> tie_levels(const CutSheet& sheet);

/// Outermost y of fasteners on the post's side, and on the member's.
[[nodiscard]] Span fasteners_reach_in(const CutSheet& sheet);

// cut_parts.cpp
void add_cut_layers(Scene& scene, const CutSheet& sheet);
void add_cut_boards(Scene& scene, const CutSheet& sheet);
/// Post with its notch, cut, broken off above; the bracket plate with the weld.
void add_cut_post(Scene& scene, const CutSheet& sheet);
void add_cut_fasteners(Scene& scene, const CutSheet& sheet);
/// From the post's far face back past the member to the joist or block.
void add_cut_ties(Scene& scene, const CutSheet& sheet);
/// Upper corner of a tie's end, where its name stands.
[[nodiscard]] Point tie_corner(const CutSheet& sheet, const model::TensionTie& tie);

// cut_notes.cpp
void add_cut_dimensions(Scene& scene, const CutSheet& sheet);
void add_cut_notes(Scene& scene, const CutSheet& sheet);

// cut_forces.cpp
void add_cut_bearing(Scene& scene, const CutSheet& sheet);
void add_cut_pulls(Scene& scene, const CutSheet& sheet);
void add_cut_push(Scene& scene, const CutSheet& sheet);
/// Room beside the post for arrows and words of pulls, of the thing drawn.
[[nodiscard]] double forces_reach_in(const CutSheet& sheet);

}  // namespace toehold::drawing::side
