// Engineered wood for dry service in a detail that is not dry.
#include "checks/run_check.h"

#include "support/example.h"

#include <catch2/catch.hpp>

using namespace toehold;
using checks::Severity;

namespace {

catalog::Resolved of_veneer(model::OwnWood::WetService wet) {
    catalog::Resolved resolved = test::example_resolved();
    catalog::MemberMaterial& wood = resolved.blocks[0];
    wood.species.name = "1.9E LVL";
    wood.grade.use = catalog::WoodUse::engineered;
    wood.grade.engineered = catalog::EngineeredFactors{2250.0, model::OwnWood::Volume::none, 0.0, wet};
    return resolved;
}

}  // namespace

TEST_CASE("values for dry service alone cannot prove a wet deck", "[unit]") {
    catalog::Resolved resolved = of_veneer(model::OwnWood::WetService::dry_only);
    const auto findings = test::run_finding("wood-dry-only", resolved);
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].severity == Severity::missing);
    CHECK(test::about(findings[0]) == "block B1");
    CHECK(test::says(findings[0].message, "1.9E LVL"));
    resolved.detail.basis.moisture = model::Moisture::dry;
    CHECK(test::run_finding("wood-dry-only", resolved).empty());
}

TEST_CASE("values that hold when wet, and sawn lumber, raise nothing", "[unit]") {
    CHECK(test::run_finding("wood-dry-only", of_veneer(model::OwnWood::WetService::included)).empty());
    CHECK(test::run_finding("wood-dry-only", test::example_resolved()).empty());
}
