// What checks share of one demand: found once, the same under another basis, and grown with the forces.
#include "checks/prepared.h"

#include "checks/basis/pushes.h"
#include "checks/plate/needs.h"
#include "checks/run_check.h"
#include "demand/framing/find_framing.h"
#include "support/compare.h"
#include "support/example.h"

#include <cmath>
#include <numbers>

using namespace toehold;

namespace {

struct Length {
    double in = 0.0;
    [[nodiscard]] Length grown(double factor) const { return {factor * in}; }
};
struct Name {
    std::string text;
};

/// Pushes all round, under two stiffnesses: anchors on the far side pull, blocks on the near side bear, more in the
/// second.
demand::Demand all_round(const catalog::Resolved& resolved, double factor) {
    demand::Demand demand = test::example_demand(resolved, {}, {0.0, 0.0});
    demand.scenarios.push_back({0.5, 2.0, false});
    const demand::State still = demand.states.at(0);
    demand.states.clear();
    for (std::size_t scenario = 0; scenario < 2; ++scenario) {
        for (int step = 0; step < 8; ++step) {
            demand::State state = still;
            state.scenario = scenario;
            state.direction_rad = std::numbers::pi * step / 4.0 + 0.1;
            const double x = std::cos(state.direction_rad), y = std::sin(state.direction_rad);
            const double size = factor * (1.0 + 0.2 * static_cast<double>(scenario));
            for (std::size_t i = 0; i < resolved.anchors.size(); ++i) {
                const model::Place& at = resolved.anchors[i].at;
                state.anchors[i] = {size * 150.0 * std::max(0.0, -(x * at.x_in + y * at.y_in)), factor * 50.0 * x,
                                    factor * 50.0 * y};
            }
            for (demand::SupportForce& support : state.supports) {
                support.force_lb = size * 250.0 * std::max(0.0, x * support.at.x_in + y * support.at.y_in);
                support.peak_psi = support.force_lb / 4.0;
            }
            demand.states.push_back(state);
        }
    }
    demand.framing = demand::find_framing(resolved, demand);
    return demand;
}

const checks::Check& check(const std::string& id) {
    for (const checks::Check& one : checks::registered_checks())
        if (one.id == id) return one;
    throw std::logic_error("no such check: " + id);
}

void check_same(const std::vector<checks::CheckResult>& found, const std::vector<checks::CheckResult>& alone,
                double tolerance) {
    REQUIRE(found.size() == alone.size());
    for (std::size_t i = 0; i < found.size(); ++i) {
        INFO(alone[i].id << ", " << model::key(alone[i].part));
        CHECK(found[i].part == alone[i].part);
        CHECK(found[i].direction_deg == alone[i].direction_deg);
        if (std::isfinite(alone[i].ratio)) CHECK_CLOSE(found[i].ratio, alone[i].ratio, tolerance, 0.0);
        CHECK(std::isfinite(found[i].ratio) == std::isfinite(alone[i].ratio));
        REQUIRE(found[i].steps.size() == alone[i].steps.size());
        for (std::size_t step = 0; step < alone[i].steps.size(); ++step)
            CHECK_CLOSE(found[i].steps[step].value, alone[i].steps[step].value, tolerance, tolerance);
    }
}

}  // namespace

TEST_CASE("a value is found once, and each kind by itself", "[unit]") {
    checks::Prepared prepared;
    int asked = 0;
    const auto length = [&] { return ++asked, Length{2.0}; };
    CHECK(prepared.once<Length>(length)->in == 2.0);
    CHECK(prepared.once<Length>(length)->in == 2.0);
    CHECK(asked == 1);
    CHECK(prepared.once<Name>([] { return Name{"B1"}; })->text == "B1");
    const auto kept = prepared.once<Name>([] { return Name{"another"}; });
    CHECK(kept->text == "B1");
    CHECK(prepared.once<Name>([] { return Name{"B2"}; }, 1)->text == "B2");
    CHECK(prepared.once<Name>([] { return Name{"another"}; }, 0)->text == "B1");
    CHECK(prepared.once<Name>([] { return Name{"another"}; }, 1)->text == "B2");
}

TEST_CASE("what grows with the forces is grown, the rest is found anew", "[unit]") {
    checks::Prepared prepared;
    (void)prepared.once<Length>([] { return Length{2.0}; });
    (void)prepared.once<Length>([] { return Length{4.0}; }, 1);
    (void)prepared.once<Name>([] { return Name{"B1"}; });
    checks::Prepared grown = prepared.grown(3.0).grown(0.5);
    CHECK(grown.once<Length>([] { return Length{}; })->in == 3.0);
    CHECK(grown.once<Length>([] { return Length{}; }, 1)->in == 6.0);
    CHECK(grown.once<Name>([] { return Name{"anew"}; })->text == "anew");
    CHECK(prepared.once<Length>([] { return Length{}; })->in == 2.0);
}

TEST_CASE("a value that could not be found is asked for again", "[unit]") {
    checks::Prepared prepared;
    CHECK_THROWS_AS(prepared.once<Length>([]() -> Length { throw std::runtime_error("no"); }), std::runtime_error);
    CHECK(prepared.once<Length>([] { return Length{1.0}; })->in == 1.0);
}

TEST_CASE("every check says the same under every basis whether it shares or not", "[property]") {
    const catalog::Resolved resolved = test::example_resolved();
    const demand::Demand demand = all_round(resolved, 1.0);
    checks::Prepared prepared;
    std::vector<model::Basis> bases(7, resolved.detail.basis);
    bases[1].load_duration = 1.6;
    bases[2].moisture = model::Moisture::dry;
    bases[3].bearing = model::BearingStress::peak;
    bases[4].torsion = model::TorsionWithShear::linear_two_thirds;
    bases[5].plate_strength = model::PlateStrength::yield_line;
    bases[6].method = model::Method::lrfd;
    for (const model::Basis& basis : bases) {
        catalog::Resolved changed = resolved;
        changed.detail.basis = basis;
        for (const checks::Check& one : checks::registered_checks())
            check_same(checks::run(one, {changed, demand, &prepared}), checks::run(one, {changed, demand}), 0.0);
    }
}

TEST_CASE("what a grown load asks of the plate is what the plate is asked, grown", "[property]") {
    const catalog::Resolved resolved = test::example_resolved();
    const double factor = 1.37;
    const demand::Demand demand = all_round(resolved, 1.0), more = all_round(resolved, factor);
    checks::Prepared prepared;
    const auto before = checks::run(check("plate-bending"), {resolved, demand, &prepared});
    REQUIRE(before.size() >= 2);
    checks::Prepared grown = prepared.grown(factor);
    check_same(checks::run(check("plate-bending"), {resolved, more, &grown}),
               checks::run(check("plate-bending"), {resolved, more}), 1e-9);
}

TEST_CASE("of the states under one push the first speaks for all", "[unit]") {
    const catalog::Resolved resolved = test::example_resolved();
    const demand::Demand demand = all_round(resolved, 1.0);
    const checks::CheckInput input{resolved, demand};
    CHECK(checks::pushes(input)->states == std::vector<std::size_t>{0, 1, 2, 3, 4, 5, 6, 7});
    const auto quantity = [](const demand::State& state) { return std::cos(3.0 * state.direction_rad); };
    const demand::GoverningState all = demand::governing_state(demand, quantity);
    const demand::GoverningState found = checks::governing_push(input, quantity);
    CHECK(found.state == all.state);
    CHECK(found.value == all.value);
}
