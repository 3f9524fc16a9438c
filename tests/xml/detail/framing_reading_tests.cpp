// That joists with what holds them, and every connection, land where the model says; conversions by hand.
#include "support/compare.h"
#include "xml/samples.h"

using namespace toehold;
using namespace toehold::model;

namespace {

Framing described() {
    const xml::DetailRead read = xml::read_detail(test::good_file("framing-down-to-the-supports.xml"));
    INFO(test::sentences(read.problems));
    REQUIRE(read.detail);
    return read.detail->framing;
}

constexpr double newton = 1.0 / 4.4482216152605;  // lbf, exact by definition

}  // namespace

TEST_CASE("boards and what fastens them to the joists", "[unit]") {
    const xml::DetailRead read = xml::read_detail(test::good_file("framing-down-to-the-supports.xml"));
    REQUIRE(read.detail);
    const std::optional<DeckingFastening> fastening = on_deck(*read.detail).layers.decking->fastening;
    REQUIRE(fastening);
    CHECK(fastening->diameter_in == 0.164);
    CHECK(fastening->length_in == 2.5);
    CHECK(fastening->per_crossing == 2);
    CHECK(fastening->board_width_in == 5.5);
    CHECK_CLOSE(fastening->lateral_lb, 445.0 * newton, 1e-14, 0.0);
    CHECK(fastening->report == "invented");
}

TEST_CASE("joists have ends, pieces and offsets; what is not written is one piece", "[unit]") {
    const Framing framing = described();
    CHECK(framing.joists ==
          Joists{PlanAxis::y, 1.5, 9.25, "southern-pine", "no-2", {{"J1", -8.0, 1}, {"J2", 8.0, 2}}, -120.0, 6.0});
    CHECK(framing.blocks.at(0).plies == 2);
    CHECK(framing.blocks.at(1).plies == 1);
}

TEST_CASE("rims and the connection of the joists' ends to them", "[unit]") {
    const Framing framing = described();
    REQUIRE(framing.rims.size() == 2);
    const EndGrainFasteners nails{EndGrainFasteners::Kind::nail, 0.162, 3.5, 3, 6.0};
    CHECK(framing.rims[0] == Rim{"R1", 6.75, -12.0, 12.0, 1.5, 9.25, "hem-fir", "no-1", 1, nails});
    CHECK(framing.rims[1] == Rim{"R2", -121.5, -12.0, 12.0, 1.5, 9.25, "hem-fir", "no-2", 2, {}});
}

TEST_CASE("supports: a ledger with a connector, a beam with toe-nails", "[unit]") {
    const Framing framing = described();
    REQUIRE(framing.supports.size() == 2);
    const JoistSupport& ledger = framing.supports[0];
    CHECK(ledger.id == "S1");
    CHECK(ledger.kind == JoistSupport::Kind::ledger);
    CHECK(ledger.at_in == -120.0);
    CHECK(ledger.bearing_in == 0.0);
    const auto& hanger = std::get<ReportedConnector>(ledger.connection);
    CHECK_CLOSE(hanger.uplift_lb, 1000.0 * newton, 1e-14, 0.0);
    CHECK(hanger.down_lb == 900.0);
    CHECK(hanger.lateral_lb == 0.0);
    CHECK(hanger.pull_lb == 300.0);
    CHECK_CLOSE(hanger.height_in, 200.0 / 25.4, 1e-15, 0.0);
    REQUIRE(hanger.stiffness_lb_per_in);
    CHECK_CLOSE(*hanger.stiffness_lb_per_in, 25400.0 * newton, 1e-14, 0.0);  // 1 kN/mm
    const JoistSupport beam{"S2", JoistSupport::Kind::beam, -12.0, 3.5, ToeNails{0.131, 2.5, 4, 2.0}};
    CHECK(framing.supports[1] == beam);
}

TEST_CASE("block ends may meet joists, rims and other blocks, by angles or toe-nails", "[unit]") {
    const Framing framing = described();
    using Kind = SideAngles::Kind;
    const Block& first = framing.blocks.at(0);
    CHECK(first.from_end ==
          BlockEnd{"J1", SideAngles{2, 0.125, "steel-a36", Kind::wood_screw, 0.19, 1.5, 4, 1.5, 1.0}});
    CHECK(first.to_end == BlockEnd{"J2", SideAngles{1, 0.25, "steel-a36", Kind::bolt, 0.375, 0.0, 1, 0.0, 1.5}});
    const Block& second = framing.blocks.at(1);
    CHECK(second.from_end == BlockEnd{"B1", {}});
    CHECK(second.to_end == BlockEnd{"R1", ToeNails{0.131, 2.5, 2, 0.0}});
}

TEST_CASE("a connector without a stiffness leaves it to the model", "[unit]") {
    const xml::DetailRead read = xml::read_detail(test::good_file("rectangular-tube-through-bolts.xml"));
    REQUIRE(read.detail);
    const BlockEnd& end = read.detail->framing.blocks.at(1).from_end;
    CHECK_FALSE(std::get<ReportedConnector>(end.connection).stiffness_lb_per_in);
}

TEST_CASE("what is the model's default is not written", "[unit]") {
    model::BaseDetail detail;
    detail.framing.joists = Joists{PlanAxis::y, 1.5, 9.25, "southern-pine", "no-2", {{"J1", 0.0}}};
    detail.framing.blocks = {Block{}};
    detail.framing.blocks[0].to_end.connection = SideAngles{};
    on_deck(detail).layers.decking = Decking{"wood-southern-pine", 1.0, ""};
    const std::string text = xml::write_detail(detail);
    INFO(text);
    CHECK(
        text.find("<joists along=\"y\" width=\"1.5 in\" depth=\"9.25 in\" species=\"southern-pine\" grade=\"no-2\">") !=
        std::string::npos);
    CHECK(text.find("<joist id=\"J1\" offset=\"0 in\"/>") != std::string::npos);
    for (const char* left_out : {"plies", "<rim", "<support", "<fasteners", "sides", "spacing"}) {
        CHECK(text.find(left_out) == std::string::npos);
    }
}

TEST_CASE("every part of the framing has its line, by the path that problems use", "[unit]") {
    const xml::DetailRead read = xml::read_detail(test::good_file("framing-down-to-the-supports.xml"));
    CHECK(read.lines.at("layers/decking/fasteners") == 16);
    CHECK(read.lines.at("framing/joists/joist[J2]") == 22);
    CHECK(read.lines.at("framing/rim[R1]") == 24);
    CHECK(read.lines.at("framing/support[S2]") == 31);
    CHECK(read.lines.at("framing/support[S2]/toe-nails") == 32);
    CHECK(read.lines.at("framing/block[B1]/end[from]/angles") == 36);
}
