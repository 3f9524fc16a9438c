// Heads and washers beside the example's post: its face 1 in from the center, the weld's toe 3/16 in beyond.
#include "checks/findings/buildable/plates.h"
#include "checks/run_check.h"
#include "checks/steel_examples.h"
#include "support/compare.h"

#include <cmath>

using namespace toehold;
using checks::Severity;
using test::one_anchor;

namespace {

std::vector<checks::Finding> findings_of(const catalog::Resolved& resolved) {
    return test::run_finding("head-on-weld", resolved);
}

}  // namespace

TEST_CASE("A head on the weld fails, and one that touches its toe does not", "[unit][A2]") {
    // Half its flats and the leg: 0.28125 + 0.1875 = 0.46875 in from the face; 0.4 is there.
    const auto findings = findings_of(one_anchor({-1.4, 0.0}));
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].severity == Severity::fails);
    CHECK(test::about(findings[0]) == "anchor A");
    CHECK(test::says(findings[0].message, "Head of anchor A lies on the weld"));
    CHECK(test::says(findings[0].message, "0.4 in from the face of the post and needs 15/32 in"));
    CHECK(findings_of(one_anchor({-1.46875, 0.0})).empty());
    CHECK(findings_of(one_anchor({-1.46874, 0.0})).size() == 1);
    CHECK(findings_of(test::example_resolved()).empty());
}

TEST_CASE("A head that reaches the post itself runs into it", "[unit]") {
    const auto findings = findings_of(one_anchor({-1.25, 0.0}));
    REQUIRE(findings.size() == 1);
    CHECK(test::says(findings[0].message, "Head of anchor A runs into the post"));
}

TEST_CASE("A washer counts with its outside diameter", "[unit]") {
    // 0.5 + 0.1875 = 0.6875 in from the face.
    catalog::Resolved resolved = one_anchor({-1.6, 0.0});
    CHECK(findings_of(resolved).empty());
    test::add_washers(resolved, 1.0);
    REQUIRE(findings_of(resolved).size() == 1);
    CHECK(test::says(findings_of(resolved)[0].message, "Washer of anchor A lies on the weld"));
    CHECK(test::says(findings_of(resolved)[0].message, "needs 11/16 in"));
    on_deck(resolved.detail).plate.holes[0].center = {-1.6875, 0.0};
    CHECK(findings_of(resolved).empty());
}

TEST_CASE("Around the post's corner the weld's toe is round", "[closed-form]") {
    // On the diagonal the washer's center stands 0.6875 / sqrt(2) = 0.48614 in off each face.
    catalog::Resolved resolved = one_anchor({1.4862, 1.4862});
    test::add_washers(resolved, 1.0);
    CHECK(findings_of(resolved).empty());
    on_deck(resolved.detail).plate.holes[0].center = {1.4861, 1.4861};
    CHECK(findings_of(resolved).size() == 1);
}

TEST_CASE("A slot's washer may stand at its inner end", "[unit]") {
    // Half the straight part of a slot 1 in long is 0.28125; 1.96875 - 0.28125 = 1.6875.
    catalog::Resolved resolved = one_anchor({-1.96875, 0.0}, model::Slot{1.0, 0.4375, 0.0});
    test::add_washers(resolved, 1.0);
    CHECK(findings_of(resolved).empty());
    on_deck(resolved.detail).plate.holes[0].center = {-1.96, 0.0};
    CHECK(findings_of(resolved).size() == 1);
}

TEST_CASE("Without a weld only the post is in the way", "[unit]") {
    catalog::Resolved resolved = one_anchor({-1.3, 0.0});
    CHECK(findings_of(resolved).size() == 1);
    on_deck(resolved.detail).weld.reset();
    CHECK(findings_of(resolved).empty());
    catalog::Resolved shoe = test::wood_post_example();  // its face 2 in from the center
    on_deck(shoe.detail).plate.holes[0].center = {-2.3, 0.0};
    CHECK(findings_of(shoe).size() == 1);
    std::get<model::WoodPost>(shoe.detail.post).shoe.attachment = model::ShoeAttachment::bolted;
    CHECK(findings_of(shoe).empty());
}

TEST_CASE("A hole under the post and a head of unknown size are not this rule's", "[unit]") {
    CHECK(findings_of(one_anchor({-1.1, 0.0})).empty());
    catalog::Resolved resolved = one_anchor({-1.4, 0.0});
    resolved.anchors[0].kind = catalog::FastenerKind::reported;
    resolved.anchors[0].head_width_in = 0.0;
    CHECK(findings_of(resolved).empty());
}
