// Every option of every demo's default ranges leaves a detail that `check` would take: validate and resolve, no demand.
#include "model/placement.h"
#include "model/validate.h"
#include "search/changes/anchors.h"
#include "search/changes/blocks.h"
#include "search/changes/ends.h"
#include "search/changes/rows.h"
#include "search/ranges/ranges.h"

#include "support/compare.h"
#include "support/problems.h"
#include "support/shipped.h"

#include <random>

using namespace toehold;
using model::BaseDetail;

namespace {

/// Candidates that take this option, the rest drawn at random; empty where none of some hundred goes together.
std::vector<BaseDetail> with_option(const search::Space& space, std::size_t axis, std::size_t option,
                                    std::mt19937& random) {
    constexpr int tries = 300;
    constexpr std::size_t enough = 2;
    std::vector<BaseDetail> details;
    for (int attempt = 0; attempt < tries && details.size() < enough; ++attempt) {
        std::vector<std::size_t> chosen;
        for (const search::Axis& one : space.axes) chosen.push_back(random() % one.options.size());
        chosen[axis] = option;
        if (auto detail = search::detail_of(space, search::number_of(space, chosen))) details.push_back(*detail);
    }
    return details;
}

}  // namespace

TEST_CASE("every option of the default ranges makes valid details", "[property]") {
    std::mt19937 random(20240601);
    for (const std::string& name : test::demo_names()) {
        const catalog::Resolved base = test::shipped_detail(name);
        const search::Ranges ranges = search::default_ranges(base, test::shipped_catalog());
        const search::Space space = search::make_space(base, ranges, test::shipped_catalog());
        INFO(name << ", " << search::size(space) << " candidates");
        CHECK(search::size(space) > 2000);
        std::size_t used = 0, all = 0;
        for (std::size_t axis = 0; axis < space.axes.size(); ++axis) {
            for (std::size_t option = 0; option < space.axes[axis].options.size(); ++option) {
                const std::vector<BaseDetail> details = with_option(space, axis, option, random);
                ++all;
                if (!details.empty()) ++used;
                for (const BaseDetail& detail : details) {
                    INFO(space.axes[axis].id << " " << space.axes[axis].options[option].label);
                    const model::Problems problems = model::validate(detail);
                    INFO(test::sentences(problems));
                    CHECK(problems.empty());
                    const catalog::Resolution resolution = catalog::resolve(detail, test::shipped_catalog());
                    INFO(test::sentences(resolution.problems));
                    CHECK(resolution.resolved.has_value());
                }
            }
        }
        CHECK(2 * used > all);
    }
}

TEST_CASE("a plate grows and its holes keep their edges", "[unit]") {
    BaseDetail detail = test::demo_detail("heron-landing-lags-in-deep-blocks");
    const model::Plate before = on_deck(detail).plate;
    const double width_in = extent_in(before.outline, model::PlanAxis::x);
    REQUIRE(search::resize_plate(detail, width_in + 1.0, width_in + 2.0, search::Holes::keep_edges));
    const model::Plate& after = on_deck(detail).plate;
    for (std::size_t hole = 0; hole < before.holes.size(); ++hole) {
        const model::Position was = before.holes[hole].center, is = after.holes[hole].center;
        CHECK_CLOSE(std::abs(is.x_in) - std::abs(was.x_in), 0.5, 0.0, 1e-9);
        CHECK_CLOSE(std::abs(is.y_in) - std::abs(was.y_in), 1.0, 0.0, 1e-9);
    }
    CHECK_FALSE(on_deck(detail).plate_reference.has_value());
    CHECK(after.id != before.id);
    CHECK_FALSE(search::resize_plate(detail, 1.5, 6.0, search::Holes::laid_out_next));  // under a 2 in tube
}

TEST_CASE("holes are lettered clockwise from the heel's left", "[unit]") {
    BaseDetail detail = test::demo_detail("heron-landing-lags-in-deep-blocks");
    REQUIRE(search::resize_plate(detail, 8.0, 10.0, search::Holes::laid_out_next));
    search::Pattern pattern;
    pattern.deep = 3;
    pattern.edge_in = 1.5;
    REQUIRE(search::lay_out_holes(detail, pattern));
    const std::vector<model::Hole>& holes = on_deck(detail).plate.holes;
    REQUIRE(holes.size() == 6);
    CHECK(holes[0].id == "A");
    CHECK(holes[0].center == model::Position{-2.5, -3.5});
    CHECK(holes[1].center == model::Position{-2.5, 0.0});
    CHECK(holes[2].center == model::Position{-2.5, 3.5});
    CHECK(holes[3].center == model::Position{2.5, 3.5});
    CHECK(holes[5].center == model::Position{2.5, -3.5});
    // 4 in from the edges of 8 in two columns are one, and 5 in from them they would have changed sides.
    for (const double edge_in : {4.0, 5.0}) {
        pattern.edge_in = edge_in;
        CHECK_FALSE(search::lay_out_holes(detail, pattern));
    }
}

TEST_CASE("a fastener takes its standard hole and its washer with it", "[unit]") {
    const catalog::Catalog& catalog = test::shipped_catalog();
    BaseDetail detail = test::demo_detail("heron-landing-lags-in-deep-blocks");
    const auto bolt = search::fastener_size(catalog, "bolt-1/2", "a307");
    REQUIRE(bolt.has_value());
    CHECK(bolt->hole_in == 0.5625);  // D + 1/16 in
    REQUIRE(search::set_fastener(detail, *bolt, std::nullopt, search::Holes::keep_edges));
    const model::AnchorGroup& group = anchor_groups(detail).front();
    CHECK(std::get<model::Washer>(std::get<model::ThroughBolt>(group.fastener).below).size == "washer-wide-1/2");
    CHECK(group.washer->size == "washer-wide-1/2");
    for (const model::Hole& hole : on_deck(detail).plate.holes) CHECK(search::hole_width_in(hole) == 0.5625);
    // A bolt has no length that a screw could take over.
    const auto lag = search::fastener_size(catalog, "lag-3/8");
    BaseDetail screwed = detail;
    CHECK_FALSE(search::set_fastener(screwed, *lag, std::nullopt, search::Holes::keep_edges));
    CHECK(search::set_fastener(detail, *lag, 8.0, search::Holes::keep_edges));
    CHECK_FALSE(search::fastener_size(catalog, "bolt-1/2").has_value());  // a bolt is nothing without its grade
    // A No. 14 screw of 0.242 in: 0.3045 in, to the next drill 5/16 in - 1/128: 20/64 = 0.3125 in.
    CHECK(search::fastener_size(catalog, "wood-screw-14")->hole_in == 0.3125);
}

TEST_CASE("joists are doubled away from the block", "[unit]") {
    BaseDetail detail = test::demo_detail("heron-landing-lags-in-deep-blocks");
    REQUIRE(search::double_joists(detail));
    const model::Joists& joists = *detail.framing.joists;
    // J2 at -8 in gets its piece on the far side of the block: 1 1/2 + 1 1/2 in about -8.75 in.
    CHECK(joists.members[1].plies == 2);
    CHECK(joists.members[1].offset_in == -8.75);
    CHECK(joists.members[2].offset_in == 8.75);
    CHECK(joists.members[0].plies == 1);
    CHECK(detail.framing.blocks.front().from_in == -7.25);
    CHECK(model::validate(detail).empty());
    // Over a joist blocks meet it from both sides: it stays in its place and they get shorter.
    BaseDetail over = test::demo_detail("heron-landing-over-a-joist");
    REQUIRE(search::double_joists(over));
    CHECK(over.framing.joists->members[1].offset_in == 0.0);
    CHECK(over.framing.joists->members[1].plies == 2);
    CHECK(over.framing.blocks.front().to_in == -1.5);
    CHECK(model::validate(over).empty());
}

TEST_CASE("a connection made for one block fits another, or is refused", "[unit]") {
    model::Block deep, flat;
    deep.width_in = 3.5;
    deep.depth_in = 7.25;
    flat.width_in = 7.25;
    flat.depth_in = 3.5;
    model::ReportedConnector hardware;
    hardware.couple_arm_in = 3.5;
    hardware.height_in = 5.0;
    hardware.from_top_in = 1.0;
    hardware.from_bottom_in = 1.0;
    CHECK_FALSE(search::fitted(hardware, deep, flat).has_value());  // 5 in high on a 3 1/2 in block
    model::Block deeper = deep;
    deeper.depth_in = 9.25;
    deeper.width_in = 1.5;
    const auto fitted = search::fitted(hardware, deep, deeper);
    REQUIRE(fitted.has_value());
    CHECK(std::get<model::ReportedConnector>(*fitted).couple_arm_in == 1.5);  // no farther apart than the block is wide
    CHECK(*std::get<model::ReportedConnector>(*fitted).from_bottom_in == 3.0);  // 2 in more below
    model::EndGrainFasteners nails;
    nails.count = 3;
    nails.spread_in = 4.0;
    nails.diameter_in = 0.162;
    CHECK_FALSE(search::fitted(nails, deep, flat).has_value());  // 3 1/4 in of edges leave 1/4 in
    const auto shorter = search::fitted(nails, deep, [&] {
        model::Block block = deep;
        block.depth_in = 5.5;
        return block;
    }());
    REQUIRE(shorter.has_value());
    CHECK(std::get<model::EndGrainFasteners>(*shorter).spread_in == 2.25);
}
