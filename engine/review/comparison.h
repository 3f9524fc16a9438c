#pragma once
// Two reviews beside each other: what differs in the input, what differs in every check, whether the verdict turns.
#include "checks/result.h"
#include "model/basis.h"
#include "review/facts.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::review {

struct Review;

/// One value of the input that is not the same in both.
struct InputDifference {
    std::string place;   ///< in the file's own words: `plate / hole A / diameter`
    std::string first;   ///< as written, with its unit; empty: not there
    std::string second;  ///< the same of the other
};

/// One result, by check, part and aspect, in both reviews.
struct CheckDifference {
    std::string id;
    format::Phrase title;
    model::PartId part;
    /// Of each side; absent where that side has no such result. They are the reviews' own values.
    std::optional<checks::CheckResult> first, second;
    [[nodiscard]] bool status_turns() const;  ///< one holds and the other does not, or one is not there
    /// The same status, and the same demand and capacity to one part in a thousand million: what a solve may leave.
    [[nodiscard]] bool same() const;
};

struct FindingDifference {
    std::optional<checks::Finding> first, second;  ///< at least one; the same id and part
};

struct Side {
    std::string label;  ///< file name, or the basis: `as submitted`, `method lrfd`
    std::string detail;
    std::string input_sha256;
    Verdict verdict = Verdict::incomplete;
    Governing governing;
    Facts facts;
    std::size_t anchors = 0;  ///< how many
    model::Method method = model::Method::asd;
    format::Phrase no_demand;  ///< why no demand was found; empty: it was
};

struct Comparison {
    Side first, second;
    std::vector<InputDifference> input;       ///< in the order of the file; remarks are left out
    std::vector<CheckDifference> checks;      ///< those whose status turns first, then by the larger change of ratio
    std::vector<FindingDifference> findings;  ///< only those that are not in both with the same words
    [[nodiscard]] bool verdict_turns() const { return first.verdict != second.verdict; }
};

/// The labels are the caller's: file names, or what was changed.
[[nodiscard]] Comparison compare(const Review& first, const std::string& first_label, const Review& second,
                                 const std::string& second_label);

}  // namespace toehold::review
