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

}  // namespace toehold::resistance::ultimate
