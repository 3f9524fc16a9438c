// Sizes by name and materials by entered values: what is read, what is written back, and what is refused.
#include "support/compare.h"
#include "xml/samples.h"

using namespace toehold;
using namespace toehold::model;

namespace {

std::string text_with(const std::string& from, const std::string& to) {
    return test::changed(test::bytes_of(test::good_file("framing-down-to-the-supports.xml")), from, to);
}

const std::string lvl =
    "<material id=\"LVL\" name=\"1.9E LVL\" source=\"invented report\" bending=\"2600 psi\" "
    "bending-flat=\"2250 psi\" tension=\"1500 psi\" shear=\"285 psi\" compression-perp=\"750 psi\" "
    "compression=\"2500 psi\" modulus=\"1.9e6 psi\" modulus-min=\"966000 psi\" specific-gravity=\"0.5\" "
    "volume-factor=\"depth\" volume-exponent=\"0.136\" wet-service=\"dry-only\"/>";

Problems problems_of(const std::string& text) { return xml::read_detail_text(text, "detail.xml").problems; }

BaseDetail detail_of(const std::string& text) {
    const xml::DetailRead read = xml::read_detail_text(text, "detail.xml");
    INFO(test::sentences(read.problems));
    REQUIRE(read.detail);
    return *read.detail;
}

std::string first_joists() {
    const std::string text = test::bytes_of(test::good_file("framing-down-to-the-supports.xml"));
    const std::size_t from = text.find("<joists");
    return text.substr(from, text.find('>', from) - from + 1);
}

/// The joists' element with its section written so.
std::string with_joists(const std::string& section, const std::string& before = {}) {
    std::string element = first_joists();
    const std::size_t from = element.find("width=");
    const std::size_t to = element.find("species=");
    element.replace(from, to - from, section + " ");
    return text_with(first_joists(), before + element);
}

}  // namespace

TEST_CASE("joists by the name of their size are the dressed dry size, and stay so when written", "[unit]") {
    const BaseDetail detail = detail_of(with_joists("size=\"2x10\""));
    CHECK(detail.framing.joists->width_in == 1.5);
    CHECK(detail.framing.joists->depth_in == 9.25);
    const std::string written = xml::write_detail(detail);
    CHECK(written.find("size=\"2x10\"") != std::string::npos);
    CHECK(detail_of(written) == detail);
}

TEST_CASE("a flat piece turns its size about", "[unit]") {
    const BaseDetail detail = detail_of(test::bytes_of(test::good_file("wood-by-size-and-report.xml")));
    const Block& flat = detail.framing.blocks.at(0);
    CHECK(flat.size == "2x6");
    CHECK(flat.width_in == 5.5);
    CHECK(flat.depth_in == 1.5);
    CHECK(flat.stack == 2);
    CHECK(flat.stack_fastened);
    const std::string written = xml::write_detail(detail);
    CHECK(written.find("size=\"2x6\" flat=\"yes\"") != std::string::npos);
    CHECK(detail_of(written) == detail);
    CHECK(on_deck(detail).layers.decking->thickness_in == 1.0);
}

TEST_CASE("a size and a width that agree are one, that contradict are refused", "[bad-input]") {
    CHECK(detail_of(with_joists("size=\"2x10\" width=\"1 1/2 in\"")).framing.joists->depth_in == 9.25);
    const Problems problems = problems_of(with_joists("size=\"2x10\" depth=\"7 1/4 in\""));
    CHECK(test::tells(problems, "framing/joists: the size by name has another depth"));
    CHECK(test::tells(problems, "9 1/4 in, the dressed size, or the size alone"));
    CHECK(test::tells(problems_of(with_joists("size=\"2x10.5\"")), "no lumber is sold by this size"));
}

TEST_CASE("a section that was changed is written by its width and depth", "[unit]") {
    BaseDetail detail = detail_of(with_joists("size=\"2x10\""));
    detail.framing.joists->depth_in = 9.0;
    const std::string written = xml::write_detail(detail);
    CHECK(written.find("size=\"2x10\"") == std::string::npos);
    CHECK(detail_of(written).framing.joists->depth_in == 9.0);
}

TEST_CASE("a material of the file's own is read, named by a member and written back", "[unit]") {
    std::string element = first_joists();
    const std::size_t from = element.find("species=");
    const std::size_t to = element.find(' ', element.find("grade="));
    element.replace(from, to - from, "material=\"LVL\"");
    const BaseDetail detail = detail_of(text_with(first_joists(), lvl + element));
    REQUIRE(detail.framing.materials.size() == 1);
    CHECK(detail.framing.materials[0].bending_flat_psi == 2250.0);
    CHECK(detail.framing.materials[0].volume == OwnWood::Volume::depth);
    CHECK(detail.framing.materials[0].volume_exponent == 0.136);
    CHECK(detail.framing.materials[0].wet_service == OwnWood::WetService::dry_only);
    CHECK(detail.framing.joists->species == "LVL");
    CHECK(detail.framing.joists->grade.empty());
    CHECK(detail_of(xml::write_detail(detail)) == detail);
}

TEST_CASE("a material without its source is refused in one sentence", "[bad-input]") {
    std::string sourceless = lvl;
    sourceless.erase(sourceless.find("source="), std::string("source=\"invented report\" ").size());
    const Problems problems = problems_of(text_with(first_joists(), sourceless + first_joists()));
    REQUIRE(problems.size() == 1);
    CHECK(test::tells(problems, "framing/material[LVL]"));
    CHECK(test::tells(problems, "source"));
}

TEST_CASE("a material's least modulus is no more than its mean one", "[bad-input]") {
    const std::string stiffer = test::changed(lvl, "modulus-min=\"966000 psi\"", "modulus-min=\"2000000 psi\"");
    const Problems problems = problems_of(text_with(first_joists(), stiffer + first_joists()));
    CHECK(test::tells(problems, "modulus-min is more than modulus"));
}
