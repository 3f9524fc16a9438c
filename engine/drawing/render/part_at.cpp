// Which part stands under a point: plain geometry, no surface needed.
#include "drawing/render/contour.h"
#include "drawing/render/painter.h"
#include "drawing/render/text.h"
#include "drawing/scene/shapes.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::drawing {
namespace {

struct Probe {
    const View& view;
    Point at;
    double reach = 0.0;
};

bool hit(const Probe& probe, const Path& path) {
    if (path.pen == Pen::none && path.fill == Fill::none) return false;
    const std::vector<render::Contour> contours = render::on_surface(path, probe.view);
    if (!render::meet(grown(render::bounds(contours), probe.reach), {probe.at, probe.at})) return false;
    if (path.fill != Fill::none && render::inside(probe.at, contours)) return true;
    return std::any_of(contours.begin(), contours.end(), [&](const render::Contour& contour) {
        return render::distance(probe.at, contour, path.closed) <= probe.reach;
    });
}

/// Inside always, filled or not: a hole is taken in its middle.
bool hit(const Probe& probe, const Circle& circle) {
    const Point center = to_surface(probe.view, circle.center);
    const double radius = circle.radius_in * probe.view.units_per_in + circle.radius_mm * probe.view.units_per_mm;
    return std::hypot(probe.at.x - center.x, probe.at.y - center.y) <= radius + probe.reach;
}

/// Letters as wide as they are on the whole in the font that is drawn: near enough for a hand.
double estimated_width_mm(const Text& text) {
    constexpr double letter_over_size = 0.58;
    const auto letters = std::count_if(text.words.begin(), text.words.end(),
                                       [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; });
    return static_cast<double>(letters) * letter_over_size * text_height_mm(text.size);
}

bool hit(const Probe& probe, const Text& described) {
    if (described.words.empty()) return false;
    const Text text = placed(described, estimated_width_mm(described), probe.view);
    const Point place = to_surface(probe.view, text.at);
    const double angle = text.angle_deg * std::numbers::pi / 180.0;
    const double right = probe.at.x - place.x, up = place.y - probe.at.y;
    const double along = right * std::cos(angle) + up * std::sin(angle);
    const double above = up * std::cos(angle) - right * std::sin(angle);
    const double width = estimated_width_mm(text) * probe.view.units_per_mm;
    const double height = render::capital_height * text_height_mm(text.size) * probe.view.units_per_mm;
    const double left = text.across == Across::left ? 0.0 : text.across == Across::middle ? -0.5 * width : -width;
    const double foot = text.upright == Upright::bottom   ? 0.0
                        : text.upright == Upright::middle ? -0.5 * height
                                                          : -height;
    return along >= left - probe.reach && along <= left + width + probe.reach && above >= foot - probe.reach &&
           above <= foot + height + probe.reach;
}

const model::PartId* part_hit(const Probe& probe, const Item& item) {
    return std::visit(
        [&probe](const auto& one) -> const model::PartId* {
            if constexpr (std::is_same_v<std::decay_t<decltype(one)>, Shading>) {
                return nullptr;
            } else {
                return one.part.kind != model::PartKind::none && hit(probe, one) ? &one.part : nullptr;
            }
        },
        item);
}

}  // namespace

model::PartId part_at(const Scene& scene, const View& view, Point on_surface, double reach) {
    const Probe probe{view, on_surface, reach};
    for (auto item = scene.items.rbegin(); item != scene.items.rend(); ++item) {
        if (const model::PartId* part = part_hit(probe, *item)) return *part;
    }
    return {};
}

}  // namespace toehold::drawing
