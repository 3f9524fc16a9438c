// Project and remarks: read, written, and held against the schema through a processor that is not ours.
#include "xml/detail/remarks.h"
#include "xml/samples.h"

#include <catch2/catch.hpp>

using namespace toehold;
using model::Remark;
using test::changed;
using test::plain_detail;

namespace {

std::string with_remarks(const std::string& remarks) {
    return changed(plain_detail(), "<layers/>", "<layers/>\n<remarks>" + remarks + "</remarks>");
}

std::string long_words(std::size_t length) { return "<remark words=\"" + std::string(length, 'w') + "\"/>"; }

/// Reader and schema, which must agree.
bool accepted(const std::string& text) {
    const test::TemporaryFolder folder;
    test::put_bytes(folder.path() / "detail.xml", text);
    std::string said;
    const bool schema = test::run("xmllint --nonet --noout --schema " TOEHOLD_DATA_FOLDER "/schema/base-detail.xsd " +
                                      (folder.path() / "detail.xml").string(),
                                  &said) == 0;
    const xml::DetailRead read = xml::read_detail_text(text, "detail.xml");
    INFO(text.substr(0, 3000) << "\n" << said << test::sentences(read.problems));
    CHECK(schema == read.detail.has_value());
    return schema && read.detail;
}

}  // namespace

TEST_CASE("remarks and project land in the model, in order", "[unit]") {
    const std::string text =
        changed(with_remarks("<remark about=\"anchor-withdrawal\" subject=\"anchor A\" by=\"A. Reviewer\" "
                             "date=\"2026-11-25\" state=\"settled\" words=\"Which species?\"/>\n"
                             "<remark words=\"Two lines:&#10;second\"/>"),
                "name=\"square", "project=\"Heron Landing\" name=\"square");
    const xml::DetailRead read = xml::read_detail_text(text, "detail.xml");
    INFO(test::sentences(read.problems));
    REQUIRE(read.detail);
    CHECK(read.detail->project == "Heron Landing");
    CHECK(read.detail->remarks == std::vector<Remark>{{"anchor-withdrawal", "anchor A", "Which species?", "A. Reviewer",
                                                       "2026-11-25", Remark::State::settled},
                                                      {{}, {}, "Two lines:\nsecond", {}, {}, Remark::State::open}});
    const xml::DetailRead again = xml::read_detail_text(xml::write_detail(*read.detail), "detail.xml");
    REQUIRE(again.detail);
    CHECK(*again.detail == *read.detail);
}

TEST_CASE("a detail without project and remarks is written as before", "[unit]") {
    const std::string text = xml::write_detail(*xml::read_detail_text(plain_detail(), {}).detail);
    CHECK(text.find("remark") == std::string::npos);
    CHECK(text.find("project") == std::string::npos);
}

TEST_CASE("schema and reader agree on remarks", "[process]") {
    for (const std::string& good :
         {std::string("<remark words=\"x\"/>"), std::string("<remark words=\" x \" by=\"\" subject=\"\"/>"),
          std::string("<remark about=\"a/b\" date=\"2024-02-29\" state=\"open\" words=\"&#10;x\"/>"), std::string(),
          long_words(4000)}) {
        CHECK(accepted(with_remarks(good)));
    }
    for (const std::string& bad :
         {std::string("<remark/>"), std::string("<remark words=\"\"/>"), std::string("<remark words=\" &#10; \"/>"),
          std::string("<remark words=\"x\" state=\"closed\"/>"), std::string("<remark words=\"x\" date=\"\"/>"),
          std::string("<remark words=\"x\" date=\"2023-02-29\"/>"),
          std::string("<remark words=\"x\" date=\"2026-11-25Z\"/>"), std::string("<remark words=\"x\" about=\"a b\"/>"),
          std::string("<remark words=\"x\" about=\"\"/>"), std::string("<remark words=\"x\" author=\"me\"/>"),
          std::string("<remark words=\"x\">more</remark>"), std::string("<note words=\"x\"/>"), long_words(4001)}) {
        CHECK_FALSE(accepted(with_remarks(bad)));
    }
    CHECK_FALSE(accepted(changed(with_remarks(""), "</remarks>", "</remarks><remarks/>")));
}

TEST_CASE("very many remarks are refused, and soon", "[bad-input]") {
    std::string many;
    for (int count = 0; count < 20000; ++count) many += "<remark words=\"x\"/>";
    const xml::DetailRead read = xml::read_detail_text(with_remarks(many), "detail.xml");
    CHECK_FALSE(read.detail);
    CHECK(test::tells(read.problems, "too many remarks"));
}

namespace {

/// What a document reads as after its remarks were replaced; every other byte must be as it was.
void check_replaced(const std::string& document, const std::vector<Remark>& remarks, const std::string& before,
                    const std::string& after) {
    const std::optional<std::string> text = xml::with_remarks(document, remarks);
    REQUIRE(text);
    INFO(*text);
    CHECK(text->rfind(before, 0) == 0);
    CHECK(text->ends_with(after));
    const xml::DetailRead old = xml::read_detail_text(document, "detail.xml");
    const xml::DetailRead read = xml::read_detail_text(*text, "detail.xml");
    INFO(test::sentences(old.problems) << test::sentences(read.problems));
    REQUIRE(old.detail);
    REQUIRE(read.detail);
    model::BaseDetail expected = *old.detail;
    expected.remarks = remarks;
    CHECK(*read.detail == expected);
}

}  // namespace

TEST_CASE("remarks are put into a document as it is laid out, its comments kept", "[unit]") {
    const std::vector<Remark> remarks{{{}, {}, "a > \"b\" </remarks>", {}, {}, Remark::State::open}};
    const std::string end = "</base-detail>\n";
    const std::string plain = plain_detail();
    const std::string head = plain.substr(0, plain.size() - end.size());
    REQUIRE(plain.ends_with(end));
    check_replaced(plain, remarks, head + "  <remarks>\n    <remark ", "  </remarks>\n" + end);
    CHECK(*xml::with_remarks(plain, {}) == plain);
    for (const std::string& own : {std::string("  <remarks/>\n"), std::string("<remarks></remarks>"),
                                   std::string("  <remarks>\n<!-- </remarks> --><remark words='>'/></remarks>\n")}) {
        std::string document = head;
        document.append(own).append(end);
        check_replaced(document, remarks, head + "  <remarks>\n", "  </remarks>\n" + end);
    }
    const std::string commented = head + "<!-- <remarks> -->" + end + "<!-- </base-detail> -->\n";
    check_replaced(commented, remarks, head + "<!-- <remarks> -->\n  <remarks>\n", end + "<!-- </base-detail> -->\n");
    const std::string one_line = changed(plain, "</anchors>\n  <layers/>\n", "</anchors><layers/>");
    check_replaced(one_line, remarks, one_line.substr(0, one_line.size() - end.size()), end);
    CHECK_FALSE(xml::with_remarks("", remarks));
    CHECK_FALSE(xml::with_remarks("<base-detail", remarks));
}

TEST_CASE("remarks replaced in every good sample and again taken out leave it as it was", "[property]") {
    const std::vector<Remark> remarks{{"weld", "x", "y", "z", "2026-11-25", Remark::State::settled}};
    for (const std::filesystem::path& file : test::good_details()) {
        const std::string text = test::bytes_of(file);
        const xml::DetailRead read = xml::read_detail(file);
        REQUIRE(read.detail);
        if (!read.detail->remarks.empty()) continue;
        const std::optional<std::string> with = xml::with_remarks(text, remarks);
        REQUIRE(with);
        const xml::DetailRead again = xml::read_detail_text(*with, file);
        REQUIRE(again.detail);
        CHECK(again.detail->remarks == remarks);
        CHECK(xml::with_remarks(*with, {}) == text);
    }
}
