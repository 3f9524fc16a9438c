// Torsion of blocks, joists and rims, alone and with beam shear.
#include "checks/member/framing_example.h"
#include "checks/run_check.h"
#include "support/compare.h"

using namespace toehold;
using test::actions;
using test::run_check;
using test::step_value;
using test::with_actions;

TEST_CASE("a square block's torsion is T/(0.208 a^3)", "[closed-form][B3]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.framing.blocks[0].depth_in = 3.5;
    const auto results = run_check("member-torsion", resolved, with_actions(resolved, 0, {actions(0, 0, 0, 0, 750.0)}));
    // 750/(0.208 x 42.875) = 84.1 psi; allowed as shear is, 175 x 0.97 x 0.8 = 135.8 psi. 0.5.0 allowed two thirds.
    REQUIRE(results.size() == 1);
    CHECK_CLOSE(results[0].demand, 84.1, 0.0, 0.1);
    CHECK_CLOSE(results[0].capacity, 135.8, 0.0, 0.01);
    CHECK(results[0].status == checks::Status::holds);
    CHECK(test::link_words(results[0]) == "block B1 > ends of block B1: torsion");
}

TEST_CASE("a joist's torsion on its slender section", "[closed-form]") {
    const catalog::Resolved resolved = test::framed_example();
    const auto results = run_check("member-torsion", resolved, with_actions(resolved, 2, {actions(0, 0, 0, 0, 400.0)}));
    // a/b = 9.25/1.5 = 6.17; beyond 5 the coefficient is (1 - 0.63 b/a)/3 = 0.2993 (Timoshenko and Goodier, art. 109):
    // 400/(0.2993 x 9.25 x 2.25) = 64.2 psi
    REQUIRE(results.size() == 1);
    CHECK_CLOSE(results[0].demand, 64.2, 0.0, 0.1);
    CHECK(test::about(results[0]) == "joist J1");
    CHECK(test::link_to(results[0]) == "supports of joist J1");
}

TEST_CASE("a doubled rim is two thin bars, each with half the torque", "[closed-form]") {
    catalog::Resolved resolved = test::framed_example();
    const auto of = [&] {
        return run_check("member-torsion", resolved, with_actions(resolved, 4, {actions(0, 0, 0, 0, 400.0)})).at(0);
    };
    const double single = of().demand;
    resolved.detail.framing.rims[0].plies = 2;
    const auto doubled = of();
    CHECK_CLOSE(doubled.demand, 0.5 * single, 1e-12, 0.0);
    CHECK(test::link_to(doubled) == "joists at rim R1");
    CHECK(step_value(doubled, "n") == 2.0);
    CHECK(test::says(doubled.note, "share the load equally"));
}

TEST_CASE("pulls on the axis twist nothing; a pull beside it goes to the ends by its distance", "[closed-form]") {
    catalog::Resolved resolved = test::example_resolved();
    const auto torque = [&] {
        const auto results =
            run_check("member-torsion", resolved, test::example_demand(resolved, {1000.0, 0.0, 0.0}, {}));
        return step_value(results.at(0), "T");
    };
    CHECK_CLOSE(torque(), 0.0, 0.0, 1e-6);
    // A and B 0.75 in outward of the axis: 1500 lb in in all, so that one end has half of it or more
    resolved.detail.framing.blocks[0].across_in = -3.25;
    CHECK(torque() >= 750.0 * (1.0 - 1e-9));
    CHECK(torque() <= 1500.0 * (1.0 + 1e-9));
}

TEST_CASE("torsion by its part and shear by the square of its part add up", "[closed-form][B3]") {
    const catalog::Resolved resolved = test::example_resolved();
    const auto results =
        run_check("member-shear-torsion", resolved,
                  with_actions(resolved, 0, {actions(0, 0, 1000.0, 0, 0), actions(0, 0, 600.0, 0, 900.0)}));
    // 3.5 x 5.5, allowed 135.8 psi in both. First state: 1.5 x 1000/19.25 = 77.9: 0.574^2 = 0.329. Second: 1.5 x
    // 600/19.25 = 46.75: 0.3443^2 = 0.1185; k(1.571) = 0.2335: 900/(0.2335 x 5.5 x 12.25) = 57.2: 0.4213; 0.540.
    // 0.5.0 had 0.976.
    REQUIRE(results.size() == 1);
    CHECK_CLOSE(results[0].ratio, 0.540, 0.0, 0.002);
    CHECK_CLOSE(step_value(results[0], "f_v"), 46.75, 0.0, 0.01);
    CHECK_CLOSE(step_value(results[0], "F_t'"), 135.8, 0.0, 0.01);
    CHECK(results[0].status == checks::Status::holds);
}

TEST_CASE("the linear form on two thirds stands where the file asks for it, and says so", "[closed-form]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.basis.torsion = model::TorsionWithShear::linear_two_thirds;
    const auto results =
        run_check("member-shear-torsion", resolved, with_actions(resolved, 0, {actions(0, 0, 600.0, 0, 900.0)}));
    // 0.3443 + 57.2/(2/3 x 135.8) = 0.976
    CHECK_CLOSE(results.at(0).ratio, 0.976, 0.0, 0.003);
    CHECK(results.at(0).steps.back().formula.find("as the file asks") != std::string::npos);
    CHECK_CLOSE(
        run_check("member-torsion", resolved, with_actions(resolved, 0, {actions(0, 0, 0, 0, 900.0)})).at(0).capacity,
        90.53, 0.0, 0.01);
}
