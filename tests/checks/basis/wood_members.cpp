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

catalog::LumberGrade lumber(double bending_psi, catalog::SizeFactor size = catalog::SizeFactor::table_4a) {
    catalog::LumberGrade grade;
    grade.bending_psi = bending_psi;
    grade.shear_psi = 180.0;
    grade.compression_perp_psi = 625.0;
    grade.modulus_psi = 1.6e6;
    grade.modulus_min_psi = 580e3;
    grade.size_factor = size;
    return grade;
}

/// 1.9E LVL as a report might give it, of invented values.
catalog::LumberGrade veneer(model::OwnWood::Volume volume, model::OwnWood::WetService wet) {
    catalog::LumberGrade grade = lumber(2600.0, catalog::SizeFactor::none);
    grade.shear_psi = 285.0;
    grade.use = catalog::WoodUse::engineered;
    grade.engineered = catalog::EngineeredFactors{2250.0, volume, 0.136, wet};
    return grade;
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
    const Adjusted bending = adjust_bending(lumber(900.0), {1.5, 5.5, 0.0}, basis);
    CHECK_CLOSE(bending.value, 795.6, 1e-12, 0.0);
    // Fv 180 x 0.97 x 0.8 = 139.68; Fc,perp 625 x 0.67 = 418.75 with no incising
    CHECK_CLOSE(adjust_shear(lumber(900.0), basis).value, 139.68, 1e-12, 0.0);
    CHECK_CLOSE(adjust_compression_perp(lumber(900.0), basis).value, 418.75, 1e-12, 0.0);
    CHECK_CLOSE(adjust_modulus_min(lumber(900.0), basis).value, 580e3 * 0.9 * 0.95, 1e-12, 0.0);
    CHECK_CLOSE(adjust_modulus(lumber(900.0), basis).value, 1.6e6 * 0.9 * 0.95, 1e-12, 0.0);
}

TEST_CASE("weak wood is spared the wet service factor", "[unit]") {
    // Southern pine No. 2, 2 x 10: 800 psi, size in the value: 800 <= 1150
    const Adjusted bending =
        adjust_bending(lumber(800.0, catalog::SizeFactor::included), {1.5, 9.25, 0.0}, model::Basis{});
    CHECK(factor(bending, "C_M") == 1.0);
    CHECK(factor(bending, "C_F") == 1.0);
    CHECK_CLOSE(bending.value, 640.0, 1e-12, 0.0);
}

TEST_CASE("load duration raises bending and shear but not bearing", "[unit]") {
    model::Basis basis;
    basis.load_duration = 1.6;
    CHECK_CLOSE(adjust_shear(lumber(900.0), basis).value, 1.6 * 139.68, 1e-12, 0.0);
    CHECK_CLOSE(adjust_compression_perp(lumber(900.0), basis).value, 418.75, 1e-12, 0.0);
}

TEST_CASE("LRFD replaces load duration by conversion, resistance and time effect factors", "[unit]") {
    // Fv: 180 x 0.97 x 0.8 x 2.88 x 0.75 x 0.8; Fc,perp has no lambda: 418.75 x 1.67 x 0.90
    CHECK_CLOSE(adjust_shear(lumber(900.0), lrfd()).value, 139.68 * 2.88 * 0.75 * 0.8, 1e-12, 0.0);
    CHECK_CLOSE(adjust_compression_perp(lumber(900.0), lrfd()).value, 418.75 * 1.67 * 0.90, 1e-12, 0.0);
    CHECK(factor(adjust_shear(lumber(900.0), lrfd()), "C_D") == -1.0);
    CHECK(factor(adjust_compression_perp(lumber(900.0), lrfd()), "lambda") == -1.0);
}

TEST_CASE("a plank laid flat gains the flat use factor and cannot buckle", "[unit]") {
    const Adjusted flat = adjust_bending(lumber(900.0), {5.5, 1.5, 24.0}, model::Basis{});
    CHECK(factor(flat, "C_fu") == 1.15);
    CHECK(factor(flat, "C_L") == 1.0);
}

TEST_CASE("a block on edge takes the beam stability factor of its length", "[closed-form]") {
    // 3.5 x 5.5, 14.5 in long: le 29.87, RB^2 = 29.87 x 5.5/12.25 = 13.411, Emin' 510e3 x 0.9 x 0.95 = 436050,
    // FbE = 1.2 x 436050/13.411 = 39017 psi; Fb* = 1000 x 0.8 = 800; F = 48.77; CL = 26.195 - sqrt(686.2 - 51.34) =
    // 0.9989
    catalog::LumberGrade pine = lumber(1000.0, catalog::SizeFactor::included);
    pine.modulus_min_psi = 510e3;
    const Adjusted edge = adjust_bending(pine, {3.5, 5.5, 14.5}, model::Basis{});
    CHECK_CLOSE(factor(edge, "C_L"), 0.9989, 0.0, 1e-4);
    CHECK_CLOSE(edge.value, 799.1, 0.0, 0.1);
}

TEST_CASE("a blade of wood beyond the slenderness limit has no bending value", "[unit]") {
    const Adjusted blade =
        adjust_bending(lumber(1000.0, catalog::SizeFactor::included), {0.25, 12.0, 48.0}, model::Basis{});
    CHECK(blade.value == 0.0);
}

TEST_CASE("the steps multiply up to the value", "[property]") {
    for (const model::Method method : {model::Method::asd, model::Method::lrfd}) {
        for (const auto temperature : {model::Temperature::to_100F, model::Temperature::to_150F}) {
            model::Basis basis;
            basis.method = method;
            basis.temperature = temperature;
            const Adjusted bending = adjust_bending(lumber(900.0), {1.5, 9.25, 24.0}, basis);
            CHECK_CLOSE(bending.value, product(bending, 900.0), 1e-12, 0.0);
            const Adjusted bearing = adjust_compression_perp(lumber(900.0), basis);
            CHECK_CLOSE(bearing.value, product(bearing, 625.0), 1e-12, 0.0);
        }
    }
}

TEST_CASE("steps say which choices the file made", "[unit]") {
    model::Basis basis;
    basis.moisture = model::Moisture::dried_in_service;
    const Adjusted shear = adjust_shear(lumber(900.0), basis);
    const auto wet =
        std::find_if(shear.steps.begin(), shear.steps.end(), [](const Step& s) { return s.symbol == "C_M"; });
    REQUIRE(wet != shear.steps.end());
    CHECK(wet->formula == "given");
    CHECK(wet->value == 1.0);  // a member's service moisture counts, not the moisture it was built with
    CHECK(shear.steps.front().formula == "default");
}

TEST_CASE("a wet 6x6 post of No. 1 Douglas Fir-Larch keeps its bending value", "[published]") {
    // NDS Supplement 2018 Table 4D, read in a public transcription: Fb 1200 psi; CM 1.0 for Fb and Fv, 0.67 for
    // Fc,perp. Incised 0.8: 960 psi; 170 x 0.8 = 136 psi; 625 x 0.67 = 418.75 psi.
    catalog::LumberGrade post = lumber(1200.0);
    post.shear_psi = 170.0;
    post.use = catalog::WoodUse::posts_and_timbers;
    const model::Basis basis;
    CHECK_CLOSE(adjust_bending(post, {5.5, 5.5, 0.0}, basis).value, 960.0, 1e-12, 0.0);
    CHECK_CLOSE(adjust_shear(post, basis).value, 136.0, 1e-12, 0.0);
    CHECK_CLOSE(adjust_compression_perp(post, basis).value, 418.75, 1e-12, 0.0);
}

TEST_CASE("a beam and stringer 14 in deep takes the ninth root, and its own flat use factor", "[memory]") {
    // Table 4D: (12/13.25)^(1/9) = 0.98905; No. 1 flat 0.74 (memory).
    catalog::LumberGrade beam = lumber(1350.0);
    beam.use = catalog::WoodUse::beams_and_stringers;
    beam.timber_flat_use = 0.74;
    CHECK_CLOSE(factor(adjust_bending(beam, {5.5, 13.25, 0.0}, {}), "C_F"), 0.98905, 0.0, 1e-5);
    CHECK(factor(adjust_bending(beam, {13.25, 5.5, 0.0}, {}), "C_fu") == 0.74);
}

TEST_CASE("timbers of southern pine are tabulated wet and take no wet service factor", "[memory]") {
    catalog::LumberGrade post = lumber(1350.0);
    post.use = catalog::WoodUse::posts_and_timbers;
    post.wet_included = true;
    post.compression_perp_psi = 375.0;
    CHECK_CLOSE(adjust_compression_perp(post, {}).value, 375.0, 1e-12, 0.0);
}

TEST_CASE("a material of the file's own takes the factors the file states, and is never incised", "[closed-form]") {
    using Volume = model::OwnWood::Volume;
    using WetService = model::OwnWood::WetService;
    model::Basis basis;
    basis.incised = true;
    // On edge (12/14)^0.136 = 0.97925; flat its own value without it; in wet service as entered.
    const catalog::LumberGrade lvl = veneer(Volume::depth, WetService::included);
    const Adjusted edge = adjust_bending(lvl, {1.75, 14.0, 0.0}, basis);
    CHECK_CLOSE(edge.value, 2600.0 * 0.97925, 1e-5, 0.0);
    CHECK_CLOSE(product(edge, 2600.0), edge.value, 1e-12, 0.0);
    CHECK(factor(edge, "C_i") == -1.0);
    CHECK(factor(edge, "C_F") == -1.0);
    CHECK_CLOSE(adjust_bending(lvl, {14.0, 1.75, 0.0}, basis).value, 2250.0, 1e-12, 0.0);
    CHECK_CLOSE(adjust_shear(lvl, basis).value, 285.0, 1e-12, 0.0);
    // A square one has the lesser of its two values whichever way it is bent.
    CHECK_CLOSE(adjust_bending(lvl, {3.5, 3.5, 0.0}, basis).value, 2250.0, 1e-12, 0.0);
    // A shallower member gains nothing.
    CHECK_CLOSE(adjust_bending(lvl, {1.75, 9.25, 0.0}, basis).value, 2600.0, 1e-12, 0.0);
    // Glulam wet: Fb 0.8, Fc,perp 0.53.
    const catalog::LumberGrade glulam = veneer(Volume::glulam, WetService::glulam);
    CHECK_CLOSE(adjust_bending(glulam, {3.5, 9.25, 0.0}, basis).value, 0.8 * 2600.0, 1e-12, 0.0);
    CHECK_CLOSE(adjust_compression_perp(glulam, basis).value, 0.53 * 625.0, 1e-12, 0.0);
}

TEST_CASE("volume and stability factors of engineered wood are not taken together: the smaller counts", "[property]") {
    const catalog::LumberGrade lvl = veneer(model::OwnWood::Volume::depth, model::OwnWood::WetService::included);
    const Adjusted held = adjust_bending(lvl, {1.75, 14.0, 0.0}, {});
    CHECK(factor(held, "C_V") < 1.0);
    CHECK(factor(held, "C_L") == -1.0);
    const Adjusted slender = adjust_bending(lvl, {1.75, 14.0, 120.0}, {});
    CHECK(factor(slender, "C_V") == -1.0);
    CHECK(factor(slender, "C_L") < factor(held, "C_V"));
}

TEST_CASE("a large glulam beam has the volume factor of its species", "[published]") {
    // NDS 2018 Eq. 5.3-1, 21 ft long, 24 in deep, 10 1/4 in wide: (12/24 x 5.125/10.25)^(1/x), x 10, southern pine 20.
    const BentSection section{10.25, 24.0, 252.0};
    using Volume = model::OwnWood::Volume;
    const auto volume_factor = [&](Volume volume) {
        return factor(adjust_bending(veneer(volume, model::OwnWood::WetService::glulam), section, {}), "C_V");
    };
    CHECK_CLOSE(volume_factor(Volume::glulam), std::pow(0.25, 0.1), 1e-9, 0.0);
    CHECK_CLOSE(volume_factor(Volume::glulam_southern_pine), std::pow(0.25, 0.05), 1e-9, 0.0);
}
