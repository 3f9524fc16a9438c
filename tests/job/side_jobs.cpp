// A job on the side of the deck: wood posts between two joists with ties, metal ones on a bracket in front of a joist,
// every assumed value marked in the file.
#include "job/file.h"
#include "job/questions.h"
#include "job/sizing.h"
#include "model/building_code.h"
#include "model/side_geometry.h"
#include "model/validate.h"
#include "support/compare.h"
#include "support/contains.h"
#include "support/shipped.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace toehold;
using job::Job;

namespace {

Job side_job(job::PostOrder post, const char* joists = "2x10") {
    Job asked;
    asked.place = job::Place::deck_side;
    asked.post = std::move(post);
    asked.joist_size = joists;
    return asked;
}

}  // namespace

TEST_CASE("every post on the deck's side starts a detail that validates and resolves", "[property]") {
    for (const job::PostOrder& post :
         {job::PostOrder{"4x4", "wood"}, job::PostOrder{"6x6", "wood"}, job::PostOrder{"2x2x3/16", "steel"},
          job::PostOrder{"round 1.9x0.145", "steel"}, job::PostOrder{"2 1/2x2 1/2x1/4", "aluminum"},
          job::PostOrder{"1 1/2x1 1/2", "stainless"}}) {
        for (const char* joists : {"2x8", "2x10", "2x12"}) {
            for (const char* boards : {"wood-southern-pine", "composite-generic"}) {
                INFO(post.section << " " << post.material << ", " << joists << ", " << boards);
                Job asked = side_job(post, joists);
                asked.decking = boards;
                const job::Started started = job::start(asked, test::shipped_catalog());
                const model::Problems problems = model::validate(started.detail);
                for (const model::Problem& problem : problems) UNSCOPED_INFO(model::sentence(problem));
                CHECK(problems.empty());
                const catalog::Resolved resolved = test::resolved_by_shipped(started.detail);
                for (const catalog::Anchor& anchor : resolved.anchors) CHECK(anchor.seat.has_value());
                CHECK(test::contains(job::as_file(started, {}), "side-fastened"));
            }
        }
    }
}

TEST_CASE("a wood post stands between two joists with ties, a metal one in front of a joist", "[unit]") {
    const model::BaseDetail wood = job::start(side_job({"4x4", "wood"}), test::shipped_catalog()).detail;
    REQUIRE(on_side(wood).ties.size() == 4);
    for (const model::TensionTie& tie : on_side(wood).ties) {
        const model::Joist& joist = *model::find_joist(wood.framing, tie.into);
        // The tie's line is off the joist's side by its eccentricity.
        CHECK_CLOSE(std::abs(joist.offset_in) - 0.75 - std::abs(tie.x_in), tie.eccentricity_in, 0.0, 1e-12);
        CHECK_FALSE(tie.chosen);
    }
    CHECK(wood.framing.blocks.empty());
    CHECK(wood.framing.rims.front().size == "4x10");
    const model::BaseDetail metal = job::start(side_job({"2x2x3/16", "steel"}), test::shipped_catalog()).detail;
    CHECK(on_side(metal).ties.empty());
    CHECK(on_side(metal).bracket.has_value());
    CHECK(model::find_joist(metal.framing, "J3")->offset_in == 0.0);
    // Nuts' plates of 3 in stand clear of that joist.
    for (const model::SidePlace& place : on_side(metal).places) CHECK(std::abs(place.x_in) - 1.5 > 0.75);
}

TEST_CASE("what the upper bolts draw is the push times its height over their arm", "[closed-form]") {
    // 200 lb, 36 in over 1 in boards and a 9 1/4 in rim, bolts 2 in below its top: 200 x 46.25 / 7.25.
    const Job asked = side_job({"4x4", "wood"});
    const job::Design design = job::design_for(asked, test::shipped_catalog());
    REQUIRE(design.side);
    CHECK_CLOSE(design.tension_lb, 200.0 * 46.25 / 7.25, 1e-9, 0.0);
    CHECK(design.side->tie_lb >= design.tension_lb);
}

TEST_CASE("a top that is no handrail is pushed from where the code asks, as an assumed value", "[published]") {
    Job asked = side_job({"4x4", "wood"});
    CHECK(job::start(asked, test::shipped_catalog()).detail.loads.directions == model::Directions::all_round);
    asked.handrail = false;
    const job::Started started = job::start(asked, test::shipped_catalog());
    REQUIRE(model::directions_without_handrail(model::BuildingCode::irc_2021) != model::GuardDirections::any);
    CHECK(started.detail.loads.directions == model::Directions::across);
    CHECK(std::any_of(started.assumed.begin(), started.assumed.end(),
                      [](const job::Assumed& one) { return one.element == "loads"; }));
    asked.place = job::Place::between_joists;
    CHECK(job::start(asked, test::shipped_catalog()).detail.loads.directions == model::Directions::all_round);
}

TEST_CASE("nuts that cannot be reached are refused on the deck's side", "[bad-input]") {
    Job asked = side_job({"4x4", "wood"});
    asked.access_below = false;
    const model::Problems problems = job::problems(asked, test::shipped_catalog());
    REQUIRE(problems.size() == 1);
    CHECK(problems.front().element == "access-below");
    asked.post = {"8x8", "wood"};
    asked.access_below.reset();
    CHECK_FALSE(job::problems(asked, test::shipped_catalog()).empty());
}
