// Reading for repair and recovery: whatever a text says that can be understood is kept, beside every problem.
#include "xml/samples.h"

#include <catch2/catch.hpp>

using namespace toehold;
using test::changed;
using test::plain_detail;
using xml::Mode;

namespace {

xml::DetailRead lenient(const std::string& text) { return xml::read_detail_text(text, "detail.xml", Mode::lenient); }

}  // namespace

TEST_CASE("both modes read every good sample alike", "[property]") {
    for (const std::filesystem::path& file : test::good_details()) {
        INFO(file);
        const xml::DetailRead strict = xml::read_detail(file);
        const xml::DetailRead read = xml::read_detail(file, Mode::lenient);
        REQUIRE(strict.detail);
        CHECK(read.detail == strict.detail);
        CHECK(read.problems.empty());
        CHECK(read.is_whole);
        CHECK(read.sha256 == strict.sha256);
    }
}

TEST_CASE("both modes have the same problems with every bad sample", "[bad-input]") {
    for (const auto& entry : std::filesystem::directory_iterator(test::bad_file(""))) {
        INFO(entry.path());
        const xml::DetailRead strict = xml::read_detail(entry.path());
        const xml::DetailRead read = xml::read_detail(entry.path(), Mode::lenient);
        CHECK_FALSE(strict.detail);
        CHECK_FALSE(read.problems.empty());
        CHECK(read.problems == strict.problems);
        CHECK(read.is_whole == strict.is_whole);
        CHECK((!read.is_whole || read.detail));
    }
}

TEST_CASE("what cannot be built is read whole, remarks and project too", "[unit]") {
    const std::string text =
        changed(changed(plain_detail(), "name=\"square", "project=\"Heron Landing\" name=\"square"), "<layers/>",
                "<layers/><remarks><remark words=\"Why?\"/></remarks>");
    const xml::DetailRead sound = xml::read_detail_text(text, "detail.xml");
    REQUIRE(sound.detail);
    const xml::DetailRead read = lenient(changed(text, "<anchors>", "<anchors holes=\"A Z\">"));
    CHECK(test::tells(read.problems, "an anchor without a hole"));
    CHECK(read.is_whole);
    model::BaseDetail expected = *sound.detail;
    on_deck(expected).anchors[0].holes = {"A", "Z"};
    CHECK(read.detail == expected);
}

TEST_CASE("a value that cannot be read costs that value alone", "[bad-input]") {
    const model::BaseDetail plain = *xml::read_detail_text(plain_detail(), "detail.xml").detail;
    const xml::DetailRead read = lenient(changed(plain_detail(), "height=\"42 in\"", "height=\"tall\""));
    REQUIRE(read.detail);
    CHECK_FALSE(read.is_whole);
    CHECK(test::tells(read.problems, "height cannot be read"));
    model::BaseDetail expected = plain;
    expected.guard.height_in = 0.0;
    CHECK(*read.detail == expected);
    const xml::DetailRead unknown = lenient(changed(plain_detail(), "<layers/>", "<layers/><handrail/>"));
    CHECK(unknown.detail == plain);
    CHECK_FALSE(unknown.is_whole);
}

TEST_CASE("no base detail, no detail", "[bad-input]") {
    for (const char* text : {"", "<a", "<plates xmlns=\"urn:toehold:plates:1\"/>", "<base-detail/>",
                             "<base-detail xmlns=\"urn:toehold:base-detail:99\"/>"}) {
        INFO(text);
        CHECK_FALSE(lenient(text).detail);
        CHECK_FALSE(lenient(text).is_whole);
        CHECK_FALSE(lenient(text).problems.empty());
    }
    CHECK_FALSE(xml::read_detail("/no/such/file.xml", Mode::lenient).detail);
}

TEST_CASE("a plate reference is kept though its document is not there", "[bad-input]") {
    const test::TemporaryFolder folder;
    const std::filesystem::path file = folder.path() / "detail.xml";
    test::put_bytes(file, test::bytes_of(test::good_file("plate-from-library.xml")));
    const xml::DetailRead read = xml::read_detail(file, Mode::lenient);
    REQUIRE(read.detail);
    CHECK_FALSE(read.is_whole);
    REQUIRE(on_deck(*read.detail).plate_reference);
    CHECK(on_deck(*read.detail).plate_reference->id == "round");
    CHECK(read.detail->guard == xml::read_detail(test::good_file("plate-from-library.xml")).detail->guard);
}
