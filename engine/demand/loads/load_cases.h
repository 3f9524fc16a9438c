#pragma once
// What pushes, from the file's loads: forces factored for the basis's method.
#include "demand/demand.h"

#include <vector>

namespace toehold::model {
struct Basis;
struct Loads;
}  // namespace toehold::model

namespace toehold::demand {

/// One case for every push; where a downward (or upward) force is stated with it, a second case has both, so that a
/// vertical force can never hide the uplift of the push alone. A file without loads gets the code's 200 lb.
[[nodiscard]] std::vector<LoadCase> load_cases(const model::BaseDetail& detail);

/// 1.0 under ASD; 1.6 for live load under LRFD (ASCE 7-16 and 7-22, 2.3.1).
[[nodiscard]] double live_load_factor(const model::Basis& basis);

/// Directions of push to look at, rad: every 5 degrees all round, or straight outward only.
[[nodiscard]] std::vector<double> directions(const model::Loads& loads);

}  // namespace toehold::demand
