#pragma once
// What charts, tables and the window say of studies.
#include "format/phrase.h"

#include <vector>

namespace toehold::study {
struct HoldingMap;
struct Judged;
struct Limit;
struct Sweep;
struct Tornado;
}  // namespace toehold::study

namespace toehold::wording {

/// `Anchor withdrawal, anchor A`.
[[nodiscard]] format::Phrase limit(const study::Limit& limit);
/// `demand/capacity 0.84, ADEQUATE: Anchor withdrawal, anchor A`, or why there is no number.
[[nodiscard]] format::Phrase judged(const study::Judged& judged);

// Sentences to stand with the numbers, values in this system: what holds, what has no number and why, what was not
// reached.
[[nodiscard]] std::vector<format::Phrase> notes(const study::Sweep& sweep, units::System system);
[[nodiscard]] std::vector<format::Phrase> notes(const study::Tornado& tornado, units::System system);
[[nodiscard]] std::vector<format::Phrase> notes(const study::HoldingMap& map, units::System system);

}  // namespace toehold::wording
