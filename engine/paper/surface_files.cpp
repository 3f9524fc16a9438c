// Bytes of SVG and PNG files.
#include "drawing/render/painter.h"
#include "paper/surface.h"
#include "paper/surface_bytes.h"

#include <cairo-svg.h>
#include <cairo.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <string_view>

namespace toehold::paper {
namespace {

/// The library numbers its surfaces through the life of a process: numbered anew, so that the same sheet gives the same
/// bytes.
std::string with_own_numbers(const std::string& bytes) {
    constexpr std::string_view word = "surface";
    std::string result;
    std::map<std::string, std::size_t> numbers;
    std::size_t from = 0;
    for (std::size_t at = bytes.find(word); at != std::string::npos; at = bytes.find(word, from)) {
        const std::size_t digits = at + word.size();
        const std::size_t end = std::min(bytes.find_first_not_of("0123456789", digits), bytes.size());
        result += bytes.substr(from, digits - from);
        if (end > digits) {
            const std::string number = bytes.substr(digits, end - digits);
            result += std::to_string(numbers.try_emplace(number, numbers.size() + 1).first->second);
        }
        from = end;
    }
    return result + bytes.substr(from);
}

}  // namespace

std::string svg(const Sheet& sheet) {
    std::string bytes;
    const surface::Surface made(cairo_svg_surface_create_for_stream(
        surface::append, &bytes, sheet.size.width_mm * points_per_mm, sheet.size.height_mm * points_per_mm));
    {
        const surface::Context context(cairo_create(made.get()));
        paint(context.get(), sheet, points_per_mm);
    }
    surface::finish(made.get());
    return with_own_numbers(bytes);
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
