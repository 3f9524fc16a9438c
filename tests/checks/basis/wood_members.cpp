#include "checks/basis/wood_basis.h"

#include "checks/basis/product.h"
#include "support/compare.h"

#include <algorithm>

using namespace toehold;
using namespace toehold::checks;
using test::product;

namespace {

double factor(const Adjusted& adjusted, const std::string& symbol) {
    for (const Step& step : adjusted.steps) {
        if (step.symbol == symbol) return step.value;
    }
    return -1.0;
}

model::Basis lrfd() {
    model::Basis basis;
    basis.method = model::Method::lrfd;
    return basis;
}

}  // namespace

TEST_CASE("by default lumber is wet, incised and loaded for ten years", "[unit]") {
    const model::Basis basis;
    // Douglas fir-larch No. 2, 2 x 6: 900 psi x CF 1.3 = 1170 > 1150, so CM 0.85: 900 x 0.85 x 1.3 x 0.8 = 795.6 psi
    const Adjusted bending = adjust_bending(900.0, {1.5, 5.5, true, 0.0, 0.0}, basis);
    CHECK_CLOSE(bending.value, 795.6, 1e-12, 0.0);
    // Fv 180 x 0.97 x 0.8 = 139.68; Fc,perp 625 x 0.67 = 418.75 with no incising
    CHECK_CLOSE(adjust_shear(180.0, basis).value, 139.68, 1e-12, 0.0);
    CHECK_CLOSE(adjust_compression_perp(625.0, basis).value, 418.75, 1e-12, 0.0);
    CHECK_CLOSE(adjust_modulus_min(580e3, basis).value, 580e3 * 0.9 * 0.95, 1e-12, 0.0);
    CHECK_CLOSE(adjust_modulus(1.6e6, basis).value, 1.6e6 * 0.9 * 0.95, 1e-12, 0.0);
}

TEST_CASE("weak wood is spared the wet service factor", "[unit]") {
    // Southern pine No. 2, 2 x 10: 800 psi, size in the value: 800 <= 1150
    const Adjusted bending = adjust_bending(800.0, {1.5, 9.25, false, 0.0, 0.0}, model::Basis{});
    CHECK(factor(bending, "C_M") == 1.0);
    CHECK(factor(bending, "C_F") == 1.0);
    CHECK_CLOSE(bending.value, 640.0, 1e-12, 0.0);
}

TEST_CASE("load duration raises bending and shear but not bearing", "[unit]") {
    model::Basis basis;
    basis.load_duration = 1.6;
    CHECK_CLOSE(adjust_shear(180.0, basis).value, 1.6 * 139.68, 1e-12, 0.0);
    CHECK_CLOSE(adjust_compression_perp(625.0, basis).value, 418.75, 1e-12, 0.0);
}

TEST_CASE("LRFD replaces load duration by conversion, resistance and time effect factors", "[unit]") {
    // Fv: 180 x 0.97 x 0.8 x 2.88 x 0.75 x 0.8; Fc,perp has no lambda: 418.75 x 1.67 x 0.90
    CHECK_CLOSE(adjust_shear(180.0, lrfd()).value, 139.68 * 2.88 * 0.75 * 0.8, 1e-12, 0.0);
    CHECK_CLOSE(adjust_compression_perp(625.0, lrfd()).value, 418.75 * 1.67 * 0.90, 1e-12, 0.0);
    CHECK(factor(adjust_shear(180.0, lrfd()), "C_D") == -1.0);
    CHECK(factor(adjust_compression_perp(625.0, lrfd()), "lambda") == -1.0);
}

TEST_CASE("a plank laid flat gains the flat use factor and cannot buckle", "[unit]") {
    const Adjusted flat = adjust_bending(900.0, {5.5, 1.5, true, 24.0, 580e3}, model::Basis{});
    CHECK(factor(flat, "C_fu") == 1.15);
    CHECK(factor(flat, "C_L") == 1.0);
}

TEST_CASE("a block on edge takes the beam stability factor of its length", "[closed-form]") {
    // 3.5 x 5.5, 14.5 in long: le 29.87, RB^2 = 29.87 x 5.5/12.25 = 13.411, Emin' 510e3 x 0.9 x 0.95 = 436050,
    // FbE = 1.2 x 436050/13.411 = 39017 psi; Fb* = 1000 x 0.8 = 800; F = 48.77; CL = 26.195 - sqrt(686.2 - 51.34) =
    // 0.9989
    const Adjusted edge = adjust_bending(1000.0, {3.5, 5.5, false, 14.5, 510e3}, model::Basis{});
    CHECK_CLOSE(factor(edge, "C_L"), 0.9989, 0.0, 1e-4);
    CHECK_CLOSE(edge.value, 799.1, 0.0, 0.1);
}

TEST_CASE("a blade of wood beyond the slenderness limit has no bending value", "[unit]") {
    const Adjusted blade = adjust_bending(1000.0, {0.25, 12.0, false, 48.0, 510e3}, model::Basis{});
    CHECK(blade.value == 0.0);
}

TEST_CASE("the steps multiply up to the value", "[property]") {
    for (const model::Method method : {model::Method::asd, model::Method::lrfd}) {
        for (const auto temperature : {model::Temperature::to_100F, model::Temperature::to_150F}) {
            model::Basis basis;
            basis.method = method;
            basis.temperature = temperature;
            const Adjusted bending = adjust_bending(900.0, {1.5, 9.25, true, 24.0, 580e3}, basis);
            CHECK_CLOSE(bending.value, product(bending, 900.0), 1e-12, 0.0);
            const Adjusted bearing = adjust_compression_perp(625.0, basis);
            CHECK_CLOSE(bearing.value, product(bearing, 625.0), 1e-12, 0.0);
        }
    }
}

TEST_CASE("steps say which choices the file made", "[unit]") {
    model::Basis basis;
    basis.moisture = model::Moisture::dried_in_service;
    const Adjusted shear = adjust_shear(180.0, basis);
    const auto wet =
        std::find_if(shear.steps.begin(), shear.steps.end(), [](const Step& s) { return s.symbol == "C_M"; });
    REQUIRE(wet != shear.steps.end());
    CHECK(wet->formula == "given");
    CHECK(wet->value == 1.0);  // a member's service moisture counts, not the moisture it was built with
    CHECK(shear.steps.front().formula == "default");
}
