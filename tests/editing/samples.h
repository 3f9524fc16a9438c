#pragma once
// What the tests of editing start from: the shipped catalogs and demo details, and a plate of round numbers.
#include "support/shipped.h"

#include <string>
#include <vector>

namespace toehold::test {

/// Every detail in data/demo, by name of file.
[[nodiscard]] const std::vector<model::BaseDetail>& demo_details();

/// 10 x 10 plate about the post; round 1/2 in holes A (-4, -4), B (4, -4), C (4, 4), D (-4, 4), one lag screw group for
/// all; joists J1 at -8 and J2 at 8, 1 1/2 in wide along y; blocks B1 and B2, 3 1/2 x 7 1/4, at y = -4 and 4 between
/// them.
[[nodiscard]] model::BaseDetail square_base();

/// Ids differ, and every length and place is a finite number; a text that says what is not, else empty.
[[nodiscard]] std::string whats_broken(const model::BaseDetail& detail);

}  // namespace toehold::test
