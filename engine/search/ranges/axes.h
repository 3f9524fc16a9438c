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
/// Of a post on a member's side, all of them: `plies`, `behind`, `next-joist`, `rim-ends`, `notch`, `post-size`,
/// `bottom`, `bracket`, those of the anchors, `heights`, `head`, `ties`, `ends`.
[[nodiscard]] std::vector<Axis> side_axes(const Asked& asked);

/// `default_ranges` of a post on a member's side.
[[nodiscard]] Ranges default_side_ranges(const catalog::Resolved& base, const catalog::Catalog& catalog);

/// Whether the detail's plate is one of the stock plates asked for, which stays as it is.
[[nodiscard]] bool is_asked_stock(const model::BaseDetail& detail, const std::vector<std::string>& stock);
[[nodiscard]] std::vector<std::string> asked_stock(const Ranges& ranges);
/// Where a pattern follows the holes may stand anywhere till then.
[[nodiscard]] Holes holes_after(const Ranges& ranges);

/// Of plates under heads and nuts: the base plate's own or the bracket's, else the common steel; steel under aluminum,
/// which no bolt is tightened against.
[[nodiscard]] std::string backing_metal(const Asked& asked);

/// As an option that changes nothing is labeled.
inline constexpr const char* label_as_is = "as-is";
inline constexpr const char* label_none = "none";
/// `hardware 1600`; 0 lb: as it is.
[[nodiscard]] std::string force_label(double force_lb);
[[nodiscard]] std::string label(const RowHeights& rows);
[[nodiscard]] std::string label(const HeadChoice& head);
/// As an option is labeled: `1/2 in`, `6 x 8 in`.
[[nodiscard]] std::string label(const PlateSize& size);
[[nodiscard]] std::string label(const Pattern& pattern);
[[nodiscard]] std::string label(const AnchorChoice& anchor);
[[nodiscard]] std::string_view word(WasherChoice washer);
[[nodiscard]] std::string label(const BackingChoice& backing);
[[nodiscard]] std::string_view word(BlockArrangement arrangement);
[[nodiscard]] std::string label(const EndChoice& end);

}  // namespace toehold::search
