#pragma once
// The loads of a test, one after the other, as the sheet lists them. lb.
#include <vector>

namespace toehold::model {
struct BaseDetail;
}

namespace toehold::paper::proof {

/// What the guard must carry: the larger of the code's concentrated load and its line load on this post.
[[nodiscard]] double design_load_lb(const model::BaseDetail& detail);

/// Up to what is held: quarters of the design load, and half of it from there on.
[[nodiscard]] std::vector<double> up_to_the_hold_lb(double design_lb);

}  // namespace toehold::paper::proof
