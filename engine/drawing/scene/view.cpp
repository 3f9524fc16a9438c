#include "drawing/scene/view.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace toehold::drawing {
namespace {

constexpr double mm_per_in = 25.4;
constexpr double largest_of_full_size = 50.0;
constexpr double smallest_of_full_size = 1.0 / 200.0;
/// Drawing over thing. ISO 5455 and the inch scales of the trade together, largest first (common practice).
constexpr std::array<double, 16> customary_scales = {
    2.0,        1.0,        1.0 / 2.0,  1.0 / 4.0,  1.0 / 5.0,  1.0 / 8.0,  1.0 / 10.0,  1.0 / 12.0,
    1.0 / 16.0, 1.0 / 20.0, 1.0 / 24.0, 1.0 / 48.0, 1.0 / 50.0, 1.0 / 96.0, 1.0 / 100.0, 1.0 / 200.0};

double full_size(double units_per_mm) { return units_per_mm * mm_per_in; }

/// Surface units for an inch at which the scene just fits; 0 when it has no size.
double fitting_units_per_in(const Scene& scene, const Area& area, double units_per_mm) {
    const double around = 2.0 * scene.margin_mm * units_per_mm;
    const double wide = scene.bounds.high.x - scene.bounds.low.x;
    const double high = scene.bounds.high.y - scene.bounds.low.y;
    // A window may be smaller than the margin: a tenth of it still shows that something is there.
    const double room_wide = std::max(area.width - around, 0.1 * area.width);
    const double room_high = std::max(area.height - around, 0.1 * area.height);
    if (wide > 0.0 && high > 0.0) return std::min(room_wide / wide, room_high / high);
    if (wide > 0.0) return room_wide / wide;
    if (high > 0.0) return room_high / high;
    return 0.0;
}

View centered(const Scene& scene, const Area& area, double units_per_in, double units_per_mm) {
    const Box& box = scene.bounds;
    const double scale = units_per_in > 0.0 ? units_per_in : full_size(units_per_mm);
    return {{0.5 * (box.low.x + box.high.x), 0.5 * (box.low.y + box.high.y)},
            {area.left + 0.5 * area.width, area.top + 0.5 * area.height},
            scale,
            units_per_mm};
}

}  // namespace

Point to_surface(const View& view, const Place& place) {
    return {view.center.x + (place.at.x - view.center_in.x) * view.units_per_in + place.paper_mm.x * view.units_per_mm,
            view.center.y - (place.at.y - view.center_in.y) * view.units_per_in - place.paper_mm.y * view.units_per_mm};
}

Point to_surface(const View& view, Point at_in) { return to_surface(view, Place{at_in, {}}); }

Point to_drawing(const View& view, Point on_surface) {
    return {view.center_in.x + (on_surface.x - view.center.x) / view.units_per_in,
            view.center_in.y - (on_surface.y - view.center.y) / view.units_per_in};
}

Text aside_of(const Text& text) {
    Text moved = text;
    moved.aside.reset();
    if (!text.aside) return moved;
    moved.at = text.aside->at;
    moved.across = text.aside->across;
    moved.upright = text.aside->upright;
    return moved;
}

Text placed(const Text& text, double words_mm, const View& view) {
    constexpr double air_mm = 1.5;
    if (!text.aside || (words_mm + air_mm) * view.units_per_mm <= text.aside->room_in * view.units_per_in) return text;
    return aside_of(text);
}

View fit(const Scene& scene, const Area& area, double units_per_mm) {
    return centered(scene, area, fitting_units_per_in(scene, area, units_per_mm), units_per_mm);
}

double customary_scale(double at_most) {
    const double fits = at_most * (1.0 + 1e-9);
    const auto* const scale =
        std::find_if(customary_scales.begin(), customary_scales.end(), [fits](double one) { return one <= fits; });
    return at_most <= 0.0 || scale == customary_scales.end() ? 0.0 : *scale;
}

View fit_to_scale(const Scene& scene, const Area& area, double units_per_mm) {
    const double fitting = fitting_units_per_in(scene, area, units_per_mm);
    const double scale = customary_scale(fitting / full_size(units_per_mm));
    return centered(scene, area, scale > 0.0 ? scale * full_size(units_per_mm) : fitting, units_per_mm);
}

View zoomed(const View& view, double factor, Point about) {
    const double full = full_size(view.units_per_mm);
    const Point kept = to_drawing(view, about);
    View nearer = view;
    nearer.units_per_in =
        std::clamp(view.units_per_in * factor, smallest_of_full_size * full, largest_of_full_size * full);
    nearer.center_in = kept;
    nearer.center = about;
    return nearer;
}

View moved(const View& view, double right, double down) {
    View other = view;
    other.center.x += right;
    other.center.y += down;
    return other;
}

}  // namespace toehold::drawing
