#include "drawing/render/tight_fit.h"

#include "drawing/render/lettering.h"
#include "drawing/render/palette.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <optional>
#include <variant>
#include <vector>

namespace toehold::drawing {
namespace {

/// The thing drawn fills at least this share of the area, even if words beside it are cut off for that.
constexpr double least_share = 0.42;

/// Where something is painted: in of the thing drawn, and mm of paper from there.
using Spots = std::vector<Place>;

struct Extent {
    Point low{std::numeric_limits<double>::infinity(), std::numeric_limits<double>::infinity()};
    Point high{-low.x, -low.y};
};

void add(Spots& spots, const Path& path) {
    for (const auto& contour : path.contours)
        for (const auto& place : contour) spots.push_back(place);
}

void add(Spots& spots, const Circle& circle) {
    const auto& [at, paper] = circle.center;
    for (const double sign : {-1.0, 1.0}) {
        const Point edge{at.x + sign * circle.radius_in, at.y + sign * circle.radius_in};
        const Point off{paper.x + sign * circle.radius_mm, paper.y + sign * circle.radius_mm};
        spots.push_back({edge, off});
    }
}

double from_place(Across across, double width) {
    return across == Across::left ? 0.0 : across == Across::middle ? -width / 2 : -width;
}

double from_place(Upright upright, double height) {
    return upright == Upright::bottom ? 0.0 : upright == Upright::middle ? -height / 2 : -height;
}

double width_mm(const Text& text) { return text_width_mm(text.words, {text.size, text.bold, text.math}); }

/// Words that may go aside count in both places.
void add(Spots& spots, const Text& text) {
    if (text.aside) add(spots, aside_of(text));
    const double width = width_mm(text), height = text_height_mm(text.size);
    const double left = from_place(text.across, width), low = from_place(text.upright, height);
    const double turn = text.angle_deg * std::numbers::pi / 180, c = std::cos(turn), s = std::sin(turn);
    for (const double x : {left, left + width}) {
        for (const double y : {low, low + height}) {
            const Point corner{text.at.paper_mm.x + c * x - s * y, text.at.paper_mm.y + s * x + c * y};
            spots.push_back({text.at.at, corner});
        }
    }
}

void add(Spots& spots, const Shading& shading) {
    for (const auto& node : shading.nodes) spots.push_back({node, {}});
}

/// Words longer than so many mm count as if they had no length.
Spots spots_of(const Scene& scene, double longest_mm = std::numeric_limits<double>::infinity()) {
    Spots spots;
    for (const auto& item : scene.items) {
        const auto* text = std::get_if<Text>(&item);
        if (text != nullptr && width_mm(*text) > longest_mm) {
            Text without_length = *text;
            without_length.words.clear();
            add(spots, without_length);
        } else {
            std::visit([&spots](const auto& each) { add(spots, each); }, item);
        }
    }
    return spots;
}

/// In units of the surface from the origin of the thing drawn, y up.
Extent extent(const Spots& spots, double units_per_in, double units_per_mm) {
    Extent all;
    for (const auto& spot : spots) {
        all.low.x = std::min(all.low.x, spot.at.x * units_per_in + spot.paper_mm.x * units_per_mm);
        all.low.y = std::min(all.low.y, spot.at.y * units_per_in + spot.paper_mm.y * units_per_mm);
        all.high.x = std::max(all.high.x, spot.at.x * units_per_in + spot.paper_mm.x * units_per_mm);
        all.high.y = std::max(all.high.y, spot.at.y * units_per_in + spot.paper_mm.y * units_per_mm);
    }
    return all;
}

bool fits(const Extent& extent, const Area& area) {
    return extent.high.x - extent.low.x <= area.width && extent.high.y - extent.low.y <= area.height;
}

/// Absent: there is no room, however small the thing drawn may be.
std::optional<double> largest_fitting(const Spots& spots, const Area& area, double bare, double units_per_mm) {
    // From the largest down: words around a thing too small may need more room than around one a little larger.
    constexpr int steps = 120;
    for (int step = 0; step <= steps; ++step) {
        const double scale = bare * (1.0 - (1.0 - least_share) * step / steps);
        if (fits(extent(spots, scale, units_per_mm), area)) return scale;
    }
    return std::nullopt;
}

/// The middle of all that is painted where it fits, else of the thing drawn; in.
double middle(double low, double high, double room, double low_in, double high_in, double units_per_in) {
    return high - low <= room ? (low + high) / 2 / units_per_in : (low_in + high_in) / 2;
}

View at_scale(const Scene& scene, const Spots& spots, const Area& area, double units_per_in, double units_per_mm) {
    const auto& [low, high] = scene.bounds;
    const auto painted = extent(spots, units_per_in, units_per_mm);
    return {{middle(painted.low.x, painted.high.x, area.width, low.x, high.x, units_per_in),
             middle(painted.low.y, painted.high.y, area.height, low.y, high.y, units_per_in)},
            {area.left + area.width / 2, area.top + area.height / 2},
            units_per_in,
            units_per_mm};
}

}  // namespace

View fit_tightly(const Scene& scene, const Area& area, double units_per_mm) {
    auto spots = spots_of(scene);
    const auto& [low, high] = scene.bounds;
    if (spots.empty() || !(high.x > low.x) || !(high.y > low.y)) return fit(scene, area, units_per_mm);
    const double bare = std::min(area.width / (high.x - low.x), area.height / (high.y - low.y));
    std::optional<double> filling = largest_fitting(spots, area, bare, units_per_mm);
    if (!filling) {
        // A long line of words that may be cut off must not make the thing small too; its height still counts.
        spots = spots_of(scene, 0.5 * area.width / units_per_mm);
        filling = largest_fitting(spots, area, bare, units_per_mm);
    }
    return at_scale(scene, spots, area, filling.value_or(least_share * bare), units_per_mm);
}

View centered_at_scale(const Scene& scene, const Area& area, double units_per_in, double units_per_mm) {
    return at_scale(scene, spots_of(scene), area, units_per_in, units_per_mm);
}

}  // namespace toehold::drawing
