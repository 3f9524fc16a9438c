// Welds of every kind, read from a file and written back.
#include "xml/samples.h"

#include <catch2/catch.hpp>

using namespace toehold;
using namespace toehold::model;

namespace {

xml::DetailRead read(const std::string& weld) {
    return xml::read_detail_text(test::changed(test::plain_detail(), "<anchors>", weld + "\n<anchors>"),
                                 test::good_file("memory.xml"));
}

Weld weld_of(const std::string& text) {
    const xml::DetailRead result = read(text);
    INFO(test::sentences(result.problems));
    REQUIRE(result.detail);
    return on_deck(*result.detail).weld.value();
}

}  // namespace

TEST_CASE("a weld has its kind, sides, faces and gussets", "[unit]") {
    CHECK(weld_of("<weld leg=\"1/4 in\" filler=\"e70\"/>") == Weld{0.25, "e70"});
    Weld expected{0.1875, "e70"};
    expected.sides = {true, true, false, false};
    expected.faces = WeldFaces::both;
    expected.gussets = Gussets{{false, false, true, true}, 2.0, 1.5, 0.25, 0.125};
    CHECK(weld_of("<weld leg=\"3/16 in\" filler=\"e70\" faces=\"both\" sides=\"outward inward\"><gussets sides=\"right "
                  "left\" height=\"2 in\" length=\"1 1/2 in\" thickness=\"1/4 in\" leg=\"1/8 in\"/></weld>") ==
          expected);
    const Weld groove = weld_of("<weld kind=\"partial-penetration\" throat=\"0.1 in\" filler=\"e70\"/>");
    CHECK(groove.kind == WeldKind::partial_penetration);
    CHECK(groove.throat_in == 0.1);
    CHECK(groove.leg_in == 0.0);
    CHECK(weld_of("<weld kind=\"complete-penetration\" filler=\"e70\" leg=\"1/8 in\"/>").leg_in == 0.125);
}

TEST_CASE("what a weld of its kind lacks or does not have is told", "[bad-input]") {
    const auto told = [](const std::string& text) { return test::sentences(read(text).problems); };
    CHECK(told("<weld filler=\"e70\"/>").find("leg") != std::string::npos);
    CHECK(told("<weld kind=\"partial-penetration\" filler=\"e70\"/>").find("throat") != std::string::npos);
    CHECK(told("<weld leg=\"1/4 in\" throat=\"0.1 in\" filler=\"e70\"/>").find("throat") != std::string::npos);
    CHECK(told("<weld leg=\"1/4 in\" filler=\"e70\" sides=\"outward top\"/>").find("top is no side of the foot") !=
          std::string::npos);
    CHECK(told("<weld leg=\"1/4 in\" filler=\"e70\" sides=\"outward\"/>").find("fewer than two sides") !=
          std::string::npos);
}
