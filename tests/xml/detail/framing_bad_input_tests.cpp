// That what cannot be built or read in the framing is refused, at its line and element and in one sentence.
#include "xml/samples.h"

#include <catch2/catch.hpp>

using namespace toehold;

namespace {

struct Change {
    const char *from, *to;
    int line;
    const char* words;
};

std::string described_text() { return test::bytes_of(test::good_file("framing-down-to-the-supports.xml")); }

void check_refused(const Change& change) {
    const xml::DetailRead read =
        xml::read_detail_text(test::changed(described_text(), change.from, change.to), "detail.xml");
    INFO(change.to << "\n" << test::sentences(read.problems));
    CHECK_FALSE(read.detail);
    CHECK(test::tells(read.problems, "detail.xml:" + std::to_string(change.line) + ": " + change.words));
}

constexpr const char* beam = "kind=\"beam\" at=\"-12 in\" bearing=\"3.5 in\"";
constexpr const char* ledger = "kind=\"ledger\" at=\"-10 ft\"";
constexpr const char* beam_nails = "<toe-nails diameter=\"0.131 in\" length=\"2.5 in\" count=\"4\" spread=\"2 in\"/>";

}  // namespace

TEST_CASE("pieces and ends of members that cannot be", "[bad-input]") {
    for (const Change& change : {
             Change{"offset=\"8 in\" plies=\"2\"", "offset=\"8 in\" plies=\"5\"", 22,
                    "framing/joists/joist[J2]: plies is out of range (found \"5\"; accepted: 1 to 4)"},
             Change{"grade=\"no-2\" plies=\"2\"", "grade=\"no-2\" plies=\"0\"", 27,
                    "framing/rim[R2]: plies is not a count (found \"0\""},
             Change{"across=\"-2.75 in\" plies=\"2\"", "across=\"-2.75 in\" plies=\"13\"", 34,
                    "framing/block[B1]: plies is out of range (found \"13\""},
             Change{"from=\"-10 ft\" to=\"6 in\"", "from=\"6 in\" to=\"-10 ft\"", 20,
                    "framing/joists: the end is not beyond the beginning (found \"from 6 in to -120 in\""},
             Change{"from=\"-10 ft\" to=\"6 in\"", "from=\"-10 ft\"", 20,
                    "framing/joists: only one end of the joists is described (accepted: both from and to, or neither)"},
             Change{"from=\"-7.25 in\" to=\"6.5 in\"", "from=\"7.25 in\" to=\"6.5 in\"", 34,
                    "framing/block[B1]: the end is not beyond the beginning"},
             Change{"at=\"6 3/4 in\" from=\"-12 in\"", "at=\"6 3/4 in\" from=\"12.5 in\"", 24,
                    "framing/rim[R1]: the end is not beyond the beginning"},
         })
        check_refused(change);
}

TEST_CASE("an id is given once among joists, rims, supports and blocks", "[bad-input]") {
    check_refused(
        {"<rim id=\"R2\"", "<rim id=\"J1\"", 27, "framing/rim[J1]: the id is already that of joist J1 (found \"J1\""});
    check_refused(
        {"<support id=\"S2\"", "<support id=\"R2\"", 31, "framing/support[R2]: the id is already that of rim R2"});
    check_refused(
        {"<support id=\"S2\"", "<support id=\"S1\"", 31, "framing/support[S1]: this id is already used on line 28"});
    check_refused(
        {"<joist id=\"J1\"", "<joist id=\"B2\"", 21, "framing/joists/joist[B2]: the id is already that of block B2"});
}

TEST_CASE("a rim stands at the joists' ends and reaches the joists it holds", "[bad-input]") {
    check_refused({"at=\"6 3/4 in\"", "at=\"8 in\"", 24,
                   "framing/rim[R1]: the rim does not stand at the joists' ends (found \"rim 1.5 in wide centered at 8 "
                   "in, joists from -120 in to 6 in\""});
    check_refused({"at=\"6 3/4 in\" from=\"-12 in\" to=\"12 in\"", "at=\"6 3/4 in\" from=\"-12 in\" to=\"7 in\"", 24,
                   "framing/rim[R1]: the rim ends short of the middle of joist J2"});
    check_refused({"at=\"6 3/4 in\" from=\"-12 in\"", "at=\"6 3/4 in\" from=\"10 in\"", 24,
                   "framing/rim[R1]: the rim holds no joist (found \"from 10 in to 12 in\""});
    check_refused(
        {" from=\"-10 ft\" to=\"6 in\"", "", 24, "framing/rim[R1]: a rim needs joists whose ends are described"});
}

TEST_CASE("supports stand under the joists, and bear as their kind does", "[bad-input]") {
    for (const Change& change : {
             Change{beam, "kind=\"beam\" at=\"-12 in\"", 31,
                    "framing/support[S2]: bearing (in) of the joists on the beam is out of range"},
             Change{ledger, "kind=\"ledger\" at=\"-10 ft\" bearing=\"1.5 in\"", 28,
                    "framing/support[S1]: joists hang from a ledger's face and bear on nothing (found \"1.5 in\""},
             Change{beam, "kind=\"beam\" at=\"8 in\" bearing=\"3.5 in\"", 31,
                    "framing/support[S2]: the support stands beyond the joists' ends (found \"at 8 in, joists from "
                    "-120 in to 6 in\""},
             Change{ledger, "kind=\"ledger\" at=\"-9 ft\"", 28,
                    "framing/support[S1]: the ledger is not at an end of the joists that hang from it"},
             Change{ledger, "kind=\"wall\" at=\"-10 ft\"", 28,
                    "framing/support[S1]: kind is none of the accepted words (found \"wall\""},
             Change{" from=\"-10 ft\" to=\"6 in\"", "", 31,
                    "framing/support[S2]: a support needs joists whose ends are described"},
         })
        check_refused(change);
}

TEST_CASE("a block's end meets the member it names", "[bad-input]") {
    check_refused({"<end at=\"to\" joist=\"R1\">", "<end at=\"to\" joist=\"S2\">", 44,
                   "framing/block[B2]/end[to]: no joist, rim or block has this id (found \"S2\""});
    check_refused({"<end at=\"to\" joist=\"R1\">", "<end at=\"to\" joist=\"R2\">", 44,
                   "framing/block[B2]/end[to]: rim R2 does not hold the block: its face is not at the block's end"});
    check_refused({"<end at=\"from\" joist=\"B1\"/>", "<end at=\"from\" joist=\"J1\"/>", 43,
                   "framing/block[B2]/end[from]: joist J1 does not hold the block"});
    // A third piece of joist J2 takes its near face from 6.5 in to 5.75 in, where the block no longer fits.
    const Change tripled{"offset=\"8 in\" plies=\"2\"", "offset=\"8 in\" plies=\"3\"", 38,
                         "framing/block[B1]/end[to]: joist J2 does not hold the block: its face is not at the "
                         "block's end (found \"end at 6.5 in, joist J2 centered at 8 in\""};
    check_refused(tripled);
    check_refused({tripled.from, tripled.to, 34, "framing/block[B1]: the block overlaps joist J2 in plan"});
}

TEST_CASE("a block overlaps no block, joist or rim", "[bad-input]") {
    check_refused({"from=\"-1.25 in\" to=\"6 in\" across=\"0 in\"", "from=\"-2.5 in\" to=\"6 in\" across=\"0 in\"", 42,
                   "framing/block[B2]: the block overlaps block B1 in plan (accepted: members side by side)"});
    check_refused({"from=\"-1.25 in\" to=\"6 in\" across=\"0 in\"", "from=\"-1.25 in\" to=\"7 in\" across=\"0 in\"", 42,
                   "framing/block[B2]: the block overlaps rim R1 in plan"});
    check_refused({"from=\"-1.25 in\" to=\"6 in\" across=\"0 in\"", "from=\"-1.25 in\" to=\"6 in\" across=\"-6 in\"",
                   42, "framing/block[B2]: the block overlaps joist J1 in plan"});
}

TEST_CASE("toe-nails that cannot be driven", "[bad-input]") {
    const auto nails = [](const char* words, const char* attributes) {
        check_refused({beam_nails, attributes, 31, words});
    };
    nails("framing/support[S2]: more than one toe-nail a side needs the distance between the outermost two of a side",
          "<toe-nails diameter=\"0.131 in\" length=\"2.5 in\" count=\"3\"/>");
    nails(
        "framing/support[S2]: the toe-nails of one side reach beyond the member's depth (found \"10 in\"; accepted: "
        "a line shorter than 9.25 in)",
        "<toe-nails diameter=\"0.131 in\" length=\"2.5 in\" count=\"4\" spread=\"10 in\"/>");
    nails("framing/support[S2]: diameter (in) is out of range",
          "<toe-nails diameter=\"3 in\" length=\"2.5 in\" count=\"2\"/>");
    nails("framing/support[S2]: length (in) is out of range",
          "<toe-nails diameter=\"0.131 in\" length=\"2.5 ft\" count=\"2\"/>");
    nails("framing/support[S2]: count is out of range",
          "<toe-nails diameter=\"0.131 in\" length=\"2.5 in\" count=\"61\" spread=\"2 in\"/>");
}

TEST_CASE("angles that cannot be fastened", "[bad-input]") {
    for (const Change& change : {
             Change{"sides=\"1\"", "sides=\"3\"", 38, "framing/block[B1]/end[to]: sides is out of range"},
             Change{"per-leg=\"4\" spacing=\"1.5 in\"", "per-leg=\"4\"", 35,
                    "framing/block[B1]/end[from]: more than one fastener per leg needs the distance between "
                    "neighbors"},
             Change{"per-leg=\"4\" spacing=\"1.5 in\"", "per-leg=\"4\" spacing=\"2.5 in\"", 35,
                    "framing/block[B1]/end[from]: the fasteners of one leg reach beyond the member's depth (found "
                    "\"7.5 in\"; accepted: a line shorter than 7.25 in)"},
             Change{"per-leg=\"4\" spacing=\"1.5 in\"", "per-leg=\"0\"", 36,
                    "framing/block[B1]/end[from]/angles: per-leg is not a count"},
             Change{"gauge=\"1 in\"", "gauge=\"0 in\"", 36,
                    "framing/block[B1]/end[from]/angles: gauge must be more than zero"},
             Change{"gauge=\"1 in\"", "gauge=\"14 in\"", 35, "framing/block[B1]/end[from]: gauge (in) is out of range"},
             Change{"kind=\"bolt\"", "kind=\"rivet\"", 39,
                    "framing/block[B1]/end[to]/angles: kind is none of the accepted words (found \"rivet\""},
             Change{"kind=\"bolt\"", "kind=\"bolt\" length=\"2 in\"", 39,
                    "framing/block[B1]/end[to]/angles: <angles> has no attribute of this name (found \"length\""},
             Change{"kind=\"bolt\"", "kind=\"lag-screw\"", 39,
                    "framing/block[B1]/end[to]/angles: <angles> needs the attribute length"},
             Change{"thickness=\"1/4 in\"", "thickness=\"2 in\"", 38,
                    "framing/block[B1]/end[to]: thickness (in) is out of range"},
         })
        check_refused(change);
}

TEST_CASE("connectors and board fasteners that cannot be", "[bad-input]") {
    for (const Change& change : {
             Change{"stiffness=\"1 kN/mm\"", "stiffness=\"1 kN\"", 29, "framing/support[S1]/connector: stiffness"},
             Change{"stiffness=\"1 kN/mm\"", "stiffness=\"0 lb/in\"", 29,
                    "framing/support[S1]/connector: stiffness must be more than zero"},
             Change{"stiffness=\"1 kN/mm\"", "stiffness=\"1e9 lb/in\"", 28,
                    "framing/support[S1]: stiffness (lb/in) is out of range"},
             Change{"pull=\"300 lbf\"", "pull=\"2000 kip\"", 28, "framing/support[S1]: pull (lb) is out of range"},
             Change{"height=\"200 mm\"", "height=\"2 m\"", 28, "framing/support[S1]: height (in) is out of range"},
             Change{"<connector name=\"hanger\"",
                    "<nails diameter=\"0.1 in\" length=\"3 in\" count=\"1\"/><connector "
                    "name=\"hanger\"",
                    29, "framing/support[S1]/connector: <support> takes only one of"},
             Change{"per-crossing=\"2\"", "per-crossing=\"21\"", 16,
                    "layers/decking/fasteners: fasteners per crossing is out of range"},
             Change{"board=\"5.5 in\"", "board=\"5.5 ft\"", 16,
                    "layers/decking/fasteners: board width (in) is out of range"},
             Change{"board=\"5.5 in\" ", "", 16, "layers/decking/fasteners: <fasteners> needs the attribute board"},
         })
        check_refused(change);
}

TEST_CASE("a connector may have a pull without a height, and a height without a pull", "[unit]") {
    for (const char* left_out : {" pull=\"300 lbf\"", " height=\"200 mm\""}) {
        const xml::DetailRead read = xml::read_detail_text(test::changed(described_text(), left_out, ""), "detail.xml");
        INFO(test::sentences(read.problems));
        CHECK(read.detail);
    }
}
