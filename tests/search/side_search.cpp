// A post on a member's side: its changes against the geometry they must leave, its menu and its axes by whether every
// one of them is a detail, its cost by hand.
#include "search/changes/anchors.h"
#include "search/changes/side_hardware.h"
#include "search/changes/side_rows.h"
#include "search/changes/side_wood.h"
#include "search/judge/judge.h"
#include "search/nearest/bears_on.h"
#include "search/ranges/ranges.h"
#include "search/remedies/menu.h"
#include "search/remedies/remedies.h"
#include "search/score/robustness.h"
#include "search/score/score.h"

#include "demand/demand.h"
#include "model/side_geometry.h"
#include "model/validate.h"
#include "support/compare.h"
#include "support/contains.h"
#include "support/shipped.h"
#include "support/side_detail.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>

using namespace toehold;
using model::BaseDetail;

namespace {

bool is_detail(const BaseDetail& detail) {
    model::Problems problems = model::validate(detail);
    if (problems.empty()) problems = catalog::resolve(detail, test::shipped_catalog()).problems;
    for (const model::Problem& problem : problems) UNSCOPED_INFO(model::sentence(problem));
    return problems.empty();
}

double near_face_in(const BaseDetail& detail) {
    const model::Member member = model::side_member(detail).value();
    return model::to_near_face_in(model::side_joint(detail), member);
}

search::Lumber size(const char* name) { return search::lumber(name).value(); }

}  // namespace

TEST_CASE("rows move with what hangs at them, and keep 4 D to the edges", "[unit]") {
    BaseDetail detail = test::side_detail();
    test::add_ties(detail);
    // 1/2 in bolts: 2 in from the rim's top and from the post's end 9 in down.
    CHECK(search::widest_rows(detail, 0.5) == search::RowHeights{2.0, 7.0});
    // 5/8 in: 2 1/2 in.
    CHECK(search::widest_rows(detail, 0.625) == search::RowHeights{2.5, 6.5});
    REQUIRE(search::set_rows(detail, {1.5, 7.5}));
    CHECK(search::side_rows(detail) == std::vector<double>{1.5, 7.5});
    CHECK(on_side(detail).ties.front().below_top_in == 1.5);
    CHECK(on_side(detail).ties.back().below_top_in == 7.5);
    CHECK(is_detail(detail));
    CHECK_FALSE(search::set_post_bottom(detail, 7.0));
    BaseDetail bracket = test::bracket_detail();
    REQUIRE(search::set_rows(bracket, {1.0, 7.5}));
    // Its plate ended 1 1/2 in above and 1 1/2 in below the holes.
    CHECK_CLOSE(on_side(bracket).bracket->from_top_in, -0.5, 0.0, 1e-12);
    CHECK_CLOSE(on_side(bracket).bracket->height_in, 9.5, 0.0, 1e-12);
    CHECK(is_detail(bracket));
}

TEST_CASE("one row of fasteners gets a second", "[unit]") {
    BaseDetail detail = test::side_detail();
    on_side(detail).places.pop_back();
    CHECK_FALSE(search::set_rows(detail, {2.0, 7.0}));
    REQUIRE(search::add_row(detail, 7.0));
    REQUIRE(on_side(detail).places.size() == 2);
    CHECK(on_side(detail).places.back().id == "A");
    CHECK(test::resolved_by_shipped(detail).anchors.size() == 2);
}

TEST_CASE("another size of bolt keeps plate washers as large as they were", "[unit]") {
    BaseDetail detail = test::side_detail();
    model::AnchorGroup& group = on_side(detail).anchors.front();
    group.head_plate.reset();
    group.washer = model::Washer{"washer-plate-1/2-3"};
    std::get<model::ThroughBolt>(group.fastener).below = model::Washer{"washer-plate-1/2-2"};
    const auto larger = search::fastener_size(test::shipped_catalog(), "bolt-5/8", "a307");
    REQUIRE(larger.has_value());
    REQUIRE(search::set_fastener(detail, *larger, std::nullopt, search::Holes::keep_edges));
    CHECK(group.washer->size == "washer-plate-5/8-3");
    CHECK(std::get<model::Washer>(std::get<model::ThroughBolt>(group.fastener).below).size == "washer-plate-5/8-2");
    CHECK(is_detail(detail));
}

TEST_CASE("framing goes with the faces it lies against", "[unit]") {
    BaseDetail larger = test::side_detail();
    REQUIRE(search::set_post_size(larger, "6x6"));
    CHECK_CLOSE(near_face_in(larger), 2.75, 0.0, 1e-12);
    CHECK_CLOSE(*larger.framing.joists->to_in, -2.75 - 3.0, 0.0, 1e-12);
    CHECK(is_detail(larger));

    BaseDetail tripled = test::side_detail();
    REQUIRE(search::set_member_plies(tripled, 3));
    CHECK_CLOSE(near_face_in(tripled), 1.75, 0.0, 1e-12);
    CHECK_CLOSE(*tripled.framing.joists->to_in, -1.75 - 4.5, 0.0, 1e-12);
    CHECK(is_detail(tripled));
    CHECK_FALSE(search::set_member_plies(tripled, 5));

    BaseDetail inside = test::inside_detail();
    const double joists_end_in = *inside.framing.joists->to_in;
    REQUIRE(search::set_member_plies(inside, 3));
    CHECK_CLOSE(near_face_in(inside), 1.75, 0.0, 1e-12);
    CHECK(*inside.framing.joists->to_in == joists_end_in);
    CHECK(is_detail(inside));

    BaseDetail bracket = test::bracket_detail();
    REQUIRE(search::set_bracket_thickness(bracket, 0.5));
    CHECK_CLOSE(near_face_in(bracket), 1.5, 0.0, 1e-12);
    CHECK(is_detail(bracket));
}

TEST_CASE("a block behind the rim takes the fasteners, and ties a joist's side", "[unit]") {
    BaseDetail detail = test::side_detail();
    REQUIRE(search::block_behind(detail, size("4x8"), 1600.0));
    const model::Block& block = detail.framing.blocks.back();
    CHECK_CLOSE(block.across_in, -1.75 - 3.0 - 1.75, 0.0, 1e-12);
    const catalog::Resolved resolved = test::resolved_by_shipped(detail);
    for (const catalog::Anchor& anchor : resolved.anchors) {
        REQUIRE(anchor.seat.has_value());
        CHECK(model::member(detail.framing, anchor.seat->member).id == block.id);
    }
    CHECK_FALSE(search::block_behind(detail, size("4x8"), 1600.0));

    BaseDetail tied = test::side_detail();
    REQUIRE(search::add_ties(tied, 1800.0));
    REQUIRE(on_side(tied).ties.size() == 2);
    const model::TensionTie& tie = on_side(tied).ties.front();
    CHECK_FALSE(tie.chosen);
    CHECK(tie.bolt == "U");
    const model::Member joist = model::member(tied.framing, model::find_member(tied.framing, tie.into).value());
    CHECK_CLOSE(std::abs(joist.across_in - tie.x_in), 0.75 + search::tie_off_joist_in, 0.0, 1e-12);
    CHECK(is_detail(tied));
    BaseDetail inside = test::inside_detail();
    CHECK_FALSE(search::add_ties(inside, 1800.0));
}

TEST_CASE("every change of the menu is refused or leaves a detail, and bears on something", "[property]") {
    BaseDetail screwed = test::side_detail();
    on_side(screwed).anchors.front().fastener = model::LagScrew{"lag-1/2", 6.0, std::nullopt};
    for (const BaseDetail& base : {test::side_detail(), test::inside_detail(), test::bracket_detail(), screwed}) {
        const catalog::Resolved resolved = test::resolved_by_shipped(base);
        std::size_t made = 0;
        for (const search::Change& change : search::menu(resolved, test::shipped_catalog())) {
            INFO(base.name << ": " << change.id);
            BaseDetail changed = base;
            if (!change.apply(changed)) continue;
            ++made;
            CHECK_FALSE(changed == base);
            CHECK(is_detail(changed));
            CHECK_FALSE(format::english(change.words(changed)).empty());
            const auto& rules = search::side_rules();
            CHECK(std::any_of(rules.begin(), rules.end(), [&](const search::AxisRule& rule) {
                return std::find(rule.axes.begin(), rule.axes.end(), change.axis) != rule.axes.end();
            }));
        }
        CHECK(made >= 5);
    }
}

TEST_CASE("every option of the default ranges is refused or leaves a detail", "[property]") {
    for (const BaseDetail& base : {test::side_detail(), test::inside_detail(), test::bracket_detail()}) {
        const catalog::Resolved resolved = test::resolved_by_shipped(base);
        const search::Ranges ranges = search::default_ranges(resolved, test::shipped_catalog());
        CHECK(search::problems(resolved, ranges, test::shipped_catalog()).empty());
        const search::Space space = search::make_space(resolved, ranges, test::shipped_catalog());
        CHECK(search::size(space) > 50);
        for (const search::Axis& axis : space.axes) {
            for (const search::Option& option : axis.options) {
                INFO(base.name << ": " << axis.id << " " << option.label);
                BaseDetail changed = base;
                if (option.apply(changed)) CHECK(is_detail(changed));
            }
        }
    }
}

TEST_CASE("the command line's keys of a side are read, and refused of a plate", "[unit]") {
    const catalog::Catalog& catalog = test::shipped_catalog();
    search::Ranges ranges;
    for (const char* text : {"plies=1,2", "behind=as-is,4x8", "next-joist=as-is", "rim-ends=as-is,hardware 1600",
                             "post-size=4x4,6x6", "notch=as-is,none", "bottom=9,9 1/4", "bracket=3/8",
                             "heights=2:7,1 1/2:7 1/2", "head=washer,3x1/4", "ties=as-is,hardware 1800"}) {
        INFO(text);
        CHECK(search::parse_range(text, catalog, ranges).empty());
    }
    CHECK(ranges.side.heights.back() == search::RowHeights{1.5, 7.5});
    CHECK(ranges.side.ties_lb == std::vector<double>{0.0, 1800.0});
    CHECK(ranges.side.behind == std::vector<std::string>{"", "4x8"});
    for (const char* text : {"plies=0", "plies=5", "heights=7:2", "heights=7", "head=none", "ties=some"}) {
        INFO(text);
        CHECK_FALSE(search::parse_range(text, catalog, ranges).empty());
    }
    const catalog::Resolved plate = test::shipped_detail("heron-landing-lags-in-deep-blocks");
    CHECK(search::problems(plate, ranges, catalog).size() >= 10);
    search::Ranges of_plates;
    REQUIRE(search::parse_range("plate=6x6", catalog, of_plates).empty());
    const model::Problems wrong = search::problems(test::resolved_by_shipped(test::side_detail()), of_plates, catalog);
    REQUIRE(wrong.size() == 1);
    CHECK(format::english(wrong.front().message) == "a post on a member's side has no such range");
}

TEST_CASE("a larger post costs its wood, a tie its hardware", "[unit]") {
    const catalog::Prices& prices = test::shipped_catalog().prices;
    const auto scored = [&](const BaseDetail& detail) {
        return search::score(test::resolved_by_shipped(detail), prices, 0.5);
    };
    BaseDetail detail = test::side_detail();
    const search::Score before = scored(detail);
    CHECK(before.unpriced == 0);
    REQUIRE(search::set_post_size(detail, "4x6"));
    // From 36 in above the boards (1 in) to 9 in below the rim's top, 46 in: 3.00 for 2.00 a foot; 2 in more of each
    // of two bolts at 0.25 an inch.
    CHECK_CLOSE(scored(detail).steel_cost - before.steel_cost, 46.0 / 12.0 + 1.0, 1e-9, 0.0);
    BaseDetail tied = test::side_detail();
    test::add_ties(tied);
    CHECK_CLOSE(scored(tied).steel_cost - before.steel_cost, 30.0, 1e-9, 0.0);
    CHECK(scored(tied).pieces == before.pieces + 2);
    // Along the rail and up and down.
    CHECK(search::misplaced(test::side_detail()).size() == 4);
}

TEST_CASE("a rim on end nails is mended by hardware at its joists, which a review confirms", "[unit]") {
    BaseDetail detail = test::side_detail();
    detail.framing.rims.front().connection =
        model::EndGrainFasteners{model::EndGrainFasteners::Kind::nail, 0.162, 3.5, 3, 6.0, {}};
    const catalog::Resolved resolved = test::resolved_by_shipped(detail);
    const review::Review before =
        review::evaluate(resolved, demand::find_demand(resolved, demand::Sampling::probe()), "");
    REQUIRE(before.verdict == review::Verdict::inadequate);
    const std::vector<review::Remedy> remedies = search::find_remedies(before, test::shipped_catalog());
    REQUIRE_FALSE(remedies.empty());
    for (const review::Remedy& remedy : remedies) {
        INFO(remedy.id << ": " << format::english(remedy.text));
        CHECK(kind(remedy.detail.mount) == model::MountKind::side_fastened);
        CHECK(is_detail(remedy.detail));
        CHECK_FALSE(test::contains(format::english(remedy.text), "Replace the plate"));
    }
    CHECK(test::contains(remedies.front().id, "rim-hardware"));
}

TEST_CASE("a probe of the space judges candidates of a side", "[unit]") {
    const catalog::Resolved resolved = test::resolved_by_shipped(test::side_detail());
    search::Ranges ranges;
    for (const char* text : {"post-size=4x4,6x6", "ties=as-is,hardware 1800"})
        REQUIRE(search::parse_range(text, test::shipped_catalog(), ranges).empty());
    const search::Space space = search::make_space(resolved, ranges, test::shipped_catalog());
    REQUIRE(search::size(space) == 4);
    for (search::Candidate candidate = 0; candidate < 4; ++candidate) {
        const search::Judgement judgement = search::judge(space, test::shipped_catalog(), candidate);
        INFO(candidate << " " << judgement.limit);
        CHECK(judgement.stage != search::Stage::choice);
        CHECK((judgement.holds || !judgement.limit.empty()));
    }
}
