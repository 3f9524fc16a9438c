#pragma once
// What a reviewer's remark speaks of, looked up in the review it is printed with.
#include "review/review.h"

#include <string>
#include <vector>

namespace toehold::paper::letter {

struct Matter {
    std::string title;  ///< of the check or the finding rule; `The detail as a whole`; an unknown id as it is written
    std::vector<const checks::CheckResult*> results;  ///< into the review, worst first
    std::vector<const checks::Finding*> findings;     ///< into the review, gravest first
    /// Why there is no result or finding to show; empty where there is one, and for the whole detail.
    std::string gone;
};

[[nodiscard]] Matter matter_of(const model::Remark& remark, const review::Review& review);

}  // namespace toehold::paper::letter
