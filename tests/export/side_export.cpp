// A review of a post on a member's side as text and JSON: heights for places in plan, ties and couples by hand, and no
// word of a plate it does not have.
#include "export/json/review_json.h"
#include "export/text/review_text.h"

#include "demand/demand.h"
#include "support/compare.h"
#include "support/contains.h"
#include "support/shipped.h"
#include "support/side_detail.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

using namespace toehold;

namespace {

/// With ties, under few pushes.
const review::Review& tied_review() {
    static const review::Review review = [] {
        model::BaseDetail detail = test::side_detail();
        test::add_ties(detail);
        const catalog::Resolved resolved = test::resolved_by_shipped(detail);
        return review::evaluate(resolved, demand::find_demand(resolved, demand::Sampling::probe()), "digest");
    }();
    return review;
}

/// Without the breaks of its lines.
std::string in_one_line(const std::string& text) {
    std::string joined;
    for (const char one : text) {
        const bool blank = one == ' ' || one == '\n';
        if (!blank || joined.empty() || joined.back() != ' ') joined += blank ? ' ' : one;
    }
    return joined;
}

}  // namespace

TEST_CASE("the text of a side has heights, ties and the couple by hand, and no plate", "[unit]") {
    const std::string text = in_one_line(exporting::review_text(tied_review(), {}));
    CHECK(test::contains(text, "tie TU"));
    CHECK(test::contains(text, "joist J3"));
    CHECK(test::contains(text, "LARGEST"));
    CHECK(test::contains(text, "By hand: "));
    CHECK(test::contains(text, "a rigid post"));
    CHECK(test::contains(text, "above the top of the member the post is fastened to"));
    CHECK(test::contains(text, "outside face of R1"));
    CHECK_FALSE(test::contains(text, "in a shoe"));
    CHECK_FALSE(test::contains(text, "bearing plane"));
    CHECK_FALSE(test::contains(text, "heel anchors"));
    CHECK_FALSE(test::contains(text, "Bearing of the plate"));
}

TEST_CASE("the JSON of a side adds ties and couples, and renames nothing", "[unit]") {
    const nlohmann::json review = nlohmann::json::parse(exporting::review_json(tied_review()));
    CHECK(review["schema"] == "toehold.review/1");
    REQUIRE(review["anchors"].size() == 2);
    CHECK(review["anchors"][0]["x_in"] == 0.0);
    CHECK(review["anchors"][0]["z_in"] == -2.0);
    CHECK(review["anchors"][0]["axis"][1] == -1.0);
    REQUIRE(review["ties"].size() == 2);
    CHECK(review["ties"][0]["id"] == "TU");
    CHECK(review["ties"][0]["z_in"] == -2.0);
    CHECK(review["ties"][0]["allowable_lb"] == 1800.0);
    // Pushes outward draw the upper tie.
    CHECK(review["ties"][0]["tension_lb"].get<double>() > 0.0);
    REQUIRE(review["hand_couples"].size() == 2);
    const auto& couple = review["hand_couples"][0];
    CHECK_CLOSE(couple["tension_lb"].get<double>(),
                couple["push_lb"].get<double>() * couple["height_in"].get<double>() / couple["arm_in"].get<double>(),
                1e-9, 0.0);
    // About the post's end, 9 in below the rim's top: upper bolts 2 in below it; guard 36 in over 1 in boards.
    CHECK_CLOSE(couple["arm_in"].get<double>(), 7.0, 1e-9, 0.0);
    CHECK_CLOSE(couple["height_in"].get<double>(), 46.0, 1e-9, 0.0);
}

TEST_CASE("a plate on the deck has neither ties nor couples", "[unit]") {
    model::BaseDetail detail = test::demo_detail("heron-landing-lags-in-deep-blocks");
    detail.basis.plate = model::PlateBehaviour::rigid;
    const catalog::Resolved resolved = test::resolved_by_shipped(detail);
    const review::Review review =
        review::evaluate(resolved, demand::find_demand(resolved, demand::Sampling::probe()), "digest");
    const nlohmann::json json = nlohmann::json::parse(exporting::review_json(review));
    CHECK(json["ties"].empty());
    CHECK(json["hand_couples"].empty());
    CHECK(test::contains(in_one_line(exporting::review_text(review, {})), "above the bearing plane"));
}
