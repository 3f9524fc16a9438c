// Shear in blocks, joists and rims.
#include "checks/member/framing_example.h"
#include "checks/run_check.h"
#include "support/compare.h"

using namespace toehold;
using test::actions;
using test::run_check;
using test::with_actions;

TEST_CASE("the block's shear is worked by hand", "[closed-form]") {
    const catalog::Resolved resolved = test::example_resolved();
    const auto results = run_check("member-shear", resolved, test::example_demand(resolved, {1000.0, 0.0, 50.0}, {}));
    // V_v = 1000, V_h = 50, A = 19.25: 1.5 x 1001.25/19.25 = 78.02 psi; F_v' = 175 x 0.97 x 0.8 = 135.8 psi
    CHECK_CLOSE(results.at(0).demand, 78.02, 0.0, 0.005);
    CHECK_CLOSE(results.at(0).capacity, 135.8, 1e-12, 0.0);
    CHECK(results.at(0).status == checks::Status::holds);
}

TEST_CASE("a load near the end is counted in full", "[closed-form]") {
    catalog::Resolved resolved = test::example_resolved();
    for (const std::size_t index : {std::size_t{0}, std::size_t{1}}) resolved.anchors[index].at.x_in = -7.0;
    const auto results = run_check("member-shear", resolved, test::example_demand(resolved, {1000.0, 0.0, 0.0}, {}));
    // both anchors 0.25 in from the lower end: V = 2000 x 14.25/14.5 = 1965.5
    CHECK_CLOSE(test::step_value(results.at(0), "V_v"), 1965.5, 0.0, 0.05);
}

TEST_CASE("both pieces of a doubled joist share its shear", "[closed-form]") {
    catalog::Resolved resolved = test::framed_example();
    resolved.detail.framing.joists->members[1].plies = 2;
    const auto results = run_check("member-shear", resolved, with_actions(resolved, 3, {actions(0, 0, 900.0, 0, 0)}));
    // 1.5 x 900/(3 x 9.25) = 48.65 psi
    CHECK(test::about(results.at(0)) == "joist J2");
    CHECK_CLOSE(results.at(0).demand, 48.65, 0.0, 0.005);
}

TEST_CASE("LRFD raises the shear value by its own factors", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.basis.method = model::Method::lrfd;
    const auto results = run_check("member-shear", resolved, with_actions(resolved, 0, {actions(0, 0, 500.0, 0, 0)}));
    CHECK_CLOSE(results.at(0).capacity, 135.8 * 2.88 * 0.75 * 0.8, 1e-12, 0.0);
}
