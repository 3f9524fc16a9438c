// The table of questions: what it offers it takes, what it takes it gives back, and a wrong answer changes nothing.
#include "job/post_order.h"
#include "job/questions.h"
#include "support/shipped.h"

#include <catch2/catch.hpp>

using namespace toehold;
using job::Job;
using job::Question;
using test::shipped_catalog;

TEST_CASE("every choice is taken and read back", "[property]") {
    for (const Question& question : job::questions(shipped_catalog())) {
        CHECK_FALSE(question.choices.empty());
        for (const job::Choice& choice : question.choices) {
            INFO(question.id << ": " << choice.answer);
            Job asked;
            // Not every species has every grade; these two are told with each other.
            if (question.id == "species" || question.id == "grade") continue;
            const auto refused = question.take(asked, choice.answer);
            CHECK_FALSE(refused);
            Job again;
            CHECK_FALSE(question.take(again, question.answer(asked)));
            CHECK(again == asked);
        }
    }
}

TEST_CASE("a wrong answer is refused with what would do, and changes nothing", "[bad-input]") {
    for (const Question& question : job::questions(shipped_catalog())) {
        for (const char* wrong : {"no such thing", "-3 in", "0 in", "1e9 in", "5x", "nan"}) {
            INFO(question.id << ": " << wrong);
            Job asked;
            const auto refused = question.take(asked, wrong);
            REQUIRE(refused);
            CHECK_FALSE(refused->empty());
            CHECK(asked == Job{});
        }
    }
}

TEST_CASE("an optional answer can be taken back, and one that is needed cannot", "[unit]") {
    for (const Question& question : job::questions(shipped_catalog())) {
        Job asked;
        INFO(question.id);
        CHECK(question.take(asked, "").has_value() != (question.optional || question.id == "tributary-length"));
    }
}

TEST_CASE("the length of rail is asked where the code has a load along it", "[published]") {
    // IBC 2021 1607.9.1 asks for none in one- and two-family dwellings.
    const Question length = job::question("tributary-length", shipped_catalog());
    Job asked;
    CHECK_FALSE(length.asked(asked));
    for (const auto occupancy : {model::Occupancy::limited, model::Occupancy::other}) {
        asked.occupancy = occupancy;
        CHECK(length.asked(asked));
        CHECK(job::problems(asked, shipped_catalog()).size() == 1);
        CHECK_THROWS_AS(job::start(asked, shipped_catalog()), std::invalid_argument);
    }
    CHECK_FALSE(length.take(asked, "5 ft"));
    CHECK(asked.tributary_length_in == 60.0);
    CHECK(job::problems(asked, shipped_catalog()).empty());
}

TEST_CASE("posts are ordered by section and material", "[unit]") {
    CHECK(job::read_post(" 2x2x1/8  steel ") == job::PostOrder{"2x2x1/8", "steel"});
    CHECK_FALSE(job::read_post("steel"));
    const auto tube = job::metal_section("2 1/2x1 1/2x.125");
    REQUIRE(tube);
    CHECK(std::get<model::RectangularTube>(*tube) == model::RectangularTube{2.5, 1.5, 0.125, {}});
    const auto pipe = job::metal_section("round 1.9x0.145");
    REQUIRE(pipe);
    CHECK(std::get<model::RoundTube>(*pipe) == model::RoundTube{1.9, 0.145, {}});
    const auto bar = job::metal_section("50 mm x 10 mm");
    REQUIRE(bar);
    CHECK(std::get<model::SolidBar>(*bar).width_in == Approx(50.0 / 25.4));
    CHECK(std::get<model::SolidBar>(*job::metal_section("round 1")).round);
    for (const char* none : {"2", "2x2x2", "2x2x1/8x1", "axb", "", "round", "round 2x1x1", "-2x2x1/8", "2xx2"})
        CHECK_FALSE(job::metal_section(none));
}

TEST_CASE("a metal without guaranteed strength is not assumed", "[bad-input]") {
    const Question post = job::question("post", shipped_catalog());
    Job asked;
    CHECK(post.take(asked, "2x2x1/8 steel-a513"));
    CHECK(post.take(asked, "2x2x1/8 brass"));
    CHECK_FALSE(post.take(asked, "2x2x1/8 stainless-316"));
    CHECK(job::start(asked, shipped_catalog()).detail.post ==
          model::Post(model::RectangularTube{2.0, 2.0, 0.125, "stainless-316"}));
    CHECK_THROWS_AS(job::question("color", shipped_catalog()), std::out_of_range);
}
