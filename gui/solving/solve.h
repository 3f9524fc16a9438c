#pragma once
// The steps of one solve, which the service runs on its threads and `solve_quick` and `solve_review` in a row.
#include "review/review.h"
#include "solving/solve_service.h"

namespace toehold::solving {

/// A result with revision and stage, and the detail resolved; with `problems` where that cannot be.
[[nodiscard]] Result resolve(const Request& request, Stage stage, const catalog::Catalog& catalog);

/// Hands over each stage of the review that is reached. Once `stop` says true nothing more is handed over.
void review_in_stages(const Request& request, const catalog::Catalog& catalog, const review::Stop& stop,
                      const std::function<void(Result)>& hand_over);

}  // namespace toehold::solving
