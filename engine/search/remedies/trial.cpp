#include "search/remedies/trial.h"

#include "demand/demand.h"
#include "search/judge/judge.h"
#include "search/nearest/bears_on.h"
#include "search/score/score.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace toehold::search {
namespace {

using format::Phrase;
using format::phrase;

void add_limit(Trial& trial, const std::string& id) {
    if (std::find(trial.limits.begin(), trial.limits.end(), id) == trial.limits.end()) trial.limits.push_back(id);
}

}  // namespace

std::optional<Trial> changed(const catalog::Resolved& original, const std::vector<Change>& menu,
                             const std::vector<std::size_t>& changes, const catalog::Catalog& catalog) {
    model::BaseDetail detail = original.detail;
    for (const std::size_t change : changes) {
        if (!menu[change].apply(detail)) return std::nullopt;
    }
    std::optional<catalog::Resolved> resolved = sound(detail, catalog);
    if (!resolved) return std::nullopt;
    Trial trial;
    trial.changes = changes;
    trial.resolved = std::move(*resolved);
    trial.cost = score(trial.resolved, catalog.prices, 0.0).steel_cost;
    return trial;
}

void note_failures(Trial& trial, const review::Review& review) {
    trial.failing = review.facts.counts.failing() + review.facts.counts.findings_fail;
    trial.worst = 0.0;
    trial.limits.clear();
    for (const checks::CheckResult& result : review.checks) {
        if (result.status != checks::Status::fails && result.status != checks::Status::no_path) continue;
        trial.worst = std::max(trial.worst, result.ratio);
        add_limit(trial, result.id);
    }
    for (const checks::Finding& finding : review.findings) {
        if (finding.severity == checks::Severity::fails) add_limit(trial, finding.id);
    }
    trial.first = review.facts.first_cause ? review.facts.first_cause->check
                  : trial.limits.empty()   ? std::string()
                                           : trial.limits.front();
    // A push that nothing balances hides every check behind it.
    if (!review.demand) trial.worst = std::numeric_limits<double>::infinity();
}

void probe(Trial& trial, demand::Kept& kept) {
    const std::optional<model::PlateBehaviour> asked = trial.resolved.detail.basis.plate;
    std::vector<std::optional<model::PlateBehaviour>> tried{asked};
    if (kind(trial.resolved.detail.mount) == model::MountKind::plate_on_deck)
        tried.insert(tried.begin(), model::PlateBehaviour::rigid);
    for (const std::optional<model::PlateBehaviour>& plate : tried) {
        trial.resolved.detail.basis.plate = plate;
        demand::Outcome outcome = demand::find_demand(trial.resolved, demand::Sampling::probe(), &kept);
        const bool answered = outcome.demand || outcome.overturns;
        trial.failing = std::numeric_limits<std::size_t>::max();
        if (answered)
            note_failures(trial, review::evaluate(trial.resolved, std::move(outcome), {}, checks::Asked::failures));
        if (!answered || trial.failing > 0) break;
    }
    trial.resolved.detail.basis.plate = asked;
}

bool bears_on(const Change& change, const std::string& limit, model::MountKind mount) {
    // Help from the framing beyond the blocks is for what blocks are changed for.
    const bool beyond = change.axis == "joists" || change.axis == "next-bay";
    const std::string_view axis = beyond ? std::string_view("blocks") : change.axis;
    const std::vector<std::string_view> axes = axes_on(limit, mount);
    return std::find(axes.begin(), axes.end(), axis) != axes.end();
}

Phrase words(const Trial& trial, const std::vector<Change>& menu) {
    const bool other_plate = std::any_of(trial.changes.begin(), trial.changes.end(),
                                         [&](std::size_t change) { return menu[change].axis == "plate"; });
    std::vector<Phrase> steps;
    for (const std::size_t change : trial.changes) {
        // Another plate's words name its thickness: one plate is bought, not two.
        if (other_plate && menu[change].axis == "thickness") continue;
        steps.push_back(menu[change].words(trial.resolved.detail));
    }
    if (steps.empty()) return {};
    if (steps.size() == 1) return steps[0];
    if (steps.size() == 2) return phrase("(1) {} (2) {}", steps[0], steps[1]);
    if (steps.size() == 3) return phrase("(1) {} (2) {} (3) {}", steps[0], steps[1], steps[2]);
    if (steps.size() == 4) return phrase("(1) {} (2) {} (3) {} (4) {}", steps[0], steps[1], steps[2], steps[3]);
    return phrase("(1) {} (2) {} (3) {} (4) {} (5) {}", steps[0], steps[1], steps[2], steps[3], steps[4]);
}

std::string id(const Trial& trial, const std::vector<Change>& menu) {
    std::string joined;
    for (const std::size_t change : trial.changes) joined += (joined.empty() ? "" : "+") + menu[change].id;
    return joined;
}

}  // namespace toehold::search
