#pragma once
// Lengths, forces and the push as a drawing writes them: a length is a bare number, since the drawing says its unit
// once.
#include "format/phrase.h"
#include "units/quantity.h"

#include <string>

namespace toehold::drawing {

struct Overlay;
struct PushShown;

/// `3 3/8` in US customary, `85.7` (mm, to a tenth) in SI. Without its unit.
[[nodiscard]] std::string length_figure(double length_in, units::System system);
/// `3 3/8 in`, `85.7 mm`.
[[nodiscard]] std::string length_words(double length_in, units::System system);
/// `Dimensions in inches`, `Dimensions in mm`.
[[nodiscard]] std::string unit_note(const format::Locale& locale);
/// Number and unit, less than half a pound as 0; in parentheses where the number is no longer the detail's.
[[nodiscard]] std::string force_words(double force_lb, units::System system, bool stale);

/// `200 lb at 42 in`, in parentheses where stale.
[[nodiscard]] std::string push_words(const PushShown& push, const Overlay& overlay);
/// `toward 90°`: whole degrees from +x counter-clockwise.
[[nodiscard]] std::string direction_words(const PushShown& push, const format::Locale& locale);
/// In parentheses where stale.
[[nodiscard]] std::string words_of_today(const std::string& words, bool stale);

}  // namespace toehold::drawing
