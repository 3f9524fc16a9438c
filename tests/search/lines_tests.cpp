// A judgement as a line of text, and back.
#include "search/run/lines.h"

#include <catch2/catch.hpp>

#include <limits>

using namespace toehold;
using model::PartId;
using model::PartKind;
using model::PartPiece;
using search::Judgement;
using search::Line;
using search::lines_of;
using search::read_line;
using search::Stage;

TEST_CASE("a judgement read back from its line is the same", "[property]") {
    const double infinite = std::numeric_limits<double>::infinity();
    const std::vector<Judgement> judgements = {
        {7, Stage::choice, false, {}, {}, 0.0},
        {1234567890123, Stage::finding, false, "washer-off-plate", {PartKind::hole, "A \"quoted\"\n"}, 0.0},
        {8, Stage::probe, false, "anchor-withdrawal", {PartKind::anchor, "A"}, 1.0 / 3.0 + 1.5},
        {9, Stage::probe, false, "anchor-seating", {PartKind::anchor, "A"}, infinite},
        {10, Stage::whole, true, "member-bending", {PartKind::block, "B1", PartPiece::lower_end}, 0.1 + 0.2},
        {11, Stage::whole, false, "joist-roll", {PartKind::joist, "J1", PartPiece::whole, PartKind::rim, "R"}, 2.0}};
    for (const Judgement& judgement : judgements) {
        const std::string text = lines_of({judgement}, "0123456789abcdef");
        INFO(text);
        CHECK(text.find('\n') == text.size() - 1);
        const auto line = read_line(text);
        REQUIRE(line);
        CHECK(line->space == "0123456789abcdef");
        CHECK(line->judgement == judgement);
        CHECK(line->last == judgement.candidate);
    }
}

TEST_CASE("neighbors whose choices do not go together share a line", "[unit]") {
    const auto impossible = [](search::Candidate candidate) { return Judgement{candidate, Stage::choice}; };
    const std::string text =
        lines_of({impossible(3), impossible(4), impossible(5), impossible(7), {8, Stage::finding, false, "x"}}, "s");
    CHECK(text ==
          "{\"space\":\"s\",\"candidate\":3,\"to\":5,\"stage\":\"choice\",\"holds\":false}\n"
          "{\"space\":\"s\",\"candidate\":7,\"stage\":\"choice\",\"holds\":false}\n"
          "{\"space\":\"s\",\"candidate\":8,\"stage\":\"finding\",\"holds\":false,\"limit\":\"x\","
          "\"part\":{\"kind\":\"\",\"id\":\"\"},\"ratio\":0.0}\n");
}

TEST_CASE("what is no line of a judgement is none", "[bad-input]") {
    for (const char* text :
         {"", "17", "null", "[]", "{}", "not JSON", "{\"space\":\"s\",\"candidate\":-1}",
          "{\"space\":\"s\",\"candidate\":1,\"stage\":\"guess\",\"holds\":true}",
          "{\"space\":\"s\",\"candidate\":\"1\",\"stage\":\"choice\",\"holds\":false}",
          "{\"space\":\"s\",\"candidate\":1,\"stage\":\"whole\",\"holds\":true}",
          "{\"space\":\"s\",\"candidate\":1,\"stage\":\"whole\",\"holds\":true,\"limit\":\"x\",\"part\":{\"kind\":"
          "\"wing\",\"id\":\"\"},\"ratio\":1}",
          "{\"space\":\"s\",\"candidate\":1,\"stage\":\"whole\",\"holds\":true,\"limit\":\"x\",\"part\":{\"kind\":"
          "\"block\",\"id\":\"\",\"piece\":99},\"ratio\":1}"}) {
        INFO(text);
        CHECK_FALSE(read_line(text));
    }
}
