#include "mechanics/plate_strip/closed_cut.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <numbers>

namespace toehold::mechanics {
namespace {

constexpr int parts = 48;  // of a quarter turn, and of a face
constexpr double same_in = 1e-6;

double from_foot_in(const FootOutline& foot, Point at) {
    if (foot.round) return std::hypot(at.x, at.y) - 0.5 * foot.width_in;
    return std::hypot(std::max(0.0, std::abs(at.x) - 0.5 * foot.width_in),
                      std::max(0.0, std::abs(at.y) - 0.5 * foot.depth_in));
}

/// The post's outline moved out, counter-clockwise.
Polygon curve_around(const FootOutline& foot, double offset_in) {
    Polygon curve;
    const double x = foot.round ? 0.0 : 0.5 * foot.width_in, y = foot.round ? 0.0 : 0.5 * foot.depth_in;
    const double radius = offset_in + (foot.round ? 0.5 * foot.width_in : 0.0);
    for (int quarter = 0; quarter < 4; ++quarter) {
        const Point corner{quarter == 0 || quarter == 3 ? x : -x, quarter < 2 ? y : -y};
        for (int part = 0; part < parts; ++part) {
            const double angle = 0.5 * std::numbers::pi * (quarter + static_cast<double>(part) / parts);
            curve.push_back({corner.x + radius * std::cos(angle), corner.y + radius * std::sin(angle)});
        }
        if (foot.round) continue;
        const double end = 0.5 * std::numbers::pi * (quarter + 1);
        const Point from{corner.x + radius * std::cos(end), corner.y + radius * std::sin(end)};
        const bool along_x = quarter % 2 == 0;
        const double length = (along_x ? -2.0 * x : -2.0 * y) * (quarter < 2 ? 1.0 : -1.0);
        for (int part = 0; part < parts; ++part) {
            const double step = length * part / parts;
            curve.push_back(along_x ? Point{from.x + step, from.y} : Point{from.x, from.y + step});
        }
    }
    return curve;
}

/// How far an opening reaches away from the post.
double across_in(const FootOutline& foot, const PlateHole& hole) {
    return std::abs(from_foot_in(foot, hole.from) - from_foot_in(foot, hole.to)) + 2.0 * hole.radius_in;
}

/// A short length of the curve: its metal, or the opening it lies in.
struct Bit {
    Point from, to;
    bool metal = false;
    double across_in = 0.0;  ///< of the opening; 0 off the plate
};

std::vector<Bit> bits_of(const FootOutline& foot, const Polygon& outline, std::span<const PlateHole> openings,
                         const Polygon& curve) {
    std::vector<Bit> bits;
    for (std::size_t at = 0; at < curve.size(); ++at) {
        const Point from = curve[at], to = curve[(at + 1) % curve.size()];
        const Point middle{0.5 * (from.x + to.x), 0.5 * (from.y + to.y)};
        Bit bit{from, to, inside_polygon(middle, outline), 0.0};
        for (const PlateHole& hole : openings) {
            if (distance_to_segment(middle, hole.from, hole.to) >= hole.radius_in) continue;
            bit.metal = false;
            bit.across_in = std::max(bit.across_in, across_in(foot, hole));
        }
        bits.push_back(bit);
    }
    return bits;
}

/// The run of metal that begins at this bit.
CutPiece piece_from(const std::vector<Bit>& bits, std::size_t first) {
    const std::size_t count = bits.size();
    CutPiece piece;
    if (first >= count) return piece;
    piece.places.push_back(bits[first].from);
    std::size_t at = first;
    for (std::size_t step = 0; step < count && bits[at].metal; ++step, at = (at + 1) % count) {
        piece.length_in += std::hypot(bits[at].to.x - bits[at].from.x, bits[at].to.y - bits[at].from.y);
        piece.places.push_back(bits[at].to);
    }
    const Bit& before = bits[(first + count - 1) % count];
    const Bit& after = bits[at];
    piece.between_openings = before.across_in > 0.0 && after.across_in > 0.0;
    piece.across_in = std::max(before.across_in, after.across_in);
    return piece;
}

ClosedCut cut_at(const FootOutline& foot, const Polygon& outline, std::span<const PlateHole> openings,
                 double offset_in) {
    const std::vector<Bit> bits = bits_of(foot, outline, openings, curve_around(foot, offset_in));
    ClosedCut cut{offset_in, {}};
    for (std::size_t at = 0; at < bits.size(); ++at) {
        const Bit& before = bits[(at + bits.size() - 1) % bits.size()];
        if (bits[at].metal && !before.metal) cut.pieces.push_back(piece_from(bits, at));
    }
    return cut;
}

}  // namespace

std::vector<ClosedCut> closed_cuts(const FootOutline& foot, const Polygon& outline,
                                   std::span<const PlateHole> openings) {
    std::vector<double> offsets;
    for (const PlateHole& hole : openings) {
        const Point middle{0.5 * (hole.from.x + hole.to.x), 0.5 * (hole.from.y + hole.to.y)};
        for (const Point at : {hole.from, middle, hole.to}) offsets.push_back(from_foot_in(foot, at));
    }
    std::sort(offsets.begin(), offsets.end());
    std::vector<ClosedCut> cuts;
    for (const double offset : offsets) {
        if (offset <= same_in || (!cuts.empty() && offset - cuts.back().offset_in < same_in)) continue;
        cuts.push_back(cut_at(foot, outline, openings, offset));
    }
    return cuts;
}

}  // namespace toehold::mechanics
