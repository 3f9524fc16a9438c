#pragma once
// The base plate: what the fabricator cuts. Its geometry is a document of its own and can be issued alone.
// Axes: origin at the post's centroid on the plate's underside; x along the rail, y outward, in inches.
#include "model/place.h"

#include <string>
#include <variant>
#include <vector>

namespace toehold::model {

/// Sides parallel to x and y. Corner radius from 0 to half the shorter side.
struct RectangleOutline {
    double width_in = 0.0;  ///< along x, > 0
    double depth_in = 0.0;  ///< along y, > 0
    double corner_radius_in = 0.0;
    Position center;
    friend bool operator==(const RectangleOutline&, const RectangleOutline&) = default;
};

struct CircleOutline {
    double diameter_in = 0.0;  ///< > 0
    Position center;
    friend bool operator==(const CircleOutline&, const CircleOutline&) = default;
};

/// A simple (not self-crossing) polygon of three or more corners, in either sense of rotation.
struct PolygonOutline {
    std::vector<Position> corners;
    friend bool operator==(const PolygonOutline&, const PolygonOutline&) = default;
};

using Outline = std::variant<RectangleOutline, CircleOutline, PolygonOutline>;

struct RoundHole {
    double diameter_in = 0.0;  ///< > 0
    friend bool operator==(const RoundHole&, const RoundHole&) = default;
};

/// A slot with round ends.
struct Slot {
    double length_in = 0.0;  ///< overall, end to end; > width
    double width_in = 0.0;   ///< > 0
    double angle_deg = 0.0;  ///< of its long axis from +x, counter-clockwise
    friend bool operator==(const Slot&, const Slot&) = default;
};

struct Hole {
    std::string id;  ///< unique in the plate; the anchor in it carries the same id
    Position center;
    std::variant<RoundHole, Slot> shape;
    friend bool operator==(const Hole&, const Hole&) = default;
};

struct Plate {
    std::string id;             ///< unique in its library
    std::string name;           ///< for people
    std::string metal;          ///< catalog id of the metal
    double thickness_in = 0.0;  ///< > 0
    Outline outline;
    std::vector<Hole> holes;
    friend bool operator==(const Plate&, const Plate&) = default;
};

/// Where a detail took its plate from, when it does not carry the geometry itself.
struct PlateReference {
    std::string file;          ///< as written in the detail, relative to the detail's folder
    std::string id;            ///< the plate's id in that file
    std::string sha256;        ///< of the plate when the detail was made; empty: not pinned
    std::string found_sha256;  ///< of the plate as it is now; set by the reader, never written
    friend bool operator==(const PlateReference&, const PlateReference&) = default;
};

}  // namespace toehold::model
