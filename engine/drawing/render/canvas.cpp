#include "drawing/render/canvas.h"

#include <cairo.h>

#include <algorithm>
#include <cmath>

namespace toehold::drawing::render {
namespace {

bool of_pixels(cairo_t* cairo) {
    switch (cairo_surface_get_type(cairo_get_group_target(cairo))) {
        case CAIRO_SURFACE_TYPE_PDF:
        case CAIRO_SURFACE_TYPE_PS:
        case CAIRO_SURFACE_TYPE_SVG:
        case CAIRO_SURFACE_TYPE_SCRIPT:
        case CAIRO_SURFACE_TYPE_RECORDING:
            return false;
        default:
            return true;
    }
}

double pixel_size(cairo_t* cairo) {
    if (!of_pixels(cairo)) return 0.0;
    double device_x = 1.0, device_y = 1.0;
    cairo_surface_get_device_scale(cairo_get_group_target(cairo), &device_x, &device_y);
    double wide = 1.0, high = 0.0;
    cairo_user_to_device_distance(cairo, &wide, &high);
    const double pixels = std::hypot(wide, high) * device_x;
    return pixels > 0.0 ? 1.0 / pixels : 0.0;
}

}  // namespace

Canvas canvas(cairo_t* cairo, const View& view, Ground ground) {
    Canvas made{cairo, view, ground, {}, pixel_size(cairo)};
    cairo_clip_extents(cairo, &made.visible.low.x, &made.visible.low.y, &made.visible.high.x, &made.visible.high.y);
    return made;
}

double units(const Canvas& canvas, double mm) { return mm * canvas.view.units_per_mm; }

double line_width(const Canvas& canvas, double width_mm) {
    constexpr double thinnest_pixels = 0.7;
    return std::max(units(canvas, width_mm), thinnest_pixels * canvas.pixel);
}

void use_colour(const Canvas& canvas, const Colour& colour) {
    cairo_set_source_rgba(canvas.cairo, colour.red, colour.green, colour.blue, colour.opacity);
}

}  // namespace toehold::drawing::render
