#include "study/region.h"

#include "checks/registry.h"
#include "model/validate.h"
#include "review/first_failure.h"
#include "search/run/parallel.h"
#include "study/refined_grid.h"

#include <chrono>
#include <mutex>
#include <utility>

namespace toehold::study {
namespace {

using Clock = std::chrono::steady_clock;
constexpr std::chrono::milliseconds between_answers{100};

/// A rule that forbids the detail whatever the demand; absent: none does.
std::optional<Limit> forbidden_by_rule(const catalog::Resolved& resolved) {
    for (const checks::FindingRule& rule : checks::registered_findings()) {
        if (!rule.function) continue;
        for (const checks::Finding& finding : checks::run(rule, resolved)) {
            if (finding.severity != checks::Severity::caution) return Limit{rule.id, rule.title, finding.part};
        }
    }
    return std::nullopt;
}

NodeAnswer fails_by(Limit limit) {
    NodeAnswer answer;
    answer.confirmed = true;
    answer.limit = std::move(limit);
    return answer;
}

NodeAnswer not_possible(format::Phrase why) { return fails_by({"not-possible", std::move(why), {}}); }

Limit limit_of(const review::FirstFailure& failure) {
    for (const checks::Check& check : checks::registered_checks()) {
        if (check.id == failure.check) return {check.id, check.title, failure.part};
    }
    return {failure.check, format::verbatim(failure.check), failure.part};
}

NodeAnswer confirmed_by(const Judged& judged) {
    if (!judged.known()) return not_possible(judged.refusal);
    NodeAnswer answer;
    answer.holds = judged.holds();
    answer.confirmed = true;
    answer.ratio = judged.ratio();
    answer.limit = judged.limit;
    return answer;
}

/// By a few states: what fails under them for certain needs no more; all else is provisional. No check is run after
/// the first that fails, so there is no governing ratio.
NodeAnswer probed(const catalog::Resolved& resolved, demand::Kept& kept) {
    const demand::Outcome outcome = demand::find_demand(resolved, demand::Sampling::probe(), &kept);
    if (outcome.overturns) return fails_by({"no-equilibrium", format::phrase("No equilibrium"), {}});
    if (!outcome.demand) return not_possible(outcome.failure);
    checks::Prepared prepared;
    if (const auto surely = review::first_failure(resolved, *outcome.demand, review::States::sampled, &prepared))
        return fails_by(limit_of(*surely));
    NodeAnswer answer;
    const auto perhaps = review::first_failure(resolved, *outcome.demand, review::States::all, &prepared);
    answer.holds = !perhaps;
    if (perhaps) answer.limit = limit_of(*perhaps);
    return answer;
}

}  // namespace

struct RegionSearch::State {
    catalog::Resolved resolved;
    const catalog::Catalog& catalog;
    Reach reach;
    /// What a probe leaves open, corrected where the whole engine has answered; and what is certain alone.
    RefinedGrid open, certain;
    std::size_t steps_done = 0;
    std::vector<demand::Kept> kept = {};  ///< one for each thread
    std::size_t probed = 0, confirmed = 0;
    bool told = false;
    Clock::time_point told_at = {};

    /// Every answer, whichever thread it comes from.
    std::mutex answering = {};

    /// In this order: there is soon something to show, and soon something certain.
    static constexpr std::size_t all_steps = 4;
    bool step(const RegionRun& run);
    [[nodiscard]] bool done() const { return steps_done == all_steps; }
    bool to_the_border(RefinedGrid& grid, const RegionRun& run);
    bool answer_all(RefinedGrid& grid, const RegionRun& run);
    void take(RefinedGrid& grid, GridNode node, const NodeAnswer& answer, const RegionRun& run);
    void tell(const RegionRun& run);
    [[nodiscard]] bool is_probed(GridNode node);
    [[nodiscard]] NodeAnswer asked(GridNode node, bool for_certain, demand::Kept& own);
    [[nodiscard]] NodeAnswer solved(GridNode node, const catalog::Resolved& there, bool for_certain, demand::Kept& own);
    [[nodiscard]] Region shown() const;
};

bool RegionSearch::State::step(const RegionRun& run) {
    switch (steps_done) {
        case 0:
            return answer_all(open, run);
        case 1:
            return answer_all(certain, run);
        case 2:
            return to_the_border(open, run);
        default:
            return to_the_border(certain, run);
    }
}

/// Answers the grid's nodes and refines it until its border stands; false: stopped.
bool RegionSearch::State::to_the_border(RefinedGrid& grid, const RegionRun& run) {
    do {
        if (!answer_all(grid, run)) return false;
    } while (grid.refine());
    return true;
}

bool RegionSearch::State::answer_all(RefinedGrid& grid, const RegionRun& run) {
    const std::vector<GridNode> nodes = grid.unanswered();
    return search::for_each_index(nodes.size(), {run.jobs, run.stop, nullptr}, kept,
                                  [&](std::size_t index, demand::Kept& own) {
                                      const NodeAnswer answer = asked(nodes[index], &grid == &certain, own);
                                      take(grid, nodes[index], answer, run);
                                  });
}

void RegionSearch::State::take(RefinedGrid& grid, GridNode node, const NodeAnswer& answer, const RegionRun& run) {
    const std::lock_guard lock(answering);
    if (answer.confirmed) {
        open.answer(node, answer);
        certain.answer(node, answer);
    } else {
        grid.answer(node, answer);
    }
    if (run.better && Clock::now() - told_at >= between_answers) tell(run);
}

void RegionSearch::State::tell(const RegionRun& run) {
    const Region region = shown();
    if (!told && region.likely.empty() && region.holds.empty()) return;
    told = true;
    run.better(region);
    told_at = Clock::now();
}

bool RegionSearch::State::is_probed(GridNode node) {
    const std::lock_guard lock(answering);
    return open.answer(node) != nullptr;
}

NodeAnswer RegionSearch::State::asked(GridNode node, bool for_certain, demand::Kept& own) {
    const Made made = reach.set(resolved.detail, open.place(node));
    if (!made.detail) return not_possible(made.refusal);
    const model::Problems problems = model::validate(*made.detail);
    if (!problems.empty()) return not_possible(problems.front().message);
    const catalog::Resolution resolution = catalog::resolve(*made.detail, catalog);
    if (!resolution.resolved) return not_possible(resolution.problems.front().message);
    if (std::optional<Limit> rule = forbidden_by_rule(*resolution.resolved)) return fails_by(std::move(*rule));
    return solved(node, *resolution.resolved, for_certain, own);
}

NodeAnswer RegionSearch::State::solved(GridNode node, const catalog::Resolved& there, bool for_certain,
                                       demand::Kept& own) {
    if (!is_probed(node)) {
        NodeAnswer answer = study::probed(there, own);
        const std::lock_guard lock(answering);
        ++probed;
        if (!for_certain || answer.confirmed) return answer;
    }
    NodeAnswer answer = confirmed_by(judge(there, &own));
    const std::lock_guard lock(answering);
    ++confirmed;
    return answer;
}

Region RegionSearch::State::shown() const {
    Region region = done() ? certain.region() : open.region();
    region.provisional = !done();
    region.probed = probed;
    region.confirmed = confirmed;
    if (region.holds.empty() && region.likely.empty()) region.stops_most = open.most_often();
    return region;
}

RegionSearch::RegionSearch(catalog::Resolved resolved, const catalog::Catalog& catalog, const Reach& reach)
    : state_(new State{std::move(resolved), catalog, reach, RefinedGrid(reach), RefinedGrid(reach)}) {}
RegionSearch::~RegionSearch() = default;
RegionSearch::RegionSearch(RegionSearch&&) noexcept = default;
RegionSearch& RegionSearch::operator=(RegionSearch&&) noexcept = default;

bool RegionSearch::is_of(const model::BaseDetail& detail) const {
    const Reach& reach = state_->reach;
    const Made own = reach.set(state_->resolved.detail, reach.now), other = reach.set(detail, reach.now);
    return own.detail && other.detail && *own.detail == *other.detail;
}

Region RegionSearch::go_on(const RegionRun& run) {
    State& state = *state_;
    if (run.better && state.told && !state.done()) run.better(state.shown());
    while (!state.done() && state.step(run)) ++state.steps_done;
    Region region = state.shown();
    region.stopped = !state.done();
    if (run.better && !region.stopped) run.better(region);
    return region;
}

Region find_region(const Subject& subject, const Reach& reach, const RegionRun& run) {
    return RegionSearch(subject.resolved, subject.catalog, reach).go_on(run);
}

}  // namespace toehold::study
