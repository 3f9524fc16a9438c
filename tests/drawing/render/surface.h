#pragma once
// A picture in memory to paint on, and its pixels.
#include "drawing/render/palette.h"

#include <cairo.h>

#include <filesystem>
#include <memory>
#include <stdexcept>

namespace toehold::test {

/// Red, green and blue from 0 to 1.
inline drawing::Colour pixel(cairo_surface_t* picture, int x, int y) {
    cairo_surface_flush(picture);
    const unsigned char* const at =
        cairo_image_surface_get_data(picture) + y * cairo_image_surface_get_stride(picture) + 4 * x;
    return {at[2] / 255.0, at[1] / 255.0, at[0] / 255.0, 1.0};
}

/// WCAG 2.1, definition of relative luminance, sRGB.
inline double luminance(const drawing::Colour& colour) {
    const auto linear = [](double part) {
        return part <= 0.03928 ? part / 12.92 : std::pow((part + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.red) + 0.7152 * linear(colour.green) + 0.0722 * linear(colour.blue);
}

/// WCAG 2.1, definition of contrast ratio.
inline double contrast(const drawing::Colour& one, const drawing::Colour& other) {
    const double a = luminance(one), b = luminance(other);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

class Picture {
  public:
    Picture(int width, int height)
        : surface_(cairo_image_surface_create(CAIRO_FORMAT_RGB24, width, height), cairo_surface_destroy),
          cairo_(cairo_create(surface_.get()), cairo_destroy) {}
    [[nodiscard]] cairo_t* cairo() const { return cairo_.get(); }
    [[nodiscard]] drawing::Colour at(int x, int y) const { return pixel(surface_.get(), x, y); }
    void write(const std::filesystem::path& file) const {
        if (cairo_surface_write_to_png(surface_.get(), file.c_str()) != CAIRO_STATUS_SUCCESS)
            throw std::runtime_error("no picture could be written to " + file.string());
    }

  private:
    std::unique_ptr<cairo_surface_t, decltype(&cairo_surface_destroy)> surface_;
    std::unique_ptr<cairo_t, decltype(&cairo_destroy)> cairo_;
};

}  // namespace toehold::test
