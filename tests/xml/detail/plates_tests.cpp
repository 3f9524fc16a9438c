#include "xml/samples.h"

#include <catch2/catch.hpp>

using namespace toehold;
using test::TemporaryFolder;

namespace {

std::string library() { return test::bytes_of(test::good_file("plates.xml")); }

/// A detail that takes its plate from plates.xml in the same folder, with more on its reference.
std::string referring(const std::string& attributes) {
    const std::string text = test::bytes_of(test::good_file("plate-from-library.xml"));
    return test::changed(text, "file=\"plates.xml\" id=\"round\"", attributes);
}

xml::DetailRead read_in(const TemporaryFolder& folder, const std::string& detail) {
    test::put_bytes(folder.path() / "detail.xml", detail);
    return xml::read_detail(folder.path() / "detail.xml");
}

void check_refused(const TemporaryFolder& folder, const std::string& detail, const std::string& words) {
    const xml::DetailRead read = read_in(folder, detail);
    INFO(test::sentences(read.problems));
    CHECK_FALSE(read.detail);
    CHECK(test::tells(read.problems, words));
}

}  // namespace

TEST_CASE("a library gives every plate, and writing it gives them again", "[unit]") {
    const xml::PlatesRead read = xml::read_plates(test::good_file("plates.xml"));
    INFO(test::sentences(read.problems));
    REQUIRE(read.plates.size() == 3);
    CHECK(read.plates[1].holes.at(1) == model::Hole{"S", {0.0, -3.0}, model::Slot{0.75, 0.4375, 90.0}});
    CHECK(std::get<model::PolygonOutline>(read.plates[2].outline).corners.at(2) == model::Position{0.0, 5.0});
    CHECK(read.lines.at("plate[round]/slot[S]") == 11);
    const xml::PlatesRead again = xml::read_plates_text(xml::write_plates(read.plates), "again.xml");
    CHECK(again.plates == read.plates);
}

TEST_CASE("a plate document's problems name the plate and its line", "[bad-input]") {
    const auto check = [](const std::string& from, const std::string& to, const std::string& words) {
        const xml::PlatesRead read = xml::read_plates_text(test::changed(library(), from, to), "plates.xml");
        INFO(test::sentences(read.problems));
        CHECK(read.plates.empty());
        CHECK(test::tells(read.problems, words));
    };
    check("y=\"5 in\"", "y=\"-3 in\"", "plates.xml:14: plate[triangle]/polygon: the outline");
    check("x=\"0 in\" y=\"3 in\" diameter=\"7/16 in\"/>\n    <slot",
          "x=\"0 in\" y=\"4 in\" diameter=\"7/16 in\"/>\n    <slot",
          "plates.xml:10: plate[round]/hole[N]: the hole cuts the plate's edge");
    check("id=\"round\"", "id=\"square\"", "plates.xml:8: plate[square]: this id is already used on line 4");
    check("id=\"round\" ", "", "plates.xml:8: plate[2]: <plate> needs the attribute id");
    check("length=\"3/4 in\"", "length=\"3/8 in\"", "plate[round]/slot[S]: a slot is longer than it is wide");
    CHECK(
        test::tells(xml::read_plates_text("<plates xmlns=\"urn:toehold:plates:1\"/>", "f").problems, "holds no plate"));
}

TEST_CASE("a plate's digest follows the plate alone", "[unit]") {
    const std::vector<model::Plate> plates = xml::read_plates(test::good_file("plates.xml")).plates;
    const std::string digest = xml::plate_sha256(plates[1]);
    CHECK(digest.size() == 64);
    // The same plate written otherwise, in other company.
    std::string other = test::changed(library(), "<circle diameter=\"8 in\"/>",
                                      "<circle  diameter=\"203.2 mm\" x=\"0 in\" y=\"0 ft\"/>");
    other = test::changed(other, "width=\"6 in\" depth=\"6 in\"", "width=\"7 in\" depth=\"6 in\"");
    CHECK(xml::plate_sha256(xml::read_plates_text(other, "f").plates.at(1)) == digest);
    model::Plate changed = plates[1];
    changed.holes[0].center.x_in += 1e-15;
    CHECK(xml::plate_sha256(changed) != digest);
    changed = plates[1];
    changed.metal = "steel-a572-50";
    CHECK(xml::plate_sha256(changed) != digest);
}

TEST_CASE("the canonical form of a plate does not change from version to version", "[process]") {
    // Details pin plates by the digest of exactly these bytes.
    const std::vector<model::Plate> plates = xml::read_plates(test::good_file("plates.xml")).plates;
    const std::string canonical =
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
        "<plates xmlns=\"urn:toehold:plates:1\">\n"
        "  <plate id=\"round\" metal=\"steel-a36\" thickness=\"0.5 in\">\n"
        "    <circle diameter=\"8 in\"/>\n"
        "    <hole id=\"N\" x=\"0 in\" y=\"3 in\" diameter=\"0.4375 in\"/>\n"
        "    <slot id=\"S\" x=\"0 in\" y=\"-3 in\" length=\"0.75 in\" width=\"0.4375 in\" angle=\"90 deg\"/>\n"
        "  </plate>\n"
        "</plates>\n";
    CHECK(xml::write_plates({plates[1]}) == canonical);
    const TemporaryFolder folder;
    test::put_bytes(folder.path() / "plate.xml", canonical);
    std::string output;
    REQUIRE(test::run("sha256sum " + (folder.path() / "plate.xml").string(), &output) == 0);
    CHECK(xml::plate_sha256(plates[1]) == output.substr(0, 64));
}

TEST_CASE("a detail takes its plate from the document beside it and keeps the reference", "[unit]") {
    const xml::DetailRead read = xml::read_detail(test::good_file("plate-from-library.xml"));
    INFO(test::sentences(read.problems));
    REQUIRE(read.detail);
    CHECK(on_deck(*read.detail).plate == xml::read_plates(test::good_file("plates.xml")).plates.at(1));
    REQUIRE(on_deck(*read.detail).plate_reference);
    CHECK(on_deck(*read.detail).plate_reference->sha256.empty());
    CHECK(on_deck(*read.detail).plate_reference->found_sha256 == xml::plate_sha256(on_deck(*read.detail).plate));
    const std::string written = xml::write_detail(*read.detail);
    CHECK(written.find("<plate-from file=\"plates.xml\" id=\"round\"/>") != std::string::npos);
    CHECK(xml::read_detail_text(written, test::good_file("again.xml")).detail == read.detail);
}

TEST_CASE("a plate that changed since the detail was made shows by its digests", "[unit]") {
    const TemporaryFolder folder;
    test::put_bytes(folder.path() / "plates.xml", library());
    const std::string then = xml::plate_sha256(xml::read_plates(folder.path() / "plates.xml").plates.at(1));
    const std::string detail = referring("file=\"plates.xml\" id=\"round\" sha256=\"" + then + "\"");
    const xml::DetailRead same = read_in(folder, detail);
    REQUIRE(same.detail);
    CHECK(on_deck(*same.detail).plate_reference->sha256 == on_deck(*same.detail).plate_reference->found_sha256);

    test::put_bytes(folder.path() / "plates.xml", test::changed(library(), "diameter=\"8 in\"", "diameter=\"9 in\""));
    const xml::DetailRead now = read_in(folder, detail);
    REQUIRE(now.detail);
    CHECK(on_deck(*now.detail).plate_reference->sha256 == then);
    CHECK(on_deck(*now.detail).plate_reference->found_sha256 == xml::plate_sha256(on_deck(*now.detail).plate));
    CHECK(on_deck(*now.detail).plate_reference->found_sha256 != then);
}

TEST_CASE("a plate that cannot be fetched is told where it is named", "[bad-input]") {
    const TemporaryFolder folder;
    check_refused(folder, referring("file=\"plates.xml\" id=\"round\""),
                  "plate-from: the plate document cannot be used");
    check_refused(folder, referring("file=\"plates.xml\" id=\"round\""), "plates.xml: there is no such file");
    check_refused(folder, referring("file=\".\" id=\"round\""), "a folder");
    test::put_bytes(folder.path() / "plates.xml", library());
    check_refused(folder, referring("file=\"plates.xml\" id=\"oval\""),
                  "no plate with this id (found \"oval\"; accepted: ");
    check_refused(folder, referring("file=\"/plates.xml\" id=\"round\""), "a relative path");
    check_refused(folder, referring("file=\"plates.xml\" id=\"round\" sha256=\"12ab\""), "not a SHA-256 digest");
    check_refused(folder, referring("file=\"detail.xml\" id=\"round\""), "another kind of document");
    test::put_bytes(folder.path() / "plates.xml", test::changed(library(), "diameter=\"8 in\"", "diameter=\"8\""));
    check_refused(folder, referring("file=\"plates.xml\" id=\"round\""),
                  "plates.xml:9: plate[round]/circle: diameter has no unit");
}

TEST_CASE("a fetched plate too small for the post is told at the reference", "[bad-input]") {
    const TemporaryFolder folder;
    test::put_bytes(folder.path() / "plates.xml", library());
    const std::string text =
        test::changed(referring("file=\"plates.xml\" id=\"round\""), "width=\"2 in\"", "width=\"7 in\"");
    check_refused(folder, text, "detail.xml:5: post: the post's foot hangs over the plate's edge");
}
