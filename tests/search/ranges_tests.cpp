// Ranges as text, and how many candidates they make.
#include "search/ranges/ranges.h"

#include "support/contains.h"
#include "support/problems.h"
#include "support/shipped.h"

#include <catch2/catch.hpp>

using namespace toehold;
using search::Ranges;
using test::contains;

namespace {

Ranges read(const std::string& text) {
    Ranges ranges;
    const model::Problems problems = search::parse_range(text, test::shipped_catalog(), ranges);
    INFO(test::sentences(problems));
    REQUIRE(problems.empty());
    return ranges;
}

std::string refused(const std::string& text) {
    Ranges ranges;
    const model::Problems problems = search::parse_range(text, test::shipped_catalog(), ranges);
    CHECK(ranges == Ranges{});
    return model::sentence(test::only_problem(problems));
}

}  // namespace

TEST_CASE("lengths are read one by one and in steps", "[unit]") {
    CHECK(read("thickness=3/8, 1/2").thicknesses_in == std::vector<double>{0.375, 0.5});
    CHECK(read("thickness=3/8..3/4/1/8").thicknesses_in == std::vector<double>{0.375, 0.5, 0.625, 0.75});
    CHECK(read("length=6..10/1").lengths_in == std::vector<double>{6, 7, 8, 9, 10});
    CHECK(read("length=6..7/1/2,152.4 mm").lengths_in == std::vector<double>{6, 6.5, 7});  // 152.4 mm is 6 in
    CHECK(read("length=8..8/1").lengths_in == std::vector<double>{8});
}

TEST_CASE("plates are sizes, steps and stock", "[unit]") {
    CHECK(read("plate=5x5..8x8/1").plates.size() == 16);
    CHECK(read("plate=5 1/2x5 1/2..7 1/2x7 1/2/1/2").plates.size() == 25);
    const Ranges mixed = read("plate=6x8,plate-6x8-1/2");
    REQUIRE(mixed.plates.size() == 2);
    CHECK(std::get<search::PlateSize>(mixed.plates[0]) == search::PlateSize{6.0, 8.0});
    CHECK(std::get<search::StockPlate>(mixed.plates[1]).id == "plate-6x8-1/2");
}

TEST_CASE("anchors, patterns, backings, blocks and ends are read", "[unit]") {
    const Ranges anchors = read("anchor=lag-1/2,bolt-1/2,bolt-1/2 f1554-36");
    REQUIRE(anchors.anchors.size() == 3);
    CHECK(anchors.anchors[1] == search::AnchorChoice{"bolt-1/2", "a307"});
    CHECK(anchors.anchors[2] == search::AnchorChoice{"bolt-1/2", "f1554-36"});
    const Ranges patterns = read("pattern=2x3@1 1/2,2x2:4x5");
    REQUIRE(patterns.patterns.size() == 2);
    CHECK(patterns.patterns[0].deep == 3);
    CHECK(patterns.patterns[0].edge_in == 1.5);
    CHECK(patterns.patterns[1].spacing_y_in == 5.0);
    CHECK(read("backing=none,washer,3x1/4").backings[2].thickness_in == 0.25);
    CHECK(read("blocks=as-is,upright,doubled,flat,flat-rows,doubled-joists,next-bay").blocks.size() == 7);
    CHECK(read("block-size=4x8,2x10").block_sizes.size() == 2);
    CHECK(read("ends=as-is,angles,hardware 1600,hardware 2 kip").ends[3].force_lb == 2000.0);
    CHECK(read("washer=none,wide").washers.size() == 2);
    CHECK(read("metal=steel-a36,steel-a572-50").metals.size() == 2);
}

TEST_CASE("a value that is given twice is one value, and no range has more than 400", "[bad-input]") {
    CHECK(read("metal=steel-a36,steel-a572-50,steel-a36").metals.size() == 2);
    CHECK(read("anchor=lag-3/8,bolt-1/2,bolt-1/2 a307,lag-3/8").anchors.size() == 2);
    CHECK(read("thickness=1/2,0.5,12.7 mm").thicknesses_in.size() == 1);
    catalog::Catalog catalog = test::shipped_catalog();
    std::string metals = "metal=m0", anchors = "anchor=s0";
    for (int number = 0; number <= 400; ++number) {
        const std::string digits = std::to_string(number);
        catalog.metals.push_back(catalog.metals.front());
        catalog.metals.back().id = "m" + digits;
        catalog.lag_screws.push_back(catalog.lag_screws.front());
        catalog.lag_screws.back().id = "s" + digits;
        if (number == 400) break;  // one more than may be asked for at once
        metals += ",m" + digits;
        anchors += ",s" + digits;
    }
    Ranges ranges;
    CHECK(search::parse_range(metals, catalog, ranges).empty());
    CHECK(search::parse_range(anchors, catalog, ranges).empty());
    CHECK(ranges.metals.size() == 400);
    CHECK(ranges.anchors.size() == 400);
    for (const std::string& text : {metals + ",m400", anchors + ",s400"})
        CHECK(test::tells(search::parse_range(text, catalog, ranges), "at most 400 values"));
    CHECK(ranges.metals.size() == 400);
    CHECK(contains(refused("plate=1x1..1000x1000/1/64"), "at most 400 values"));
}

TEST_CASE("what is no range is refused with what would be accepted", "[bad-input]") {
    CHECK(contains(refused("plat=5x5"), "plate, thickness, metal, anchor"));
    CHECK(contains(refused("thickness"), "KEY=VALUES"));
    CHECK(contains(refused("thickness=thick"), "found \"thick\""));
    CHECK(contains(refused("thickness=3/8..5/8"), "from, to, step"));  // the step 8 in would be larger than the range
    CHECK(contains(refused("thickness=-1/2"), "lengths"));
    CHECK(contains(refused("thickness="), "lengths"));
    CHECK(contains(refused("thickness=1/2,,3/4"), "lengths"));
    CHECK(contains(refused("length=1..1000/1/64"), "at most 400 values"));
    CHECK(contains(refused("plate=plate-6x9-1/2"), "toehold list plates"));
    CHECK(contains(refused("anchor=lag-3/9"), "lag-3/8"));
    CHECK(contains(refused("anchor=lag-3/8 a307"), "a screw has no grade"));
    CHECK(contains(refused("anchor=bolt-1/2 a308"), "a307"));
    CHECK(contains(refused("metal=steel-a37"), "steel-a36"));
    CHECK(contains(refused("pattern=1x1@1"), "2x2@1 1/2"));
    CHECK(contains(refused("pattern=2x2"), "2x2@1 1/2"));
    CHECK(contains(refused("washer=broad"), "none, narrow or wide"));
    CHECK(contains(refused("backing=1/4x3"), "thickness"));
    CHECK(contains(refused("blocks=sideways"), "as-is"));
    CHECK(contains(refused("block-size=5x9y"), "2x8"));
    CHECK(contains(refused("ends=toe-nails"), "hardware 1600"));
    CHECK(contains(refused("ends=hardware"), "hardware 1600"));
    CHECK(contains(refused("ends=hardware 0.0001"), "100 to 100,000 lb"));  // no post stands on hardware that soft
    CHECK(contains(refused("ends=hardware 1e9"), "100 to 100,000 lb"));
}

TEST_CASE("the number of candidates is the product of the choices", "[unit]") {
    const catalog::Resolved base = test::shipped_detail("heron-landing-lags-in-deep-blocks");
    Ranges ranges;
    CHECK(search::size(search::make_space(base, ranges, test::shipped_catalog())) == 1);
    for (const char* text :
         {"plate=6x6..8x8/1", "thickness=3/8,1/2", "anchor=lag-3/8,bolt-1/2", "length=6,8", "pattern=2x2@1 1/4",
          "backing=washer,3x1/4", "blocks=as-is,upright", "block-size=4x8", "ends=as-is,angles"})
        REQUIRE(search::parse_range(text, test::shipped_catalog(), ranges).empty());
    const search::Space space = search::make_space(base, ranges, test::shipped_catalog());
    // 9 plates, 2 thicknesses, 2 anchors, 2 lengths and a bolt's own, 1 pattern, 2 backings and a screw's none, 2
    // arrangements of one size, 2 ends.
    CHECK(search::size(space) == 9u * 2 * 2 * 3 * 1 * 3 * 2 * 2);
    // A lag has two lengths and nothing below, a bolt its own length and two backings: 4 of 2 x 3 x 3.
    std::uint64_t there = 0;
    for (std::uint64_t candidate = 0; candidate < search::size(space); ++candidate)
        if (search::detail_of(space, candidate)) ++there;
    CHECK(there == 9u * 2 * (2 + 2) * 2 * 2);
}

TEST_CASE("what the detail lacks for a range is said before the search", "[bad-input]") {
    const catalog::Catalog& catalog = test::shipped_catalog();
    Ranges lags;
    REQUIRE(search::parse_range("anchor=lag-3/8", catalog, lags).empty());
    const catalog::Resolved bolted = test::shipped_detail("heron-landing-through-bolts");
    CHECK(test::tells(search::problems(bolted, lags, catalog), "length=6..10/1"));
    Ranges upright;
    REQUIRE(search::parse_range("blocks=upright", catalog, upright).empty());
    const catalog::Resolved boards = test::shipped_detail("heron-landing-decking-only");
    CHECK(test::tells(search::problems(boards, upright, catalog), "block-size=4x8"));
    Ranges deep;
    deep.block_sizes = {"2x10"};
    CHECK(search::problems(boards, deep, catalog).empty());
    catalog::Resolved studs = boards;
    studs.detail.framing.joists->grade = "stud";  // listed to 6 in wide
    CHECK(test::tells(search::problems(studs, deep, catalog), "is not listed for this size"));
    CHECK(search::problems(boards, search::default_ranges(boards, catalog), catalog).empty());
}
