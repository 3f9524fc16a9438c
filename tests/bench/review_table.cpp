// Whole reviews against what no review can do without: the flexible envelope of the detail itself, over every direction
// and every combination of stiffness, on a plate that is prepared already. All in processor time, but for the
// summaries, which run on several cores: those by the clock on the wall.
#include "bench/interleaved.h"
#include "bench/tables.h"
#include "demand/loads/load_cases.h"
#include "demand/mount.h"
#include "demand/stiffness_range.h"
#include "review/review.h"
#include "search/remedies/remedies.h"
#include "support/shipped.h"

#include <fmt/core.h>

#include <algorithm>
#include <cstdlib>
#include <memory>
#include <stdexcept>
#include <string>
#include <vector>

namespace toehold::bench {
namespace {

const std::vector<std::string> details = {"heron-landing-two-flat-blocks", "heron-landing-public-boardwalk",
                                          "heron-landing-short-lags-in-flat-block", "heron-landing-corner"};

/// Every state of the detail's loads as the mechanics solves it, and nothing else.
class Envelope {
  public:
    explicit Envelope(const catalog::Resolved& resolved)
        : solver_(demand::make_mount_solver(resolved)),
          cases_(demand::load_cases(resolved.detail)),
          scenarios_(demand::stiffness_ranges(resolved, solver_->framing_can_flex()).scenarios) {}

    /// Of a base whose cases differ in size alone, every case is solved from scratch: their vertical force is a nothing
    /// that forbids proportion.
    void solve() {
        double largest = 0.0;
        for (const demand::LoadCase& load : cases_) {
            if (load.covered_by) continue;
            for (const demand::StiffnessScenario& scenario : scenarios_) {
                for (const double direction : load.directions_rad) {
                    demand::ActingLoad acting = demand::acting_load(load, direction);
                    acting.down_lb += 1e-9;
                    for (const demand::AnchorForce& anchor : solver_->solve({acting, scenario, direction}).anchors)
                        largest = std::max(largest, anchor.tension_lb);
                }
            }
        }
        if (!(largest > 0.0)) throw std::runtime_error("an envelope without tension");
    }

  private:
    std::unique_ptr<demand::MountSolver> solver_;
    std::vector<demand::LoadCase> cases_;
    std::vector<demand::StiffnessScenario> scenarios_;
};

review::Review with_remedies(const catalog::Resolved& resolved) {
    review::Review review = review::review(resolved, "");
    review.remedies = search::find_remedies(review, test::shipped_catalog());
    return review;
}

void add(Interleaved& timed, const std::string& name, const catalog::Resolved& resolved,
         const std::shared_ptr<Envelope>& envelope) {
    timed.add(name + " envelope", [envelope] { envelope->solve(); });
    timed.add(name + " preparation", [&resolved] { (void)demand::make_mount_solver(resolved); });
    timed.add(name + " demand", [&resolved] { (void)demand::find_demand(resolved); });
    timed.add(name + " probe", [&resolved] { (void)demand::find_demand(resolved, demand::Sampling::probe()); });
    timed.add(name + " evaluation", [&resolved] { (void)review::evaluate(resolved, ""); });
    timed.add(name + " review", [&resolved] { (void)review::review(resolved, ""); });
    timed.add(name + " remedies", [&resolved] { (void)with_remedies(resolved); });
}

/// The program on the folder of the demo details.
void summarize(const char* jobs) {
    const std::string command =
        fmt::format("{} check {}/demo --jobs {} > /dev/null 2>&1", TOEHOLD_PROGRAM, TOEHOLD_DATA_FOLDER, jobs);
    // 0 and 256 (exit status 1: a detail that is not adequate) are both a summary.
    const int status = std::system(command.c_str());  // NOLINT(cert-env33-c,concurrency-mt-unsafe): one thread
    if (status != 0 && status != 256) throw std::runtime_error("no summary from " + command);
}

}  // namespace

void print_review_table(std::size_t repetitions) {
    std::vector<catalog::Resolved> resolved;
    for (const std::string& name : details) resolved.push_back(test::shipped_detail(name));
    Interleaved timed;
    for (std::size_t i = 0; i < details.size(); ++i)
        add(timed, details[i], resolved[i], std::make_shared<Envelope>(resolved[i]));
    timed.add(
        "summary on one core", [] { summarize("1"); }, Clock::wall);
    timed.add(
        "summary on two cores", [] { summarize("2"); }, Clock::wall);
    const Medians medians = timed.run(repetitions);
    fmt::print("\nA detail's own flexible envelope, and what else costs, over that; medians of {}, processor time\n",
               medians.repetitions());
    fmt::print("  {:<40}{:>12}{:>8}{:>8}{:>8}{:>8}{:>8}{:>10}\n", "", "envelope ms", "ready", "probe", "demand",
               "checks", "review", "remedies");
    for (const std::string& name : details) {
        const double envelope = medians.seconds(name + " envelope");
        const auto over = [&](const char* what) { return medians.seconds(name + " " + what) / envelope; };
        fmt::print("  {:<40}{:>12.2f}{:>8.2f}{:>8.2f}{:>8.2f}{:>8.2f}{:>8.2f}{:>10.2f}\n", name, 1e3 * envelope,
                   over("preparation"), over("probe"), over("demand"), over("evaluation") - over("demand"),
                   over("review"), over("remedies"));
    }
    fmt::print("  summary of the demo details on two cores / half of that on one, wall time: {:.2f}\n",
               2.0 * medians.seconds("summary on two cores") / medians.seconds("summary on one core"));
}

}  // namespace toehold::bench
