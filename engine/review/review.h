#pragma once
// Detail in, review out: the demand, every registered check and finding, the load path and the verdict.
#include "catalog/resolve.h"
#include "checks/result.h"
#include "demand/demand.h"
#include "review/facts.h"

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace toehold::review {

class CheckRuns;

/// One link of the load path, with the worst of the checks that stand for it.
struct PathLink {
    checks::Link link;
    std::string check;  ///< id of that check
    double demand = 0.0, capacity = 0.0;
    std::string unit;
    double ratio = 0.0;
    checks::Status status = checks::Status::holds;
};

/// What the other choice of an assumption gives, by running every check with it.
struct OtherChoice {
    format::Phrase choice;  ///< `dry in service`
    /// The largest ratio of a strength before and after; absent where no strength has a finite one.
    std::optional<double> ratio_before, ratio_after;
    format::Phrase title = {};                          ///< of the check with that ratio after
    model::PartId part = {};                            ///< the same
    std::size_t failing_before = 0, failing_after = 0;  ///< checks that fail
    friend bool operator==(const OtherChoice&, const OtherChoice&) = default;
};

/// A choice made where the file does not specify one or where practice differs.
struct Assumption {
    format::Phrase text;
    std::optional<OtherChoice> other = std::nullopt;  ///< absent: there is none to run
};

/// A change of the detail that was run through the whole review, and what came of it.
struct Remedy {
    std::string id;
    format::Phrase text;  ///< what to change, one sentence
    Verdict verdict = Verdict::incomplete;
    Governing governing;
    std::size_t failing_results = 0;   ///< checks that still fail
    std::size_t failing_findings = 0;  ///< findings that still forbid it
    model::BaseDetail detail;          ///< as changed
};

struct Review {
    std::string detail;  ///< its name
    std::string input_sha256;
    Verdict verdict = Verdict::incomplete;
    Governing governing;
    Facts facts;
    catalog::Resolved resolved;
    std::optional<demand::Demand> demand;  ///< absent: `no_demand` says why
    format::Phrase no_demand;
    std::vector<checks::CheckResult> checks;  ///< worst first
    std::vector<checks::Finding> findings;    ///< gravest first
    std::vector<PathLink> load_path;          ///< from the post down
    std::vector<Assumption> assumptions;
    std::vector<format::Phrase> cautions;
    std::vector<Remedy> remedies;  ///< filled by `search::find_remedies`; best first
    /// What the checks found of the demand whatever the basis, from `evaluate` to `add_assumptions`. Shared by copies.
    std::shared_ptr<CheckRuns> check_runs = nullptr;

    // Out of line: large, and copied in many files.
    Review();
    Review(const Review&);
    Review(Review&&) noexcept;
    Review& operator=(const Review&);
    Review& operator=(Review&&) noexcept;
    ~Review();
};

/// Asked between pieces of long work; true: what is left may be left out, because nobody waits for it any more.
using Stop = std::function<bool()>;

/// Throws std::runtime_error only for a fault of the program (a solve that misses equilibrium, a number not finite).
/// `kept`: from the details before, and for those after (demand/kept.h); nullptr: nothing is.
[[nodiscard]] Review review(const catalog::Resolved& resolved, const std::string& input_sha256,
                            demand::Kept* kept = nullptr);
/// The same without assumptions and their other choices, each of which runs every check again, and without cautions.
[[nodiscard]] Review evaluate(const catalog::Resolved& resolved, const std::string& input_sha256,
                              demand::Kept* kept = nullptr);
/// The same where the demand is known already. Asked for failures alone, what holds may have other numbers than it has
/// in a review, and nothing can be added to it.
[[nodiscard]] Review evaluate(const catalog::Resolved& resolved, demand::Outcome outcome,
                              const std::string& input_sha256, checks::Asked asked = checks::Asked::numbers);
/// What `evaluate` leaves out, added to its review. A review that was stopped is to be thrown away.
void add_assumptions(Review& evaluated, const Stop& stop = {});

}  // namespace toehold::review
