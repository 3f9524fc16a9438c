// What two details do not say alike, against pairs made by hand.
#include "support/random/detail.h"
#include "xml/detail/differences.h"
#include "xml/samples.h"

#include <catch2/catch.hpp>

using namespace toehold;
using test::changed;

namespace {

model::BaseDetail read(const std::string& text) {
    const xml::DetailRead read = xml::read_detail_text(text, test::good_file("memory.xml"));
    INFO(test::sentences(read.problems));
    REQUIRE(read.detail);
    return *read.detail;
}

/// One line a difference: `place: first > second`.
std::string told(const std::string& first, const std::string& second) {
    std::string text;
    for (const xml::Difference& one : xml::detail_differences(read(first), read(second))) {
        text += one.place + ": " + one.first + " > " + one.second + "\n";
    }
    return text;
}

const std::string& plain() {
    static const std::string text = test::plain_detail();
    return text;
}
}  // namespace

TEST_CASE("an attribute that differs is told once, with its place and both values", "[unit]") {
    CHECK(told(plain(), plain()).empty());
    CHECK(told(plain(), changed(plain(), "42 in", "3 ft 6 in")).empty());
    CHECK(told(plain(), changed(plain(), "42 in", "36 in")) == "guard / height: 42 in > 36 in\n");
    CHECK(told(plain(), changed(plain(), "id=\"B\" x=\"1.75 in\" y=\"-2.75 in\" diameter=\"7/16 in\"",
                                "id=\"B\" x=\"1.75 in\" y=\"-2.5 in\" diameter=\"1/2 in\"")) ==
          "plate / hole B / y: -2.75 in > -2.5 in\nplate / hole B / diameter: 0.4375 in > 0.5 in\n");
    CHECK(
        told(plain(), changed(plain(), "name=\"square tube on lag screws\"", "name=\"x\" note=\"y\" project=\"z\"")) ==
        "name: square tube on lag screws > x\nnote:  > y\nproject:  > z\n");
}

TEST_CASE("an element that stands on one side only is told in one line, where it stands", "[unit]") {
    CHECK(told(plain(), changed(plain(), "<anchors>", "<weld leg=\"1/4 in\" filler=\"e70\"/>\n<anchors>")) ==
          "weld:  > leg 0.25 in, filler e70\n");
    CHECK(told(changed(plain(), "<hole id=\"B\" x=\"1.75 in\" y=\"-2.75 in\" diameter=\"7/16 in\"/>", ""), plain()) ==
          "plate / hole B:  > x 1.75 in, y -2.75 in, diameter 0.4375 in\n");
    CHECK(told(plain(),
               changed(plain(), "<lag-screw size=\"lag-3/8\" length=\"6 in\"/>",
                       "<through-bolt size=\"bolt-3/8\" grade=\"a307\"><washer-below size=\"w\"/></through-bolt>")) ==
          "anchors / lag-screw: size lag-3/8, length 6 in > \n"
          "anchors / through-bolt:  > size bolt-3/8, grade a307, washer-below (size w)\n");
    CHECK(told(plain(), changed(plain(), "<layers/>", "<layers><shim material=\"m\" thickness=\"1 in\"/></layers>")) ==
          "layers / shim:  > material m, thickness 1 in\n");
}

TEST_CASE("order does not matter where ids tell things apart, and matters where they do not", "[unit]") {
    const std::string a = "<hole id=\"A\" x=\"-1.75 in\" y=\"-2.75 in\" diameter=\"7/16 in\"/>";
    const std::string d = "<hole id=\"D\" x=\"-1.75 in\" y=\"2.75 in\" diameter=\"7/16 in\"/>";
    const std::string swapped = changed(changed(changed(plain(), a, "@"), d, a), "@", d);
    CHECK(told(plain(), swapped).empty());
    const auto shims = [](const std::string& first, const std::string& second) {
        return changed(plain(), "<layers/>",
                       "<layers><shim material=\"" + first + "\" thickness=\"1 in\"/><shim material=\"" + second +
                           "\" thickness=\"1 in\"/></layers>");
    };
    CHECK(told(shims("m", "n"), shims("n", "m")) ==
          "layers / shim 1 / material: m > n\nlayers / shim 2 / material: n > m\n");
}

TEST_CASE("anchors are matched by their holes, then in order; loads by their name", "[unit]") {
    const auto groups = [](const std::string& first, const std::string& second) {
        const auto group = [](const std::string& holes, const std::string& length) {
            return "<anchors holes=\"" + holes + "\"><lag-screw size=\"lag-3/8\" length=\"" + length + "\"/></anchors>";
        };
        return changed(plain(), "<anchors>\n    <lag-screw size=\"lag-3/8\" length=\"6 in\"/>\n  </anchors>",
                       group(first, "6 in") + group(second, "5 in"));
    };
    CHECK(told(groups("A B", "C D"), groups("C D", "A B")) ==
          "anchors A B / lag-screw / length: 6 in > 5 in\nanchors C D / lag-screw / length: 5 in > 6 in\n");
    CHECK(told(groups("A B", "C D"), groups("A", "C D")) == "anchors A B / holes: A B > A\n");
    const auto load = [](const std::string& loads) {
        return changed(plain(), "<layers/>", "<layers/><loads>" + loads + "</loads>");
    };
    const std::string wind = "<user name=\"wind\" push=\"10 lbf\"/>";
    CHECK(told(load("<user name=\"crowd\" push=\"20 lbf\"/>" + wind), load(wind)) ==
          "loads / user crowd: push 20 lbf > \n");
    CHECK(told(load(wind), load("<user name=\"gale\" push=\"10 lbf\"/>")) == "loads / user wind / name: wind > gale\n");
}

TEST_CASE("ends of members and what holds them are told at their place", "[unit]") {
    const std::string full = test::bytes_of(test::good_file("framing-down-to-the-supports.xml"));
    const std::string other = changed(full, "stiffness=\"1 kN/mm\"", "stiffness=\"5000 lbf/in\"");
    const std::string one = told(full, other);
    CHECK(one.find(" / stiffness: ") != std::string::npos);
    CHECK(one.ends_with(" > 5000 lb/in\n"));
    CHECK(one.find('\n') == one.size() - 1);
}

TEST_CASE("a plate from a document is compared itself, and so is the reference", "[unit]") {
    const std::string from = test::bytes_of(test::good_file("plate-from-library.xml"));
    model::BaseDetail second = read(from);
    on_deck(second).plate.thickness_in = 0.625;
    const std::vector<xml::Difference> plate = xml::detail_differences(read(from), second);
    REQUIRE(plate.size() == 1);
    CHECK(plate[0].place == "plate / thickness");
    CHECK(plate[0].second == "0.625 in");
    second = read(from);
    on_deck(second).plate_reference.reset();
    const std::vector<xml::Difference> reference = xml::detail_differences(read(from), second);
    REQUIRE(reference.size() == 1);
    CHECK(reference[0].place == "plate-from");
    CHECK(reference[0].second.empty());
}

TEST_CASE("a reviewer's remarks are no difference", "[unit]") {
    CHECK(told(plain(), changed(plain(), "<layers/>", "<layers/><remarks><remark words=\"x\"/></remarks>")).empty());
}

TEST_CASE("two details differ when what is written of them does, whichever comes first", "[property]") {
    for (unsigned seed = 1; seed <= 100; ++seed) {
        INFO("seed " << seed);
        model::BaseDetail first = test::random_detail(seed);
        model::BaseDetail second = test::random_detail(seed + 1000);
        CHECK(xml::detail_differences(first, first).empty());
        const std::vector<xml::Difference> there = xml::detail_differences(first, second);
        const std::vector<xml::Difference> back = xml::detail_differences(second, first);
        CHECK(there.size() == back.size());
        CHECK_FALSE(there.empty());
        for (const xml::Difference& one : there) CHECK(one.first != one.second);
        // Part by part made alike, until nothing is left.
        second.name = first.name;
        second.note = first.note;
        second.guard = first.guard;
        second.post = first.post;
        second.mount = first.mount;
        second.framing = first.framing;
        second.loads = first.loads;
        second.project = first.project;
        for (const xml::Difference& one : xml::detail_differences(first, second)) {
            CHECK(one.place.rfind("basis", 0) == 0);
        }
        second.basis = first.basis;
        CHECK(xml::detail_differences(first, second).empty());
    }
}
