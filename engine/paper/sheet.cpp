#include "paper/sheet.h"

#include "drawing/render/tight_fit.h"

#include <array>
#include <cmath>
#include <utility>

namespace toehold::paper {
namespace {

constexpr double mm_per_in = 25.4;

/// Of a scene's ink, with what stands off it on paper.
Placed placed(drawing::Scene scene, const Frame& frame, double lettering, bool to_scale) {
    const double fitting = drawing::fit_tightly(scene, frame, lettering).units_per_in / mm_per_in;
    const double customary = to_scale ? drawing::customary_scale(fitting) : 0.0;
    const double scale = customary > 0.0 ? customary : fitting;
    const drawing::View view = drawing::centered_at_scale(scene, frame, scale * mm_per_in, lettering);
    return {std::move(scene), view.center_in, view.center, scale, lettering};
}

}  // namespace

Size size_of(PaperSize paper, Turn turn) {
    constexpr std::array<Size, 4> upright = {{{215.9, 279.4}, {210.0, 297.0}, {279.4, 431.8}, {297.0, 420.0}}};
    const Size size = upright.at(static_cast<std::size_t>(paper));
    return turn == Turn::upright ? size : Size{size.height_mm, size.width_mm};
}

Placed placed_to_scale(drawing::Scene scene, const Frame& frame, double lettering) {
    return placed(std::move(scene), frame, lettering, true);
}

Placed placed_to_fit(drawing::Scene scene, const Frame& frame, double lettering) {
    return placed(std::move(scene), frame, lettering, false);
}

Placed placed_on_paper(drawing::Scene scene, drawing::Point origin_mm, double lettering) {
    return {std::move(scene), {}, origin_mm, 1.0, lettering};
}

format::Phrase scale_words(double scale) {
    constexpr double same = 1e-6;
    if (std::abs(drawing::customary_scale(scale) / scale - 1.0) > same) return format::phrase("not to scale");
    if (std::abs(scale - 1.0) < same) return format::phrase("full size");
    if (scale > 1.0) return format::phrase("{}:1", std::lround(scale));
    return format::phrase("1:{}", std::lround(1.0 / scale));
}

}  // namespace toehold::paper
