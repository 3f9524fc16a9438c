// Bytes of SVG and PNG files.
#include "drawing/painter.h"
#include "paper/surface.h"
#include "paper/surface_bytes.h"

#include <cairo-svg.h>
#include <cairo.h>

#include <cmath>

namespace toehold::paper {

std::string svg(const Sheet& sheet) {
    std::string bytes;
    const surface::Surface made(cairo_svg_surface_create_for_stream(
        surface::append, &bytes, sheet.size.width_mm * points_per_mm, sheet.size.height_mm * points_per_mm));
    {
        const surface::Context context(cairo_create(made.get()));
        paint(context.get(), sheet, points_per_mm);
    }
    surface::finish(made.get());
    return bytes;
}

std::string png(const Sheet& sheet, double dots_per_in) {
    const double dots_per_mm = dots_per_in / 25.4;
    const auto dots = [dots_per_mm](double mm) { return static_cast<int>(std::lround(mm * dots_per_mm)); };
    const surface::Surface made(
        cairo_image_surface_create(CAIRO_FORMAT_RGB24, dots(sheet.size.width_mm), dots(sheet.size.height_mm)));
    {
        const surface::Context context(cairo_create(made.get()));
        drawing::paint_ground(context.get(),
                              {0.0, 0.0, sheet.size.width_mm * dots_per_mm, sheet.size.height_mm * dots_per_mm},
                              drawing::Ground::print);
        paint(context.get(), sheet, dots_per_mm);
    }
    std::string bytes;
    surface::require(cairo_surface_write_to_png_stream(made.get(), surface::append, &bytes));
    return bytes;
}

}  // namespace toehold::paper
