#include "support/random/detail.h"
#include "xml/document/element.h"
#include "xml/samples.h"

#include <catch2/catch.hpp>

using namespace toehold;

namespace {

void check_same_again(const model::BaseDetail& detail) {
    const std::string text = xml::write_detail(detail);
    const xml::DetailRead read = xml::read_detail_text(text, "written.xml");
    INFO(text << test::sentences(read.problems));
    REQUIRE(read.detail);
    CHECK(*read.detail == detail);
    CHECK(xml::write_detail(*read.detail) == text);
}

}  // namespace

TEST_CASE("every good sample is written and read again unchanged", "[unit]") {
    for (const std::filesystem::path& file : test::good_details()) {
        const xml::DetailRead read = xml::read_detail(file);
        INFO(file << "\n" << test::sentences(read.problems));
        REQUIRE(read.detail);
        const std::string text = xml::write_detail(*read.detail);
        const xml::DetailRead again = xml::read_detail_text(text, file);
        REQUIRE(again.detail);
        CHECK(*again.detail == *read.detail);
        CHECK(xml::write_detail(*again.detail) == text);
    }
}

TEST_CASE("random details fit the schema", "[process]") {
    const test::TemporaryFolder folder;
    std::string files;
    for (unsigned seed = 1; seed <= 60; ++seed) {
        const std::filesystem::path file = folder.path() / (std::to_string(seed) + ".xml");
        test::put_bytes(file, xml::write_detail(test::random_detail(seed)));
        files += " " + file.string();
    }
    std::string output;
    const int status =
        test::run("xmllint --nonet --noout --schema " TOEHOLD_DATA_FOLDER "/schema/base-detail.xsd" + files, &output);
    INFO(output);
    CHECK(status == 0);
}

TEST_CASE("a line break in a text survives, also through another program", "[process]") {
    model::BaseDetail detail = test::random_detail(7);
    detail.note = "first\nsecond\r\nthird\tfourth  \"five\" <six> & 'seven' \u00d8";
    const std::string text = xml::write_detail(detail);
    CHECK(text.find("first&#10;second&#13;&#10;third&#9;fourth") != std::string::npos);
    check_same_again(detail);
    // Another program's rewriting must not turn the break into a blank.
    const test::TemporaryFolder folder;
    test::put_bytes(folder.path() / "detail.xml", text);
    std::string rewritten;
    REQUIRE(test::run("xmllint --nonet --format " + (folder.path() / "detail.xml").string(), &rewritten) == 0);
    const xml::DetailRead read = xml::read_detail_text(rewritten, "rewritten.xml");
    INFO(test::sentences(read.problems));
    REQUIRE(read.detail);
    CHECK(*read.detail == detail);
}

TEST_CASE("characters no document can hold are replaced, so that what is written can be read", "[bad-input]") {
    model::BaseDetail detail = test::random_detail(3);
    detail.note = "bell \a, half \xC3, end";
    const xml::DetailRead read = xml::read_detail_text(xml::write_detail(detail), "written.xml");
    REQUIRE(read.detail);
    CHECK(read.detail->note == "bell \uFFFD, half \uFFFD, end");
}

TEST_CASE("an element is written with its attributes in order and its children below", "[unit]") {
    xml::Element root("a");
    root.text("b", "1 < 2").quantity("c", 0.1, units::Kind::length).given_quantity("d", 0.0, units::Kind::force);
    root.optional_text("e", "").optional_quantity("f", {}, units::Kind::force).yes_no("g", false);
    root.child(xml::Element("h"));
    CHECK(xml::document_text(root) ==
          "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<a b=\"1 &lt; 2\" c=\"0.1 in\" g=\"no\">\n  <h/>\n</a>\n");
    CHECK(xml::exact_number(1.6) == "1.6");
    CHECK(xml::exact_number(0.1 + 0.2) == "0.30000000000000004");
}
