#pragma once
// The fasteners that go through the plate, with the holes bored for them below: NDS 2018 12.1.3 to 12.1.5.
#include "catalog/resolve.h"
#include "format/phrase.h"
#include "paper/shop/schedule.h"

namespace toehold::paper::shop {

/// A row for anchors that are alike in all the schedule says.
[[nodiscard]] Schedule anchor_schedule(const catalog::Resolved& resolved, const format::Locale& locale);

}  // namespace toehold::paper::shop
