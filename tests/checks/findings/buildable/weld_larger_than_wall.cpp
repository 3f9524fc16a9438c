// The fillet's leg against the thinner part it joins.
#include "checks/findings/buildable/plates.h"
#include "checks/run_check.h"
#include "checks/steel_examples.h"
#include "support/compare.h"

using namespace toehold;
using checks::Severity;

namespace {

std::vector<checks::Finding> findings_of(double leg_in, double wall_in, double plate_in) {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.post = model::RectangularTube{2.0, 2.0, wall_in, "steel"};
    on_deck(resolved.detail).weld->leg_in = leg_in;
    on_deck(resolved.detail).plate.thickness_in = plate_in;
    return test::run_finding("weld-larger-than-wall", resolved);
}

}  // namespace

TEST_CASE("A leg of more than twice the thinner part fails", "[unit][A2]") {
    // 1 in on a wall of 3/16 in: 2 x 3/16 = 3/8 in at most.
    const auto findings = findings_of(1.0, 0.1875, 0.375);
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].severity == Severity::fails);
    CHECK(test::about(findings[0]) == "weld");
    CHECK(test::says(findings[0].message, "leg of 3/8 in or less"));
    CHECK(findings_of(0.25, 0.125, 0.375).empty());
    CHECK(findings_of(6.35 / 25.4, 3.175 / 25.4, 0.375).empty());
    CHECK(findings_of(0.2501, 0.125, 0.375).size() == 1);
    CHECK(findings_of(0.5, 0.5, 0.25).empty());
    CHECK(findings_of(0.5625, 0.5, 0.25).size() == 1);
    CHECK(test::run_finding("weld-larger-than-wall", test::example_resolved()).empty());
}

TEST_CASE("Where nothing is welded no leg is too large", "[unit]") {
    catalog::Resolved resolved = test::wood_post_example();
    on_deck(resolved.detail).weld->leg_in = 1.0;
    CHECK(test::run_finding("weld-larger-than-wall", resolved).size() == 1);
    std::get<model::WoodPost>(resolved.detail.post).shoe.attachment = model::ShoeAttachment::bolted;
    CHECK(test::run_finding("weld-larger-than-wall", resolved).empty());
    std::get<model::WoodPost>(resolved.detail.post).shoe.attachment = model::ShoeAttachment::welded;
    on_deck(resolved.detail).weld.reset();
    CHECK(test::run_finding("weld-larger-than-wall", resolved).empty());
}

TEST_CASE("A groove is no deeper than the wall it is cut into", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();  // wall of 1/8 in
    model::Weld& weld = *on_deck(resolved.detail).weld;
    weld.kind = model::WeldKind::partial_penetration;
    weld.leg_in = 0.0;
    weld.throat_in = 0.125;
    CHECK(test::run_finding("weld-larger-than-wall", resolved).empty());
    CHECK(test::run_finding("weld-too-small", resolved).empty());
    weld.throat_in = 0.1875;
    const auto findings = test::run_finding("weld-larger-than-wall", resolved);
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].severity == Severity::fails);
    CHECK(test::says(findings[0].message, "more than the 1/8 in of metal"));
}
