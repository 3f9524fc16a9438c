#include "resistance/ultimate/guard_tests.h"

#include <array>

namespace toehold::resistance::ultimate {
namespace {

constexpr std::array<GuardPostTest, 2> tests{{
    {PostFastening::lag_screws, 5, 178.0, 146.0, 211.0, std::nullopt, GuardFailure::fasteners_withdrew},
    {PostFastening::through_bolts, 5, 237.0, 217.0, 248.0, 4.4, GuardFailure::band_left_joists},
}};

}  // namespace

std::span<const GuardPostTest> guard_post_tests() { return tests; }

double push_by_withdrawal_lb(double withdrawal_lb_per_in, const AssumedScrews& screws) {
    const double one_lb = withdrawal_lb_per_in * screws.thread_in;
    const double arm_in = screws.upper_in + screws.lower_in * screws.lower_in / screws.upper_in;
    return one_lb * arm_in / screws.lever_in;
}

}  // namespace toehold::resistance::ultimate
