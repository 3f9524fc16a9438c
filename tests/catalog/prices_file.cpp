// Price tables: the shipped one, and every fault of one's own said in one sentence.
#include "xml/catalog/prices_file.h"
#include "support/problems.h"
#include "support/shipped.h"

#include <catch2/catch.hpp>

using namespace toehold;

namespace {

/// The first row stands on line 2.
xml::PricesRead read(const std::string& rows) {
    const std::string head =
        R"(<prices xmlns="urn:toehold:prices:1" currency="USD" evidence="assumption" source="made up for a test">)";
    return xml::read_prices_text(head + "\n" + rows + "\n" + R"(<work per-hole="1" per-cut-inch="0.1"/></prices>)",
                                 "own.xml", test::shipped_catalog());
}

std::string fault(const std::string& rows) {
    const xml::PricesRead result = read(rows);
    CHECK_FALSE(result.prices.has_value());
    const model::Problem problem = test::only_problem(result.problems);
    CHECK(problem.line >= 2);
    return model::sentence(problem);
}

bool has(const std::string& text, const std::string& words) { return text.find(words) != std::string::npos; }

}  // namespace

TEST_CASE("the shipped prices are said to be invented and price what the shipped details need", "[unit]") {
    const catalog::Prices& prices = test::shipped_catalog().prices;
    CHECK(prices.currency == "USD");
    CHECK(has(prices.source.text, "invented"));
    CHECK(prices.source.evidence == catalog::Evidence::assumption);
    CHECK(metal_price_per_lb(prices, "steel-a36").has_value());
    for (const auto& row : test::shipped_catalog().bolts)
        CHECK(fastener_price(prices, catalog::PricedFastener::bolt, row.id, "a307", 8.0).has_value());
    for (const auto& row : test::shipped_catalog().washers)
        CHECK(fastener_price(prices, catalog::PricedFastener::washer, row.id, "", 0.0).has_value());
    for (const auto kind : {catalog::PricedConnector::angles, catalog::PricedConnector::toe_nails})
        CHECK(connector_price(prices, kind).has_value());
}

TEST_CASE("a table of one's own is read row by row", "[unit]") {
    const xml::PricesRead result = read(R"(<metal id="steel-a36" per-lb="2.25"/>
<lag-screw size="lag-3/8" each="0.5" per-inch="0.1"/><bolt size="bolt-1/2" each="2"/>
<bolt size="bolt-1/2" grade="f593-cw" each="6"/><lumber size="4x8" per-foot="4"/>
<connector kind="hardware" each="15"/><reported-fastener each="3"/>)");
    INFO(test::sentences(result.problems));
    REQUIRE(result.prices.has_value());
    CHECK(result.prices->per_hole == 1.0);
    CHECK(result.prices->reported_fastener == 3.0);
    CHECK(*metal_price_per_lb(*result.prices, "steel-a36") == 2.25);
    CHECK(*fastener_price(*result.prices, catalog::PricedFastener::lag_screw, "lag-3/8", "", 8.0) == 0.5 + 0.8);
    CHECK(*fastener_price(*result.prices, catalog::PricedFastener::bolt, "bolt-1/2", "f593-cw", 8.0) == 6.0);
}

TEST_CASE("what is wrong with a price table is said in one sentence", "[bad-input]") {
    CHECK(has(fault(R"(<metal id="steel-a37" per-lb="2"/>)"), "steel-a36"));
    CHECK(has(fault(R"(<metal id="steel-a36" per-lb="-2"/>)"), "own.xml:2"));
    CHECK(has(fault(R"(<metal id="steel-a36" per-lb="two"/>)"), "found \"two\""));
    CHECK(has(fault(R"(<metal id="steel-a36"/>)"), "per-lb"));
    CHECK(has(fault(R"(<lag-screw size="lag-3/9" each="1"/>)"), "lag-3/8"));
    CHECK(has(fault(R"(<bolt size="bolt-1/2" grade="a308" each="1"/>)"), "a307"));
    CHECK(has(fault(R"(<lag-screw size="lag-3/8" each="1"/><lag-screw size="lag-3/8" each="2"/>)"), "already has"));
    CHECK(has(fault(R"(<lumber size="4x8y" per-foot="4"/>)"), "no lumber is sold by this size"));
    CHECK(has(fault(R"(<connector kind="glue" each="4"/>)"), "hardware"));
    CHECK(has(fault(R"(<washer size="washer-wide-3/8" each="1" per-inch="2"/>)"), "per-inch"));
    CHECK(has(fault(R"(<nails each="1"/>)"), "nails"));
    const xml::PricesRead other =
        xml::read_prices_text(R"(<catalog xmlns="urn:toehold:catalog:1"/>)", "own.xml", test::shipped_catalog());
    CHECK(has(model::sentence(test::only_problem(other.problems)), "prices"));
    const xml::PricesRead none = xml::read_prices("/no/such/prices.xml", test::shipped_catalog());
    CHECK_FALSE(none.prices.has_value());
    CHECK(none.problems.size() == 1);
}
