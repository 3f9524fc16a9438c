#pragma once
// What a shop reads besides the views: tolerances and notes. Common practice, said to be so; the order goes before it.
#include "catalog/resolve.h"
#include "format/phrase.h"
#include "paper/shop/schedule.h"
#include "units/quantity.h"

namespace toehold::paper::shop {

[[nodiscard]] Schedule tolerances(const format::Locale& locale);
/// Numbered as they stand.
[[nodiscard]] std::vector<std::string> shop_notes(const catalog::Resolved& resolved, const format::Locale& locale);
/// `Tube 2 x 2 x 3/16, ASTM A500 ...`.
[[nodiscard]] format::Phrase post_words(const catalog::Resolved& resolved, units::System system);
/// `3/16 fillet all around, E70 electrode`; `none specified` without one.
[[nodiscard]] format::Phrase weld_words(const catalog::Resolved& resolved, units::System system);

}  // namespace toehold::paper::shop
