#pragma once
// The axes of each part of a detail, made of ranges that have no problem. One that nothing is asked of has none.
#include "search/changes/plate.h"
#include "search/ranges/ranges.h"

#include <string>
#include <vector>

namespace toehold::search {

struct Asked {
    const catalog::Resolved& base;
    const Ranges& ranges;
    const catalog::Catalog& catalog;
};

/// `plate`, `thickness`, `metal`: before the anchors, which are drilled for.
[[nodiscard]] std::vector<Axis> plate_axes(const Asked& asked);
/// `anchor`, `length`, `pattern`, `washer`, `backing`.
[[nodiscard]] std::vector<Axis> anchor_axes(const Asked& asked);
/// `blocks`, arrangement and size together, and `ends`.
[[nodiscard]] std::vector<Axis> framing_axes(const Asked& asked);

/// Whether the detail's plate is one of the stock plates asked for, which stays as it is.
[[nodiscard]] bool is_asked_stock(const model::BaseDetail& detail, const std::vector<std::string>& stock);
[[nodiscard]] std::vector<std::string> asked_stock(const Ranges& ranges);
/// Where a pattern follows the holes may stand anywhere till then.
[[nodiscard]] Holes holes_after(const Ranges& ranges);

/// As an option is labeled: `1/2 in`, `6 x 8 in`.
[[nodiscard]] std::string label(const PlateSize& size);
[[nodiscard]] std::string label(const Pattern& pattern);
[[nodiscard]] std::string label(const AnchorChoice& anchor);
[[nodiscard]] std::string_view word(WasherChoice washer);
[[nodiscard]] std::string label(const BackingChoice& backing);
[[nodiscard]] std::string_view word(BlockArrangement arrangement);
[[nodiscard]] std::string label(const EndChoice& end);

}  // namespace toehold::search
