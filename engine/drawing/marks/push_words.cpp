#include "drawing/marks/push_words.h"

#include "format/figures.h"

#include <cmath>

namespace toehold::drawing {

std::string push_words(const PushShown& push, const Overlay& overlay) {
    std::string words = format::figure_text(push.push_lb, "lb", overlay.system);
    if (push.down_lb != 0.0)
        words += (push.down_lb > 0.0 ? " and " : " and up ") +
                 format::figure_text(std::abs(push.down_lb), "lb", overlay.system) +
                 (push.down_lb > 0.0 ? " down" : "");
    words += " at " + format::figure_text(push.height_in, "in", overlay.system);
    return overlay.stale ? "(" + words + ")" : words;
}

std::string direction_words(const PushShown& push) {
    const double degrees = std::round(format::degrees(push.direction_rad));
    return "towards " + format::degrees_text(std::isfinite(degrees) ? degrees : 0.0) + "\u00b0";
}

}  // namespace toehold::drawing
