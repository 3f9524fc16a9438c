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

/// The window's own example of a post on the side: a 4x4 (3 1/2 x 3 1/2) outside a doubled 2x10 rim R1 (y -4.75 to
/// -1.75), bolts A and B 2 and 7 1/4 in below its top on the post's axis; joists J1 to J4, blocks B1 and B2 from the
/// rim back to B3 at y -15.75.
[[nodiscard]] model::BaseDetail post_on_side();
/// T1, 2 in below the member's top, of 1,800 lb.
[[nodiscard]] model::TensionTie tie_into(const std::string& member);
/// In its place a 2 in tube on a bracket plate, bolts A to D at its corners, and ties T1 and T2 to joist J3.
[[nodiscard]] model::BaseDetail tube_on_side();

/// Ids differ, and every length and place is a finite number; a text that says what is not, else empty.
[[nodiscard]] std::string whats_broken(const model::BaseDetail& detail);

}  // namespace toehold::test
