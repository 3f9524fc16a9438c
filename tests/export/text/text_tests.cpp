#include "export/text/review_text.h"

#include "export/fake_review.h"
#include "export/text/columns.h"
#include "support/contains.h"
#include "support/example.h"

#include <catch2/catch.hpp>

#include <random>
#include <sstream>

using namespace toehold;
using exporting::explain_text;
using exporting::review_text;
using exporting::TextOptions;
using test::contains;
using units::System;

namespace {

std::vector<std::string> lines(const std::string& text) {
    std::vector<std::string> all;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);) all.push_back(line);
    return all;
}

/// Characters counted apart from the code under test: every byte that starts one.
std::size_t characters(const std::string& line) {
    std::size_t count = 0;
    for (const char byte : line) count += (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U ? 1 : 0;
    return count;
}

std::size_t widest(const std::string& text) {
    std::size_t width = 0;
    for (const std::string& line : lines(text)) width = std::max({width, characters(line), exporting::columns(line)});
    return width;
}

std::size_t times(const std::string& text, const std::string& part) {
    std::size_t count = 0;
    for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) ++count;
    return count;
}

std::string every_text(const review::Review& review) {
    std::string all;
    for (const System system : {System::us, System::si}) {
        for (const bool all_rows : {false, true}) all += review_text(review, TextOptions{{system}, all_rows});
        for (const auto& check : review.checks) all += explain_text(review.checks, check.id, {system});
    }
    return all;
}

}  // namespace

TEST_CASE("the text opens with verdict, reason and the link that governs", "[unit]") {
    const auto text = lines(review_text(test::fake_review(), {{System::us}}));
    REQUIRE(text.size() > 3);
    CHECK(text[0] == "INADEQUATE: example for tests");
    CHECK(text[1].rfind("3 checks fail. The first cause: Withdrawal of the anchor's thread, anchor A", 0) == 0);
    const std::string all = review_text(test::fake_review(), {{System::us}});
    CHECK(contains(all, "Governs:  Connection of the block's end, block B1 at joist J1: no load"));
}

TEST_CASE("the text says every status and severity in words", "[unit]") {
    const std::string text = review_text(test::fake_review(), TextOptions{{System::us}, true});
    for (const char* word : {"PASS", "FAIL", "NO LOAD PATH", "NOT SPECIFIED", "CAUTION"}) CHECK(contains(text, word));
}

TEST_CASE("the table of checks shows the worst part of each check, or all of them", "[unit]") {
    const std::string short_text = review_text(test::fake_review(), {{System::us}});
    CHECK(contains(short_text, "anchor A (worst of 3)"));
    CHECK(times(short_text, "[anchor-withdrawal]") == 1);
    const std::string long_text = review_text(test::fake_review(), TextOptions{{System::us}, true});
    CHECK(times(long_text, "[anchor-withdrawal]") == 3);
    CHECK_FALSE(contains(long_text, "worst of"));
}

TEST_CASE("links of the load path between like things are shown as their worst", "[unit]") {
    const std::string text = review_text(test::fake_review(), {{System::us}});
    CHECK(contains(text, "lag screw threads (worst of 2)"));
    CHECK_FALSE(contains(text, "anchor C  block"));
}

TEST_CASE("the text says what the hand calculation would have missed, when it is more than a tenth", "[unit]") {
    review::Review review = test::fake_review();
    std::string text = review_text(review, {{System::us}});
    CHECK(contains(text, "1510 lb on anchor A: 363 lb less"));     // 1873 - 1510
    CHECK_FALSE(contains(text, "arm to the opposite row gives"));  // 1873 is within a tenth of 1800
    review.demand->anchors[0].hand_anchor_lb = 1700.0;
    text = review_text(review, {{System::us}});
    CHECK(contains(text, "1700 lb on anchor A: 173 lb less"));
    for (demand::AnchorEnvelope& anchor : review.demand->anchors) {
        anchor.hand_edge_lb = anchor.hand_anchor_lb = anchor.tension_lb;
    }
    CHECK_FALSE(contains(review_text(review, {{System::us}}), "The hand calculation with"));
}

TEST_CASE("SI text shows newtons, millimeters and megapascals", "[published]") {
    // 1 lbf = 4.448 222 N, 1 psi = 6.894 757 kPa (NIST SP 811, 2008, B.8): 1873 lb, 600 psi, 2.5 in, 42 in.
    const std::string text = review_text(test::fake_review(), {{System::si}});
    for (const char* figure : {"8332", "4.137 MPa", "-63.5", "1067 mm", "12903 mm2"}) CHECK(contains(text, figure));
}

TEST_CASE("no capacity is printed where evidence is missing", "[unit]") {
    review::Review review = test::fake_review();
    review.checks = {review.checks[3]};
    review.checks[0].capacity = 123456.0;
    CHECK_FALSE(contains(review_text(review, {{System::us}}), "123456"));
    CHECK_FALSE(contains(explain_text(review.checks, "shoe-moment", {System::us}), "123456"));
    CHECK(contains(explain_text(review.checks, "shoe-moment", {System::us}), "capacity not specified"));
}

TEST_CASE("a review without a demand says why and shows no numbers for anchors", "[unit]") {
    const std::string text = review_text(test::fake_review_without_demand(), {{System::us}});
    CHECK(contains(text, "No demand was found: the plate turns over at 45 degrees."));
    CHECK_FALSE(contains(text, "TENSION USED"));
    CHECK(contains(text, "No check could be made."));
}

TEST_CASE("explaining a check lines up its steps and names each clause", "[unit]") {
    const std::string text = explain_text(test::fake_review().checks, "anchor-withdrawal", {System::us});
    for (const char* part : {"Withdrawal of the anchor's thread [anchor-withdrawal]", "NDS 2018 12.2.1", "= W C_D C_M",
                             "= 307.7", "lb/in", "[NDS 2018 Table 11.3.1]", "withdrawal per inch",
                             "demand 1873 lb, capacity 1000 lb, demand/capacity 1.87: FAIL"}) {
        CHECK(contains(text, part));
    }
    for (const char* part_line : {"\nanchor A\n", "\nanchor B\n", "\nanchor C\n"}) CHECK(contains(text, part_line));
    CHECK(explain_text(test::fake_review().checks, "no-such-check", {System::us}).empty());
}

TEST_CASE("no line is wider than 100 columns, whatever the names", "[property]") {
    const std::string e_acute = "\u00E9";
    const std::string wide = "\u6F22";
    std::string accents;
    std::string ideographs;
    for (int count = 0; count < 400; ++count) {
        accents += e_acute;
        ideographs += wide;
    }
    for (const std::string& text :
         {std::string("A"), std::string(500, 'x'), accents, ideographs, std::string("word ") + std::string(99, 'y'),
          std::string(100, 'a') + " " + std::string(101, 'b'), std::string("")}) {
        INFO(text);
        CHECK(widest(every_text(test::fake_review_saying(text))) <= exporting::page_columns);
    }
    CHECK(widest(every_text(test::fake_review())) <= exporting::page_columns);
}

TEST_CASE("no line is wider than 100 columns for random text and random numbers", "[property]") {
    std::mt19937_64 random(7);
    const std::string alphabet[] = {"a",  "b",  " ",    "\u00E9", "\u6F22", "W", "-",
                                    "\n", "\t", "\x01", "\xFF",   "\xC3",   "'"};
    for (int trial = 0; trial < 60; ++trial) {
        std::string text;
        const std::size_t size = random() % 260;
        while (text.size() < size) text += alphabet[random() % std::size(alphabet)];
        review::Review review = test::fake_review_saying(text);
        for (demand::AnchorEnvelope& anchor : review.demand->anchors) {
            anchor.tension_lb = anchor.hand_edge_lb = std::ldexp(-1.2345, static_cast<int>(random() % 2000) - 1000);
            anchor.shear_lb = anchor.tension_low_lb = anchor.tension_lb;
        }
        review.checks[1].demand = review.checks[1].steps[0].value = review.demand->anchors[0].tension_lb;
        CHECK(widest(every_text(review)) <= exporting::page_columns);
    }
}

TEST_CASE("control characters and stray bytes never reach the terminal", "[bad-input]") {
    const std::string text = every_text(test::fake_review_saying("a\x1B[31mred\x07 \xFF \xC3( \xC2\x9B \xE2\x80\xAE"));
    for (const char byte : text) CHECK((static_cast<unsigned char>(byte) >= 0x20 || byte == '\n'));
    CHECK(text.find('\xFF') == std::string::npos);
    CHECK(text.find("\xC2\x9B") == std::string::npos);
    CHECK(text.find("\xE2\x80\xAE") == std::string::npos);
}
