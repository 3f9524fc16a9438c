#include "review/run_checks.h"

#include "catalog/resolve.h"
#include "checks/registry.h"
#include "demand/by_duration.h"
#include "review/verdict.h"

#include <map>
#include <string>
#include <tuple>
#include <utility>

namespace toehold::review {
namespace {

using checks::CheckResult;
using checks::Status;
using demand::LoadDuration;

/// The input is of the duration's loads; its basis is not yet.
std::vector<CheckResult> run_all(const checks::CheckInput& input, LoadDuration duration) {
    catalog::Resolved for_these = input.resolved;
    for_these.detail.basis = demand::for_duration(input.resolved.detail.basis, duration);
    std::vector<CheckResult> results;
    for (const checks::Check& check : checks::registered_checks()) {
        for (CheckResult& result : checks::run(check, {for_these, input.demand, input.prepared, input.asked}))
            results.push_back(std::move(result));
    }
    return results;
}

format::Phrase words(LoadDuration duration) {
    switch (duration) {
        case LoadDuration::guard_live:
            return format::phrase("the guard's load");
        case LoadDuration::wind:
            return format::phrase("wind, ten minutes");
        case LoadDuration::proof_test:
            break;
    }
    return format::phrase("the proof test");
}

/// What tells one result of a run from another: a check may have several on one part.
using Name = std::tuple<std::string, std::string, std::string, std::size_t>;

class WorstOfRuns {
  public:
    void add(std::vector<CheckResult> results, const format::Phrase& under) {
        std::map<Name, std::size_t> seen;
        for (CheckResult& result : results) {
            Name name{result.id, model::key(result.part), result.aspect, 0};
            std::get<3>(name) = seen[name]++;
            result.under = under;
            keep_worse(std::move(result), name);
        }
    }
    [[nodiscard]] std::vector<CheckResult> take() { return std::move(all_); }

  private:
    static int gravity(const CheckResult& result) {
        if (result.status == Status::missing_evidence) return 1;
        return result.status == Status::holds ? 0 : 2;
    }

    void keep_worse(CheckResult result, const Name& name) {
        const auto [place, fresh] = places_.emplace(name, all_.size());
        if (fresh) {
            all_.push_back(std::move(result));
            return;
        }
        CheckResult& kept = all_[place->second];
        const auto one = std::pair(gravity(result), result.ratio), other = std::pair(gravity(kept), kept.ratio);
        if (one == other) kept.under = {};
        if (one > other) kept = std::move(result);
    }

    std::vector<CheckResult> all_;
    std::map<Name, std::size_t> places_;
};

}  // namespace

void CheckRuns::make_parts(const demand::Demand& demand) {
    const std::vector<LoadDuration> durations = demand::durations(demand);
    for (const LoadDuration duration : durations)
        parts_.push_back({duration, durations.size() > 1 ? demand::of_duration(demand, duration) : demand::Demand()});
    if (parts_.empty()) parts_.push_back({LoadDuration::guard_live, {}});
}

std::vector<CheckResult> CheckRuns::run(const catalog::Resolved& resolved, const demand::Demand& demand) {
    if (parts_.empty()) make_parts(demand);
    std::vector<CheckResult> results;
    if (parts_.size() == 1) {
        results = run_all({resolved, demand, &parts_.front().prepared, asked_}, parts_.front().duration);
    } else {
        WorstOfRuns worst;
        for (OfDuration& part : parts_)
            worst.add(run_all({resolved, part.demand, &part.prepared, asked_}, part.duration), words(part.duration));
        results = worst.take();
    }
    sort_worst_first(results);
    return results;
}

std::vector<CheckResult> run_checks(const catalog::Resolved& resolved, const demand::Demand& demand) {
    return CheckRuns().run(resolved, demand);
}

}  // namespace toehold::review
