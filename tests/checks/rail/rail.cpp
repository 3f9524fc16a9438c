// The rail between two posts and its connections, by hand.
#include "checks/rail/rail.h"

#include "checks/run_check.h"
#include "support/compare.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace toehold;
using checks::CheckResult;
using checks::RailSpan;
using checks::Status;
using test::step_value;

namespace {

catalog::Metal steel(double yield_psi) {
    return {"steel", "test steel", catalog::MetalKind::carbon_steel, yield_psi, 58000.0, 29e6, {}, {}, {}};
}

/// Pipe 1 1/4 Std: 1.660 in outside, wall 0.140 in, Fy 35 ksi.
catalog::ResolvedRail pipe() {
    return {{model::RoundTube{1.66, 0.14, "steel"}, model::RailRun::broken}, steel(35000.0)};
}

/// A 2x6 lying flat, No. 2, Fb 1000 psi and Fv 175 psi with every size in them.
catalog::ResolvedRail flat_two_by_six() {
    catalog::MemberMaterial wood;
    wood.grade = {"southern-pine", "no-2", "No. 2", 0.0,   20.0, catalog::SizeFactor::none, 1000.0, 600.0, 175.0,
                  565.0,           1400.0, 1.4e6,   510e3, {}};
    wood.grade.incising = catalog::IncisedBy::untreated;
    return {{model::WoodRail{5.5, 1.5, "southern-pine", "no-2"}, model::RailRun::broken}, wood};
}

model::Basis dry() {
    model::Basis basis;
    basis.moisture = model::Moisture::dry;
    return basis;
}

/// 200 lb, and 50 lb/ft.
checks::RailLoads loads(bool any_direction) { return {200.0, 50.0 / 12.0, any_direction, "push", "line"}; }

RailSpan span(double length_in) { return {model::rail_part("P1", "P2"), length_in, std::nullopt}; }

}  // namespace

// M = P L/4 = 200 x 60/4 = 3000 lb in; w L^2/8 = 4.1667 x 3600/8 = 1875. Pipe 1 1/4 Std has Z 0.305 in the published
// table (AISC Manual Table 1-14, from memory; its design wall 0.130 is 0.93 x 0.140 here): 35000 x 0.305/1.67 = 6392.
TEST_CASE("A broken rail is bent by P L/4, against the published plastic modulus", "[memory][closed-form]") {
    const catalog::ResolvedRail rail = pipe();
    const checks::RailLoads load = loads(true);
    const model::Basis basis;
    const CheckResult result = checks::rail_bending({rail, load, basis}, span(60.0));
    CHECK(result.id == "rail-bending");
    CHECK(model::key(result.part) == "rail P1-P2");
    CHECK_CLOSE(result.demand, 3000.0, 1e-12, 0.0);
    CHECK_CLOSE(step_value(result, "M_w"), 1875.0, 1e-12, 0.0);
    CHECK_CLOSE(result.capacity, 6392.0, 0.004, 0.0);
    CHECK(result.status == Status::holds);
}

TEST_CASE("Over a long span the load along the rail governs: w L^2/8", "[closed-form]") {
    const catalog::ResolvedRail rail = pipe();
    const checks::RailLoads load = loads(true);
    const model::Basis basis;
    // 4.1667 x 120^2/8 = 7500 over 200 x 120/4 = 6000.
    const CheckResult result = checks::rail_bending({rail, load, basis}, span(120.0));
    CHECK_CLOSE(result.demand, 7500.0, 1e-12, 0.0);
    CHECK(result.status == Status::fails);
}

TEST_CASE("The solved line counts where it bends the rail more, and never less than the simple span", "[unit]") {
    const catalog::ResolvedRail rail = pipe();
    const checks::RailLoads load = loads(true);
    const model::Basis basis;
    RailSpan solved = span(60.0);
    solved.solved = checks::SolvedRail{4000.0, 250.0, 1000.0, 100.0};
    CHECK_CLOSE(checks::rail_bending({rail, load, basis}, solved).demand, 4000.0, 1e-12, 0.0);
    CHECK_CLOSE(checks::rail_shear({rail, load, basis}, solved).demand, 250.0, 1e-12, 0.0);
    solved.solved = checks::SolvedRail{2000.0, 150.0, 1000.0, 100.0};
    CHECK_CLOSE(checks::rail_bending({rail, load, basis}, solved).demand, 3000.0, 1e-12, 0.0);
    CHECK_CLOSE(checks::rail_shear({rail, load, basis}, solved).demand, 200.0, 1e-12, 0.0);
}

// P L = 200 x 20 = 4000 lb in; w L^2/2 = 4.1667 x 400/2 = 833.
TEST_CASE("A rail that reaches past its last post is a cantilever", "[closed-form]") {
    const catalog::ResolvedRail rail = pipe();
    const checks::RailLoads load = loads(true);
    const model::Basis basis;
    RailSpan beyond = span(20.0);
    beyond.held_at_one_end = true;
    const CheckResult result = checks::rail_bending({rail, load, basis}, beyond);
    CHECK_CLOSE(result.demand, 4000.0, 1e-12, 0.0);
    CHECK_CLOSE(step_value(result, "M_w"), 833.333, 1e-5, 0.0);
}

// On its wide face: M = 200 x 48/4 = 2400, S = 5.5 x 1.5^2/6 = 2.0625 in3, fb = 1163.6 psi; Fb' = 1000 x Cfu 1.15
// (NDS Supplement 2018 Table 4A, 6 in wide). fb/Fb' = 1.0119: a 2x6 laid flat does not span 4 ft.
TEST_CASE("A flat wood rail is bent on its wide face", "[published][closed-form]") {
    const catalog::ResolvedRail rail = flat_two_by_six();
    const checks::RailLoads load = loads(false);
    const model::Basis basis = dry();
    const CheckResult result = checks::rail_bending({rail, load, basis}, span(48.0));
    CHECK_CLOSE(step_value(result, "S_x"), 2.0625, 1e-12, 0.0);
    CHECK_CLOSE(step_value(result, "F_b2'"), 1150.0, 1e-12, 0.0);
    CHECK_CLOSE(result.ratio, 2400.0 / 2.0625 / 1150.0, 1e-9, 0.0);
    CHECK(result.status == Status::fails);
    CHECK(step_value(result, "theta") == 90.0);
    // Aslant it is bent about both axes at once, and no less.
    const checks::RailLoads aslant = loads(true);
    CHECK(checks::rail_bending({rail, aslant, basis}, span(48.0)).ratio >= result.ratio);
}

// 2/3 x 175 x 5.5 x 1.5 = 962.5 lb.
TEST_CASE("A wood rail in shear beside its post", "[closed-form]") {
    const catalog::ResolvedRail rail = flat_two_by_six();
    const checks::RailLoads load = loads(true);
    const model::Basis basis = dry();
    const CheckResult result = checks::rail_shear({rail, load, basis}, span(48.0));
    CHECK_CLOSE(result.demand, 200.0, 1e-12, 0.0);
    CHECK_CLOSE(result.capacity, 962.5, 1e-9, 0.0);
}

// 2 x 2 x 3/16 in, Fy 46 ksi: t = 0.93 x 0.1875 = 0.174375, h = 2 - 3 t = 1.476875, V_n = 0.6 x 46000 x 2 h t =
// 14215.7, over 1.67 is 8512 lb. Half of 4.1667 lb/in over 144 in is 300 lb.
TEST_CASE("A steel tube rail in shear", "[memory][closed-form]") {
    const catalog::ResolvedRail rail{{model::RectangularTube{2.0, 2.0, 0.1875, "steel"}, model::RailRun::between},
                                     steel(46000.0)};
    const checks::RailLoads load = loads(true);
    const model::Basis basis;
    const CheckResult result = checks::rail_shear({rail, load, basis}, span(144.0));
    CHECK_CLOSE(result.demand, 300.0, 1e-12, 0.0);
    CHECK_CLOSE(step_value(result, "V_w"), 300.0, 1e-12, 0.0);
    CHECK_CLOSE(result.capacity, 0.6 * 46000.0 * 2.0 * 1.476875 * 0.174375 / 1.67, 1e-9, 0.0);
}

TEST_CASE("A metal without strengths lacks evidence, it is not guessed", "[bad-input]") {
    catalog::ResolvedRail rail = pipe();
    catalog::Metal& metal = std::get<catalog::Metal>(rail.material);
    metal.by_certificate = true;
    metal.yield_psi = metal.ultimate_psi = 0.0;
    const checks::RailLoads load = loads(true);
    const model::Basis basis;
    const CheckResult result = checks::rail_bending({rail, load, basis}, span(60.0));
    CHECK(result.status == Status::missing_evidence);
    CHECK_FALSE(result.note.empty());
    CHECK(checks::rail_shear({rail, load, basis}, span(60.0)).status == Status::missing_evidence);
}

TEST_CASE("A connection is held to its report direction by direction", "[unit]") {
    const model::RailConnection connection{"bracket", "test report", 300.0, 0.0, 250.0};
    const model::PartId part{model::PartKind::post, "P2"};
    const checks::RailForces forces{200.0, 150.0, 300.0};
    const auto counted = checks::rail_connection(connection, part, forces, true, {});
    REQUIRE(counted.size() == 4);
    CHECK(counted[0].aspect == "across");
    CHECK_CLOSE(counted[0].ratio, 200.0 / 300.0, 1e-12, 0.0);
    CHECK(counted[1].status == Status::missing_evidence);
    CHECK(counted[2].status == Status::fails);
    CHECK(test::about(counted[0]) == "post P2");
    CHECK_CLOSE(counted[3].ratio, std::hypot(200.0 / 300.0, 300.0 / 250.0), 1e-12, 0.0);
    // Not counted on: what has no value is not asked for.
    CHECK(checks::rail_connection(connection, part, forces, false, {}).size() == 3);
    CHECK(checks::rail_connection(std::nullopt, part, forces, false, {}).empty());
    CHECK(checks::rail_connection(std::nullopt, part, forces, true, {}).size() == 3);
}

// h/24 + L/96 = 42/24 + 72/96 = 2.5 in.
TEST_CASE("Mid-rail movement against the withdrawn specification's limit", "[published]") {
    const CheckResult result = checks::rail_deflection(span(72.0), {0.5, 0.1, 0.9, 1.2}, 42.0);
    CHECK_CLOSE(result.demand, 2.7, 1e-12, 0.0);
    CHECK_CLOSE(result.capacity, 2.5, 1e-12, 0.0);
    CHECK(result.status == Status::fails);
    CHECK(test::says(result.note, "withdrawn"));
}

// E' = 1.4e6 psi dry: level E d b^3/12 = 1.4e6 x 1.5 x 5.5^3/12, upright E b d^3/12. Pipe: I 0.184 in the published
// table (AISC Manual Table 1-14, from memory).
TEST_CASE("Stiffness of rails", "[memory][closed-form]") {
    const checks::RailStiffness wood = checks::rail_stiffness(flat_two_by_six(), dry());
    CHECK_CLOSE(wood.level_lb_in2, 1.4e6 * 1.5 * 166.375 / 12.0, 1e-9, 0.0);
    CHECK_CLOSE(wood.upright_lb_in2, 1.4e6 * 5.5 * 3.375 / 12.0, 1e-9, 0.0);
    CHECK_CLOSE(wood.axial_lb, 1.4e6 * 8.25, 1e-9, 0.0);
    CHECK_CLOSE(checks::rail_stiffness(pipe(), {}).level_lb_in2, 29e6 * 0.184, 0.005, 0.0);
}

// A flat bar 2 x 1/2 in: E A, E d b^3/12 level, E b d^3/12 upright.
TEST_CASE("Stiffness of a rail of solid bar", "[closed-form]") {
    const catalog::ResolvedRail bar{{model::SolidBar{2.0, 0.5, false, "steel"}, model::RailRun::broken},
                                    steel(36000.0)};
    const checks::RailStiffness stiffness = checks::rail_stiffness(bar, {});
    CHECK_CLOSE(stiffness.axial_lb, 29e6, 1e-9, 0.0);
    CHECK_CLOSE(stiffness.level_lb_in2, 29e6 * 0.5 * 8.0 / 12.0, 1e-9, 0.0);
    CHECK_CLOSE(stiffness.upright_lb_in2, 29e6 * 2.0 * 0.125 / 12.0, 1e-9, 0.0);
}

// AISC 360-16 G4 (from memory): h/t up to 2.24 root(29e6/46,000) = 56.24, h = d - 3 t: d/t up to 59.24. 0.93 of the
// wall.
TEST_CASE("A rail's wall too slender in shear gives no number", "[memory]") {
    const checks::RailLoads load = loads(true);
    const model::Basis basis;
    const auto shear = [&](double slenderness) {
        const catalog::ResolvedRail rail{
            {model::RectangularTube{2.0, 4.0, 4.0 / slenderness / 0.93, "steel"}, model::RailRun::between},
            steel(46000.0)};
        return checks::rail_shear({rail, load, basis}, span(60.0));
    };
    CHECK(shear(59.2).status == Status::holds);
    CHECK(shear(59.3).status == Status::missing_evidence);
}

// w L = 4.1667 x 60 = 250 lb over P = 200 lb.
TEST_CASE("A rail held at one end is sheared by all of its load", "[closed-form]") {
    const catalog::ResolvedRail rail = pipe();
    const checks::RailLoads load = loads(true);
    const model::Basis basis;
    RailSpan beyond = span(60.0);
    beyond.held_at_one_end = true;
    CHECK_CLOSE(checks::rail_shear({rail, load, basis}, beyond).demand, 250.0, 1e-12, 0.0);
}

TEST_CASE("A blade of a wood rail buckles and fails outright", "[unit]") {
    catalog::ResolvedRail rail = flat_two_by_six();
    rail.rail.section = model::WoodRail{0.25, 11.25, "southern-pine", "no-2"};
    const checks::RailLoads load = loads(true);
    const model::Basis basis = dry();
    const CheckResult result = checks::rail_bending({rail, load, basis}, span(96.0));
    CHECK(std::isinf(result.ratio));
    CHECK(result.status == Status::fails);
}

TEST_CASE("Pushed every way, a square tube is used most on its diagonal", "[closed-form]") {
    const catalog::ResolvedRail rail{{model::RectangularTube{2.0, 2.0, 0.1875, "steel"}, model::RailRun::between},
                                     steel(46000.0)};
    const checks::RailLoads load = loads(true);
    const model::Basis basis;
    CHECK_CLOSE(step_value(checks::rail_bending({rail, load, basis}, span(60.0)), "theta"), 45.0, 1e-9, 0.0);
}

// Level wind of 2 lb/in with a push all round: (M_P + M_W) level, 3000 + 2 x 3600/8 = 3900 lb in; beside a post 200 +
// 2 x 30 = 260 lb.
TEST_CASE("Wind on the infill adds to the load where that is level", "[closed-form]") {
    const catalog::ResolvedRail rail = pipe();
    checks::RailLoads load = loads(true);
    load.wind_lb_per_in = 2.0;
    load.wind_clause = "wind";
    const model::Basis basis;
    const CheckResult bent = checks::rail_bending({rail, load, basis}, span(60.0));
    CHECK_CLOSE(bent.demand, 3900.0, 1e-12, 0.0);
    CHECK_CLOSE(step_value(bent, "M_W"), 900.0, 1e-12, 0.0);
    CHECK_CLOSE(checks::rail_shear({rail, load, basis}, span(60.0)).demand, 260.0, 1e-12, 0.0);
    RailSpan solved = span(60.0);
    solved.solved = checks::SolvedRail{4000.0, 250.0, 1000.0, 100.0, 700.0, 45.0};
    CHECK_CLOSE(checks::rail_bending({rail, load, basis}, solved).demand, 4700.0, 1e-12, 0.0);
    CHECK_CLOSE(checks::rail_shear({rail, load, basis}, solved).demand, 295.0, 1e-12, 0.0);
}

// 100 of 200 lb by the load and 50 of 200 by wind across, 80 of 400 and 40 of 400 along: each way 0.75 and 0.3; turned,
// root(0.5^2 + 0.2^2) + 0.25 + 0.1 = 0.8885.
TEST_CASE("Wind does not turn with the load on a connection: its parts add", "[closed-form]") {
    const model::RailConnection bracket{"bracket", "test report", 200.0, 400.0, 0.0};
    const auto results = checks::rail_connection(bracket, {model::PartKind::post, "P1"}, {100.0, 80.0, 0.0, 50.0, 40.0},
                                                 false, model::Basis{});
    REQUIRE(results.size() == 3);
    CHECK_CLOSE(results[0].ratio, 0.75, 1e-12, 0.0);
    CHECK_CLOSE(results[1].ratio, 0.3, 1e-12, 0.0);
    CHECK_CLOSE(results[2].ratio, std::hypot(0.5, 0.2) + 0.35, 1e-12, 0.0);
}
