// A line of guard as text and as JSON: what each post sees of a push, the lone result beside it, the rail's checks.
#include "export/json/project_json.h"
#include "export/text/line_text.h"
#include "export/text/project_text.h"
#include "review/project_review.h"
#include "support/contains.h"
#include "wording/line.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

using namespace toehold;
using test::contains;
using Json = nlohmann::json;

namespace {

/// Three posts, the middle one with less of a push, on a rail that bends too much.
review::LineReview made_up(bool sharing) {
    review::LineReview line;
    line.id = "L1";
    line.rail = line.continuous = true;
    line.sharing = sharing;
    line.push_lb = 200.0;
    line.load_along = true;
    line.proof = review::LineProof{9, 3e-12};
    for (int index = 0; index < 3; ++index) {
        review::PostShare post;
        post.post = "P" + std::to_string(index + 1);
        post.role = index == 1 ? model::PostRole::line : model::PostRole::end;
        post.share = index == 1 ? 0.62 : 0.81;
        post.stood = {"P1", "P2", index == 1 ? 36.0 : 0.0, 72.0, 0.0};
        post.counted = sharing ? post.share : 1.0;
        post.line_length_in = 80.0;
        post.half_spans_in = 72.0;
        if (sharing) {
            post.lone_verdict = review::Verdict::inadequate;
            review::Governing lone;
            lone.check = "anchor-withdrawal";
            lone.title = format::phrase("Anchor withdrawal");
            lone.part = model::anchor_part("A");
            lone.ratio = 1.37;
            post.lone = lone;
        }
        line.posts.push_back(post);
    }
    checks::CheckResult bending;
    bending.id = "rail-bending";
    bending.title = format::phrase("Rail bending");
    bending.part = model::rail_part("P1", "P2");
    bending.demand = 3600.0;
    bending.capacity = 3000.0;
    bending.unit = "lb in";
    checks::conclude(bending);
    line.checks = {bending};
    line.verdict = review::Verdict::inadequate;
    line.cause = review::fact_of(bending);
    line.movements = {{model::rail_part("P1", "P2"), {0.9, 0.0, 0.4, 1.1}, 2.5}};
    line.rests_on = {format::verbatim("The rail in one piece.")};
    return line;
}

review::ProjectReview project(bool sharing) {
    review::ProjectReview review;
    review.project = "Test pier";
    review.verdict = review::Verdict::inadequate;
    review.lines = {made_up(sharing)};
    return review;
}

}  // namespace

TEST_CASE("Shares stand in the text beside what counts, and what counting would rest on", "[unit]") {
    const std::string text = exporting::line_text(made_up(false), {});
    INFO(text);
    for (const char* words : {"sharing not counted", "lone", "0.62", "1.00", "at P1", "80 in",
                              "Counting on sharing would rest on", "rail P1-P2", "1.20", "was withdrawn"})
        CHECK(contains(text, words));
}

TEST_CASE("Lengths of rail are said only where a load along it asks for them", "[unit]") {
    review::LineReview line = made_up(false);
    CHECK(contains(exporting::line_text(line, {}), "80 in"));  // the head breaks: rail, taken
    line.load_along = false;
    const std::string text = exporting::line_text(line, {});
    CHECK_FALSE(contains(text, "80 in"));
    CHECK_FALSE(contains(text, "taken"));
}

TEST_CASE("A line says how many posts it has of each role, and how well its solve balances", "[unit]") {
    const std::string text = exporting::line_text(made_up(false), {});
    CHECK(contains(text, "1 line post, 2 ends."));
    CHECK(contains(text, "Proof: 9 frames"));
    CHECK(format::english(wording::role_counts(
              {{model::PostRole::line, 12}, {model::PostRole::corner, 2}, {model::PostRole::end, 2}})) ==
          "12 line posts, 2 corners, 2 ends");
    CHECK(wording::role_counts({}).empty());
    review::ProjectReview all = project(false);
    all.roles = {{model::PostRole::corner, 1}, {model::PostRole::lone, 2}};
    CHECK(contains(exporting::project_text(all, {{}, false}, false), "In all: 1 corner, 2 posts in no line."));
}

TEST_CASE("With sharing the lone result stands beside it", "[unit]") {
    const std::string text = exporting::line_text(made_up(true), {});
    for (const char* words : {"sharing counted", "lone, first", "1.37", "Anchor withdrawal", "Sharing rests on"})
        CHECK(contains(text, words));
}

TEST_CASE("A project says a failing rail first", "[unit]") {
    const std::string text = exporting::project_text(project(true), {{}, false}, false);
    CHECK(contains(text, "counts on its rail to share the push, and the rail cannot carry it"));
    CHECK(text.find("cannot carry it") < text.find("LINES OF GUARD"));
    CHECK(wording::line_reason(review::ProjectReview{}).empty());
}

TEST_CASE("Lines in JSON are keyed for programs", "[unit]") {
    const Json json = Json::parse(exporting::project_json(project(true)));
    CHECK(json["schema"] == "toehold.project/1");
    REQUIRE(json["lines"].size() == 1);
    const Json& line = json["lines"][0];
    CHECK(line["sharing"] == true);
    CHECK(line["verdict"] == "inadequate");
    CHECK(line["posts"][1]["share"] == 0.62);
    CHECK(line["posts"][1]["counted"] == 0.62);
    CHECK(line["posts"][1]["push_stood"]["along_in"] == 36.0);
    CHECK(line["posts"][1]["lone"]["ratio"] == 1.37);
    CHECK(line["checks"][0]["id"] == "rail-bending");
    CHECK(line["checks"][0]["part"]["key"] == "rail P1-P2");
    CHECK(line["movement"][0]["limit_in"] == 2.5);
    CHECK(line["roles"] == Json::parse(R"([{"role": "line", "quantity": 1}, {"role": "end", "quantity": 2}])"));
    CHECK(line["load_along_rail"] == true);
    CHECK(line["proof"]["frames"] == 9);
    CHECK(json["roles"].empty());
    const Json off = Json::parse(exporting::project_json(project(false)));
    CHECK(off["lines"][0]["posts"][0]["lone"].is_null());
}
