#pragma once
// A drawing for a cutting table as plain values, and the text of its file: DXF of release 12 (AC1009), the oldest that
// every table and every nesting program reads. After the format's published reference, from memory. Coordinates are the
// drawing's own units, which a file of this release cannot state but in words.
#include "drawing/scene/scene.h"

#include <string>
#include <variant>
#include <vector>

namespace toehold::paper::dxf {

/// Colors by the format's own index: 1 red, 2 yellow, 3 green, 4 cyan, 5 blue, 6 magenta, 7 black on white.
struct Layer {
    std::string name;  ///< capitals, digits, `_`
    int color = 7;
};

struct Line {
    std::string layer;
    drawing::Point from, to;
};

struct Circle {
    std::string layer;
    drawing::Point center;
    double radius = 0.0;  ///< > 0
};

/// A corner, and the way from there to the next: straight, or an arc. The bulge is the tangent of a quarter of the
/// arc's angle, positive counter-clockwise; 1 is half a circle.
struct Vertex {
    drawing::Point at;
    double bulge = 0.0;
};

/// The last vertex leads back to the first.
struct ClosedPolyline {
    std::string layer;
    std::vector<Vertex> vertices;
};

struct Words {
    std::string layer;
    drawing::Point at;    ///< left end of the line they stand on, or their middle
    double height = 0.0;  ///< of capitals, > 0
    std::string words;    ///< UTF-8, one line; what the file's characters lack is written by its number
    bool centered = false;
};

using Entity = std::variant<Line, Circle, ClosedPolyline, Words>;

struct Drawing {
    std::vector<std::string> comments;  ///< at the file's head, where no program looks and a person may
    std::vector<Layer> layers;
    std::vector<Entity> entities;
    drawing::Box extents;
    int decimals = 6;  ///< of every coordinate
};

/// Lines end as the format's first home ended them, in CR LF. The same drawing gives the same bytes under every locale.
[[nodiscard]] std::string bytes(const Drawing& drawing);

}  // namespace toehold::paper::dxf
