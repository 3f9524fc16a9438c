// What straight yield lines need of the example's plate, 5.5 x 7 in under a 2 x 2 in tube, anchors at y = -2.5 and 2.5.
#include "checks/plate/limit.h"

#include "checks/run_check.h"
#include "support/compare.h"
#include "support/example.h"

#include <cmath>
#include <numbers>
#include <utility>

using namespace toehold;

namespace {

checks::PlateGeometry geometry_of(const catalog::Resolved& resolved) {
    return checks::plate_geometry(resolved, checks::post_foot(resolved.detail.post));
}

}  // namespace

TEST_CASE("The state that needs most of a yield line is found among all", "[closed-form]") {
    // Along the post's face: 2 x 800 x 1.5/5.5 = 436.36 lb, and half of that in the other state.
    const catalog::Resolved resolved = test::example_resolved();
    demand::Demand demand = test::example_demand(resolved, {400.0, 0.0, 50.0}, {});
    demand.states.push_back(test::example_demand(resolved, {800.0, 0.0, 50.0}, {}).states[0]);
    const checks::PlateGeometry geometry = geometry_of(resolved);
    const checks::LineNeed need =
        checks::most_needed_of_a_line(demand, geometry, mechanics::yield_lines(geometry.foot, geometry.plate));
    CHECK(need.state == 1);
    CHECK_CLOSE(need.moment_lb, 436.36, 0.0, 0.005);
}

TEST_CASE("A pull stands under the rim of its head: half of it beyond a line through its middle", "[closed-form]") {
    // The half circle's mean is 2 r/pi from the line, of half the pull: T r/pi; eight points are within 3 % of it.
    const catalog::Resolved resolved = test::example_resolved();
    checks::PlateGeometry geometry = geometry_of(resolved);
    geometry.anchors = {{{3.0, 2.0}, 0.75}};
    demand::Demand demand = test::example_demand(resolved, {800.0, 0.0, 0.0}, {});
    demand.states[0].anchors.resize(1);
    for (const int quarters : {0, 1, 2, 3}) {
        mechanics::YieldLine line;
        line.normal_x = std::cos(0.5 * std::numbers::pi * quarters);
        line.normal_y = std::sin(0.5 * std::numbers::pi * quarters);
        line.offset_in = 3.0 * line.normal_x + 2.0 * line.normal_y;
        line.metal_in = 5.0;
        CHECK_CLOSE(checks::most_needed_of_a_line(demand, geometry, {line}).moment_lb,
                    800.0 * 0.75 / std::numbers::pi / 5.0, 0.03, 0.0);
    }
}

TEST_CASE("Holes under heads are no openings wherever they lie, holes beyond them are", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.anchors[0].at = {-1.5, -2.2, 0.0};
    on_deck(resolved.detail).plate.holes[0].center = {-1.5, -2.2};
    checks::PlateGeometry geometry = geometry_of(resolved);
    CHECK(checks::open_holes(geometry).empty());
    geometry.anchors.pop_back();
    CHECK(checks::open_holes(geometry).size() == 1);
}

TEST_CASE("Pressure on the toe asks as much of a plate that is turned by a quarter", "[closed-form]") {
    // 1600 lb at 2.5 in, on a block from 0.75 in to the plate's end at 3.5: a plane pressure turns 2404.2 lb in about
    // the post's face, on 5.5 in.
    catalog::Resolved resolved = test::example_resolved();
    on_deck(resolved.detail).plate.outline = model::RectangleOutline{7.0, 5.5, 0.0, {}};
    resolved.detail.framing.joists->along = model::PlanAxis::x;
    for (model::Block& block : resolved.detail.framing.blocks) block.along = model::PlanAxis::y;
    for (std::size_t index = 0; index < resolved.anchors.size(); ++index) {
        model::Place& at = resolved.anchors[index].at;
        std::swap(at.x_in, at.y_in);
        on_deck(resolved.detail).plate.holes[index].center = {at.x_in, at.y_in};
    }
    demand::Demand demand = test::example_demand(resolved, {}, {0.0, 1600.0});
    const auto toe = test::run_check("plate-bending", resolved, demand).at(0);
    CHECK_CLOSE(test::step_value(toe, "m_y"), 2404.2 / 5.5, 0.02, 0.0);
    CHECK(toe.capacity >= 4168.2 - 0.05);
    CHECK(toe.capacity <= 1.03 * 4168.2);
}
