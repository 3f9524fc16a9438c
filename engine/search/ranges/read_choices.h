#pragma once
// One value of a range as text, to what it stands for; absent, or empty, where it is none.
#include "search/ranges/ranges.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::search {

/// A size, a range of sizes in steps, or a stock plate's id.
[[nodiscard]] std::vector<PlateChoice> plates_of(const std::string& text, const catalog::Catalog& catalog);
/// A length, or a range in steps.
[[nodiscard]] std::vector<double> lengths_of(const std::string& text);
/// Size and grade as they stand, known or not; a bolt without one has `a307`.
[[nodiscard]] AnchorChoice anchor_of(const std::string& text, const catalog::Catalog& catalog);
[[nodiscard]] std::optional<Pattern> pattern_of(const std::string& text);
[[nodiscard]] std::optional<BackingChoice> backing_of(const std::string& text);
[[nodiscard]] std::optional<EndChoice> end_of(const std::string& text);

}  // namespace toehold::search
