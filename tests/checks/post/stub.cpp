// A tube post over its stub, by hand: statics of the overlap, walls and shear of both.
#include "checks/run_check.h"
#include "checks/steel_examples.h"
#include "support/compare.h"

#include <algorithm>

using namespace toehold;
using checks::Status;
using test::run_check;
using test::step_value;

namespace {

/// The stub of a softer steel than the tube.
catalog::Resolved over_stub() {
    auto resolved = test::post_over_stub_example();
    resolved.stub_metal->yield_psi = 36000.0;
    return resolved;
}

std::vector<checks::CheckResult> overlap(const catalog::Resolved& resolved) {
    return run_check("post-overlap", resolved, test::pushes(resolved, {90.0}));
}

const checks::CheckResult& with_aspect(const std::vector<checks::CheckResult>& results, const std::string& aspect) {
    return *std::find_if(results.begin(), results.end(), [&](const auto& one) { return one.aspect == aspect; });
}

}  // namespace

// The tube stands on the weld, 0.5625 in up: L = 5.4375, h' = 41.4375: a = 41.4375 - root(1717.066 - 225.316 + 14.783)
// = 2.62341, w = 200/(5.4375 - 5.24683) = 1048.9 lb/in, R_u = 2951.8, R_l = 2751.8 lb. Side walls of the tube, t
// 0.174375: 2 x 46,000 x 0.174375/1.50 = 10,695 lb/in. Shear of the tube: 0.6 x 46,000 x 2 (2 - 0.523125) 0.174375/1.67
// = 8512 lb; of the stub 0.6 x 36,000 x 2.44141/1.5/1.67 = 21,051 lb.
TEST_CASE("A post over its stub is held by a couple over the overlap", "[unit]") {
    const auto results = overlap(over_stub());
    REQUIRE(results.size() == 3);
    const auto& walls = with_aspect(results, "post-walls");
    CHECK_CLOSE(walls.demand, 1048.93, 1e-4, 0.0);
    CHECK_CLOSE(walls.capacity, 10695.0, 1e-6, 0.0);
    const auto& post = with_aspect(results, "post-shear");
    CHECK_CLOSE(post.demand, 2751.8, 1e-4, 0.0);
    CHECK_CLOSE(post.capacity, 8512.0, 1e-3, 0.0);
    const auto& stub = with_aspect(results, "stub-shear");
    CHECK_CLOSE(stub.demand, 2951.8, 1e-4, 0.0);
    CHECK_CLOSE(stub.capacity, 21051.0, 1e-3, 0.0);
    for (const auto& result : results) CHECK(result.status == Status::holds);
}

TEST_CASE("A short stub presses harder, a hollow one has walls of its own", "[unit]") {
    auto resolved = over_stub();
    auto& stub = *std::get<model::RectangularTube>(resolved.detail.post).stub;
    const double long_one = with_aspect(overlap(resolved), "post-walls").demand;
    stub.height_in = 2.0;
    CHECK(with_aspect(overlap(resolved), "post-walls").demand > 10.0 * long_one);
    stub.height_in = 6.0;
    stub.wall_in = 0.25;
    const auto hollow = overlap(resolved);
    REQUIRE(hollow.size() == 4);
    // 2 x 36,000 x 0.93 x 0.25/1.50.
    CHECK_CLOSE(with_aspect(hollow, "stub-walls").capacity, 11160.0, 1e-9, 0.0);
    stub.height_in = 0.5;
    CHECK(overlap(resolved).at(0).status == Status::no_path);
    CHECK(overlap(test::example_resolved()).empty());
}

TEST_CASE("A post that nothing keeps on its stub fails: the load acts upward too", "[unit]") {
    auto resolved = over_stub();
    CHECK(test::run_finding("stub-not-held", resolved).empty());
    std::get<model::RectangularTube>(resolved.detail.post).stub->fixing = model::StubFixing::none;
    const auto loose = test::run_finding("stub-not-held", resolved);
    REQUIRE(loose.size() == 1);
    CHECK(loose[0].severity == checks::Severity::fails);
}
