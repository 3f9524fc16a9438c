#pragma once
// What a reviewer's remark is about, looked up in the review it is printed with.
#include "format/phrase.h"

#include <vector>

namespace toehold::checks {
struct CheckResult;
struct Finding;
}  // namespace toehold::checks
namespace toehold::model {
struct Remark;
}
namespace toehold::review {
struct Review;
}

namespace toehold::paper::letter {

struct RemarkTarget {
    /// Of the check or the finding rule, with the part where one is named; `The detail as a whole`; an id that is
    /// unknown as it is written.
    format::Phrase title;
    std::vector<const checks::CheckResult*> results;  ///< into the review, worst first
    std::vector<const checks::Finding*> findings;     ///< into the review, gravest first
    /// Why there is no result or finding to show; empty where there is one, and for the whole detail.
    format::Phrase gone;
};

[[nodiscard]] RemarkTarget target_of(const model::Remark& remark, const review::Review& review);

}  // namespace toehold::paper::letter
