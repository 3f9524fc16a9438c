#include "xml/samples.h"

#include <catch2/catch.hpp>

using namespace toehold;
using test::changed;
using test::plain_detail;

namespace {

void check_refused(const std::string& text, const std::string& words) {
    const xml::DetailRead read = xml::read_detail_text(text, "detail.xml");
    INFO(test::sentences(read.problems));
    CHECK_FALSE(read.detail);
    CHECK(test::tells(read.problems, words));
}

/// The plain detail with one thing changed.
void check_change(const std::string& from, const std::string& to, const std::string& words) {
    check_refused(changed(plain_detail(), from, to), words);
}

struct BadFile {
    const char* name;
    int line;
    const char* words;
};

constexpr BadFile bad_files[] = {
    {"length-without-unit.xml", 4, "guard: height has no unit (found \"42\""},
    {"decimal-comma.xml", 10, "plate/hole[C]: x cannot be read (found \"1,75 in\""},
    {"unknown-element.xml", 17, "<base-detail> has no element of this name (found \"handrail\""},
    {"unknown-attribute.xml", 4, "guard: <guard> has no attribute of this name (found \"ocupancy\""},
    {"two-roots.xml", 18, "a second element at the top"},
    {"doctype.xml", 3, "a DOCTYPE is not allowed"},
    {"newer-version.xml", 3,
     "this program does not read this version of the document (found \"urn:toehold:base-detail:2\""},
    {"same-hole-twice.xml", 11, "this id is already used on line 8"},
    {"text-between.xml", 16, "text is not allowed here (found \"please check\""},
    {"hole-outside-plate.xml", 10, "plate/hole[C]: the hole lies outside the plate"},
    {"overlapping-holes.xml", 9, "plate/hole[B]: the hole overlaps hole A"},
    {"negative-thickness.xml", 6, "plate: thickness must be more than zero (found \"-3/8 in\""},
    {"truncated.xml", 13, "the file ends too early: <anch> of line 13 is not closed"},
    {"not-utf-8.xml", 2, "not valid UTF-8 (is this UTF-16?)"},
    {"utf-16.xml", 1, "not valid UTF-8 (is this UTF-16?)"},
};

}  // namespace

TEST_CASE("each bad sample is refused with its line and its reason", "[bad-input]") {
    for (const BadFile& bad : bad_files) {
        const xml::DetailRead read = xml::read_detail(test::bad_file(bad.name));
        INFO(bad.name << "\n" << test::sentences(read.problems));
        CHECK_FALSE(read.detail);
        REQUIRE_FALSE(read.problems.empty());
        CHECK(test::tells(read.problems, bad.words));
        CHECK(read.problems.front().line == bad.line);
        CHECK(read.problems.front().file == test::bad_file(bad.name).string());
    }
}

TEST_CASE("all problems of a file are told at once, in the order of their lines", "[bad-input]") {
    const xml::DetailRead read = xml::read_detail(test::bad_file("many-problems.xml"));
    INFO(test::sentences(read.problems));
    std::vector<int> lines;
    for (const model::Problem& problem : read.problems) lines.push_back(problem.line);
    // Line 3: <layers> is missing; then height, width, depth, length; line 16: <layer> is unknown.
    CHECK(lines == std::vector<int>{3, 4, 5, 7, 14, 16});
}

TEST_CASE("a file cut off anywhere is refused, never misread", "[bad-input]") {
    const std::string text = test::bytes_of(test::good_file("rectangular-tube-through-bolts.xml"));
    const std::size_t end = text.rfind('>');
    for (std::size_t length = 0; length <= end; ++length) {
        const xml::DetailRead read = xml::read_detail_text(std::string_view(text).substr(0, length), "cut.xml");
        if (read.detail || read.problems.empty()) FAIL("read a file cut after " << length << " bytes");
    }
}

TEST_CASE("a file with one byte changed is read or refused, and whatever is read fits the model", "[bad-input]") {
    const auto check_damaged = [](const std::string& damaged) {
        const xml::DetailRead read = xml::read_detail_text(damaged, "damaged.xml");
        if (read.detail.has_value() != read.problems.empty()) FAIL("neither read nor refused:\n" << damaged);
        if (read.detail && !xml::read_detail_text(xml::write_detail(*read.detail), "again.xml").detail) {
            FAIL("read, but what is written of it is not read again:\n" << damaged);
        }
    };
    for (const char* name : {"square-tube-lag-screws.xml", "framing-down-to-the-supports.xml"}) {
        const std::string text = test::bytes_of(test::good_file(name));
        for (std::size_t at = 0; at < text.size(); ++at) {
            for (const char byte : {'\0', '<', '"', '&', 'x', ' ', '9', '-', '\xFF'}) {
                std::string damaged = text;
                damaged[at] = byte;
                check_damaged(damaged);
            }
        }
    }
}

TEST_CASE("another document or another version is named as such", "[bad-input]") {
    check_refused("<plates xmlns=\"urn:toehold:plates:1\"/>", "another kind of document (found \"plates\"");
    check_refused("<base-detail/>", "does not say its version (accepted: xmlns=\"urn:toehold:base-detail:1\")");
    check_refused("<base-detail xmlns=\"urn:other\"/>", "not a document of this program");
    check_refused("<base-detail xmlns=\"urn:toehold:base-detail:1\"/>", "<base-detail> needs an element <guard>");
    const xml::PlatesRead plates = xml::read_plates_text(plain_detail(), "detail.xml");
    CHECK(plates.plates.empty());
    CHECK(test::tells(plates.problems, "another kind of document"));
}

TEST_CASE("an editor's reference to the schema on the root is no problem", "[unit]") {
    const std::string text = changed(plain_detail(), "name=\"square tube on lag screws\"",
                                     "xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\" "
                                     "xsi:schemaLocation=\"urn:toehold:base-detail:1 base-detail.xsd\"");
    CHECK(xml::read_detail_text(text, {}).detail);
}

TEST_CASE("numbers that are none, and quantities of another kind, are refused", "[bad-input]") {
    for (const char* height :
         {"nan in", "inf in", "1e400 in", "-1e400 in", "42 lb", "0x2A in", "", "42,0 in", "1e-400"}) {
        check_change("height=\"42 in\"", std::string("height=\"") + height + "\"", "guard: height");
    }
    check_change("height=\"42 in\"", "height=\"0 in\"", "height must be more than zero");
    check_change("height=\"42 in\"", "height=\"42 ft\"", "guard: height");  // 504 in: a slip of the unit
}

TEST_CASE("what is missing, doubled or contradictory is told", "[bad-input]") {
    check_change("<layers/>", "", "<base-detail> needs an element <layers>");
    check_change("<layers/>", "<layers/><layers/>", "only one <layers>");
    check_change("<rectangle width=\"5 in\" depth=\"7 in\"/>", "", "plate: <plate> needs one of <rectangle>");
    check_change("<rectangle", "<circle diameter=\"9 in\"/><rectangle", "takes only one of");
    check_change("<lag-screw size=\"lag-3/8\" length=\"6 in\"/>", "", "anchors[1]: <anchors> needs one of <lag-screw>");
    check_change("<lag-screw size=\"lag-3/8\"", "<lag-screw",
                 "anchors[1]/lag-screw: <lag-screw> needs the attribute size");
    check_change("<anchors>", "<anchors holes=\"A Z\">", "ids of holes in the plate");
    check_change("<anchors>", "<anchors holes=\"\">", "holes names nothing");
    check_change("shape=\"square-tube\"", "shape=\"hexagon\"", "post: shape is none of the accepted words");
    check_change("shape=\"square-tube\" ", "", "post: <post> needs the attribute shape");
    check_change("shape=\"square-tube\"", "shape=\"round-tube\"",
                 "post: <post> has no attribute of this name (found \"width\"");
    check_change("shape=\"square-tube\"", "shape=\"wood\"", "post: <post> needs an element <shoe>");
    check_change("<layers/>", "<layers/><loads><line push=\"50\" spacing=\"6 ft\"/></loads>",
                 "loads/line: push has no unit");
    check_change("<layers/>", "<layers/><basis load-duration=\"2\"/>", "basis: load duration factor");
    check_change("<layers/>",
                 "<layers/><basis><fixed-stiffness bed=\"1 psi/in\" anchor=\"1 lb/in\" reason=\" \"/></basis>",
                 "reason is empty");
    check_change("wall=\"1/8 in\"", "wall=\"1 in\"", "post: the wall is not thinner");
}

TEST_CASE("one wrong word does not bring a swarm of follow-up problems", "[bad-input]") {
    const auto count = [](const std::string& from, const std::string& to) {
        const xml::DetailRead read = xml::read_detail_text(changed(plain_detail(), from, to), "detail.xml");
        INFO(test::sentences(read.problems));
        return read.problems.size();
    };
    CHECK(count("shape=\"square-tube\"", "shape=\"hexagon\"") == 1);
    CHECK(count("height=\"42 in\"", "height=\"42\"") == 1);
    CHECK(count("<rectangle width=\"5 in\" depth=\"7 in\"/>", "") == 1);
    CHECK(count("metal=\"steel-a36\" ", "") == 1);
}

TEST_CASE("a large hostile file is answered soon, with few problems", "[bad-input]") {
    const auto filled = [](const std::string& from, const std::string& before, const std::string& item,
                           const std::string& after) {
        std::string text = before;
        while (text.size() + item.size() < 1000000) text += item;
        return changed(plain_detail(), from, text + after);
    };
    const std::string hole = "<hole id=\"A\" x=\"0 in\" y=\"0 in\" diameter=\"1 in\"/>";
    const std::string corner = "<corner x=\"0 in\" y=\"0 in\"/>";
    for (const std::string& text :
         {filled("<layers/>", "<layers/>", "<x/>", ""), filled("<layers/>", "<layers>", "<shim/>", "</layers>"),
          filled("<anchors>", "<anchors holes=\"", "A B ", "\">"), filled("<layers/>", "<layers/>", "<!---->", "x"),
          filled("<layers/>", "<layers/>", "<anchors/>", ""), filled("</plate>", "", hole, "</plate>"),
          filled("<rectangle width=\"5 in\" depth=\"7 in\"/>", "<polygon>", corner, "</polygon>"),
          filled("name=\"square", "name=\"", "&amp;", "square")}) {
        const xml::DetailRead read = xml::read_detail_text(text, "hostile.xml");
        CHECK(read.problems.size() <= 100);
        CHECK((read.detail || !read.problems.empty()));
    }
}
