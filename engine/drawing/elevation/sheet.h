#pragma once
// What the elevation's parts share. Coordinates: y outward to the right, z up from the plate's underside.
#include "drawing/drawings.h"
#include "drawing/section/profile.h"

#include <vector>

namespace toehold::drawing {

struct ElevationSheet {
    const Subject& subject;
    std::vector<Profile> framing;  ///< the farthest first
    double top_in = 0.0;           ///< of the guard
    double layers_in = 0.0;
    double post_in = 0.0;  ///< the post's depth along y
    Box plate;             ///< of a post on a member's side: of its overlap below z = 0
    Box shown;
};
[[nodiscard]] ElevationSheet elevation_sheet(const Subject& subject);

/// Where the push acts; the guard's top without one.
[[nodiscard]] double push_height_in(const ElevationSheet& sheet);
/// 1 where the push shown goes to the right, or along the rail, or where there is none; else -1.
[[nodiscard]] double push_side(const ElevationSheet& sheet);

// framing.cpp
void add_elevation_framing(Scene& scene, const ElevationSheet& sheet);
// supports.cpp
void add_elevation_supports(Scene& scene, const ElevationSheet& sheet);
// guard.cpp
void add_guard(Scene& scene, const ElevationSheet& sheet);
/// The guard's top, and the surface its height is measured from.
void add_levels(Scene& scene, const ElevationSheet& sheet);
// push.cpp
void add_elevation_push(Scene& scene, const ElevationSheet& sheet);
/// Where the push meets a post seen along the rail, and which way it goes: 1 to the right.
struct PushPlace {
    double half_post_in = 0.0, height_in = 0.0, side = 1.0;
    double shaft_mm = 20.0;
};
/// Arrow and words of the overlay's push, which is there.
void add_push_at(Scene& scene, const PushPlace& place, const Overlay& overlay);
// dimensions.cpp
void add_elevation_dimensions(Scene& scene, const ElevationSheet& sheet);

}  // namespace toehold::drawing
