#pragma once
// A drawing as plain values: what is drawn, in inches of the thing drawn, and text and marks in millimetres of paper,
// so that a dimension's arrow keeps its size when the scale changes. One scene serves screen, PNG, SVG, PDF and print.
// x to the right, y up. A scene says roles (a hidden edge, demand), never colours or line widths; a palette has those.
#include "model/part.h"

#include <array>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace toehold::drawing {

struct Point {
    double x = 0.0, y = 0.0;
    friend bool operator==(const Point&, const Point&) = default;
};

struct Box {
    Point low, high;
    friend bool operator==(const Box&, const Box&) = default;
};

/// A point of the thing drawn, and a step from there that is the same on paper at every scale.
struct Place {
    Point at;        ///< in
    Point paper_mm;  ///< mm of paper, y up
    friend bool operator==(const Place&, const Place&) = default;
};

/// What a line means.
enum class Pen {
    none,
    outline,    ///< visible edge: the heaviest of the plain lines
    cut,        ///< edge cut by a section
    thin,       ///< thread, hatching, leaders, frames of tables
    hidden,     ///< edge behind something: short dashes
    center,     ///< axis of a hole: long and short dashes
    dimension,  ///< dimension and extension lines
    grid,       ///< faint lines of the paper
    demand,     ///< what is asked of a thing: the one deep hue
    capacity,   ///< what it has to give: neutral
    selection,  ///< around what is selected
    handle,     ///< what can be taken by hand
    snap,       ///< what an edit has caught on
    // A status is the frame around a thing, never its colour alone.
    holds,    ///< plain
    fails,    ///< heavy and doubled
    no_path,  ///< broken
    missing,  ///< dotted
};

/// What an area means.
enum class Fill {
    none,
    paper,
    plate,      ///< metal seen from its face
    metal_cut,  ///< metal cut by a section: fine hatching at 45 degrees
    wood_side,  ///< wood seen on its side
    wood_end,   ///< wood cut across the grain: growth rings or crossed diagonals
    wood_cut,   ///< wood cut along the grain
    decking,
    demand,
    demand_pale,
    capacity,
    stale,    ///< a wash over what is no longer true
    holding,  ///< of a chart or a reach: where every check passes
    likely,   ///< of a reach: where no check is known to fail, and not every one is known to pass; hatched
    failing,  ///< of a chart: where not; hatched
};

enum class TextSize { fine, small, normal, large, title };
enum class Across { left, middle, right };  ///< which side of the text stands at its place
enum class Upright { bottom, middle, top };

/// One or more contours; with a fill, inside by the even-odd rule.
struct Path {
    std::vector<std::vector<Place>> contours;
    bool closed = false;
    Pen pen = Pen::outline;
    Fill fill = Fill::none;
    model::PartId part;  ///< what it belongs to, whole; none: nothing that can be picked
};

struct Circle {
    Place center;
    double radius_in = 0.0;  ///< of the thing drawn ...
    double radius_mm = 0.0;  ///< ... and of paper; they add
    Pen pen = Pen::outline;
    Fill fill = Fill::none;
    model::PartId part;
};

/// Where words go that are too long for their room; how large that is on paper only the view knows.
struct Aside {
    double room_in = 0.0;  ///< along the words, of the thing drawn
    Place at;
    Across across = Across::left;
    Upright upright = Upright::bottom;
};

struct Text {
    Place at;
    std::string words;  ///< UTF-8; `_` before a letter or `{...}` opens a subscript only where `math` is set
    TextSize size = TextSize::normal;
    Across across = Across::left;
    Upright upright = Upright::bottom;
    double angle_deg = 0.0;  ///< counter-clockwise
    Pen pen = Pen::outline;  ///< its colour
    bool bold = false;
    bool math = false;
    bool on_paper = false;  ///< a patch of paper under it, so that lines do not cross the words
    model::PartId part;
    std::optional<Aside> aside = std::nullopt;  ///< absent: there is room
};

/// A quantity over an area, from 0 (paper) to 1 (full demand hue), linear on triangles.
struct Shading {
    std::vector<Point> nodes;
    std::vector<double> level;                  ///< one for every node
    std::vector<std::array<int, 3>> triangles;  ///< indices of nodes
};

using Item = std::variant<Path, Circle, Text, Shading>;

/// Painted in order. Everything is finite.
struct Scene {
    std::string name;  ///< for people: `Plan`, `Section`
    std::vector<Item> items;
    Box bounds;            ///< of the thing drawn, without what stands off it on paper
    double margin_mm = 0;  ///< what stands off it on paper needs this much around
};

}  // namespace toehold::drawing
