#include "drawing/section_anchor_shape.h"

#include "drawing/marks/shapes.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::drawing {
namespace {

constexpr double head_of_diameter = 0.65, nut_of_diameter = 0.87, pitch_of_diameter = 0.38;
constexpr double round_head_of_width = 0.35;

/// A screw whose tip is not told apart from its thread has one all the same.
double tip_length_in(const catalog::Anchor& anchor) {
    return anchor.tip_length_in > 0.0 ? anchor.tip_length_in : anchor.diameter_in;
}

/// Half the width left at this height: the tip tapers to a point.
double tapered(double half, double z, const AnchorStations& at, double tip_length) {
    return half * std::clamp((z - at.tip_in) / tip_length, 0.0, 1.0);
}

/// One side of the thread from its beginning down to the tip, as half widths at heights.
std::vector<Point> thread_side(const catalog::Anchor& anchor, const AnchorStations& at, double shift) {
    constexpr double most_turns = 120.0;
    const double top = std::min(at.thread_in, at.head_in), length = top - at.tip_in;
    const double outer = 0.5 * anchor.diameter_in, root = 0.5 * std::min(anchor.root_diameter_in, anchor.diameter_in);
    std::vector<Point> side;
    if (!(length > 0.0) || !(outer > 0.0)) return side;
    const double pitch = std::max(pitch_of_diameter * anchor.diameter_in, length / most_turns);
    for (double turn = shift; turn * pitch < length; turn += 1.0) {
        for (const bool crest : {false, true}) {
            const double z = top - std::min(length, (turn + (crest ? 0.5 : 0.0)) * pitch);
            side.push_back({tapered(crest ? outer : root, z, at, tip_length_in(anchor)), z});
        }
    }
    return side;
}

}  // namespace

double head_height_in(const catalog::Anchor& anchor) {
    if (anchor.kind == catalog::FastenerKind::wood_screw) return round_head_of_width * anchor.head_width_in;
    return head_of_diameter * anchor.diameter_in;
}

double nut_height_in(const catalog::Anchor& anchor) { return nut_of_diameter * anchor.diameter_in; }

std::vector<Point> screw_contour(const catalog::Anchor& anchor, const AnchorStations& at, double axis_in) {
    const double half = 0.5 * anchor.diameter_in, thread = std::min(at.thread_in, at.head_in);
    const std::vector<Point> right = thread_side(anchor, at, 0.0), left = thread_side(anchor, at, 0.5);
    std::vector<Point> contour = {{axis_in + half, at.head_in}, {axis_in + half, thread}};
    for (const Point& point : right) contour.push_back({axis_in + point.x, point.y});
    contour.push_back({axis_in, at.tip_in});
    for (auto point = left.rbegin(); point != left.rend(); ++point) contour.push_back({axis_in - point->x, point->y});
    contour.push_back({axis_in - half, thread});
    contour.push_back({axis_in - half, at.head_in});
    return contour;
}

void add_hexagon(Scene& scene, double axis_in, Heights heights, double across_flats_in, const std::string& part) {
    const double half = across_flats_in / std::numbers::sqrt3;
    scene.items.emplace_back(rectangle({{axis_in - half, heights.low_in}, {axis_in + half, heights.high_in}},
                                       Pen::outline, Fill::plate, part));
    for (const double x : {axis_in - 0.5 * half, axis_in + 0.5 * half})
        scene.items.emplace_back(line(Point{x, heights.low_in}, {x, heights.high_in}, Pen::thin, part));
}

void add_round_head(Scene& scene, double axis_in, Heights heights, double diameter_in, const std::string& part) {
    constexpr int chords = 16;
    std::vector<Point> contour;
    for (int index = 0; index <= chords; ++index) {
        const double angle = std::numbers::pi * index / chords;
        contour.push_back({axis_in + 0.5 * diameter_in * std::cos(angle),
                           heights.low_in + (heights.high_in - heights.low_in) * std::sin(angle)});
    }
    scene.items.emplace_back(area(contour, Pen::outline, Fill::plate, part));
}

}  // namespace toehold::drawing
