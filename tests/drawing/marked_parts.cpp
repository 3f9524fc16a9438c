#include "drawing/marked_parts.h"

#include "review/review.h"
#include "support/compare.h"
#include "support/example.h"
#include "support/parts.h"
#include "support/shipped.h"

using namespace toehold;
namespace parts = toehold::test::parts;
using Parts = std::vector<model::PartId>;

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
    ledger.kind = model::JoistSupport::Kind::ledger;
    ledger.id = "S1";
    beam.id = "S2";
    detail.framing.supports = {ledger, beam};
    return detail;
}

}  // namespace

TEST_CASE("The parts of a detail come in the order of the load path") {
    CHECK(model::parts(framed()) == Parts{parts::push, parts::guard, parts::post, parts::weld, parts::plate,
                                          parts::anchor("A"), parts::anchor("B"), parts::anchor("C"),
                                          parts::anchor("D"), parts::decking, parts::shim(1), parts::block("B1"),
                                          parts::block("B2"), parts::joist("J1"), parts::joist("J2"), parts::rim("R1"),
                                          parts::ledger("S1"), parts::beam("S2")});
}

TEST_CASE("What is not there is no part") {
    model::BaseDetail detail = framed();
    on_deck(detail).weld.reset();
    on_deck(detail).layers = {};
    detail.framing = {};
    CHECK(model::parts(detail) == Parts{parts::push, parts::guard, parts::post, parts::plate, parts::anchor("A"),
                                        parts::anchor("B"), parts::anchor("C"), parts::anchor("D")});
}

TEST_CASE("Every result and finding of the shipped details' reviews points at parts that are there") {
    REQUIRE(test::demo_names().size() > 10);
    for (const std::string& name : test::demo_names()) {
        const catalog::Resolved resolved = test::shipped_detail(name);
        const Parts all = model::parts(resolved.detail);
        const auto points_at_parts = [&](const auto& one) {
            INFO(name << ": " << one.id << ", " << model::key(one.part));
            const Parts meant = drawing::marked_parts(one.part, resolved.detail);
            CHECK_FALSE(meant.empty());
            for (const model::PartId& part : meant) CHECK(model::contains(all, part));
        };
        const review::Review review = review::evaluate(resolved, "");
        for (const checks::CheckResult& check : review.checks) points_at_parts(check);
        for (const checks::Finding& finding : review.findings) points_at_parts(finding);
    }
}
