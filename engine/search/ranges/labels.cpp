#include "format/figures.h"
#include "search/ranges/axes.h"
#include "units/quantity.h"

#include <fmt/format.h>

namespace toehold::search {

using units::bare_fraction;

std::string label(const PlateSize& size) {
    return fmt::format("{}x{}", bare_fraction(size.width_in), bare_fraction(size.depth_in));
}

std::string label(const Pattern& pattern) {
    std::string text = fmt::format("{}x{}", pattern.across, pattern.deep);
    if (pattern.edge_in > 0.0) text += "@" + bare_fraction(pattern.edge_in);
    if (pattern.spacing_x_in || pattern.spacing_y_in)
        text += fmt::format(":{}x{}", bare_fraction(pattern.spacing_x_in.value_or(0.0)),
                            bare_fraction(pattern.spacing_y_in.value_or(0.0)));
    return text;
}

std::string label(const AnchorChoice& anchor) {
    return anchor.grade.empty() ? anchor.size : anchor.size + " " + anchor.grade;
}

std::string_view word(WasherChoice washer) {
    switch (washer) {
        case WasherChoice::none:
            return "none";
        case WasherChoice::narrow:
            return "narrow";
        case WasherChoice::wide:
            break;
    }
    return "wide";
}

std::string label(const BackingChoice& backing) {
    switch (backing.kind) {
        case BackingChoice::Kind::none:
            return "none";
        case BackingChoice::Kind::wide_washer:
            return "washer";
        case BackingChoice::Kind::plate:
            break;
    }
    return fmt::format("{}x{}", bare_fraction(backing.side_in), bare_fraction(backing.thickness_in));
}

std::string_view word(BlockArrangement arrangement) {
    switch (arrangement) {
        case BlockArrangement::as_is:
            return "as-is";
        case BlockArrangement::upright_rows:
            return "upright";
        case BlockArrangement::doubled_rows:
            return "doubled";
        case BlockArrangement::flat_under_all:
            return "flat";
        case BlockArrangement::flat_rows:
            return "flat-rows";
        case BlockArrangement::doubled_joists:
            return "doubled-joists";
        case BlockArrangement::into_next_bay:
            break;
    }
    return "next-bay";
}

std::string label(const EndChoice& end) {
    switch (end.kind) {
        case EndChoice::Kind::as_is:
            return "as-is";
        case EndChoice::Kind::bolted_angles:
            return "angles";
        case EndChoice::Kind::hardware:
            break;
    }
    return "hardware " + format::number_text(end.force_lb);
}

std::string label(const RowHeights& rows) {
    return fmt::format("{}:{}", bare_fraction(rows.upper_in), bare_fraction(rows.lower_in));
}

std::string label(const HeadChoice& head) {
    if (head.kind == HeadChoice::Kind::washer) return "washer";
    return fmt::format("{}x{}", bare_fraction(head.side_in), bare_fraction(head.thickness_in));
}

}  // namespace toehold::search
