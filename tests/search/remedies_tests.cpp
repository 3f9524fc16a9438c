// Remedies of shipped details: each must be a change that hand arithmetic and a review of its own confirm.
#include "search/remedies/remedies.h"

#include "model/validate.h"
#include "search/changes/anchors.h"
#include "search/changes/rows.h"
#include "search/remedies/menu.h"
#include "search/remedies/trial.h"

#include "review/shipped_reviews.h"
#include "support/compare.h"
#include "support/contains.h"
#include "support/problems.h"

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace toehold;
using review::Remedy;
using review::Verdict;

TEST_CASE("anchors too near a block's faces: smaller ones, or wider blocks, mend it", "[unit]") {
    // 1/2 in screws in the middle of a 4x block: 1 3/4 in to its faces, and 4 D = 2 in (NDS Table 12.5.1C).
    model::BaseDetail detail = test::demo_detail("heron-landing-lags-in-deep-blocks");
    const auto half_inch = search::fastener_size(test::shipped_catalog(), "lag-1/2");
    REQUIRE(half_inch.has_value());
    REQUIRE(search::set_fastener(detail, *half_inch, std::nullopt, search::Holes::keep_edges));
    detail.basis.plate = model::PlateBehaviour::rigid;
    const review::Review before = review::evaluate(test::resolved_by_shipped(detail), "");
    REQUIRE(before.facts.first_cause.has_value());
    REQUIRE(before.facts.first_cause->check == "anchor-spacing");
    const std::vector<Remedy> remedies = search::find_remedies(before, test::shipped_catalog());
    const auto found = [&](const std::string& id) {
        const auto one = std::find_if(remedies.begin(), remedies.end(), [&](const Remedy& it) { return it.id == id; });
        REQUIRE(one != remedies.end());
        CHECK(one->verdict == Verdict::adequate);
        return *one;
    };
    // 7/16 in: 4 D = 1 3/4 in; the hole D + 1/16 in.
    CHECK(format::english(found("smaller-anchors").text) ==
          "Use smaller anchors, 4 x 7/16 in lag screw, as long as before, with washers of that size, in a plate whose "
          "holes are drilled to 1/2 in.");
    const Remedy wider = found("wider-blocks");
    CHECK(test::contains(format::english(wider.text), "2 pieces of 6x8 on edge"));
    for (const model::Block& block : wider.detail.framing.blocks) CHECK(block.width_in == 5.5);
}

TEST_CASE("a thicker and larger plate is bought once", "[unit]") {
    const catalog::Resolved original = test::shipped_detail("heron-landing-lags-in-deep-blocks");
    const std::vector<search::Change> menu = search::menu(original, test::shipped_catalog());
    std::vector<std::size_t> changes;
    for (std::size_t change = 0; change < menu.size(); ++change)
        if (menu[change].id == "thicker-plate" || menu[change].id == "larger-plate") changes.push_back(change);
    const auto trial = search::changed(original, menu, changes, test::shipped_catalog());
    REQUIRE(trial.has_value());
    // From 9 1/2 x 9 1/2 x 5/8 in.
    CHECK(format::english(search::words(*trial, menu)) ==
          "Replace the plate by one of 10 in x 10 in x 3/4 in of steel-a36, its holes as far from the edges as before, "
          "and move the blocks with its rows of anchors.");
}

TEST_CASE("larger and longer screws are named alike in both steps", "[unit]") {
    const catalog::Resolved original = test::shipped_detail("heron-landing-lags-in-deep-blocks");
    const std::vector<search::Change> menu = search::menu(original, test::shipped_catalog());
    std::vector<std::size_t> changes;
    for (std::size_t change = 0; change < menu.size(); ++change)
        if (menu[change].id == "larger-screws" || menu[change].id == "longer-screws") changes.push_back(change);
    const auto trial = search::changed(original, menu, changes, test::shipped_catalog());
    REQUIRE(trial.has_value());
    // From 7/16 x 8 in.
    CHECK(
        format::english(search::words(*trial, menu)) ==
        "(1) Replace the anchors: 4 x 1/2 in lag screw, the holes drilled to 9/16 in, with wide washers of that size. "
        "(2) Replace the anchors: 4 x 1/2 in lag screw, 10 in long under the head, one in every hole.");
}

TEST_CASE("one block under the heel only: a second block under the other row mends it", "[unit]") {
    const review::Review before = test::shipped_review("heron-landing-heel-block-only");
    REQUIRE(before.verdict == Verdict::inadequate);
    const std::vector<Remedy> remedies = search::find_remedies(before, test::shipped_catalog());
    const auto found =
        std::find_if(remedies.begin(), remedies.end(), [](const Remedy& one) { return one.id == "second-block"; });
    REQUIRE(found != remedies.end());
    CHECK(found->verdict == Verdict::adequate);
    REQUIRE(found->detail.framing.blocks.size() == 2);
    CHECK(found->detail.framing.blocks[1].across_in == 3.75);  // under the row at y = 3 3/4 in
    CHECK(format::english(found->text) ==
          "Add a block like the first, 14 1/2 in long, between J2 and J3, under the row of anchors that has none.");

    // What governs then: a screw's withdrawal and lateral force together (NDS 12.4.1, Eq. 12.4-1). Withdrawal alone is
    // 395 lb/in x 4.21875 in x 0.7 = 1166.5 lb; 50 lb of shear beside a pull of some 950 lb leaves a little less.
    CHECK(found->governing.check == "anchor-combined");
    CHECK(found->governing.capacity > 0.9 * 1166.5);
    CHECK(found->governing.capacity < 1166.5);
    CHECK(found->governing.ratio < 1.0);

    // A fresh review of the changed detail says the same, and hand arithmetic says it too.
    const review::Review after = review::review(test::resolved_by_shipped(found->detail), "");
    CHECK(after.verdict == found->verdict);
    CHECK(after.governing.ratio == found->governing.ratio);
    // 7/16 x 8 in lag screw, G 0.55: 395 lb/in (NDS Table 12.2A), thread 8/2 + 1/2 - 9/32 = 4.21875 in, wet 0.7:
    // 395 x 4.21875 x 0.7 = 1166.5 lb; the table's rounding is worth 1.5 lb.
    for (const checks::CheckResult& result : after.checks) {
        if (result.id != "anchor-withdrawal") continue;
        CHECK_CLOSE(result.capacity, 1166.5, 0.0, 1.5);
        CHECK(result.status == checks::Status::holds);
    }
    // Pushed outward, 8400 lb in: the two heel anchors, 3 3/4 in behind the post, pull against bearing that lies on the
    // new block, between 2 in and the plate's edge at 4 3/4 in: 8400 / 8.5 = 988 lb to 8400 / 5.75 = 1461 lb.
    int outward = 0;
    for (const demand::State& state : after.demand->states) {
        if (std::abs(state.direction_rad - 0.5 * std::numbers::pi) > 1e-9) continue;
        if (after.demand->cases.at(state.load_case).down_lb != 0.0) continue;  // straight down or up
        ++outward;
        const double heel_lb = state.anchors[0].tension_lb + state.anchors[1].tension_lb;
        CHECK(heel_lb > 8400.0 / 8.5);
        CHECK(heel_lb < 8400.0 / 5.75);
    }
    CHECK(outward == 7);  // every state of stiffness
}

TEST_CASE("a detail that holds is offered no remedy", "[unit]") {
    const review::Review holds = test::shipped_review("heron-landing-lags-in-deep-blocks");
    REQUIRE(holds.verdict == Verdict::adequate);
    CHECK(search::find_remedies(holds, test::shipped_catalog()).empty());
}

TEST_CASE("blocks nailed through the joists get other blocks and hardware, both said with what to buy", "[unit]") {
    const review::Review before = test::shipped_review("heron-landing-end-nailed-blocks");
    const std::vector<Remedy> remedies = search::find_remedies(before, test::shipped_catalog());
    REQUIRE_FALSE(remedies.empty());
    // 2x8 blocks on edge leave 3/4 in beside a 7/16 in lag that needs 1 3/4 in (4 D), and nails in end grain resist no
    // pull: no single change mends both.
    const Remedy& first = remedies.front();
    CHECK(first.verdict == Verdict::adequate);
    CHECK(first.id.find('+') != std::string::npos);
    CHECK(test::contains(format::english(first.text), "4x8 on edge, 14 1/2 in long, between J2 and J3"));
    CHECK(test::contains(format::english(first.text), "At the block ends: "));
    for (const Remedy& remedy : remedies) {
        INFO(remedy.id);
        CHECK(model::validate(remedy.detail).empty());
        CHECK(review::evaluate(test::resolved_by_shipped(remedy.detail), "").verdict == remedy.verdict);
    }
    // Nobody waits any more: nothing is tried.
    CHECK(search::find_remedies(before, test::shipped_catalog(), [] { return true; }).empty());
}

TEST_CASE("every change of the menu that applies leaves a detail that passes validation", "[property]") {
    for (const std::string& name : test::demo_names()) {
        const catalog::Resolved resolved = test::shipped_detail(name);
        const std::vector<search::Change> menu = search::menu(resolved, test::shipped_catalog());
        for (std::size_t change = 0; change < menu.size(); ++change) {
            INFO(name << ", " << menu[change].id);
            model::BaseDetail detail = resolved.detail;
            if (!menu[change].apply(detail)) continue;
            const model::Problems problems = model::validate(detail);
            INFO(test::sentences(problems));
            CHECK(problems.empty());
            CHECK(catalog::resolve(detail, test::shipped_catalog()).resolved.has_value());
            CHECK_FALSE(detail == resolved.detail);
            CHECK_FALSE(menu[change].words(detail).empty());
            const auto same = [&](const search::Change& other) { return other.id == menu[change].id; };
            CHECK(std::count_if(menu.begin(), menu.end(), same) == 1);
        }
    }
}

TEST_CASE("only what bears on a failing check is changed", "[unit]") {
    const catalog::Resolved resolved = test::shipped_detail("heron-landing-lags-in-deep-blocks");
    for (const search::Change& change : search::menu(resolved, test::shipped_catalog())) {
        INFO(change.id);
        CHECK(search::bears_on(change, "plate-bending") ==
              (change.axis == "plate" || change.axis == "thickness" || change.axis == "pattern"));
        CHECK_FALSE(search::bears_on(change, "weld"));
        CHECK_FALSE(search::bears_on(change, "post-bending"));
    }
}
