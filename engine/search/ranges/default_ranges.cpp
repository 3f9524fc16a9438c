// What a shop would try first (common practice): plates little larger than the post up to twice that, common lags and
// bolts, blocks on edge or flat, the ends as they are, on bolted angles or in hardware.
#include "model/lumber_size.h"
#include "model/placement.h"
#include "search/changes/anchors.h"
#include "search/changes/blocks.h"
#include "search/ranges/axes.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace toehold::search {
namespace {

using model::PlanAxis;

template <class Value>
void add_new(std::vector<Value>& all, const Value& value) {
    if (std::find(all.begin(), all.end(), value) == all.end()) all.push_back(value);
}

std::vector<PlateChoice> plates_for(const model::BaseDetail& detail) {
    constexpr double beside_post_in = 2.0, deeper_by_in = 2.0, largest_in = 12.0;
    constexpr int squares = 5, deeper = 3;
    const model::Footprint foot = model::footprint(detail.post);
    const double width_in = std::ceil(foot.width_in + beside_post_in);
    const double depth_in = std::ceil(foot.depth_in + beside_post_in);
    std::vector<PlateChoice> all;
    const model::Outline& outline = on_deck(detail).plate.outline;
    if (std::holds_alternative<model::RectangleOutline>(outline))
        all.emplace_back(PlateSize{extent_in(outline, PlanAxis::x), extent_in(outline, PlanAxis::y)});
    for (int step = 0; step < squares; ++step) {
        const PlateSize size{width_in + step, depth_in + step};
        if (std::max(size.width_in, size.depth_in) <= largest_in) add_new<PlateChoice>(all, size);
        if (step >= deeper) continue;
        const PlateSize longer{size.width_in, size.depth_in + deeper_by_in};
        if (longer.depth_in <= largest_in) add_new<PlateChoice>(all, longer);
    }
    return all;
}

std::vector<double> thicknesses_for(const catalog::Resolved& base) {
    std::vector<double> all{on_deck(base.detail).plate.thickness_in};
    const bool aluminum = on_deck(base).plate_metal.kind == catalog::MetalKind::aluminum;
    for (const double thickness_in : aluminum ? std::array{0.5, 0.625, 0.75} : std::array{0.375, 0.5, 0.625})
        add_new(all, thickness_in);
    std::sort(all.begin(), all.end());
    return all;
}

/// Stainless where the plate is, for what is bolted to it rusts it otherwise.
std::string common_grade(const catalog::Resolved& base) {
    return on_deck(base).plate_metal.kind == catalog::MetalKind::stainless_steel ? "f593-cw" : "a307";
}

void set_anchors_for(const catalog::Resolved& base, const catalog::Catalog& catalog, Ranges& ranges) {
    for (const catalog::Anchor& anchor : base.anchors) {
        if (anchor.reported) return;  // nothing is known of its other sizes
    }
    const std::string own = common_size(base.detail);
    if (!own.empty())
        ranges.anchors.push_back({own, base.anchors.front().bolt ? base.anchors.front().bolt->grade : ""});
    const std::string grade = common_grade(base);
    for (const AnchorChoice& choice : {AnchorChoice{"lag-3/8", ""}, AnchorChoice{"lag-1/2", ""},
                                       AnchorChoice{"bolt-3/8", grade}, AnchorChoice{"bolt-1/2", grade}}) {
        if (fastener_size(catalog, choice.size, choice.grade)) add_new(ranges.anchors, choice);
    }
    for (const catalog::Anchor& anchor : base.anchors) {
        const bool screw = anchor.kind == catalog::FastenerKind::lag_screw;
        if (screw) add_new(ranges.lengths_in, anchor.length_in);
    }
    for (const double length_in : {6.0, 8.0}) add_new(ranges.lengths_in, length_in);
    std::sort(ranges.lengths_in.begin(), ranges.lengths_in.end());
    ranges.washers = {WasherChoice::wide};
    ranges.backings = {{BackingChoice::Kind::wide_washer}, {BackingChoice::Kind::plate, 3.0, 0.25}};
}

/// The two deepest sizes that go between the joists on edge, deepest last, in the grade there is.
std::vector<std::string> sizes_for(const model::Framing& framing, const catalog::Catalog& catalog) {
    constexpr double deepest_in = 24.0;
    std::vector<std::string> fitting;
    for (const Lumber& size : sizes_on_edge(framing, catalog, deepest_in)) fitting.push_back(size.size);
    constexpr std::size_t most = 2;
    if (fitting.size() > most) fitting.erase(fitting.begin(), fitting.end() - most);
    return fitting;
}

void set_framing_for(const catalog::Resolved& base, const catalog::Catalog& catalog, Ranges& ranges) {
    const model::Framing& framing = base.detail.framing;
    if (framing.blocks.empty() && !framing.joists) return;
    ranges.block_sizes = sizes_for(framing, catalog);
    if (!framing.blocks.empty()) ranges.blocks.push_back(BlockArrangement::as_is);
    if (!ranges.block_sizes.empty())
        for (const BlockArrangement one : {BlockArrangement::upright_rows, BlockArrangement::flat_under_all})
            ranges.blocks.push_back(one);
    constexpr double usual_lb = 1600.0;
    const bool fastened = std::any_of(framing.blocks.begin(), framing.blocks.end(), [](const model::Block& block) {
        return block.from_end.connection.index() != 0 || block.to_end.connection.index() != 0;
    });
    if (fastened) ranges.ends.push_back({});
    ranges.ends.push_back({EndChoice::Kind::bolted_angles});
    ranges.ends.push_back({EndChoice::Kind::hardware, usual_lb});
}

}  // namespace

Ranges default_ranges(const catalog::Resolved& base, const catalog::Catalog& catalog) {
    if (kind(base.detail.mount) == model::MountKind::side_fastened) return default_side_ranges(base, catalog);
    Ranges ranges;
    ranges.plates = plates_for(base.detail);
    ranges.thicknesses_in = thicknesses_for(base);
    for (const double edge_in : {1.125, 1.5}) {
        Pattern pattern;
        pattern.edge_in = edge_in;
        ranges.patterns.push_back(pattern);
    }
    set_anchors_for(base, catalog, ranges);
    set_framing_for(base, catalog, ranges);
    return ranges;
}

}  // namespace toehold::search
