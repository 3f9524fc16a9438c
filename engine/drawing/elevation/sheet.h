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
    Box plate;
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
// push.cpp
void add_elevation_push(Scene& scene, const ElevationSheet& sheet);
// dimensions.cpp
void add_elevation_dimensions(Scene& scene, const ElevationSheet& sheet);

}  // namespace toehold::drawing
