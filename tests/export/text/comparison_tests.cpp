// Comparisons as text and JSON.
#include "export/fake_review.h"
#include "export/json/comparison_json.h"
#include "export/text/columns.h"
#include "export/text/comparison_text.h"
#include "support/contains.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <sstream>

using namespace toehold;
using exporting::comparison_json;
using exporting::comparison_text;
using exporting::TextOptions;
using test::contains;
using units::System;
using Json = nlohmann::json;

namespace {

std::size_t widest_line(const std::string& text) {
    std::istringstream lines(text);
    std::size_t widest = 0;
    for (std::string line; std::getline(lines, line);) widest = std::max(widest, exporting::columns(line));
    return widest;
}

review::Review mended() {
    review::Review review = test::fake_review();
    review.verdict = review::Verdict::adequate;
    review.resolved.detail.guard.height_in = 36.0;
    review.checks.erase(review.checks.begin());
    for (checks::CheckResult& result : review.checks) {
        if (result.part != model::anchor_part("A")) continue;
        result.demand = 500.0;
        checks::conclude(result);
    }
    review.findings.erase(review.findings.begin());
    return review;
}

review::Comparison turned() { return review::compare(test::fake_review(), "submitted.xml", mended(), "own.xml"); }

std::string text_of(const review::Comparison& comparison, bool all_rows = false, System system = System::us) {
    return comparison_text(comparison, TextOptions{{system}, all_rows});
}

}  // namespace

TEST_CASE("the first line says whether the verdict turns", "[unit]") {
    CHECK(text_of(turned()).rfind("VERDICT CHANGES: the first is INADEQUATE, the second ADEQUATE\n", 0) == 0);
    const review::Review same = test::fake_review();
    CHECK(text_of(review::compare(same, "a", same, "b")).rfind("SAME VERDICT: INADEQUATE on both sides\n", 0) == 0);
}

TEST_CASE("the text shows only what differs, or every row", "[unit]") {
    const std::string text = text_of(turned());
    for (const char* part :
         {"submitted.xml: example for tests", "own.xml: example for tests", "INPUT DIFFERENCES", "guard / height",
          "36 in", "CHECKS WHOSE STATUS CHANGES, larger change first: 2", "no such result", "not there", "NO LOAD",
          "first demand 1873 lb, capacity 1000 lb; second demand 500 lb, capacity", "1.87", "0.50",
          "CHECKS WITHOUT CHANGE: 3 (--all", "the decking may not bear"}) {
        INFO(part);
        CHECK(contains(text, part));
    }
    CHECK_FALSE(contains(text, "anchor B"));
    CHECK_FALSE(contains(text, "say how it is protected"));
    const std::string all = text_of(turned(), true);
    CHECK(contains(all, "CHECKS WITHOUT CHANGE: 3\n"));
    CHECK(contains(all, "anchor B"));
    const review::Review same = test::fake_review();
    const std::string nothing = text_of(review::compare(same, "a", same, "b"));
    CHECK(contains(nothing, "INPUT: the same on both sides"));
    CHECK(contains(nothing, "FINDINGS: the same on both sides"));
}

TEST_CASE("SI shows forces in newtons and the input in millimetres", "[published]") {
    // 1 in = 25.4 mm, 1 lbf = 4.448 222 N (NIST SP 811, 2008, B.8): 36 in, 500 lb.
    const std::string text = text_of(turned(), false, System::si);
    CHECK(contains(text, "914.4 mm"));
    CHECK(contains(text, "second demand 2224 N"));
}

TEST_CASE("values of the input are shown as the reader writes them, and never alike when they differ", "[unit]") {
    using Pair = std::pair<std::string, std::string>;
    CHECK(exporting::shown_values("3.375 in", "", System::us) == Pair{"3 3/8 in", "-"});
    CHECK(exporting::shown_values("200 lbf", "890 lbf", System::si) == Pair{"889.644 N", "3958.92 N"});
    CHECK(exporting::shown_values("leg 0.25 in, filler e70", "", System::us).first == "leg 1/4 in, filler e70");
    CHECK(exporting::shown_values("washer (width 2.5 in)", "", System::us).first == "washer (width 2 1/2 in)");
    CHECK(exporting::shown_values("3.00001 in", "3 in", System::us) == Pair{"3.00001 in", "3 in"});
    CHECK(exporting::shown_values("two  blanks in 3", "1.6", System::us) == Pair{"two  blanks in 3", "1.6"});
    CHECK(exporting::shown_values("lag-3/8", "ends with ", System::us) == Pair{"lag-3/8", "ends with "});
}

TEST_CASE("no line of a comparison is wider than the page, whatever the names", "[property]") {
    for (const std::string& name :
         {std::string("A"), std::string(500, 'x'), std::string("word ") + std::string(99, 'y')}) {
        const review::Comparison comparison =
            review::compare(test::fake_review_saying(name), name, test::fake_review(), "own.xml");
        for (const System system : {System::us, System::si}) {
            CHECK(widest_line(text_of(comparison, true, system)) <= exporting::page_columns);
        }
    }
}

TEST_CASE("the JSON holds both sides unrounded, and null for what is not there", "[unit]") {
    const Json json = Json::parse(comparison_json(turned(), false));
    CHECK(json["schema"] == "toehold.comparison/1");
    CHECK(json["verdict_turns"] == true);
    CHECK(json["first"]["label"] == "submitted.xml");
    CHECK(json["first"]["verdict"] == "inadequate");
    CHECK(json["second"]["verdict"] == "adequate");
    CHECK(json["first"]["governing"]["ratio"].is_null());
    CHECK(json["first"]["largest_pull"]["tension_lb"] == 1873.0);
    CHECK(json["input"][0] == Json({{"place", "guard / height"}, {"first", "42 in"}, {"second", "36 in"}}));
    REQUIRE(json["checks"].size() == 2);
    CHECK(json["same_checks"] == 3);
    CHECK(json["checks"][0]["second"].is_null());
    CHECK(json["checks"][1]["status_turns"] == true);
    CHECK(json["checks"][1]["first"]["demand"] == 1873.0);
    CHECK(json["checks"][1]["second"]["ratio"] == 0.5);
    CHECK(json["findings"][0]["first"]["severity"] == "fails");
    CHECK(json["findings"][0]["second"].is_null());
    CHECK(Json::parse(comparison_json(turned(), true))["checks"].size() == 5);
    const review::Comparison strange =
        review::compare(test::fake_review_saying("\xFF\x01"), "\xC3", test::fake_review_without_demand(), "");
    CHECK(Json::parse(comparison_json(strange, true))["second"]["largest_pull"].is_null());
}
