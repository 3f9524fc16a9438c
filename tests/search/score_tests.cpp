// Scores against arithmetic by hand, with a price table of round numbers.
#include "search/score/score.h"

#include "model/validate.h"
#include "search/changes/anchors.h"
#include "search/changes/plate.h"
#include "search/score/metal_pieces.h"
#include "search/score/robustness.h"

#include "support/compare.h"
#include "support/shipped.h"

#include <numbers>

using namespace toehold;
using search::Score;

namespace {

constexpr double steel_lb_per_in3 = 490.0 / 1728.0;

catalog::Prices table() {
    catalog::Prices prices;
    prices.currency = "USD";
    prices.per_hole = 2.0;
    prices.per_cut_in = 0.10;
    prices.metals = {{"steel-a36", 1.5}};
    prices.fasteners = {{catalog::PricedFastener::lag_screw, "lag-7/16", "", 0.5, 0.25},
                        {catalog::PricedFastener::washer, "washer-wide-7/16", "", 0.2, 0.0},
                        {catalog::PricedFastener::bolt, "bolt-1/2", "", 1.0, 0.5},
                        {catalog::PricedFastener::bolt, "bolt-1/2", "f593-cw", 3.0, 1.0}};
    prices.lumber = {{"4x8", 4.0}};
    prices.connectors = {{catalog::PricedConnector::hardware, 15.0}};
    return prices;
}

}  // namespace

TEST_CASE("lag screws into two 4x8 blocks, by hand", "[closed-form]") {
    const catalog::Resolved resolved = test::shipped_detail("heron-landing-lags-in-deep-blocks");
    const Score score = search::score(resolved, table(), 0.84);
    // Plate 9 1/2 x 9 1/2 x 5/8 in its corners rounded to 1/4 in, with four holes of 1/2 in; four 7/16 in lags 8 in
    // long with wide washers of 1.250 / 0.500 x 0.083 in. Anchors' shanks count alone.
    const double circle = 0.25 * std::numbers::pi;
    const double corners = (4.0 - std::numbers::pi) * 0.25 * 0.25;
    const double around_in = 38.0 - (8.0 - 2.0 * std::numbers::pi) * 0.25;
    const double plate_lb = (9.5 * 9.5 - corners - 4 * circle * 0.25) * 0.625 * steel_lb_per_in3;
    const double shanks_lb = 4 * circle * 0.4375 * 0.4375 * 8.0 * steel_lb_per_in3;
    const double washers_lb = 4 * circle * (1.25 * 1.25 - 0.25) * 0.083 * steel_lb_per_in3;
    CHECK_CLOSE(score.weight_lb, plate_lb + shanks_lb + washers_lb, 1e-6, 0.0);
    CHECK(score.anchors == 4);
    // Plate, 4 lags, 4 washers, 2 blocks, hardware at 4 ends.
    CHECK(score.pieces == 1 + 4 + 4 + 2 + 4);
    // Blocks from -7 1/4 to 7 1/4 in: 14 1/2 in each.
    const double cost =
        1.5 * plate_lb + 4 * 2.0 + around_in * 0.10 + 4 * (0.5 + 8 * 0.25) + 4 * 0.2 + 2 * 4.0 * 14.5 / 12.0 + 4 * 15.0;
    CHECK_CLOSE(score.steel_cost, cost, 1e-5, 0.0);
    CHECK(score.unpriced == 0);
    CHECK(score.governing_ratio == 0.84);
    CHECK_FALSE(score.robustness_ratio.has_value());
}

TEST_CASE("what the table has no price for is counted, not guessed", "[unit]") {
    const catalog::Resolved resolved = test::shipped_detail("heron-landing-lags-in-deep-blocks");
    catalog::Prices prices = table();
    prices.fasteners.erase(prices.fasteners.begin());  // the four lags
    prices.lumber.clear();                             // the two blocks
    CHECK(search::score(resolved, prices, 0.5).unpriced == 6);
    CHECK(search::score(resolved, prices, 0.5).steel_cost < search::score(resolved, table(), 0.5).steel_cost);
}

TEST_CASE("a bolt is as long as what it joins, and its nut", "[closed-form]") {
    model::BaseDetail detail = test::demo_detail("heron-landing-lags-in-deep-blocks");
    const auto bolt = search::fastener_size(test::shipped_catalog(), "bolt-1/2", "f593-cw");
    REQUIRE(search::set_fastener(detail, *bolt, std::nullopt, search::Holes::keep_edges));
    REQUIRE(search::set_below(detail, model::BackingPlate{3.0, 3.0, 0.25, "steel-a36"}));
    const catalog::Resolved resolved = test::resolved_by_shipped(detail);
    // Washer 0.109, plate 5/8, boards 1, block 7 1/4, backing plate 1/4, nut 1/2 in.
    CHECK_CLOSE(search::anchor_length_in(resolved, resolved.anchors.front()), 0.109 + 0.625 + 1 + 7.25 + 0.25 + 0.5,
                0.0, 1e-9);
    const std::vector<search::CutPiece> pieces = search::cut_pieces(resolved);
    REQUIRE(pieces.size() == 5);
    CHECK(pieces[1].cut_in == 12.0);
    CHECK(pieces[1].holes == 1);
    CHECK_CLOSE(pieces[1].weight_lb, (9.0 - 0.25 * std::numbers::pi * 0.5625 * 0.5625) * 0.25 * steel_lb_per_in3, 1e-9,
                0.0);
    // A grade with a row of its own has that row's price.
    CHECK(*catalog::fastener_price(table(), catalog::PricedFastener::bolt, "bolt-1/2", "f593-cw", 10.0) == 13.0);
    CHECK(*catalog::fastener_price(table(), catalog::PricedFastener::bolt, "bolt-1/2", "a307", 10.0) == 6.0);
    CHECK_FALSE(catalog::fastener_price(table(), catalog::PricedFastener::bolt, "bolt-5/8", "a307", 10.0).has_value());
}

TEST_CASE("lumber is priced whichever way up it lies", "[unit]") {
    CHECK(*catalog::lumber_price_per_foot(table(), 7.25, 3.5) == 4.0);
    CHECK(*catalog::lumber_price_per_foot(table(), 3.5, 7.25) == 4.0);
    CHECK_FALSE(catalog::lumber_price_per_foot(table(), 3.5, 9.25).has_value());
}

TEST_CASE("a detail is misplaced six ways, each once", "[unit]") {
    const model::BaseDetail detail = test::demo_detail("heron-landing-lags-in-deep-blocks");
    const std::vector<model::BaseDetail> all = search::misplaced(detail);
    REQUIRE(all.size() == 6);
    CHECK(on_deck(all[0]).plate.holes[0].center.x_in == on_deck(detail).plate.holes[0].center.x_in + 0.125);
    CHECK(on_deck(all[3]).plate.holes[0].center.y_in == on_deck(detail).plate.holes[0].center.y_in - 0.125);
    CHECK(all[4].framing.blocks[1].across_in == detail.framing.blocks[1].across_in + 0.25);
    CHECK(all[5].framing.blocks[0].across_in == detail.framing.blocks[0].across_in - 0.25);
    for (const model::BaseDetail& one : all) CHECK(model::validate(one).empty());
    // Beside a rim a block cannot be off toward it: it would lie in it.
    CHECK(search::misplaced(test::demo_detail("heron-landing-beside-the-rim")).size() < 7);
}
