#pragma once
// What pushes: what the code asks of the guard, always, and what the file adds. Forces factored for the basis's method.
#include "demand/demand.h"

#include <optional>
#include <vector>

namespace toehold::model {
struct BaseDetail;
struct Basis;
}  // namespace toehold::model

namespace toehold::demand {

/// The code's cases first, then the file's, then wind. One case for every push; where the file
/// states a downward (or upward) force with it, a second case has both, so that a vertical force can never hide the
/// uplift of the push alone. A case that another covers is listed and not solved.
[[nodiscard]] std::vector<LoadCase> load_cases(const model::BaseDetail& detail);
/// The push of the proof test that the file asks for, straight outward; absent: none.
[[nodiscard]] std::optional<LoadCase> proof_case(const model::BaseDetail& detail);

/// 1.0 under ASD; 1.6 for live load under LRFD (ASCE 7-16 and 7-22, 2.3.1).
[[nodiscard]] double live_load_factor(const model::Basis& basis);

}  // namespace toehold::demand
