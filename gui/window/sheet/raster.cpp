#include "window/sheet/raster.h"

#include <cairo/cairo.h>

#include <algorithm>
#include <cmath>

namespace toehold::window {

namespace {

int pixels(double length, double scale) { return std::max(1, static_cast<int>(std::ceil(length * scale))); }

}  // namespace

void Raster::Destroy::operator()(cairo_surface_t* surface) const { cairo_surface_destroy(surface); }

void Raster::repaint(const drawing::Area& area, double scale, const std::function<void(cairo_t*)>& paint) {
    // Whole pixels, so that showing the image never smooths it.
    left_ = std::floor(area.left * scale) / scale;
    top_ = std::floor(area.top * scale) / scale;
    const int width = pixels(area.left + area.width - left_, scale);
    const int height = pixels(area.top + area.height - top_, scale);
    if (!image_ || width != width_ || height != height_) {
        image_.reset(cairo_image_surface_create(CAIRO_FORMAT_RGB24, width, height));
        width_ = width;
        height_ = height;
    }
    cairo_surface_set_device_scale(image_.get(), scale, scale);
    const std::unique_ptr<cairo_t, decltype(&cairo_destroy)> cairo(cairo_create(image_.get()), &cairo_destroy);
    cairo_translate(cairo.get(), -left_, -top_);
    paint(cairo.get());
}

void Raster::show(cairo_t* cairo) const {
    if (!image_) return;
    cairo_save(cairo);
    cairo_set_source_surface(cairo, image_.get(), left_, top_);
    cairo_pattern_set_filter(cairo_get_source(cairo), CAIRO_FILTER_NEAREST);
    cairo_paint(cairo);
    cairo_restore(cairo);
}

}  // namespace toehold::window
