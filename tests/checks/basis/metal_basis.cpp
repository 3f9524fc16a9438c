// Strength of aluminum beside a weld, by filler and thickness: 6061-T6, 15 ksi, but 11 ksi with filler 4043 over 3/8 in
// (Aluminum Design Manual, as quoted by an engineer in a public thread).
#include "checks/basis/metal_basis.h"

#include "checks/steel_examples.h"

#include <catch2/catch.hpp>

using namespace toehold;
using checks::strengths;

// 0.5.0 gave 15 ksi whatever the filler and the thickness.
TEST_CASE("The filler that leaves thick aluminum softer lowers its yield there alone", "[unit][A5]") {
    catalog::Metal alloy = test::example_aluminum();
    alloy.softer_weld = catalog::SofterWeld{"er4043", 0.375, 11000.0};
    const catalog::Filler silicon{"er4043", "4043 filler", catalog::MetalKind::aluminum, 11500.0, {}};
    const catalog::Filler magnesium{"er5356", "5356 filler", catalog::MetalKind::aluminum, 17000.0, {}};
    CHECK(strengths(alloy, {true, &silicon, 0.5}).yield_psi == 11000.0);
    CHECK(strengths(alloy, {true, &silicon, 0.375}).yield_psi == 15000.0);
    CHECK(strengths(alloy, {true, &magnesium, 0.5}).yield_psi == 15000.0);
    CHECK(strengths(alloy, {true, nullptr, 0.5}).yield_psi == 11000.0);
    CHECK(strengths(alloy, {false, &silicon, 0.5}).yield_psi == 35000.0);
    CHECK(strengths(alloy, {true, &silicon, 0.5}).ultimate_psi == 24000.0);
    const checks::BesideWeld used = strengths(alloy, {true, &silicon, 0.5});
    CHECK(format::english(checks::yield_step(alloy, used).meaning).find("er4043") != std::string::npos);
}
