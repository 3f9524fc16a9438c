#include "review/assumptions.h"

#include "checks/registry.h"
#include "review/verdict.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <functional>

namespace toehold::review {
namespace {

using BasisChange = std::function<void(model::Basis&)>;

/// The worst strength that has a finite ratio: the one a factor can move.
const checks::CheckResult* worst_with_ratio(const std::vector<checks::CheckResult>& results) {
    const checks::CheckResult* worst = nullptr;
    for (const checks::CheckResult& result : results) {
        const bool counts =
            result.status != checks::Status::missing_evidence && std::isfinite(result.ratio) && !is_dimension(result);
        if (counts && (worst == nullptr || result.ratio > worst->ratio)) worst = &result;
    }
    return worst;
}

long failing(const std::vector<checks::CheckResult>& results) {
    return std::count_if(results.begin(), results.end(), [](const checks::CheckResult& result) {
        return result.status == checks::Status::fails || result.status == checks::Status::no_path;
    });
}

class Alternatives {
  public:
    Alternatives(const catalog::Resolved& resolved, const demand::Demand& demand,
                 const std::vector<checks::CheckResult>& results, const Stop& stop)
        : resolved_(resolved), demand_(demand), results_(results), stop_(stop) {}

    /// What the change would give, in one clause.
    [[nodiscard]] std::string with(const std::string& choice, const BasisChange& change) const {
        if (stop_ && stop_()) return {};
        catalog::Resolved changed = resolved_;
        change(changed.detail.basis);
        const std::vector<checks::CheckResult> others = run_checks(changed, demand_);
        const checks::CheckResult* before = worst_with_ratio(results_);
        const checks::CheckResult* after = worst_with_ratio(others);
        if (before == nullptr || after == nullptr) return choice + ": no ratio to compare";
        const long failing_before = failing(results_), failing_after = failing(others);
        constexpr double shown = 0.005;  // ratios are printed to two decimals
        if (std::abs(after->ratio - before->ratio) < shown && failing_after == failing_before) {
            return choice + ": the largest ratio and the number of results that do not hold stay as they are";
        }
        return fmt::format(
            "{}: largest ratio {:.2f} ({}, {}) instead of {:.2f}; {} results would not hold instead of {}", choice,
            after->ratio, after->title, after->subject, before->ratio, failing_after, failing_before);
    }

  private:
    const catalog::Resolved& resolved_;
    const demand::Demand& demand_;
    const std::vector<checks::CheckResult>& results_;
    const Stop& stop_;
};

void add_strength_choices(std::vector<Assumption>& all, const model::Basis& basis, const Alternatives& alternatives) {
    if (basis.method == model::Method::asd && !basis.load_duration) {
        all.push_back(
            {"Load duration factor C_D = 1.0 for wood: the duration class of a guard's push is not settled by the "
             "code, "
             "and the file does not choose it (NDS 2018 2.3.2).",
             alternatives.with("C_D = 1.6 (ten-minute load)", [](model::Basis& b) { b.load_duration = 1.6; })});
    }
    if (basis.method == model::Method::lrfd && !basis.time_effect) {
        all.push_back({"Time effect factor lambda = 0.8 for wood, the file does not choose it (NDS 2018 Table N3).",
                       alternatives.with("lambda = 1.0", [](model::Basis& b) { b.time_effect = 1.0; })});
    }
    if (!basis.moisture) {
        all.push_back(
            {"Lumber is wet in service (above 19 %), the file does not say (NDS 2018 4.3.3, 11.3.3).",
             alternatives.with("dry in service", [](model::Basis& b) { b.moisture = model::Moisture::dry; })});
    }
    if (!basis.incised) {
        all.push_back({"Treated lumber is incised, the file does not say (NDS 2018 4.3.8).",
                       alternatives.with("not incised", [](model::Basis& b) { b.incised = false; })});
    }
    if (!basis.decking_in_shear) {
        all.push_back(
            {"Decking and shims are an empty gap for the anchors in shear, the file does not choose otherwise.",
             alternatives.with("wood decking counted as wood around the shank",
                               [](model::Basis& b) { b.decking_in_shear = model::DeckingInShear::bearing; })});
    }
    if (!basis.temperature) all.push_back({"Wood stays at or below 100 F in service (NDS 2018 2.3.3, 11.3.4).", ""});
}

}  // namespace

std::vector<checks::CheckResult> run_checks(const catalog::Resolved& resolved, const demand::Demand& demand) {
    std::vector<checks::CheckResult> results;
    for (const checks::Check& check : checks::registered_checks()) {
        for (checks::CheckResult& result : checks::run(check, {resolved, demand})) results.push_back(std::move(result));
    }
    sort_worst_first(results);
    return results;
}

std::vector<Assumption> assumptions(const catalog::Resolved& resolved, const demand::Demand& demand,
                                    const std::vector<checks::CheckResult>& results, const Stop& stop) {
    const model::BaseDetail& detail = resolved.detail;
    std::vector<Assumption> all;
    if (!detail.loads.stated) {
        all.push_back(
            {"The file states no load: 200 lb at the top of the guard is taken (IBC 2021 1607.9.1.1, IRC 2021 Table "
             "R301.5).",
             ""});
    }
    add_strength_choices(all, detail.basis, Alternatives(resolved, demand, results, stop));
    if (!detail.basis.code) {
        all.push_back({"The file names no building code: IBC 2021 is taken for what the guard must satisfy.", ""});
    }
    for (const format::Phrase& text : demand.assumptions) all.push_back({text, ""});
    all.push_back({"The tops of the blocks are tight against the underside of what lies on them.", ""});
    return all;
}

std::vector<std::string> cautions() {
    return {
        "Toehold is a design aid. Guards are life safety: a person falls when one fails.",
        "Local code and the authority having jurisdiction govern; where the law asks for sealed design, a licensed "
        "design "
        "professional must take responsibility for it.",
        "Results hold for the detail as described: sound lumber of the stated species and grade, pilot holes and "
        "fasteners "
        "as the standards ask, and work done as drawn.",
        "Values marked as from memory or as assumptions in the catalogs must be confirmed before they are relied on."};
}

}  // namespace toehold::review
