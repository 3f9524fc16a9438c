// The incising factor, NDS 2018 Table 4.3.8: where it applies, and to what.
#include "checks/basis/incising.h"

#include "checks/basis/wood_basis.h"
#include "support/compare.h"

#include <algorithm>

using namespace toehold;
using catalog::IncisedBy;

namespace {

catalog::LumberGrade grade(IncisedBy by) {
    catalog::LumberGrade result;
    result.shear_psi = 180.0;
    result.compression_perp_psi = 625.0;
    result.incising = by;
    return result;
}

model::Basis stated(bool incised) {
    model::Basis basis;
    basis.incised = incised;
    return basis;
}

bool has_factor(const checks::Adjusted& adjusted) {
    return std::any_of(adjusted.steps.begin(), adjusted.steps.end(),
                       [](const checks::Step& step) { return step.symbol == "C_i"; });
}

}  // namespace

TEST_CASE("the file's word on incising goes before species and treatment", "[unit]") {
    CHECK(checks::incised(grade(IncisedBy::assumed), {}));
    CHECK_FALSE(checks::incised(grade(IncisedBy::species_needs_none), {}));
    CHECK_FALSE(checks::incised(grade(IncisedBy::untreated), {}));
    CHECK_FALSE(checks::incised(grade(IncisedBy::assumed), stated(false)));
    CHECK(checks::incised(grade(IncisedBy::species_needs_none), stated(true)));
}

TEST_CASE("shear of lumber that is not incised keeps its value, wet", "[published][B4]") {
    // 180 x 0.97 = 174.6 psi, and 0.8 of that incised. 0.5.0 took 0.8 off southern pine and off untreated lumber.
    CHECK_CLOSE(checks::adjust_shear(grade(IncisedBy::species_needs_none), {}).value, 174.6, 1e-12, 0.0);
    CHECK_CLOSE(checks::adjust_shear(grade(IncisedBy::untreated), {}).value, 174.6, 1e-12, 0.0);
    CHECK_CLOSE(checks::adjust_shear(grade(IncisedBy::assumed), {}).value, 0.8 * 174.6, 1e-12, 0.0);
}

TEST_CASE("bearing across the grain knows no incising, and shows no factor of it", "[published]") {
    const checks::Adjusted bearing = checks::adjust_compression_perp(grade(IncisedBy::assumed), model::Basis{});
    CHECK_FALSE(has_factor(bearing));
    CHECK(has_factor(checks::adjust_shear(grade(IncisedBy::assumed), model::Basis{})));
    CHECK_CLOSE(bearing.value, 625.0 * 0.67, 1e-12, 0.0);
}
