#include "search/changes/side_rows.h"

#include "model/side_geometry.h"
#include "units/limit.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace toehold::search {
namespace {

using format::phrase;
using model::BaseDetail;
using model::SideFastened;
using model::SidePlace;

constexpr double one_row_in = 0.25;
constexpr double least_apart_in = 1.0;
constexpr double most_apart_on_metal_in = 5.0;  // NDS 2018 12.5.1.3: rows held across the grain by one steel plate

/// Where a height goes when the rows do: in proportion between the outermost, by as much as them beyond.
double moved_in(double below_top_in, const RowHeights& before, const RowHeights& after) {
    if (below_top_in <= before.upper_in) return below_top_in + after.upper_in - before.upper_in;
    if (below_top_in >= before.lower_in) return below_top_in + after.lower_in - before.lower_in;
    const double share = (below_top_in - before.upper_in) / (before.lower_in - before.upper_in);
    return after.upper_in + share * (after.lower_in - after.upper_in);
}

void move_bracket(SideFastened& mount, const RowHeights& before, const RowHeights& after) {
    if (!mount.bracket) return;
    const double lower_edge_in = mount.bracket->from_top_in + mount.bracket->height_in;
    const double past_in = std::max(0.0, mount.post_bottom_below_top_in - lower_edge_in);
    mount.bracket->from_top_in += after.upper_in - before.upper_in;
    const double now_in = lower_edge_in + after.lower_in - before.lower_in;
    mount.bracket->height_in = now_in - mount.bracket->from_top_in;
    mount.post_bottom_below_top_in = now_in + past_in;
}

/// The first single capital no place and no tie has, else one with a number.
std::string free_place_id(const SideFastened& mount) {
    const auto taken = [&mount](const std::string& id) {
        return std::any_of(mount.places.begin(), mount.places.end(), [&](const auto& one) { return one.id == id; }) ||
               std::any_of(mount.ties.begin(), mount.ties.end(), [&](const auto& one) { return one.id == id; });
    };
    for (char letter = 'A'; letter <= 'Z'; ++letter)
        if (std::string id(1, letter); !taken(id)) return id;
    for (std::size_t number = 1;; ++number)
        if (std::string id = "A" + std::to_string(number); !taken(id)) return id;
}

}  // namespace

bool is_on_side(const BaseDetail& detail) { return kind(detail.mount) == model::MountKind::side_fastened; }

Applied not_on_side() { return meaningless(phrase("only a post on a member's side has this")); }

std::vector<double> side_rows(const BaseDetail& detail) {
    if (!is_on_side(detail)) return {};
    std::vector<double> heights, rows;
    for (const SidePlace& place : on_side(detail).places) heights.push_back(place.below_top_in);
    std::sort(heights.begin(), heights.end());
    for (const double height_in : heights)
        if (rows.empty() || height_in - rows.back() >= one_row_in) rows.push_back(height_in);
    return rows;
}

std::optional<RowHeights> widest_rows(const BaseDetail& detail, double diameter_in) {
    if (!is_on_side(detail)) return std::nullopt;
    const std::optional<model::Member> member = model::side_member(detail);
    if (!member) return std::nullopt;
    constexpr double diameters = 4.0, quarters = 4.0;
    const double edge_in = diameters * diameter_in;
    const SideFastened& mount = on_side(detail);
    const double depth_in = model::holding_depth_in(mount, *member);
    // A bracket grows with its rows, and the post with the bracket.
    const double lowest_in = mount.bracket ? depth_in : std::min(depth_in, mount.post_bottom_below_top_in);
    RowHeights rows{std::ceil(edge_in * quarters - 1e-9) / quarters,
                    std::floor((lowest_in - edge_in) * quarters + 1e-9) / quarters};
    if (mount.bracket) rows.lower_in = std::min(rows.lower_in, rows.upper_in + most_apart_on_metal_in);
    if (rows.lower_in - rows.upper_in < least_apart_in) return std::nullopt;
    return rows;
}

Applied set_rows(BaseDetail& detail, const RowHeights& rows) {
    if (!is_on_side(detail)) return not_on_side();
    const std::vector<double> now = side_rows(detail);
    if (now.size() < 2) return refused(phrase("one row of fasteners holds the post"));
    const RowHeights before{now.front(), now.back()};
    if (!(rows.lower_in > rows.upper_in)) return refused(phrase("the rows of fasteners would meet"));
    SideFastened& mount = on_side(detail);
    for (SidePlace& place : mount.places) place.below_top_in = moved_in(place.below_top_in, before, rows);
    for (model::TensionTie& tie : mount.ties) {
        const bool at_row = std::any_of(
            now.begin(), now.end(), [&tie](double row_in) { return std::abs(row_in - tie.below_top_in) < one_row_in; });
        if (at_row) tie.below_top_in = moved_in(tie.below_top_in, before, rows);
    }
    move_bracket(mount, before, rows);
    return {};
}

Applied add_row(BaseDetail& detail, double below_top_in) {
    if (!is_on_side(detail)) return not_on_side();
    if (side_rows(detail).size() != 1) return refused(phrase("more than one row of fasteners holds the post"));
    SideFastened& mount = on_side(detail);
    if (std::abs(mount.places.front().below_top_in - below_top_in) < least_apart_in)
        return refused(phrase("the rows of fasteners would be too close"));
    const std::vector<SidePlace> before = mount.places;
    for (const SidePlace& place : before) {
        SidePlace added{free_place_id(mount), place.x_in, below_top_in};
        for (model::AnchorGroup& group : mount.anchors) {
            const bool named = std::find(group.holes.begin(), group.holes.end(), place.id) != group.holes.end();
            if (named) group.holes.push_back(added.id);
        }
        mount.places.push_back(std::move(added));
    }
    return {};
}

Applied set_post_bottom(BaseDetail& detail, double below_top_in) {
    if (!is_on_side(detail)) return not_on_side();
    const std::vector<double> rows = side_rows(detail);
    if (!rows.empty() && below_top_in <= rows.back())
        return refused(phrase("the post would end above its lowest fastener"));
    on_side(detail).post_bottom_below_top_in = below_top_in;
    return {};
}

}  // namespace toehold::search
