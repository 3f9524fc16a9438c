#include "drawing/parts.h"

#include "review/review.h"
#include "support/compare.h"
#include "support/example.h"
#include "support/shipped.h"

using namespace toehold;
using namespace toehold::drawing;
using Parts = std::vector<std::string>;

namespace {

/// Two of each kind of member, a ledger and a beam, one shim.
model::BaseDetail framed() {
    model::BaseDetail detail = test::example_resolved().detail;
    on_deck(detail).layers.shims.push_back({});
    detail.framing.joists = model::Joists{};
    detail.framing.joists->members = {{"J1", 0.0, 1}, {"J2", 16.0, 1}};
    model::Rim rim;
    rim.id = "R1";
    detail.framing.rims = {rim};
    model::JoistSupport ledger, beam;
    ledger.id = "S1";
    beam.id = "S2";
    detail.framing.supports = {ledger, beam};
    return detail;
}

}  // namespace

TEST_CASE("A part's name is its kind and its id") {
    CHECK(anchor_part("A") == "anchor A");
    CHECK(id_of("anchor A", "anchor") == "A");
    CHECK(id_of("block B 1", "block") == "B 1");
    CHECK(id_of("anchor A", "block").empty());
    CHECK(id_of("anchor", "anchor").empty());
    CHECK(id_of("anchor ", "anchor").empty());
    CHECK(id_of("anchors A", "anchor").empty());
}

TEST_CASE("The parts of a detail come in the order of the load path") {
    CHECK(drawing::parts(framed()) == Parts{"push", "guard", "post", "weld", "plate", "anchor A", "anchor B",
                                            "anchor C", "anchor D", "decking", "shim 1", "block B1", "block B2",
                                            "joist J1", "joist J2", "rim R1", "support S1", "support S2"});
}

TEST_CASE("What is not there is no part") {
    model::BaseDetail detail = framed();
    on_deck(detail).weld.reset();
    on_deck(detail).layers = {};
    detail.framing = {};
    CHECK(drawing::parts(detail) ==
          Parts{"push", "guard", "post", "plate", "anchor A", "anchor B", "anchor C", "anchor D"});
}

TEST_CASE("Every result and finding of the shipped details' reviews points at parts that are there") {
    REQUIRE(test::demo_names().size() > 10);
    for (const std::string& name : test::demo_names()) {
        const catalog::Resolved resolved = test::shipped_detail(name);
        const Parts all = drawing::parts(resolved.detail);
        const auto points_at_parts = [&](const auto& one) {
            INFO(name << ": " << one.id << ", " << one.subject);
            const Parts meant = parts_of(one, resolved.detail);
            CHECK_FALSE(meant.empty());
            for (const std::string& part : meant) CHECK(contains(all, part));
        };
        const review::Review review = review::evaluate(resolved, "");
        for (const checks::CheckResult& check : review.checks) points_at_parts(check);
        for (const checks::Finding& finding : review.findings) points_at_parts(finding);
    }
}
