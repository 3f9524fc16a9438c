#include "search/pareto/pareto.h"
#include "search/run/parallel.h"
#include "search/run/run.h"
#include "search/score/robustness.h"

#include <algorithm>
#include <stdexcept>
#include <utility>

namespace toehold::search {
namespace {

catalog::Resolved resolved_again(const model::BaseDetail& detail, const catalog::Catalog& catalog) {
    catalog::Resolution resolution = catalog::resolve(detail, catalog);
    if (!resolution.resolved) throw std::runtime_error("a candidate that holds names what no catalog knows");
    return std::move(*resolution.resolved);
}

Result result_of(const Space& space, const catalog::Catalog& catalog, const Judgement& judgement) {
    std::optional<model::BaseDetail> detail = detail_of(space, judgement.candidate);
    if (!detail) throw std::runtime_error("a candidate that holds is none of this space");
    // Complete by itself, wherever it is kept.
    if (auto* const mount = std::get_if<model::PlateOnDeck>(&detail->mount)) mount->plate_reference.reset();
    const Score scored = score(resolved_again(*detail, catalog), catalog.prices, judgement.ratio);
    return {judgement.candidate, std::move(*detail), scored};
}

void misplace(std::vector<Result>& front, const catalog::Catalog& catalog, const RunOptions& options) {
    const std::size_t count = std::min(front.size(), options.most_misplaced);
    // Not stopped in between: each asks by itself, and says by its absent ratio that it was.
    for_each_index(count, {options.jobs, nullptr, nullptr}, [&](std::size_t index, demand::Kept& /*none is alike*/) {
        Result& result = front[index];
        result.score.robustness_ratio = robustness_ratio(resolved_again(result.detail, catalog), catalog, options.stop);
    });
}

}  // namespace

Outcome conclude(const Space& space, const catalog::Catalog& catalog, const Judged& judged, const RunOptions& options) {
    Outcome outcome;
    outcome.counts = judged.counts();
    outcome.stopped = outcome.counts.left() > 0;
    const std::vector<Judgement> all = judged.sorted();
    for (const Judgement& judgement : all) {
        if (judgement.holds) {
            outcome.holding.push_back(result_of(space, catalog, judgement));
        } else {
            ++outcome.limits[judgement.limit];
        }
    }
    outcome.clashes = clashes(space, catalog, judged, all);
    for (const std::size_t place : front_of(outcome.holding)) outcome.front.push_back(outcome.holding[place]);
    misplace(outcome.front, catalog, options);
    if (outcome.holding.empty()) outcome.nearest = nearest_miss(space, catalog, all, options.stop);
    return outcome;
}

}  // namespace toehold::search
