// That each attribute lands where the model says, in the engine's units; conversions by hand.
#include "support/compare.h"
#include "xml/samples.h"

using namespace toehold;
using namespace toehold::model;

namespace {

BaseDetail good(const std::string& name) {
    const xml::DetailRead read = xml::read_detail(test::good_file(name));
    INFO(test::sentences(read.problems));
    REQUIRE(read.detail);
    CHECK(read.problems.empty());
    return *read.detail;
}

}  // namespace

TEST_CASE("what a detail leaves out has the model's default and is not said to be stated", "[unit]") {
    const BaseDetail detail = good("square-tube-lag-screws.xml");
    CHECK(detail.name == "square tube on lag screws");
    CHECK(detail.guard == Guard{42.0, Occupancy::other});
    CHECK(on_deck(detail).plate_below_surface_in == 0.0);
    CHECK(std::get<RectangularTube>(detail.post) == RectangularTube{2.0, 2.0, 0.125, "steel-a500-b"});
    CHECK(std::get<RectangleOutline>(on_deck(detail).plate.outline) == RectangleOutline{5.0, 7.0, 0.0, {}});
    CHECK(on_deck(detail).plate.holes.at(2) == Hole{"C", {1.75, 2.75}, RoundHole{0.4375}});
    REQUIRE(on_deck(detail).anchors.size() == 1);
    CHECK(on_deck(detail).anchors[0].holes.empty());
    CHECK(std::get<LagScrew>(on_deck(detail).anchors[0].fastener) == LagScrew{"lag-3/8", 6.0, {}});
    CHECK_FALSE(on_deck(detail).weld);
    CHECK(on_deck(detail).layers == Layers{});
    CHECK(detail.framing == Framing{});
    CHECK(detail.loads == Loads{});
    CHECK_FALSE(detail.loads.stated);
    CHECK(detail.basis == Basis{});
}

TEST_CASE("guard, plate and anchors of the fullest detail", "[unit]") {
    const BaseDetail detail = good("rectangular-tube-through-bolts.xml");
    CHECK(detail.note == "first line\nsecond line, \"quoted\" & more");
    CHECK(detail.guard == Guard{36.0, Occupancy::one_and_two_family});
    CHECK(on_deck(detail).plate_below_surface_in == 1.0);
    CHECK(std::get<RectangularTube>(detail.post) == RectangularTube{2.0, 3.0, 0.1875, "steel-a500-b"});
    CHECK(on_deck(detail).plate.id == "P1");
    CHECK(on_deck(detail).plate.name == "5 x 7 with a slot");
    CHECK(std::get<RectangleOutline>(on_deck(detail).plate.outline) ==
          RectangleOutline{5.0, 7.0, 0.25, {0.25, -0.125}});
    CHECK(on_deck(detail).plate.holes.at(1) == Hole{"B", {1.5, -2.75}, Slot{1.0, 0.5625, 30.0}});
    CHECK(on_deck(detail).plate.holes.at(3).id == "D");
    CHECK(on_deck(detail).weld == Weld{0.1875, "e70"});
    REQUIRE(on_deck(detail).anchors.size() == 2);
    CHECK(on_deck(detail).anchors[0].holes == std::vector<std::string>{"A", "B"});
    CHECK(on_deck(detail).anchors[0].corrosion_protection == "hot-dip galvanized, ASTM A153");
    CHECK(on_deck(detail).anchors[0].washer == Washer{"washer-1/2"});
    const auto& bolt = std::get<ThroughBolt>(on_deck(detail).anchors[0].fastener);
    CHECK(std::get<BackingPlate>(bolt.below) == BackingPlate{3.0, 2.5, 0.25, "steel-a36"});
    CHECK(std::get<Washer>(std::get<ThroughBolt>(on_deck(detail).anchors[1].fastener).below) == Washer{"washer-1/2"});
    CHECK_FALSE(on_deck(detail).anchors[1].washer);
}

TEST_CASE("layers and framing of the fullest detail", "[unit]") {
    const BaseDetail detail = good("rectangular-tube-through-bolts.xml");
    CHECK(on_deck(detail).layers.decking == Decking{"wood-southern-pine", 1.0, "invented"});
    CHECK(on_deck(detail).layers.shims == std::vector<Shim>{{"wood-hard", 0.25}, {"metal", 0.125}});
    CHECK_FALSE(detail.framing.preservative_treated);
    CHECK(detail.framing.joists ==
          Joists{PlanAxis::y, 1.5, 9.25, "southern-pine", "no-2", {{"J1", -8.0}, {"J2", 8.0}}});
    REQUIRE(detail.framing.blocks.size() == 2);
    const Block& first = detail.framing.blocks[0];
    CHECK(first.along == PlanAxis::x);
    CHECK(first.from_in == -7.25);
    CHECK(first.to_in == 7.25);
    CHECK(first.across_in == -3.5);
    CHECK(first.width_in == 3.5);
    CHECK(first.depth_in == 7.25);
    CHECK(first.grade == "no-1");
    using Kind = EndGrainFasteners::Kind;
    CHECK(first.from_end == BlockEnd{"J1", EndGrainFasteners{Kind::nail, 0.162, 3.5, 4, 5.0}});
    CHECK(first.to_end == BlockEnd{"J2", EndGrainFasteners{Kind::wood_screw, 0.19, 4.0, 1, 0.0}});
    const Block& second = detail.framing.blocks[1];
    CHECK(second.from_end ==
          BlockEnd{"J1", ReportedConnector{"angle both sides", "invented", 1200.0, 1500.0, 600.0, 3.5}});
    CHECK(second.to_end == BlockEnd{"J2", {}});
}

TEST_CASE("loads and basis of the fullest detail", "[unit]") {
    const BaseDetail detail = good("rectangular-tube-through-bolts.xml");
    CHECK(detail.loads.stated);
    CHECK(detail.loads.directions == Directions::outward);
    CHECK(detail.loads.concentrated == ConcentratedLoad{200.0, -50.0});
    CHECK(detail.loads.line == LineLoad{50.0, 6.0, 300.0});
    REQUIRE(detail.loads.user.size() == 2);
    CHECK(detail.loads.user[0] == UserLoad{"crowd", 1500.0, 10.0, 38.0, "invented"});
    CHECK(detail.loads.user[1] == UserLoad{"plain", 0.0, 0.0, {}, ""});
    CHECK(detail.basis.method == Method::lrfd);
    CHECK(detail.basis.load_duration == 1.6);
    CHECK(detail.basis.time_effect == 0.8);
    CHECK(detail.basis.moisture == Moisture::dried_in_service);
    CHECK(detail.basis.temperature == Temperature::to_125F);
    CHECK(detail.basis.incised == false);
    CHECK(detail.basis.decking_in_shear == DeckingInShear::bearing);
    CHECK(detail.basis.code == BuildingCode::irc_2021);
    CHECK(detail.basis.stiffness == FixedStiffness{25000.0, 120000.0, "measured, invented"});
}

TEST_CASE("a wood post stands in its shoe", "[unit]") {
    const BaseDetail detail = good("wood-post-in-shoe.xml");
    const auto& post = std::get<WoodPost>(detail.post);
    CHECK(post.species == "douglas-fir-larch");
    CHECK(post.notched);
    CHECK(post.shoe == Shoe{ShoeAttachment::bolted, 4.0, 4.25, 0.25, 6.0, "steel-a36", 8400.0, "invented"});
    CHECK(std::get<CircleOutline>(on_deck(detail).plate.outline) == CircleOutline{10.0, {0.5, 0.0}});
    CHECK(std::get<WoodScrew>(on_deck(detail).anchors.at(0).fastener) == WoodScrew{"wood-screw-14", 3.0, 2.0});
}

TEST_CASE("a metric detail is read in inches and pounds", "[closed-form]") {
    // 1 in = 25.4 mm exactly; 1 lbf = 4.4482216152605 N exactly (NIST SP 811, appendix B).
    constexpr double newton = 1.0 / 4.4482216152605;
    const BaseDetail detail = good("round-tube-metric.xml");
    CHECK_CLOSE(detail.guard.height_in, 36.0, 1e-15, 0.0);
    CHECK_CLOSE(std::get<RoundTube>(detail.post).diameter_in, 2.0, 1e-15, 0.0);
    CHECK_CLOSE(std::get<RoundTube>(detail.post).wall_in, 0.1, 1e-15, 0.0);
    const auto& outline = std::get<PolygonOutline>(on_deck(detail).plate.outline);
    REQUIRE(outline.corners.size() == 5);
    CHECK_CLOSE(outline.corners[3].y_in, 4.0, 1e-15, 0.0);
    CHECK_CLOSE(std::get<Slot>(on_deck(detail).plate.holes.at(2).shape).angle_deg, 85.94366926962348, 1e-14, 0.0);
    const auto& fastener = std::get<ReportedFastener>(on_deck(detail).anchors.at(0).fastener);
    CHECK_CLOSE(fastener.withdrawal_lb_per_in, 43.0 * 25.4 * newton, 1e-14, 0.0);
    CHECK_CLOSE(fastener.tension_lb, 4000.0 * newton, 1e-14, 0.0);
    CHECK_CLOSE(fastener.lateral_lb, 1000.0 * newton, 1e-14, 0.0);
    CHECK_CLOSE(fastener.length_in, 6.0, 1e-15, 0.0);
    CHECK_CLOSE(fastener.thread_length_in, 3.0, 1e-15, 0.0);
    CHECK_CLOSE(fastener.minimum_penetration_in, 2.0, 1e-15, 0.0);
    CHECK_CLOSE(fastener.minimum_edge_in, 1.0, 1e-15, 0.0);
    CHECK_CLOSE(fastener.minimum_end_in, 4.0, 1e-15, 0.0);
    CHECK_CLOSE(fastener.minimum_spacing_in, 2.0, 1e-15, 0.0);
    CHECK_CLOSE(detail.loads.line->push_lb_per_ft, 730.0 * newton * 0.3048, 1e-14, 0.0);
    CHECK_CLOSE(detail.loads.line->spacing_ft, 1.8 / 0.3048, 1e-14, 0.0);
}

TEST_CASE("every element has its line, by the path that problems use", "[unit]") {
    const xml::DetailRead read = xml::read_detail(test::good_file("rectangular-tube-through-bolts.xml"));
    CHECK(read.lines.at("") == 3);
    CHECK(read.lines.at("guard") == 4);
    CHECK(read.lines.at("plate/slot[B]") == 9);
    CHECK(read.lines.at("anchors[1]/through-bolt/backing-plate") == 16);
    CHECK(read.lines.at("layers/decking") == 26);
    CHECK(read.lines.at("framing/joists/joist[J2]") == 33);
    CHECK(read.lines.at("framing/block[B1]/end[to]") == 39);
    CHECK(read.lines.at("basis/fixed-stiffness") == 57);
}

TEST_CASE("a document is called by the name of its root, even a damaged one", "[unit]") {
    using xml::DocumentKind;
    CHECK(xml::document_kind(test::good_file("plates.xml")) == DocumentKind::plates);
    CHECK(xml::document_kind(test::bad_file("truncated.xml")) == DocumentKind::detail);
    const test::TemporaryFolder folder;
    const auto kind = [&](const std::string& text) {
        test::put_bytes(folder.path() / "f", text);
        return xml::document_kind(folder.path() / "f");
    };
    CHECK(kind("<catalog/>") == DocumentKind::catalog);
    CHECK(kind("<?xml version='1.0'?><!-- <plates> --><base-detail>") == DocumentKind::detail);
    CHECK(kind("<!DOCTYPE base-detail>\n<base-detail/>") == DocumentKind::detail);
    CHECK(kind("<!DOCTYPE base-detail [ <!ENTITY a '>'> ]><base-detail/>") == DocumentKind::detail);
    for (const std::string& mark : {std::string("\xFF\xFE"), std::string()}) {
        std::string utf_16 = mark;
        for (const char letter : std::string("<?xml version='1.0'?><project/>")) utf_16 += {letter, '\0'};
        CHECK(kind(utf_16) == DocumentKind::project);
    }
    for (const char* other : {"", "text", "<", "<!--", "<?xml", "<!DOCTYPE", "<plates-and-more/>", "<html>"}) {
        CHECK(kind(other) == DocumentKind::unknown);
    }
}
