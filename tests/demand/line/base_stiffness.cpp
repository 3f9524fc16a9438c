// The stiffness of a base against turning: a rigid plate in closed form, and ends that hold every state between them.
#include "demand/line/base_stiffness.h"

#include "demand/demand_of.h"
#include "demand/uniform_bed.h"
#include "support/compare.h"
#include "support/two_row_closed_form.h"

#include <cmath>

using namespace toehold;

namespace {

demand::BaseStiffnessRange range_of(const catalog::Resolved& resolved) {
    const demand::BaseStiffnessOutcome outcome = demand::find_base_stiffness(resolved);
    INFO(format::english(outcome.failure));
    REQUIRE(outcome.range);
    return *outcome.range;
}

}  // namespace

TEST_CASE("a rigid plate's stiffness is the transformed section's", "[closed-form]") {
    constexpr double bed = 28000.0, anchor = 80000.0;
    catalog::Resolved resolved = test::uniform_bed(bed, anchor);
    resolved.detail.basis.plate = model::PlateBehaviour::rigid;
    const demand::BaseStiffnessRange range = range_of(resolved);
    // Plate 5.5 x 7 in, rows 1 and 6 in from the toe edge: the row that pulls most says how far the plate turned.
    const test::TwoRows rows{5.5, 7.0, 1.0, 6.0, 2.0 * anchor, bed};
    const test::RowForces forces = test::two_row_tensions(rows, 1.0);
    const double between_rows_in = rows.heel_row_in - rows.toe_row_in;
    // With the toe row pressed its distance to the neutral axis is not in its force: from the heel row and c, then.
    const double b = rows.row_lb_per_in, a = 0.5 * bed * rows.width_in;
    const double c = (-b + std::sqrt(b * b + 4.0 * a * b * rows.heel_row_in)) / (2.0 * a);
    const double lift_in = forces.toe_lb > 0.0 ? between_rows_in : rows.heel_row_in - c;
    const double turn = (forces.heel_lb - forces.toe_lb) / rows.row_lb_per_in / lift_in;
    CHECK_CLOSE(range.stiff.outward, 1.0 / turn, 1e-6, 0.0);
    CHECK_CLOSE(range.stiff.inward, range.stiff.outward, 1e-6, 0.0);
}

TEST_CASE("every state of the whole demand lies between the soft and the stiff end", "[property]") {
    const catalog::Resolved resolved = test::example_resolved();
    const demand::BaseStiffnessRange range = range_of(resolved);
    const demand::Demand demand = test::demand_of(resolved);
    const auto within = [&](double direction, double soft, double stiff) {
        int seen = 0;
        for (const demand::State& state : demand.states) {
            if (std::abs(state.direction_rad - direction) > 1e-9) continue;
            const demand::ActingLoad load = demand::acting_load(demand, state);
            const double stiffness = load.push_lb * load.height_in / state.rotation_rad;
            CHECK(stiffness >= 0.98 * soft);  // the meshes are not the same
            CHECK(stiffness <= 1.02 * stiff);
            ++seen;
        }
        CHECK(seen > 2);
    };
    within(std::acos(0.0), range.soft.outward, range.stiff.outward);
    within(0.0, range.soft.right, range.stiff.right);
    CHECK(range.soft.outward < range.central.outward);
    CHECK(range.central.outward < range.stiff.outward);
    // Outward and inward are alike on a base with a mirror's symmetry, right and left too.
    CHECK_CLOSE(range.central.right, range.central.left, 1e-2, 0.0);
}

TEST_CASE("joists that are not described are said to be missing from the soft end", "[property]") {
    CHECK_FALSE(range_of(test::example_resolved()).framing_lacks.empty());
}
