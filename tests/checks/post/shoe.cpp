// A wood post's moment through its shoe: by a report, or by bearing in a closed one, by hand.
#include "checks/run_check.h"
#include "checks/steel_examples.h"
#include "support/compare.h"

using namespace toehold;
using checks::Status;
using test::run_check;
using test::step_value;

TEST_CASE("A shoe's moment needs a report", "[bad-input]") {
    auto resolved = test::wood_post_example();
    const auto demand = test::pushes(resolved, {90.0});
    const auto missing = run_check("post-shoe", resolved, demand).at(0);
    CHECK(missing.status == Status::missing_evidence);
    CHECK(missing.demand == Approx(8400.0));
    auto& shoe = std::get<model::WoodPost>(resolved.detail.post).shoe;
    shoe.allowable_moment_lb_in = 9000.0;
    shoe.moment_source = "test report";
    const auto result = run_check("post-shoe", resolved, demand).at(0);
    CHECK(result.capacity == 9000.0);
    CHECK(result.status == Status::holds);
    CHECK(result.clause == "report: test report");
    resolved.detail.basis.method = model::Method::lrfd;
    CHECK(run_check("post-shoe", resolved, demand).at(0).capacity == Approx(14400.0));
    CHECK(run_check("post-shoe", test::example_resolved(), demand).empty());
}

namespace {

catalog::Resolved closed_shoe() {
    auto resolved = test::wood_post_example();
    auto& shoe = std::get<model::WoodPost>(resolved.detail.post).shoe;
    shoe.form = model::ShoeForm::closed;
    return resolved;
}

const checks::CheckResult& with_aspect(const std::vector<checks::CheckResult>& results, const std::string& aspect) {
    for (const auto& result : results) {
        if (result.aspect == aspect) return result;
    }
    throw std::logic_error("no such aspect");
}

}  // namespace

// 3 1/2 in square in a shoe 6 in high on a 3/8 in plate: L = 5.625, h' = 41.625: a = h' - root(h'^2 - h' L + L^2/2) =
// 2.71073, w = 200/(5.625 - 5.42146) = 982.6 lb/in. Bearing 982.6/3.5 = 280.7 psi. The lower bearing, 2.71 in long,
// lies within d = 3.5 in of the upper one (NDS 3.4.3.1(a)): V = 200, 1.5 x 200/12.25 = 24.5 psi. The face: bands of e =
// 982.6/(2 F_c,perp') beside the corners, 982.6 e/8 lb in an inch on 1/4 in: 0.015625 Fy/1.67.
// 0.5.0 had no number.
TEST_CASE("A closed, welded shoe holds its post by bearing across the grain", "[unit]") {
    const auto resolved = closed_shoe();
    const auto results = run_check("post-shoe", resolved, test::pushes(resolved, {90.0}));
    REQUIRE(results.size() == 3);
    const auto& bearing = with_aspect(results, "bearing");
    CHECK_CLOSE(step_value(bearing, "w"), 982.62, 1e-4, 0.0);
    CHECK_CLOSE(bearing.demand, 280.75, 1e-4, 0.0);
    const double reference_psi = resolved.post_grade->compression_perp_psi;
    // Wet: C_M 0.67 (NDS Supplement Table 4B).
    CHECK_CLOSE(bearing.capacity, 0.67 * reference_psi, 1e-9, 0.0);
    CHECK_CLOSE(step_value(bearing, "f_peak"), (200.0 / 5.625 + 6.0 * 200.0 * (41.625 - 2.8125) / 31.640625) / 3.5,
                1e-9, 0.0);
    CHECK_CLOSE(with_aspect(results, "shear").demand, 24.4898, 1e-5, 0.0);
    const auto& face = with_aspect(results, "face");
    CHECK_CLOSE(face.demand, 982.62 * 982.62 / (16.0 * 0.67 * reference_psi), 1e-4, 0.0);
    CHECK(face.demand < 982.62 * 3.5 / 16.0);
    CHECK_CLOSE(face.capacity, resolved.post_metal.yield_psi * 0.015625 / 1.67, 1e-9, 0.0);
    CHECK_CLOSE(step_value(face, "b_i"), 3.5, 1e-12, 0.0);
}

// 12 in high: L = 11.625, a = 5.344, w = 213.4: the 1.84 in of the lower bearing beyond d count, 393 lb: 48.2
// psi.
TEST_CASE("In a tall shoe the force beyond the post's depth shears it", "[unit]") {
    auto resolved = closed_shoe();
    std::get<model::WoodPost>(resolved.detail.post).shoe.height_in = 12.0;
    const auto results = run_check("post-shoe", resolved, test::pushes(resolved, {90.0}));
    CHECK_CLOSE(with_aspect(results, "shear").demand, 48.179, 1e-3, 0.0);
}

TEST_CASE("A push on the diagonal bears by its components, each on its own faces", "[closed-form]") {
    const auto resolved = closed_shoe();
    const auto square = run_check("post-shoe", resolved, test::pushes(resolved, {90.0}));
    const auto diagonal = run_check("post-shoe", resolved, test::pushes(resolved, {45.0}));
    CHECK_CLOSE(with_aspect(diagonal, "bearing").demand, with_aspect(square, "bearing").demand * 0.70710678, 1e-7, 0.0);
    // A degree off it, on whichever side, the larger component counts: cos 44 = 0.7193398.
    for (const double push_deg : {44.0, 46.0}) {
        const auto beside = run_check("post-shoe", resolved, test::pushes(resolved, {push_deg}));
        CHECK_CLOSE(with_aspect(beside, "bearing").demand, with_aspect(square, "bearing").demand * 0.7193398, 1e-6,
                    0.0);
    }
}

TEST_CASE("A shoe that is bolted or not closed still needs its report", "[bad-input]") {
    auto resolved = closed_shoe();
    auto& shoe = std::get<model::WoodPost>(resolved.detail.post).shoe;
    const auto demand = test::pushes(resolved, {90.0});
    shoe.attachment = model::ShoeAttachment::bolted;
    CHECK(run_check("post-shoe", resolved, demand).at(0).status == Status::missing_evidence);
    shoe.attachment = model::ShoeAttachment::welded;
    shoe.form = model::ShoeForm::not_stated;
    CHECK(run_check("post-shoe", resolved, demand).at(0).status == Status::missing_evidence);
    // A reported moment goes before the geometry.
    shoe.form = model::ShoeForm::closed;
    shoe.allowable_moment_lb_in = 9000.0;
    REQUIRE(run_check("post-shoe", resolved, demand).size() == 1);
    CHECK(run_check("post-shoe", resolved, demand).at(0).capacity == 9000.0);
}

// 2.4 in high: L = 2.025, so that the bands of 2 F_c,perp' each would be wider than half of the 3 1/2 in face.
TEST_CASE("The bands that bear beside a shoe's corners are at most half of its face each", "[closed-form]") {
    auto resolved = closed_shoe();
    std::get<model::WoodPost>(resolved.detail.post).shoe.height_in = 2.4;
    const auto results = run_check("post-shoe", resolved, test::pushes(resolved, {90.0}));
    const auto& face = with_aspect(results, "face");
    CHECK(step_value(face, "w") > 2.0 * 1.75 * 0.67 * resolved.post_grade->compression_perp_psi);
    CHECK_CLOSE(step_value(face, "e"), 1.75, 1e-12, 0.0);
    CHECK_CLOSE(face.demand, step_value(face, "w") * 3.5 / 16.0, 1e-12, 0.0);
}
