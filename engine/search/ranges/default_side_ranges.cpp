// What a builder would try first of a post on a member's side (common practice): a second piece and a block behind it,
// the post one size larger and down to the member's lower edge, common bolts as far apart as their edge distances
// allow, plates for washers, ties.
#include "search/changes/anchors.h"
#include "search/changes/side_wood.h"
#include "search/ranges/axes.h"

#include "model/side_geometry.h"

#include <algorithm>
#include <cmath>

namespace toehold::search {
namespace {

constexpr double tried_hardware_lb = 1600.0, tried_tie_lb = 1800.0;

template <class Value>
void add_if_new(std::vector<Value>& all, const Value& value) {
    if (std::find(all.begin(), all.end(), value) == all.end()) all.push_back(value);
}

bool runs_joists(const model::Framing& framing, model::PlanAxis along) {
    return framing.joists && framing.joists->along == along && !framing.joists->members.empty();
}

void set_member(const catalog::Resolved& base, const catalog::Catalog& catalog, Ranges& ranges) {
    const model::Framing& framing = base.detail.framing;
    const std::optional<model::Member> member = model::side_member(base.detail);
    if (!member || member->kind == model::MemberKind::block) return;
    constexpr int most_tried = 3;
    for (int plies = member->plies; plies <= std::min(member->plies + 1, most_tried); ++plies)
        ranges.side.plies.push_back(plies);
    const bool outside = on_side(base.detail).face == model::MemberFace::outside;
    if (member->kind == model::MemberKind::rim && runs_joists(framing, model::PlanAxis::y)) {
        ranges.side.rim_ends_lb = {0.0, tried_hardware_lb};
        if (!outside) return;  // behind it the deck ends
        const std::vector<Lumber> sizes = sizes_on_edge(framing, catalog, member->depth_in);
        if (!sizes.empty() && sizes.back().width_in <= member->depth_in) ranges.side.behind = {"", sizes.back().size};
    }
    if (member->kind == model::MemberKind::joist && !framing.joists->size.empty())
        ranges.side.next_joist = {"", framing.joists->size};
}

void set_post(const catalog::Resolved& base, const catalog::Catalog& catalog, Ranges& ranges) {
    const auto* const post = std::get_if<model::WoodPost>(&base.detail.post);
    if (post != nullptr) {
        const double area_in2 = post->width_in * post->depth_in;
        for (const std::string& size : post_sizes(base.detail, catalog)) {
            const Lumber section = lumber(size).value();
            if (section.thickness_in * section.width_in >= area_in2 - 0.01) ranges.side.post_sizes.push_back(size);
        }
        ranges.side.heads = {{}, {HeadChoice::Kind::plate, 3.0, 0.25}};
    }
    const std::optional<model::Member> member = model::side_member(base.detail);
    const model::SideFastened& mount = on_side(base.detail);
    if (mount.notch) ranges.side.unnotched = {false, true};
    if (mount.bracket) {  // its post ends with it
        ranges.side.brackets_in = {mount.bracket->thickness_in};
        for (const double thickness_in : {0.375, 0.5}) add_if_new(ranges.side.brackets_in, thickness_in);
        std::sort(ranges.side.brackets_in.begin(), ranges.side.brackets_in.end());
        return;
    }
    ranges.side.post_bottoms_in = {mount.post_bottom_below_top_in};
    if (member && member->depth_in > mount.post_bottom_below_top_in)
        ranges.side.post_bottoms_in.push_back(member->depth_in);
}

/// Stainless where what it goes through is, for it rusts that otherwise.
std::string bolt_grade(const catalog::Resolved& base) {
    const bool wood = std::holds_alternative<model::WoodPost>(base.detail.post);
    return !wood && base.post_metal.kind == catalog::MetalKind::stainless_steel ? "f593-cw" : "a307";
}

void set_fasteners(const catalog::Resolved& base, const catalog::Catalog& catalog, Ranges& ranges) {
    const std::vector<double> now = side_rows(base.detail);
    if (now.size() > 1) ranges.side.heights.push_back({now.front(), now.back()});
    if (base.anchors.empty()) return;
    for (const catalog::Anchor& anchor : base.anchors)
        if (anchor.reported) return;  // nothing is known of its other sizes
    const std::string own = common_size(base.detail);
    if (!own.empty())
        ranges.anchors.push_back({own, base.anchors.front().bolt ? base.anchors.front().bolt->grade : ""});
    const std::string grade = bolt_grade(base);
    for (const AnchorChoice& choice : {AnchorChoice{"bolt-1/2", grade}, AnchorChoice{"bolt-5/8", grade}})
        if (fastener_size(catalog, choice.size, choice.grade)) add_if_new(ranges.anchors, choice);
    for (const AnchorChoice& choice : ranges.anchors) {
        const std::optional<FastenerSize> size = fastener_size(catalog, choice.size, choice.grade);
        const auto widest = size ? widest_rows(base.detail, size->diameter_in) : std::nullopt;
        if (widest && now.size() > 1) add_if_new(ranges.side.heights, *widest);
    }
    for (const catalog::Anchor& anchor : base.anchors)
        if (anchor.kind != catalog::FastenerKind::through_bolt) add_if_new(ranges.lengths_in, anchor.length_in);
    ranges.backings = {{BackingChoice::Kind::wide_washer}, {BackingChoice::Kind::plate, 3.0, 0.25}};
}

}  // namespace

Ranges default_side_ranges(const catalog::Resolved& base, const catalog::Catalog& catalog) {
    Ranges ranges;
    set_member(base, catalog, ranges);
    set_post(base, catalog, ranges);
    set_fasteners(base, catalog, ranges);
    const model::SideFastened& mount = on_side(base.detail);
    if (mount.face == model::MemberFace::outside && mount.ties.empty() && !mount.places.empty() &&
        runs_joists(base.detail.framing, model::PlanAxis::y))
        ranges.side.ties_lb = {0.0, tried_tie_lb};
    if (!base.detail.framing.blocks.empty())
        ranges.ends = {{EndChoice::Kind::as_is}, {EndChoice::Kind::hardware, tried_hardware_lb}};
    return ranges;
}

}  // namespace toehold::search
