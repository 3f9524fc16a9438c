#include "plain_svg.h"

#include "drawing/render/palette.h"
#include "support/file_bytes.h"

#include <fmt/format.h>

#include <cstdlib>

namespace toehold::test {
namespace {

using namespace drawing;

constexpr double mm_per_in = 25.4;

View view_of(const paper::Placed& placed) {
    return {placed.center_in, placed.at_mm, placed.scale * mm_per_in, placed.lettering};
}

std::string number(double value) {
    std::string words = fmt::format("{:.2f}", value);
    return words == "-0.00" ? "0.00" : words;
}

std::string escaped(const std::string& words) {
    std::string result;
    for (const char character : words) {
        if (character == '<') {
            result += "&lt;";
        } else if (character == '&') {
            result += "&amp;";
        } else {
            result += character;
        }
    }
    return result;
}

std::string ink(Pen pen, Fill fill, double lettering) {
    const Stroke line = stroke(pen, Ground::print);
    const std::string width = pen == Pen::none ? "0" : number(line.width_mm * lettering);
    return fmt::format("fill=\"{}\" stroke=\"black\" stroke-width=\"{}\"", fill == Fill::none ? "none" : "#eee", width);
}

std::string drawn(const Path& path, const View& view) {
    std::string way;
    for (const auto& contour : path.contours) {
        char command = 'M';
        for (const Place& place : contour) {
            const Point at = to_surface(view, place);
            way += command + number(at.x) + " " + number(at.y);
            command = 'L';
        }
        if (path.closed) way += 'Z';
    }
    return fmt::format("<path d=\"{}\" {}/>\n", way, ink(path.pen, path.fill, view.units_per_mm));
}

std::string drawn(const Circle& circle, const View& view) {
    const Point at = to_surface(view, circle.center);
    const double radius = circle.radius_in * view.units_per_in + circle.radius_mm * view.units_per_mm;
    return fmt::format("<circle cx=\"{}\" cy=\"{}\" r=\"{}\" {}/>\n", number(at.x), number(at.y), number(radius),
                       ink(circle.pen, circle.fill, view.units_per_mm));
}

std::string drawn(const Text& text, const View& view) {
    constexpr const char* anchors[] = {"start", "middle", "end"};
    constexpr const char* baselines[] = {"auto", "central", "hanging"};
    const Point at = to_surface(view, text.at);
    const std::string place = fmt::format("x=\"{}\" y=\"{}\"", number(at.x), number(at.y));
    const std::string turn = text.angle_deg == 0.0 ? ""
                                                   : fmt::format(" transform=\"rotate({} {} {})\"",
                                                                 number(-text.angle_deg), number(at.x), number(at.y));
    return fmt::format("<text {} font-size=\"{}\" text-anchor=\"{}\" dominant-baseline=\"{}\"{}{}>{}</text>\n", place,
                       number(text_height_mm(text.size) * view.units_per_mm),
                       anchors[static_cast<std::size_t>(text.across)],
                       baselines[static_cast<std::size_t>(text.upright)], text.bold ? " font-weight=\"bold\"" : "",
                       turn, escaped(text.words));
}

std::string drawn(const Shading& /*shading*/, const View& /*view*/) { return "<!-- shading -->\n"; }

}  // namespace

std::string plain_svg(const paper::Sheet& sheet) {
    std::string svg = fmt::format(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{0}mm\" height=\"{1}mm\" viewBox=\"0 0 {0} {1}\" "
        "font-family=\"sans-serif\">\n",
        number(sheet.size.width_mm), number(sheet.size.height_mm));
    for (const paper::Placed& placed : sheet.placed) {
        svg += "<!-- " + placed.scene.name + " -->\n";
        const View view = view_of(placed);
        for (const Item& item : placed.scene.items)
            svg += std::visit([&view](const auto& of) { return drawn(of, view); }, item);
    }
    return svg + "</svg>\n";
}

bool is_as_kept(const std::string& name, const std::string& text) {
    const std::string file = TOEHOLD_TEST_FOLDER "/paper/reference/" + name;
    if (std::getenv("TOEHOLD_RENEW_REFERENCES") != nullptr) put_bytes(file, text);
    return bytes_of(file) == text;
}

}  // namespace toehold::test
