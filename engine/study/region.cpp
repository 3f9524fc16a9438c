#include "study/region.h"

#include "checks/registry.h"
#include "model/validate.h"
#include "review/first_failure.h"
#include "search/run/parallel.h"
#include "study/refined_grid.h"

#include <atomic>
#include <set>

namespace toehold::study {
namespace {

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

NodeAnswer answer_of(const Judged& judged, bool confirmed) {
    if (!judged.known()) return not_possible(judged.refusal);
    NodeAnswer answer;
    answer.holds = judged.holds();
    answer.confirmed = confirmed;
    answer.ratio = judged.ratio();
    answer.limit = judged.limit;
    return answer;
}

/// By a few states: what fails under them for certain needs no more; all else is provisional.
NodeAnswer probed(const catalog::Resolved& resolved, demand::Kept& kept) {
    demand::Outcome outcome = demand::find_demand(resolved, demand::Sampling::probe(), &kept);
    const bool fails = outcome.overturns ||
                       (outcome.demand && review::first_failure(resolved, *outcome.demand, review::States::sampled));
    NodeAnswer answer = answer_of(judge(resolved, std::move(outcome)), fails);
    // Under its few states alone a check may not see why it fails for certain.
    if (fails) answer.holds = false;
    return answer;
}

class RegionSearch {
  public:
    RegionSearch(const Subject& subject, const Reach& reach, const RegionRun& run)
        : subject_(subject), reach_(reach), run_(run), grid_(reach) {}

    Region found() {
        if (to_the_border(false) && run_.confirm) {
            grid_.restart();
            done_ = to_the_border(true);
        }
        Region region = shown();
        region.stopped = stopped_;
        if (done_ && run_.better) run_.better(region);
        return region;
    }

  private:
    /// Answers the grid's nodes and refines it until the border stands; false: stopped.
    bool to_the_border(bool confirmed) {
        do {
            if (!answer_all(confirmed)) return false;
            if (run_.better && !confirmed) run_.better(shown());
        } while (grid_.refine());
        return true;
    }

    bool answer_all(bool confirmed) {
        const std::vector<GridNode> nodes = grid_.unanswered();
        std::vector<NodeAnswer> answers(nodes.size());
        const bool all = search::for_each_index(
            nodes.size(), {run_.jobs, run_.stop, nullptr},
            [&](std::size_t index, demand::Kept& kept) { answers[index] = asked(nodes[index], confirmed, kept); });
        if (!all) {
            stopped_ = true;
            return false;
        }
        for (std::size_t index = 0; index < nodes.size(); ++index) {
            if (!answers[index].confirmed) to_confirm_.insert(nodes[index]);
            grid_.answer(nodes[index], std::move(answers[index]));
        }
        return true;
    }

    [[nodiscard]] NodeAnswer asked(GridNode node, bool confirmed, demand::Kept& kept) {
        const Made made = reach_.set(subject_.resolved.detail, grid_.place(node));
        if (!made.detail) return not_possible(made.refusal);
        const model::Problems problems = model::validate(*made.detail);
        if (!problems.empty()) return not_possible(problems.front().message);
        const catalog::Resolution resolution = catalog::resolve(*made.detail, subject_.catalog);
        if (!resolution.resolved) return not_possible(resolution.problems.front().message);
        if (std::optional<Limit> rule = forbidden_by_rule(*resolution.resolved)) return fails_by(std::move(*rule));
        if (!to_confirm_.contains(node)) {
            ++probed_;
            NodeAnswer answer = probed(*resolution.resolved, kept);
            if (!confirmed) return answer;
            answer.ratio.reset();
            if (answer.confirmed) return answer;
        }
        ++confirmed_;
        return answer_of(judge(*resolution.resolved, &kept), true);
    }

    [[nodiscard]] Region shown() const {
        Region region = grid_.region();
        region.provisional = !done_;
        region.probed = probed_;
        region.confirmed = confirmed_;
        return region;
    }

    Subject subject_;
    const Reach& reach_;
    const RegionRun& run_;
    RefinedGrid grid_;
    std::set<GridNode> to_confirm_;  ///< a probe does not decide them
    bool done_ = false, stopped_ = false;
    std::atomic<std::size_t> probed_{0}, confirmed_{0};
};

}  // namespace

Region find_region(const Subject& subject, const Reach& reach, const RegionRun& run) {
    return RegionSearch(subject, reach, run).found();
}

}  // namespace toehold::study
