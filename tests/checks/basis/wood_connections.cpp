#include "checks/basis/wood_basis.h"

#include "checks/basis/product.h"
#include "support/compare.h"

using namespace toehold;
using namespace toehold::checks;
using test::product;

namespace {

const Step* find(const Adjusted& adjusted, const std::string& symbol) {
    for (const Step& step : adjusted.steps) {
        if (step.symbol == symbol) return &step;
    }
    return nullptr;
}

}  // namespace

TEST_CASE("An unstated basis is wet, at normal temperature, with a load duration of 1", "[unit]") {
    // 100 x CD 1.0 x CM 0.7 x Ct 1.0 = 70, NDS 2018 Table 11.3.1.
    CHECK_CLOSE(adjust_withdrawal(100.0, {}).value, 70.0, 1e-14, 0.0);
    LateralConditions conditions;
    conditions.diameter_in = 0.375;
    CHECK_CLOSE(adjust_lateral(100.0, conditions, {}).value, 70.0, 1e-14, 0.0);
}

TEST_CASE("Allowable stress design applies CD and strength design KF, phi and lambda", "[published]") {
    model::Basis basis;
    basis.moisture = model::Moisture::dry;
    basis.load_duration = 1.6;
    CHECK_CLOSE(adjust_withdrawal(100.0, basis).value, 160.0, 1e-14, 0.0);
    basis.method = model::Method::lrfd;
    // NDS 2018 Table 11.3.1: 3.32 x 0.65 x lambda 0.8 = 1.7264; CD has no place.
    const Adjusted factored = adjust_withdrawal(100.0, basis);
    CHECK_CLOSE(factored.value, 172.64, 1e-14, 0.0);
    CHECK(find(factored, "C_D") == nullptr);
    basis.time_effect = 1.0;
    CHECK_CLOSE(adjust_withdrawal(100.0, basis).value, 215.8, 1e-14, 0.0);
}

TEST_CASE("Lumber that dries in service costs a lateral value more than a withdrawal value", "[published]") {
    model::Basis basis;
    basis.moisture = model::Moisture::dried_in_service;
    LateralConditions conditions;
    conditions.diameter_in = 0.375;
    CHECK_CLOSE(adjust_withdrawal(100.0, basis).value, 100.0, 1e-14, 0.0);
    CHECK_CLOSE(adjust_lateral(100.0, conditions, basis).value, 40.0, 1e-14, 0.0);
    conditions.single_row_or_single_fastener = true;
    CHECK_CLOSE(adjust_lateral(100.0, conditions, basis).value, 100.0, 1e-14, 0.0);
}

TEST_CASE("Every factor of a lateral value has its line, and the lines multiply to the value", "[property]") {
    model::Basis basis;
    basis.load_duration = 1.15;
    basis.temperature = model::Temperature::to_125F;
    const LateralConditions conditions{0.5, false, 0.75, 0.9, 0.67};
    const Adjusted adjusted = adjust_lateral(1000.0, conditions, basis);
    CHECK_CLOSE(adjusted.value, product(adjusted, 1000.0), 1e-14, 0.0);
    // 1000 x 1.15 x 0.7 x 0.7 x 0.9 x 0.75 x 0.67
    CHECK_CLOSE(adjusted.value, 254.8415, 1e-5, 0.0);
    for (const Step& step : adjusted.steps) CHECK_FALSE(step.clause.empty());
    REQUIRE(find(adjusted, "C_Delta") != nullptr);
    CHECK(find(adjusted, "C_Delta")->value == 0.75);
}

TEST_CASE("A default is called a default and a stated value given", "[unit]") {
    model::Basis basis;
    CHECK(find(adjust_withdrawal(1.0, basis), "C_M")->formula == "default");
    basis.moisture = model::Moisture::wet;
    CHECK(find(adjust_withdrawal(1.0, basis), "C_M")->formula == "given");
}

TEST_CASE("A reported value stands as it is, and meets factored loads times the live load factor", "[unit]") {
    model::Basis basis;
    CHECK(reported_value(250.0, "lb", basis).value == 250.0);
    basis.method = model::Method::lrfd;
    CHECK_CLOSE(reported_value(250.0, "lb", basis).value, 400.0, 1e-14, 0.0);
    CHECK(reported_value(250.0, "lb", basis).steps.size() == 2);
}

TEST_CASE("A factor of 1 is given by its table, and another is worked out", "[unit]") {
    checks::LateralConditions conditions;
    conditions.diameter_in = 0.375;
    conditions.group_factor = 0.95;
    const checks::Adjusted adjusted = checks::adjust_lateral(100.0, conditions, {});
    const auto origin = [&](const std::string& symbol) {
        for (const checks::Step& step : adjusted.steps) {
            if (step.symbol == symbol) return step.origin;
        }
        throw std::logic_error("no step " + symbol);
    };
    CHECK(origin("C_g") == checks::Origin::derived);
    CHECK(origin("C_Delta") == checks::Origin::given);
}
