#include "drawing/section/fastener.h"

#include "catalog/resolve.h"
#include "drawing/scene/shapes.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

namespace toehold::drawing {
namespace {

using Pieces = std::vector<Path>;

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

/// Shank, thread and tip below the head, closed.
std::vector<Point> screw_contour(const catalog::Anchor& anchor, const AnchorStations& at) {
    const double half = 0.5 * anchor.diameter_in, thread = std::min(at.thread_in, at.head_in);
    const std::vector<Point> right = thread_side(anchor, at, 0.0), left = thread_side(anchor, at, 0.5);
    std::vector<Point> contour = {{half, at.head_in}, {half, thread}};
    for (const Point& point : right) contour.push_back(point);
    contour.push_back({0.0, at.tip_in});
    for (auto point = left.rbegin(); point != left.rend(); ++point) contour.push_back({-point->x, point->y});
    contour.push_back({-half, thread});
    contour.push_back({-half, at.head_in});
    return contour;
}

struct Heights {
    double low_in = 0.0, high_in = 0.0;
};

/// A hexagonal head or nut seen across its corners.
void add_hexagon(Pieces& pieces, Heights heights, double across_flats_in, const model::PartId& part) {
    const double half = across_flats_in / std::numbers::sqrt3;
    pieces.push_back(rectangle({{-half, heights.low_in}, {half, heights.high_in}}, Pen::outline, Fill::plate, part));
    for (const double x : {-0.5 * half, 0.5 * half})
        pieces.push_back(line(Point{x, heights.low_in}, {x, heights.high_in}, Pen::thin, part));
}

void add_round_head(Pieces& pieces, Heights heights, double diameter_in, const model::PartId& part) {
    constexpr int chords = 16;
    std::vector<Point> contour;
    for (int index = 0; index <= chords; ++index) {
        const double angle = std::numbers::pi * index / chords;
        contour.push_back({0.5 * diameter_in * std::cos(angle),
                           heights.low_in + (heights.high_in - heights.low_in) * std::sin(angle)});
    }
    pieces.push_back(area(contour, Pen::outline, Fill::plate, part));
}

void add_bearer(Pieces& pieces, const Bearer& bearer, double top, const model::PartId& part) {
    if (!(bearer.width_in > 0.0) || !(bearer.thickness_in > 0.0)) return;
    const double half = 0.5 * bearer.width_in;
    pieces.push_back(rectangle({{-half, top - bearer.thickness_in}, {half, top}}, Pen::outline, Fill::plate, part));
}

void add_bolt(Pieces& pieces, const catalog::Anchor& anchor, const AnchorStations& at, const Bearer& under_nut,
              const model::PartId& part) {
    const double half = 0.5 * anchor.diameter_in;
    pieces.push_back(rectangle({{-half, at.tip_in}, {half, at.head_in}}, Pen::outline, Fill::plate, part));
    add_bearer(pieces, under_nut, at.seat_in, part);
    const double nut_top = at.seat_in - at.below_in;
    add_hexagon(pieces, {nut_top - nut_height_in(anchor), nut_top}, anchor.head_width_in, part);
}

}  // namespace

double head_height_in(const catalog::Anchor& anchor) {
    if (anchor.kind == catalog::FastenerKind::wood_screw) return round_head_of_width * anchor.head_width_in;
    return head_of_diameter * anchor.diameter_in;
}

double nut_height_in(const catalog::Anchor& anchor) { return nut_of_diameter * anchor.diameter_in; }

double head_width_in(const catalog::Anchor& anchor) {
    constexpr double of_diameter = 1.5;
    return anchor.head_width_in > 0.0 ? anchor.head_width_in : of_diameter * anchor.diameter_in;
}

std::vector<Path> fastener_pieces(const catalog::Anchor& anchor, const AnchorStations& at, const Bearer& under_head,
                                  const Bearer& under_nut, const model::PartId& part) {
    Pieces pieces;
    if (anchor.kind == catalog::FastenerKind::through_bolt) {
        add_bolt(pieces, anchor, at, under_nut, part);
    } else {
        pieces.push_back(area(screw_contour(anchor, at), Pen::outline, Fill::plate, part));
    }
    add_bearer(pieces, under_head, at.head_in, part);
    if (anchor.kind == catalog::FastenerKind::wood_screw) {
        add_round_head(pieces, {at.head_in, at.head_top_in}, anchor.head_width_in, part);
    } else {
        add_hexagon(pieces, {at.head_in, at.head_top_in}, head_width_in(anchor), part);
    }
    return pieces;
}

void add_placed(Scene& scene, std::vector<Path> pieces, const std::function<Point(Point)>& onto) {
    for (Path& piece : pieces) {
        for (auto& contour : piece.contours) {
            for (Place& place : contour) place.at = onto(place.at);
        }
        scene.items.emplace_back(std::move(piece));
    }
}

}  // namespace toehold::drawing
