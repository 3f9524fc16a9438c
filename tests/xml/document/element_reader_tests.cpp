#include "support/compare.h"
#include "xml/document/element_reader.h"
#include "xml/document/strict_document.h"
#include "xml/samples.h"

#include <array>
#include <functional>

using namespace toehold;
using test::tells;
using xml::ElementReader;
using xml::Sign;

namespace {

/// Reads the one element of `text` with `use`, and gives the problems when the cursor is gone.
model::Problems read(const std::string& text, const std::function<void(ElementReader&)>& use,
                     xml::LineMap* lines = nullptr) {
    const xml::StrictDocument document = xml::parse_strictly(text);
    INFO(text);
    REQUIRE(document.root != nullptr);
    xml::Reading reading;
    {
        ElementReader reader(*document.root, {}, reading);
        use(reader);
    }
    xml::finish_reading(reading, "f.xml");
    if (lines != nullptr) *lines = reading.lines;
    return reading.problems;
}

std::string length_problem(const std::string& value, Sign sign) {
    return test::sentences(read("<a h=\"" + value + "\"/>",
                                [&](ElementReader& reader) { (void)reader.quantity("h", units::Kind::length, sign); }));
}

}  // namespace

TEST_CASE("every attribute and child nobody asked for is told, with its line and the names known", "[bad-input]") {
    const std::string text = "<a x=\"1\"\n   y=\"2\">\n<b/>\n<c/>\n</a>";
    const model::Problems problems = read(text, [](ElementReader& reader) {
        CHECK(reader.number("x", Sign::any) == 1.0);
        (void)reader.optional_text("z");
        CHECK(reader.optional_child("b"));
    });
    REQUIRE(problems.size() == 2);
    CHECK(model::sentence(problems[0]) == "f.xml:2: <a> has no attribute of this name (found \"y\"; accepted: x, z)");
    CHECK(model::sentence(problems[1]) == "f.xml:4: <a> has no element of this name (found \"c\"; accepted: b)");
}

TEST_CASE("a child that is found but not read tells its own attributes", "[bad-input]") {
    CHECK(tells(read("<a><b x=\"1\"/></a>", [](ElementReader& reader) { (void)reader.child("b"); }),
                "f.xml:1: b: <b> has no attribute of this name (found \"x\"; accepted: none)"));
}

TEST_CASE("a quantity is read in the engine's unit or told", "[bad-input]") {
    CHECK(length_problem("2 ft", Sign::positive).empty());
    CHECK(length_problem("-2 ft", Sign::any).empty());
    CHECK(length_problem("0 in", Sign::not_negative).empty());
    CHECK(length_problem("42", Sign::any).find("h has no unit (found \"42\"; accepted: a length with") !=
          std::string::npos);
    for (const char* bad : {"", " ", "nan in", "inf in", "1e400 in", "1,5 in", "0x10 in", "1.5mmm", "4 lb", "in"}) {
        INFO(bad);
        CHECK(length_problem(bad, Sign::any).find("h cannot be read") != std::string::npos);
    }
    CHECK(length_problem("0 in", Sign::positive).find("more than zero") != std::string::npos);
    CHECK(length_problem("-1 in", Sign::positive).find("more than zero") != std::string::npos);
    CHECK(length_problem("-1 in", Sign::not_negative).find("must not be negative") != std::string::npos);
}

TEST_CASE("numbers and counts take the whole text or nothing", "[bad-input]") {
    const auto number = [](const std::string& value) {
        return read("<a n=\"" + value + "\"/>", [](ElementReader& r) { (void)r.number("n", Sign::any); }).empty();
    };
    const auto count = [](const std::string& value) {
        return read("<a n=\"" + value + "\"/>", [](ElementReader& r) { (void)r.count("n"); }).empty();
    };
    for (const char* good : {"1.6", " 1 ", "-0.5", "1e3"}) CHECK(number(good));
    for (const char* bad : {"", "1,6", "1.5mm", "nan", "inf", "1e400", "0x10", "1 2"}) CHECK_FALSE(number(bad));
    for (const char* good : {"1", "4", "10000"}) CHECK(count(good));
    for (const char* bad : {"", "0", "-1", "1.9", "4x", "99999999999", "10001", "4294967297"}) CHECK_FALSE(count(bad));
}

TEST_CASE("only the known words are taken", "[bad-input]") {
    enum class Metal { steel, aluminum };
    constexpr std::array<xml::Word<Metal>, 2> metals{{{"steel", Metal::steel}, {"aluminum", Metal::aluminum}}};
    CHECK(read("<a m=\"aluminum\" n=\"no\"/>", [&](ElementReader& reader) {
              CHECK(reader.choice<Metal>("m", metals) == Metal::aluminum);
              CHECK_FALSE(reader.yes_no("n"));
              CHECK_FALSE(reader.optional_yes_no("o"));
          }).empty());
    CHECK(tells(read("<a m=\"Steel\"/>", [&](ElementReader& r) { (void)r.choice<Metal>("m", metals); }),
                "m is none of the accepted words (found \"Steel\"; accepted: steel, aluminum)"));
    for (const char* bad : {"2", "7abc", "true", "YES", ""}) {  // which the library's own boolean partly takes
        CHECK_FALSE(read(std::string("<a n=\"") + bad + "\"/>", [](ElementReader& r) { (void)r.yes_no("n"); }).empty());
    }
}

TEST_CASE("ids hold nothing that would break a path or a list", "[bad-input]") {
    const auto id = [](const std::string& value) {
        return read("<a id=\"" + value + "\"/>", [](ElementReader& reader) { (void)reader.id(); }).empty();
    };
    for (const char* good : {"A", "lag-3/8", "J1", "\u00d8"}) CHECK(id(good));
    for (const char* bad : {"", "A B", "A[1]", "&quot;", "'", "&#10;"}) CHECK_FALSE(id(bad));
    CHECK(read("<a ids=\" A  B&#10;C \"/>", [](ElementReader& reader) {
              CHECK(reader.ids("ids") == std::vector<std::string>{"A", "B", "C"});
              CHECK(reader.ids("other").empty());
          }).empty());
    std::string many;
    for (int index = 0; index < 1000; ++index) many += " h" + std::to_string(index);
    CHECK(tells(read("<a ids=\"" + many + "\"/>", [](ElementReader& r) { (void)r.ids("ids"); }), "names too many"));
    CHECK(tells(read("<a ids=\" \"/>", [](ElementReader& r) { (void)r.ids("ids"); }), "names nothing"));
    CHECK(tells(read("<a ids=\"A B A\"/>", [](ElementReader& r) { (void)r.ids("ids"); }), "names \"A\" twice"));
}

TEST_CASE("children are taken as often as they may stand", "[bad-input]") {
    const std::string text = "<a>\n<b id=\"1\"/>\n<b id=\"1\"/>\n</a>";
    CHECK(tells(read(text, [](ElementReader& r) { (void)r.child("b")->id(); }),
                "f.xml:3: only one <b> is allowed in <a>"));
    CHECK(tells(read(text,
                     [](ElementReader& r) {
                         for (ElementReader& b : r.children("b")) (void)b.id();
                     }),
                "f.xml:3: b[1]: this id is already used on line 2"));
    CHECK(tells(read("<a/>", [](ElementReader& r) { CHECK_FALSE(r.child("b")); }), "<a> needs an element <b>"));
    constexpr std::array<std::string_view, 2> either{"b", "c"};
    CHECK(tells(read("<a/>", [&](ElementReader& r) { CHECK_FALSE(r.one_of(either)); }), "<a> needs one of <b>, <c>"));
    CHECK(tells(read("<a><c/><b/></a>", [&](ElementReader& r) { (void)r.one_of(either); }),
                "takes only one of <b>, <c>"));
    CHECK(read("<a/>", [&](ElementReader& r) { CHECK_FALSE(r.one_of(either, false)); }).empty());
}

TEST_CASE("paths carry the id, else the place, and lead to the line", "[unit]") {
    xml::LineMap lines;
    const std::string text = "<a>\n<p>\n<h id=\"3/8\"/><h/>\n<s id=\"S\"/>\n</p>\n</a>";
    CHECK(read(
              text,
              [](ElementReader& reader) {
                  std::optional<ElementReader> part = reader.child("p");
                  constexpr std::array<std::string_view, 2> names{"h", "s"};
                  std::vector<ElementReader> items = part->children(names);
                  REQUIRE(items.size() == 3);
                  CHECK(items[0].path() == "p/h[3/8]");
                  CHECK(items[1].path() == "p/h[2]");
                  CHECK(items[2].path() == "p/s[S]");
                  for (ElementReader& item : items) (void)item.optional_id("id");
              },
              &lines)
              .empty());
    CHECK(lines.at("p/s[S]") == 4);
    model::Problems problems{{{}, 0, "p/h[3/8]/x", {}, {}, format::verbatim("m")},
                             {{}, 0, "q/r", {}, {}, format::verbatim("m")},
                             {"other.xml", 0, "p", {}, {}, format::verbatim("m")},
                             {{}, 9, "p", {}, {}, format::verbatim("m")}};
    xml::locate(problems, "f.xml", lines);
    CHECK(problems[0].line == 3);
    CHECK(problems[1].line == 1);
    CHECK(problems[2].line == 0);
    CHECK(problems[2].file == "other.xml");
    CHECK(problems[3].line == 9);
    CHECK(problems[3].file == "f.xml");
}

TEST_CASE("of very many problems a hundred are kept, in order, and the rest counted", "[bad-input]") {
    std::string text = "<a>";
    for (int line = 0; line < 500; ++line) text += "<b/>\n";
    const model::Problems problems = read(text + "</a>", [](ElementReader&) {});
    REQUIRE(problems.size() == 100);
    CHECK(problems.front().line == 1);
    CHECK(problems[98].line == 99);
    CHECK(tells(problems, "and 401 more problems"));
    for (int line = 0; line < 5000; ++line) text += "<b/>\n";
    CHECK(tells(read(text + "</a>", [](ElementReader&) {}), "and very many more problems"));
}
