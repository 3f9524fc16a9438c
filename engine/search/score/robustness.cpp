#include "search/score/robustness.h"

#include "model/validate.h"
#include "review/review.h"
#include "search/changes/rows.h"

#include <algorithm>
#include <limits>

namespace toehold::search {
namespace {

using model::BaseDetail;

void add_if_valid(std::vector<BaseDetail>& all, BaseDetail detail) {
    if (model::validate(detail).empty()) all.push_back(std::move(detail));
}

/// Along the rail, and up the face.
BaseDetail with_places_off(BaseDetail detail, double x_in, double up_in) {
    for (model::SidePlace& place : on_side(detail).places) {
        place.x_in += x_in;
        place.below_top_in -= up_in;
    }
    for (model::TensionTie& tie : on_side(detail).ties) {
        if (tie.bolt.empty()) continue;  // it goes with its bolt
        tie.x_in += x_in;
        tie.below_top_in -= up_in;
    }
    return detail;
}

/// Along the rail, and square to it: outward, or up a face.
BaseDetail with_holes_off(BaseDetail detail, double x_in, double y_in) {
    if (kind(detail.mount) == model::MountKind::side_fastened) return with_places_off(std::move(detail), x_in, y_in);
    for (model::Hole& hole : on_deck(detail).plate.holes) {
        hole.center.x_in += x_in;
        hole.center.y_in += y_in;
    }
    on_deck(detail).plate_reference.reset();
    return detail;
}

BaseDetail with_blocks_off(BaseDetail detail, double across_in) {
    for (model::Block& block : detail.framing.blocks) block.across_in += across_in;
    return detail;
}

/// Infinite where it does not hold, and no ratio says by how much.
double ratio_of(const review::Review& review) {
    const bool by_ratio_alone = review.facts.counts.findings_fail == 0 && review.facts.counts.not_specified == 0;
    if (review.verdict == review::Verdict::adequate) return review.governing.ratio;
    double worst = review.governing.ratio;
    for (const checks::CheckResult& result : review.checks) worst = std::max(worst, result.ratio);
    return by_ratio_alone && worst > 1.0 ? worst : std::numeric_limits<double>::infinity();
}

}  // namespace

std::vector<BaseDetail> misplaced(const BaseDetail& detail) {
    std::vector<BaseDetail> all;
    for (const double sign : {1.0, -1.0}) add_if_valid(all, with_holes_off(detail, sign * hole_misplaced_in, 0.0));
    for (const double sign : {1.0, -1.0}) add_if_valid(all, with_holes_off(detail, 0.0, sign * hole_misplaced_in));
    if (detail.framing.blocks.empty()) return all;
    for (const double sign : {1.0, -1.0}) {
        BaseDetail off = with_blocks_off(detail, sign * block_misplaced_in);
        if (blocks_fit(off.framing)) add_if_valid(all, std::move(off));
    }
    return all;
}

std::optional<double> robustness_ratio(const catalog::Resolved& resolved, const catalog::Catalog& catalog,
                                       const std::function<bool()>& stop) {
    double worst = 0.0;
    for (const BaseDetail& detail : misplaced(resolved.detail)) {
        if (stop && stop()) return std::nullopt;
        const catalog::Resolution resolution = catalog::resolve(detail, catalog);
        if (!resolution.resolved) return std::numeric_limits<double>::infinity();
        worst = std::max(worst, ratio_of(review::evaluate(*resolution.resolved, {})));
    }
    return worst;
}

}  // namespace toehold::search
