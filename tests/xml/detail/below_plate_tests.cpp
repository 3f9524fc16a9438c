// Packing through the boards, boards with a value from a report, and one plate below several bolts, in the file.
#include "support/compare.h"
#include "xml/samples.h"

using namespace toehold;
using namespace toehold::model;
using test::changed;
using test::plain_detail;

namespace {

const std::string lags = R"(<lag-screw size="lag-3/8" length="6 in"/>)";

std::string with_layers(const std::string& inside) {
    return changed(plain_detail(), "<layers/>", "<layers>" + inside + "</layers>");
}

std::string with_bolts(const std::string& below) {
    return changed(plain_detail(), lags, R"(<through-bolt size="bolt-1/2" grade="a307">)" + below + "</through-bolt>");
}

BaseDetail read(const std::string& text) {
    const xml::DetailRead read = xml::read_detail_text(text, "detail.xml");
    INFO(test::sentences(read.problems));
    REQUIRE(read.detail);
    return *read.detail;
}

bool refused(const std::string& text, const std::string& words) {
    const xml::DetailRead read = xml::read_detail_text(text, "detail.xml");
    INFO(test::sentences(read.problems));
    return !read.detail && test::tells(read.problems, words);
}

}  // namespace

TEST_CASE("boards carry the allowable bearing of their report", "[unit]") {
    const BaseDetail detail = read(with_layers(
        R"(<decking material="composite-generic" thickness="1 in" bearing="410 psi" modulus="90 ksi" report="invented"/>)"));
    CHECK(on_deck(detail).layers.decking->bearing_psi == 410.0);
    CHECK(on_deck(detail).layers.decking->modulus_psi == 90000.0);
    CHECK(on_deck(detail).layers.decking->report == "invented");
}

TEST_CASE("packing stands about every anchor or where the file says", "[unit]") {
    const std::string boards = R"(<decking material="composite-generic" thickness="1 in"/>)";
    const BaseDetail square =
        read(with_layers(boards + R"(<packing width="2 in" depth="1.5 in" material="packing-steel"/>)"));
    CHECK(on_deck(square).layers.packing == Packing{PackingShape::rectangle, 2.0, 1.5, "packing-steel", 0.0, {}});
    CHECK(packing_places(square).size() == on_deck(square).plate.holes.size());
    const BaseDetail round = read(with_layers(
        boards +
        R"(<packing shape="round" diameter="1.5 in" material="packing-steel" hole="5/8 in"><at x="-1 in" y="2 in"/></packing>)"));
    CHECK(on_deck(round).layers.packing ==
          Packing{PackingShape::round, 1.5, 0.0, "packing-steel", 0.625, {{-1.0, 2.0}}});
    CHECK(packing_places(round).size() == 1);
}

TEST_CASE("packing without boards, or with a hole as wide as itself, is refused", "[bad-input]") {
    CHECK(refused(with_layers(R"(<packing width="2 in" depth="2 in" material="packing-steel"/>)"),
                  "packing without decking"));
    CHECK(refused(with_layers(R"(<decking material="composite-generic" thickness="1 in"/>
        <packing width="2 in" depth="1 in" material="packing-steel" hole="1 in"/>)"),
                  "hole (in)"));
}

TEST_CASE("one plate, angle or channel below all bolts of a group", "[unit]") {
    const BaseDetail flat = read(with_bolts(
        R"(<lower-plate x="0 in" y="-2 in" width="8 in" depth="3 in" thickness="1/4 in" metal="steel-a36"/>)"));
    const LowerPlate* const plate = lower_plate(on_deck(flat).anchors.at(0));
    REQUIRE(plate != nullptr);
    CHECK(*plate == LowerPlate{LowerShape::plate, {0.0, -2.0}, 8.0, 3.0, 0.25, 0.0, "steel-a36"});
    CHECK(runs_along(*plate) == PlanAxis::x);
    const BaseDetail angle = read(with_bolts(
        R"(<lower-plate shape="angle" x="0 in" y="0 in" width="3 in" depth="8 in" thickness="1/4 in" leg="3 in" metal="steel-a36"/>)"));
    CHECK(lower_plate(on_deck(angle).anchors.at(0))->leg_in == 3.0);
    CHECK(runs_along(*lower_plate(on_deck(angle).anchors.at(0))) == PlanAxis::y);
    CHECK(refused(with_bolts(R"(<lower-plate shape="channel" x="0 in" y="0 in" width="8 in" depth="3 in" )"
                             R"(thickness="1/4 in" leg="1/8 in" metal="steel-a36"/>)"),
                  "thicker than they are long"));
}
