#include "drawing/render/fills.h"

#include <cairo.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <memory>

namespace toehold::drawing::render {
namespace {

struct Corner {
    Point at;
    double level = 0.0;
};
using Triangle = std::array<Corner, 3>;

std::vector<Triangle> on_surface(const Shading& shading, const View& view) {
    std::vector<Triangle> triangles;
    triangles.reserve(shading.triangles.size());
    for (const std::array<int, 3>& nodes : shading.triangles) {
        Triangle& triangle = triangles.emplace_back();
        for (std::size_t i = 0; i < 3; ++i) {
            const auto node = static_cast<std::size_t>(nodes[i]);
            triangle[i] = {to_surface(view, shading.nodes.at(node)), std::clamp(shading.level.at(node), 0.0, 1.0)};
        }
    }
    return triangles;
}

Box bounds_of(const std::vector<Triangle>& triangles) {
    Contour corners;
    corners.reserve(3 * triangles.size());
    for (const Triangle& triangle : triangles) {
        for (const Corner& corner : triangle) corners.push_back(corner.at);
    }
    return bounds({corners});
}

/// The colours of 256 levels, premultiplied as Cairo keeps them.
std::array<std::uint32_t, 256> level_colours(Ground ground) {
    std::array<std::uint32_t, 256> colours{};
    for (std::size_t i = 0; i < colours.size(); ++i) {
        const Colour colour = level_colour(static_cast<double>(i) / 255.0, ground);
        const auto part = [&colour](double value) {
            return static_cast<std::uint32_t>(std::lround(255.0 * value * colour.opacity));
        };
        colours.at(i) = part(1.0) << 24U | part(colour.red) << 16U | part(colour.green) << 8U | part(colour.blue);
    }
    return colours;
}

/// Pixels of a picture, and where it lies on the surface.
struct Raster {
    Point origin;        ///< of the first pixel's corner, surface units
    double pixel = 1.0;  ///< surface units
    int width = 0, height = 0;
    std::vector<std::uint32_t> pixels;
};

/// The two ends of a triangle on one row of pixels, with the levels there.
struct Span {
    double from = 0.0, to = 0.0, from_level = 0.0, to_level = 0.0;
};

bool span_at(const Triangle& triangle, double y, Span& span) {
    int met = 0;
    for (std::size_t i = 0; i < 3; ++i) {
        const Corner &a = triangle[i], &b = triangle[(i + 1) % 3];
        if ((a.at.y > y) == (b.at.y > y)) continue;
        const double t = (y - a.at.y) / (b.at.y - a.at.y);
        const double x = a.at.x + t * (b.at.x - a.at.x);
        const double level = a.level + t * (b.level - a.level);
        (met == 0 ? span.from : span.to) = x;
        (met == 0 ? span.from_level : span.to_level) = level;
        ++met;
    }
    if (met != 2) return false;
    if (span.from > span.to) span = {span.to, span.from, span.to_level, span.from_level};
    return true;
}

void paint_span(Raster& raster, int row, const Span& span, const std::array<std::uint32_t, 256>& colours) {
    const int first = std::max(0, static_cast<int>(std::ceil((span.from - raster.origin.x) / raster.pixel - 0.5)));
    const int last =
        std::min(raster.width - 1, static_cast<int>(std::floor((span.to - raster.origin.x) / raster.pixel - 0.5)));
    const double width = span.to - span.from;
    const double slope = width > 0.0 ? (span.to_level - span.from_level) / width : 0.0;
    std::uint32_t* const pixels = raster.pixels.data() + static_cast<std::ptrdiff_t>(row) * raster.width;
    for (int column = first; column <= last; ++column) {
        const double x = raster.origin.x + (column + 0.5) * raster.pixel;
        const double level = std::clamp(span.from_level + slope * (x - span.from), 0.0, 1.0);
        pixels[column] = colours[static_cast<std::size_t>(255.99 * level)];
    }
}

void paint_triangle(Raster& raster, const Triangle& triangle, const std::array<std::uint32_t, 256>& colours) {
    const auto [low, high] = std::minmax({triangle[0].at.y, triangle[1].at.y, triangle[2].at.y});
    const int first = std::max(0, static_cast<int>(std::ceil((low - raster.origin.y) / raster.pixel - 0.5)));
    const int last =
        std::min(raster.height - 1, static_cast<int>(std::floor((high - raster.origin.y) / raster.pixel - 0.5)));
    for (int row = first; row <= last; ++row) {
        Span span;
        if (span_at(triangle, raster.origin.y + (row + 0.5) * raster.pixel, span))
            paint_span(raster, row, span, colours);
    }
}

void show(const Canvas& canvas, Raster& raster) {
    using Surface = std::unique_ptr<cairo_surface_t, decltype(&cairo_surface_destroy)>;
    const Surface picture(
        cairo_image_surface_create_for_data(reinterpret_cast<unsigned char*>(raster.pixels.data()), CAIRO_FORMAT_ARGB32,
                                            raster.width, raster.height, 4 * raster.width),
        cairo_surface_destroy);
    cairo_save(canvas.cairo);
    cairo_translate(canvas.cairo, raster.origin.x, raster.origin.y);
    cairo_scale(canvas.cairo, raster.pixel, raster.pixel);
    cairo_set_source_surface(canvas.cairo, picture.get(), 0.0, 0.0);
    cairo_pattern_set_filter(cairo_get_source(canvas.cairo), CAIRO_FILTER_NEAREST);
    cairo_paint(canvas.cairo);
    cairo_restore(canvas.cairo);
}

/// On pixels: each is given its level at once, which is many times faster than a path for every triangle.
void shade_pixels(const Canvas& canvas, const std::vector<Triangle>& triangles, const Box& box) {
    Raster raster;
    raster.pixel = canvas.pixel;
    raster.origin = {std::floor(box.low.x / canvas.pixel) * canvas.pixel,
                     std::floor(box.low.y / canvas.pixel) * canvas.pixel};
    raster.width = static_cast<int>(std::ceil((box.high.x - raster.origin.x) / canvas.pixel));
    raster.height = static_cast<int>(std::ceil((box.high.y - raster.origin.y) / canvas.pixel));
    if (raster.width <= 0 || raster.height <= 0) return;
    raster.pixels.resize(static_cast<std::size_t>(raster.width) * static_cast<std::size_t>(raster.height));
    const std::array<std::uint32_t, 256> colours = level_colours(canvas.ground);
    for (const Triangle& triangle : triangles) paint_triangle(raster, triangle, colours);
    show(canvas, raster);
}

void add_patch(cairo_pattern_t* mesh, const Triangle& triangle, Ground ground) {
    cairo_mesh_pattern_begin_patch(mesh);
    cairo_mesh_pattern_move_to(mesh, triangle[0].at.x, triangle[0].at.y);
    cairo_mesh_pattern_line_to(mesh, triangle[1].at.x, triangle[1].at.y);
    cairo_mesh_pattern_line_to(mesh, triangle[2].at.x, triangle[2].at.y);
    for (unsigned corner = 0; corner < 4; ++corner) {
        const Colour colour = level_colour(triangle.at(corner % 3).level, ground);
        cairo_mesh_pattern_set_corner_color_rgba(mesh, corner, colour.red, colour.green, colour.blue, colour.opacity);
    }
    cairo_mesh_pattern_end_patch(mesh);
}

/// On paper: smooth at every scale. Only the box is filled, since a format without meshes makes a picture of what is.
void shade_mesh(const Canvas& canvas, const std::vector<Triangle>& triangles, const Box& box) {
    cairo_new_path(canvas.cairo);
    const std::unique_ptr<cairo_pattern_t, decltype(&cairo_pattern_destroy)> mesh(cairo_pattern_create_mesh(),
                                                                                  cairo_pattern_destroy);
    for (const Triangle& triangle : triangles) add_patch(mesh.get(), triangle, canvas.ground);
    cairo_set_source(canvas.cairo, mesh.get());
    cairo_rectangle(canvas.cairo, box.low.x, box.low.y, box.high.x - box.low.x, box.high.y - box.low.y);
    cairo_fill(canvas.cairo);
}

}  // namespace

void shade(const Canvas& canvas, const Shading& shading) {
    const std::vector<Triangle> triangles = on_surface(shading, canvas.view);
    const Box box = bounds_of(triangles);
    if (triangles.empty() || !meet(box, canvas.visible)) return;
    if (canvas.pixel <= 0.0) {
        shade_mesh(canvas, triangles, box);
        return;
    }
    const Box seen{{std::max(box.low.x, canvas.visible.low.x), std::max(box.low.y, canvas.visible.low.y)},
                   {std::min(box.high.x, canvas.visible.high.x), std::min(box.high.y, canvas.visible.high.y)}};
    shade_pixels(canvas, triangles, seen);
}

}  // namespace toehold::drawing::render
