#pragma once
// The push in words, one line for what it is and one for where it goes.
#include "drawing/overlay.h"

#include <string>

namespace toehold::drawing {

/// `200 lb at 42 in`, in parentheses where stale.
[[nodiscard]] std::string push_words(const PushShown& push, const Overlay& overlay);
/// `towards 90°`: whole degrees from +x counter-clockwise.
[[nodiscard]] std::string direction_words(const PushShown& push);

}  // namespace toehold::drawing
