// Round the post: the plate outside a band about the post's outline tilts as one piece, and in the band the lift falls
// in straight lines square to the outline, to none at the post. Hinges run along the post and along the band's outer
// edge; the band itself bends and twists everywhere, which takes the plastic moment times the sum of both principal
// curvatures (hinges without number).
#include "mechanics/plane/symmetric_part.h"
#include "mechanics/yield_line/yield_line.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>

namespace toehold::mechanics {
namespace {

constexpr int parts = 6;  // of a quarter turn, of a face, and of the band's width

/// A piece of the post's outline: an arc of `turn_rad` about `center`, or a length of a face, with the way out of it.
struct OutlinePart {
    Point center;
    double radius_in = 0.0;  ///< of the post; 0 at a corner
    double turn_rad = 0.0;   ///< 0: of a face
    double length_in = 0.0;  ///< of the face
    Point out;
};

std::vector<OutlinePart> parts_of(const FootOutline& foot) {
    std::vector<OutlinePart> all;
    const double turn = 0.5 * std::numbers::pi / parts;
    for (int quarter = 0; quarter < 4; ++quarter) {
        const double x = quarter == 0 || quarter == 3 ? 0.5 : -0.5, y = quarter < 2 ? 0.5 : -0.5;
        const Point corner = foot.round ? Point{} : Point{x * foot.width_in, y * foot.depth_in};
        for (int part = 0; part < parts; ++part) {
            const double angle = 0.5 * std::numbers::pi * quarter + turn * (part + 0.5);
            const Point out{std::cos(angle), std::sin(angle)};
            all.push_back({corner, foot.round ? 0.5 * foot.width_in : 0.0, turn, 0.0, out});
            if (foot.round) continue;
            // Along the face that begins at this corner, counter-clockwise.
            const bool upright = quarter % 2 == 1;
            const double length = upright ? foot.depth_in : foot.width_in;
            const double along = (part + 0.5) / parts - 0.5;
            const double side = quarter == 0 || quarter == 3 ? 0.5 : -0.5;
            const Point middle = upright ? Point{side * foot.width_in, along * foot.depth_in}
                                         : Point{along * foot.width_in, -side * foot.depth_in};
            const Point away = upright ? Point{side < 0.0 ? -1.0 : 1.0, 0.0} : Point{0.0, side < 0.0 ? 1.0 : -1.0};
            all.push_back({middle, 0.0, 0.0, length / parts, away});
        }
    }
    return all;
}

struct Tilt {
    Point way;
    double offset_in = 0.0;
    [[nodiscard]] double lift(Point at) const { return way.x * at.x + way.y * at.y - offset_in; }
};

/// Length along the outline at a distance from it.
double length_at(const OutlinePart& part, double away_in) {
    return part.turn_rad > 0.0 ? (part.radius_in + away_in) * part.turn_rad : part.length_in;
}

Point place(const OutlinePart& part, double away_in) {
    const double out = part.radius_in + away_in;
    return {part.center.x + out * part.out.x, part.center.y + out * part.out.y};
}

/// What a ring of an arc's band takes of the tilt: its curvature round is `slope` times the lift's slope less `outward`
/// times the tilt's part out, its doubled twist `sideways` times the part along the outline.
struct ArcRing {
    double slope = 0.0, outward = 0.0, sideways = 0.0;
    double area_in2 = 0.0;
};

/// The band beside one part of the outline, as far as no tilt changes it.
struct BandPart {
    Point out, edge;  ///< the way out, and the place at the band's outer edge
    double band_in = 0.0;
    double inner_in = 0.0, outer_in = 0.0;  ///< lengths of the hinges
    bool arc = false;
    std::array<ArcRing, parts> rings{};  ///< of an arc
};

/// The lift in the band is G d / s, with G that of the plate at the band's outer edge, d the distance from the post and
/// s the band's width; over an arc in polar coordinates about its center.
BandPart band_part(const OutlinePart& part, double band_in) {
    BandPart beside{part.out, place(part, band_in), band_in, length_at(part, 0.0), length_at(part, band_in), false, {}};
    beside.arc = part.turn_rad > 0.0;
    if (!beside.arc) return beside;
    const double edge = part.radius_in + band_in;
    for (std::size_t step = 0; step < beside.rings.size(); ++step) {
        const double away = band_in * (static_cast<double>(step) + 0.5) / parts, radius = part.radius_in + away;
        beside.rings[step] = {1.0 / radius, away * edge / (band_in * radius * radius),
                              2.0 * edge * part.radius_in / (band_in * radius * radius),
                              length_at(part, away) * band_in / parts};
    }
    return beside;
}

/// Of the band beside this part, at a plastic moment of one.
double taken(const BandPart& part, const Tilt& tilt) {
    const Point u = part.out, v{-u.y, u.x};
    const double outward = tilt.way.x * u.x + tilt.way.y * u.y, sideways = tilt.way.x * v.x + tilt.way.y * v.y;
    const double slope = tilt.lift(part.edge) / part.band_in;
    double sum = std::abs(slope) * part.inner_in + std::abs(slope - outward) * part.outer_in;
    if (!part.arc) return sum + 2.0 * std::abs(sideways) * part.inner_in;
    for (const ArcRing& ring : part.rings) {
        const double round = slope * ring.slope - outward * ring.outward, twice_twist = sideways * ring.sideways;
        sum += std::sqrt(round * round + twice_twist * twice_twist) * ring.area_in2;
    }
    return sum;
}

/// Where a load in the band is lifted as the plate would be, and how much of that lift it gets; beyond the band where
/// it stands, and all of it. The plate lifts as a plane outside the band; in it a point gets of its band's edge in the
/// same way out, in proportion.
struct Lifted {
    Point at;
    double share = 0.0;
};

Lifted lifted(const FootOutline& foot, double band_in, Point at) {
    const double radius = std::hypot(at.x, at.y);
    const double shrink = foot.round ? std::min(1.0, 0.5 * foot.width_in / radius) : 0.0;
    const Point near = foot.round ? Point{at.x * shrink, at.y * shrink}
                                  : Point{std::clamp(at.x, -0.5 * foot.width_in, 0.5 * foot.width_in),
                                          std::clamp(at.y, -0.5 * foot.depth_in, 0.5 * foot.depth_in)};
    const double away = std::hypot(at.x - near.x, at.y - near.y);
    if (away >= band_in) return {at, 1.0};
    if (!(away > 0.0)) return {at, 0.0};
    const double reach = band_in / away;
    return {{near.x + (at.x - near.x) * reach, near.y + (at.y - near.y) * reach}, away / band_in};
}

/// From the post to the plate's nearest edge.
double room_in(const std::vector<OutlinePart>& outline, const Polygon& edge) {
    // Inside a convex edge the distance to it is least at corners, each of which many parts share.
    const bool convex = is_convex(edge);
    double room = std::numeric_limits<double>::infinity();
    const OutlinePart* before = nullptr;
    for (const OutlinePart& part : outline) {
        const bool of_face = !(part.turn_rad > 0.0);
        const bool again = before != nullptr && !of_face && part.radius_in == 0.0 && part.center == before->center;
        if ((of_face && convex) || again) continue;
        room = std::min(room, distance_to_polygon(place(part, 0.0), edge));
        if (!of_face) before = &part;
    }
    return room;
}

}  // namespace

std::vector<YieldBand> yield_bands(const FootOutline& foot, const PlateShape& plate) {
    constexpr int ways = 24;
    constexpr std::array<double, 5> widths{0.2, 0.4, 0.6, 0.8, 1.0};
    constexpr std::array<double, 4> offsets{0.0, 0.5, 1.0, 1.5};
    const std::vector<OutlinePart> outline = parts_of(foot);
    const double room = room_in(outline, plate.outline);
    const double half = 0.25 * (foot.width_in + foot.depth_in);
    std::vector<YieldBand> bands;
    if (!(room > 0.0)) return bands;
    for (const double width : widths) {
        std::vector<BandPart> beside;
        beside.reserve(outline.size());
        for (const OutlinePart& part : outline) beside.push_back(band_part(part, width * room));
        for (const double offset : offsets) {
            for (int way = 0; way < ways; ++way) {
                const double angle = 2.0 * std::numbers::pi * way / ways;
                const Tilt tilt{{std::cos(angle), std::sin(angle)}, offset * half};
                YieldBand band{foot, angle, tilt.way, tilt.offset_in, width * room, 0.0};
                for (const BandPart& part : beside) band.taken_in += taken(part, tilt);
                bands.push_back(band);
            }
        }
    }
    return bands;
}

BandLoad work_of(const FootOutline& foot, double width_in, std::span<const PointLoad> loads) {
    BandLoad sum;
    for (const PointLoad& load : loads) {
        const Lifted place = lifted(foot, width_in, load.at);
        const double force_lb = load.force_lb * place.share;
        sum.force_lb += force_lb;
        sum.about_y_lb_in += force_lb * place.at.x;
        sum.about_x_lb_in += force_lb * place.at.y;
    }
    return sum;
}

double moment_needed_lb(const YieldBand& band, const BandLoad& load) {
    const double work =
        band.way.x * load.about_y_lb_in + band.way.y * load.about_x_lb_in - band.offset_in * load.force_lb;
    return std::abs(work) / band.taken_in;
}

}  // namespace toehold::mechanics
