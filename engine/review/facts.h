#pragma once
// What a review comes to, found once for everything that shows it: text, JSON, papers, window, comparison.
#include "checks/result.h"
#include "format/phrase.h"
#include "model/part.h"

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace toehold::catalog {
struct Resolved;
}
namespace toehold::demand {
struct Demand;
}

namespace toehold::review {

enum class Verdict { adequate, inadequate, incomplete };
/// 2 of inadequate, which must go back to its writer first, 1 of incomplete, 0 of adequate.
[[nodiscard]] int gravity(Verdict verdict);

/// A check's result as far as a sentence about it needs.
struct CheckFact {
    std::string check;  ///< id; empty: no check ran
    format::Phrase title;
    model::PartId part;
    checks::Status status = checks::Status::holds;
    double ratio = 0.0;  ///< infinite where there is no load path
    format::Phrase note;
};

/// The result to name first: where checks fail, their first cause, whatever its ratio; else the strength nearest its
/// limit.
struct Governing : CheckFact {
    std::optional<double> direction_deg;  ///< of the push
    double demand = 0.0, capacity = 0.0;
    std::string unit;
    std::optional<checks::Link> link;  ///< of the load path, where the check stands for one
};

/// Results by status, and findings by severity.
struct Counts {
    std::size_t pass = 0, fail = 0, no_path = 0, not_specified = 0;
    std::size_t findings_fail = 0, findings_missing = 0, cautions = 0;
    [[nodiscard]] std::size_t failing() const { return fail + no_path; }  ///< checks that fail
    [[nodiscard]] std::size_t checks() const { return pass + failing() + not_specified; }
    [[nodiscard]] bool adequate() const;  ///< there is a check, all pass, and no finding forbids it
};

/// The failure that makes others, by `checks::Check::causes`: no other failing check explains it, and it explains the
/// most. Among equals the first down the load path, then the one of the larger ratio.
struct FirstCause : CheckFact {
    std::size_t explained = 0;  ///< failing results that follow from it, and from those
    std::size_t result = 0;     ///< its place among the results
};

/// A finding as far as a sentence about it needs.
struct FindingFact {
    std::string rule;  ///< id
    format::Phrase title;
    model::PartId part;
    format::Phrase message;  ///< one sentence or more, each with its stop
};

/// By how much the capacity of the governing check falls short; in `unit`.
struct Shortfall {
    double demand = 0.0, capacity = 0.0;
    std::string unit;
    [[nodiscard]] double lacking() const { return demand - capacity; }
    /// What the capacity must be multiplied by, above 1; absent where there is no capacity.
    [[nodiscard]] std::optional<double> factor() const;
};

/// The largest tension on any anchor, over loads, directions and the range of stiffness.
struct LargestTension {
    model::PartId part;  ///< the anchor
    double tension_lb = 0.0;
    double direction_rad = 0.0;  ///< of the push that gives it
    double push_lb = 0.0;        ///< that push
    double height_in = 0.0;      ///< of that push above the bearing plane
    double hand_edge_lb = 0.0;   ///< tension on the same anchor by hand, arm to the plate's edge
};

/// How far the code's concentrated load could grow before the first strength reaches its limit, with the capacities of
/// the detail's basis and whatever acts beside it as it is. Found by running the checks under that load, not by
/// proportion.
struct ProofFactor {
    double multiple = 0.0;         ///< of the code's load; < 1 where a check fails under it
    double concentrated_lb = 0.0;  ///< the code's load, without a load factor
    format::Phrase title;          ///< of the check that reaches its limit first
    model::PartId part;
};

struct Facts {
    Counts counts;
    std::optional<FirstCause> first_cause;  ///< among the checks; absent: none fails
    /// The finding that is the first cause, before any check; absent: a check is, or nothing fails.
    std::optional<FindingFact> first_finding = std::nullopt;
    std::optional<CheckFact> not_specified;         ///< the first check that lacks what it needs
    format::Phrase finding;                         ///< the gravest that forbids the detail; empty: none
    std::optional<Shortfall> shortfall;             ///< absent: the governing check passes or lacks its capacity
    std::optional<LargestTension> largest_tension;  ///< absent: no demand, or no anchor
    /// Change of the largest tension by framing that gives way, as a share of it; absent where not solved.
    std::optional<double> framing_change;
    std::optional<ProofFactor> proof_factor = std::nullopt;  ///< absent: not found, or a load nothing could carry
};

[[nodiscard]] CheckFact fact_of(const checks::CheckResult& result);
[[nodiscard]] Counts counts(const std::vector<checks::CheckResult>& results,
                            const std::vector<checks::Finding>& findings);
/// `causes` gives the ids of the checks that follow from the check of this id.
using CausesOf = std::function<std::vector<std::string>(const std::string& check)>;
[[nodiscard]] std::optional<FirstCause> first_cause(const std::vector<checks::CheckResult>& results,
                                                    const CausesOf& causes);
/// The same by the registry.
[[nodiscard]] std::optional<FirstCause> first_cause(const std::vector<checks::CheckResult>& results);
/// The failing finding that comes before the checks' first cause: parts that do not go together as drawn come before
/// any force, an end of the load path before the checks that then fail, unless one of them says itself that there is no
/// load path. Where no check fails, the gravest failing finding. `findings` gravest first.
[[nodiscard]] std::optional<FindingFact> first_finding(const std::vector<checks::Finding>& findings,
                                                       const std::optional<FirstCause>& cause);
/// The first that lacks what it needs.
[[nodiscard]] std::optional<CheckFact> not_specified(const std::vector<checks::CheckResult>& results);
[[nodiscard]] std::optional<LargestTension> largest_tension(const catalog::Resolved& resolved,
                                                            const demand::Demand& demand);

/// A check that fails: capacity exceeded, or no load path.
[[nodiscard]] bool fails(const checks::CheckResult& result);

}  // namespace toehold::review
