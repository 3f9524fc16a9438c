#include "paper/page/drawing_in_page.h"

#include "drawing/render/palette.h"
#include "paper/page/html.h"

#include <fmt/format.h>

#include <string_view>
#include <utility>

namespace toehold::paper::page {
namespace {

void replace_all(std::string& text, std::string_view what, const std::string& by) {
    for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + by.size()))
        text.replace(at, what.size(), by);
}

/// Without the XML declaration, and its size left to the page.
std::string inline_svg(std::string bytes, std::size_t number, const Size& size, const std::string& label) {
    const std::size_t root = bytes.find("<svg"), root_end = bytes.find('>', root);
    bytes = bytes.substr(root_end + 1);
    const std::string own = fmt::format("d{}-", number);
    replace_all(bytes, "id=\"", "id=\"" + own);
    replace_all(bytes, "href=\"#", "href=\"#" + own);
    replace_all(bytes, "url(#", "url(#" + own);
    while (!bytes.empty() && bytes.back() == '\n') bytes.pop_back();
    constexpr double points_per_mm = 72.0 / 25.4;
    return fmt::format(
               "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" viewBox=\"0 0 "
               "{:.3f} {:.3f}\" role=\"img\" aria-label=\"{}\">",
               points_per_mm * size.width_mm, points_per_mm * size.height_mm, escaped(label)) +
           bytes;
}

}  // namespace

std::string drawing_in_page(const site::SceneAtScale& make, std::size_t number, const std::string& label) {
    // A phone 360 px wide shows 328 px beside its margins; a px is 1/96 in. At this width of paper the words of a
    // drawing are as large there as the page's own small ones.
    constexpr double width_mm = 86.0, pad_mm = 1.5, letters_mm = 3.5, largest = 0.5, highest_mm = 150.0;
    const double lettering = letters_mm / drawing::text_height_mm(drawing::TextSize::normal);
    const double inner_mm = width_mm - 2.0 * pad_mm;
    const double share = site::proportion(make, inner_mm / lettering, largest / lettering);
    const double inner_high_mm = std::min(highest_mm, share * inner_mm + 1.0);
    Sheet sheet;
    sheet.size = {width_mm, inner_high_mm + 2.0 * pad_mm};
    sheet.placed.push_back(site::fitted(make, {pad_mm, pad_mm, inner_mm, inner_high_mm}, lettering, largest));
    return inline_svg(svg(sheet), number, sheet.size, label);
}

}  // namespace toehold::paper::page
