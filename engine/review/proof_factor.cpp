// The forces on anchors and bed grow in proportion to the push (contact without preload), what a check makes of them
// does not: torsion acts with the square of shear, the deck's own load does not grow at all. So the checks are run
// again under the grown load until the first stands at its limit.
#include "review/proof_factor.h"

#include "catalog/resolve.h"
#include "checks/registry.h"
#include "demand/by_duration.h"
#include "demand/in_proportion.h"
#include "demand/loads/code_loads.h"
#include "review/verdict.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <string>

namespace toehold::review {
namespace {

using demand::Demand;

bool is_strength(const checks::CheckResult& result) {
    return result.status != checks::Status::missing_evidence && !is_dimension(result);
}

/// One load case under a growing push, and what the checks found of it. Bed, anchors and framing answer in proportion;
/// only what acts along a joist together with the deck's own load does not.
class GrowingCase {
  public:
    GrowingCase(const catalog::Resolved& resolved, const Demand& all, std::size_t load_case)
        : resolved_(resolved), load_case_(load_case), base_(demand::without_states(all)) {
        const bool framed = all.framing && !all.framing->states.empty();
        for (std::size_t index = 0; index < all.states.size(); ++index) {
            if (all.states[index].load_case != load_case) continue;
            base_.states.push_back(all.states[index]);
            if (framed) base_.framing->states.push_back(all.framing->states[index]);
        }
    }

    /// The strength among these checks nearest its limit, or past it, under so many times the push; absent: none, or
    /// one that has no load path.
    [[nodiscard]] std::optional<checks::CheckResult> worst(const std::set<std::string>& ids, double factor) {
        if (base_.states.empty()) return std::nullopt;
        const Demand demand = demand::under_push(resolved_, base_, load_case_, factor);
        if (prepared_) {
            prepared_ = prepared_->grown(factor / factor_);
        } else {
            prepared_.emplace();
        }
        factor_ = factor;
        std::optional<checks::CheckResult> found;
        for (const checks::Check& check : checks::registered_checks()) {
            if (!ids.contains(check.id)) continue;
            for (checks::CheckResult& result : checks::run(check, {resolved_, demand, &*prepared_})) {
                if (!is_strength(result)) continue;
                if (!std::isfinite(result.ratio)) return std::nullopt;
                if (!found || result.ratio > found->ratio) found = std::move(result);
            }
        }
        return found;
    }

  private:
    const catalog::Resolved& resolved_;
    std::size_t load_case_;
    Demand base_;
    std::optional<checks::Prepared> prepared_;
    double factor_ = 1.0;
};

/// The checks that can be first to reach their limit: a ratio grows no faster than with the square of the load.
std::set<std::string> candidates(const std::vector<checks::CheckResult>& results) {
    double largest = 0.0;
    for (const checks::CheckResult& result : results) {
        if (is_strength(result)) largest = std::max(largest, result.ratio);
    }
    constexpr double for_certain = 0.8;
    const double least = for_certain * std::min(largest, largest * largest);
    std::set<std::string> ids;
    for (const checks::CheckResult& result : results) {
        if (is_strength(result) && result.ratio >= least) ids.insert(result.id);
    }
    return ids;
}

/// The ratio of the first strength under so many times the solved case.
struct Trial {
    double factor = 1.0, ratio = 0.0;
};

/// Where the line through both trials meets the limit: exact where the deck's own load stands beside the guard's. In
/// proportion to the last trial where there is no such line, or where it leads far from it.
double next_factor(const std::optional<Trial>& before, const Trial& now) {
    const double in_proportion = now.factor / now.ratio;
    if (!before) return in_proportion;
    const double slope = (now.ratio - before->ratio) / (now.factor - before->factor);
    if (!(slope > 0.0)) return in_proportion;
    const double on_line = now.factor + (1.0 - now.ratio) / slope;
    const bool near = on_line > 0.5 * now.factor && on_line < 2.0 * now.factor;
    return near ? on_line : in_proportion;
}

}  // namespace

std::optional<ProofFactor> proof_factor(const catalog::Resolved& resolved, const Demand& demand,
                                        const std::vector<checks::CheckResult>& results) {
    if (model::preloaded(resolved.detail) || demand.cases.empty()) return std::nullopt;
    const demand::LoadCase& code = demand.cases.front();
    const std::size_t solved = code.covered_by.value_or(0);
    const double of_solved = code.push_lb / demand.cases.at(solved).push_lb;
    constexpr int most_trials = 6;
    constexpr double close_enough = 0.005, most = 100.0, least = 0.01;
    const std::set<std::string> ids = candidates(results);
    GrowingCase growing(resolved, demand, solved);
    // A post that shares is reviewed for a part of the code's push: its factor counts on all of it.
    const std::optional<model::Sharing>& sharing = resolved.detail.loads.sharing;
    const double part_of_code = sharing ? sharing->factor : 1.0;
    std::optional<Trial> before;
    double factor = 1.0;  // of the solved case, whose framing is known
    for (int trial = 0; trial < most_trials; ++trial) {
        const std::optional<checks::CheckResult> first = growing.worst(ids, factor);
        if (!first || !(first->ratio > 0.0)) return std::nullopt;
        if (std::abs(first->ratio - 1.0) <= close_enough)
            return ProofFactor{factor / of_solved * part_of_code, demand::code_concentrated_lb, first->title,
                               first->part};
        const Trial now{factor, first->ratio};
        factor = next_factor(before, now);
        before = now;
        if (!(factor < most * of_solved) || !(factor > least * of_solved)) return std::nullopt;
    }
    return std::nullopt;
}

}  // namespace toehold::review
