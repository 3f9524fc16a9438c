// Documents laid out into pages, walked as values and read back from the PDF.
#include "paper/document.h"

#include "drawing/render/lettering.h"
#include "paper/read_back.h"
#include "support/compare.h"

#include <set>

using namespace toehold;
using namespace toehold::paper;

namespace {

Document filled(int sections, int rows) {
    Document document;
    document.properties = {"A report", "", "Toehold 0", "2026-11-25"};
    document.head_left = "Head of the page";
    document.foot = "Foot of the page";
    document.blocks.emplace_back(Facts{{{"Project", "Invented"}, {"Detail", "One of many"}, {"Hash", "0f"}}, 2});
    document.blocks.emplace_back(Verdict{"INADEQUATE", {"A sentence."}, checks::Status::fails});
    document.blocks.emplace_back(Contents{});
    for (int section = 0; section < sections; ++section) {
        const std::string number = std::to_string(section);
        document.blocks.emplace_back(Heading{1, "Section " + number, "section-" + number});
        document.blocks.emplace_back(
            Paragraph{"Words of a paragraph that is long enough to be broken, and so it goes "
                      "on and on until it comes to its end after all."});
        Table table;
        table.columns = {{"Symbol", 1.0, drawing::Across::left, true}, {"Words", 3.0}, {"Status", 1.0}};
        for (int row = 0; row < rows; ++row) {
            table.rows.push_back({{"σ_" + std::to_string(row)},
                                  {"row " + std::to_string(row) + " of section " + number},
                                  {"FAILS", true, "section-0", checks::Status::fails}});
        }
        document.blocks.emplace_back(table);
    }
    return document;
}

/// Every text on a sheet, with its box in mm from the sheet's top left corner.
struct Standing {
    std::string words;
    double left = 0.0, right = 0.0, top = 0.0, foot = 0.0;
};

std::vector<Standing> words_on(const Sheet& sheet) {
    constexpr double capitals = 0.729, height_fine = 2.5;
    std::vector<Standing> all;
    for (const Placed& placed : sheet.placed) {
        for (const drawing::Item& item : placed.scene.items) {
            const auto* text = std::get_if<drawing::Text>(&item);
            if (text == nullptr) continue;
            const double width = drawing::text_width_mm(text->words, {text->size, text->bold, text->math});
            const double x = text->at.paper_mm.x, foot = -text->at.paper_mm.y;
            const double left = text->across == drawing::Across::left    ? x
                                : text->across == drawing::Across::right ? x - width
                                                                         : x - 0.5 * width;
            all.push_back({text->words, left, left + width, foot - capitals * height_fine, foot});
        }
    }
    return all;
}

}  // namespace

TEST_CASE("Words stand inside the page and on no other words", "[property]") {
    const Book book = lay_out(filled(4, 30));
    REQUIRE(book.sheets.size() > 2);
    for (const Sheet& sheet : book.sheets) {
        const auto all = words_on(sheet);
        REQUIRE_FALSE(all.empty());
        for (const Standing& one : all) {
            CAPTURE(one.words);
            CHECK(one.left >= 15.0);
            CHECK(one.right <= sheet.size.width_mm - 10.0);
            CHECK(one.top >= 8.0);
            CHECK(one.foot <= sheet.size.height_mm - 6.0);
            for (const Standing& other : all) {
                if (&one == &other || one.words.empty() || other.words.empty()) continue;
                const bool apart = one.right <= other.left + 1e-9 || other.right <= one.left + 1e-9 ||
                                   one.foot <= other.top + 1e-9 || other.foot <= one.top + 1e-9;
                CAPTURE(other.words);
                CHECK(apart);
            }
        }
    }
}

TEST_CASE("Contents give the page each section stands on, and lead there", "[process]") {
    const Document document = filled(5, 25);
    const std::string bytes = pdf(lay_out(document));
    const int pages = test::pdf_pages(bytes);
    CHECK(test::contains(test::pdf_text(bytes), "Page 1 of " + std::to_string(pages)));
    const std::string first = test::read_by("pdftotext -layout -l 1 FILE -", bytes, "pdf");
    for (int section = 0; section < 5; ++section) {
        const std::string name = "Section " + std::to_string(section);
        const std::size_t line = first.find(name);
        REQUIRE(line != std::string::npos);
        const int said = std::stoi(first.substr(line + name.size()));
        const std::string page = std::to_string(said);
        const std::string there =
            test::read_by("pdftotext -layout -f " + page + " -l " + page + " FILE -", bytes, "pdf");
        CAPTURE(name, said);
        CHECK(test::contains(there, name));
        if (said > 1) CHECK(test::contains(there, "Head of the page"));
        CHECK(test::contains(test::read_by("pdfinfo -dests", bytes, "pdf"), "\"section-" + std::to_string(section)));
    }
}

TEST_CASE("A table that goes on repeats its head, and keeps every row once", "[process]") {
    const std::string bytes = pdf(lay_out(filled(1, 90)));
    const std::string text = test::pdf_text(bytes);
    std::size_t heads = 0;
    for (std::size_t at = text.find("Symbol"); at != std::string::npos; at = text.find("Symbol", at + 1)) ++heads;
    CHECK(heads == static_cast<std::size_t>(test::pdf_pages(bytes)));
    for (int row = 0; row < 90; ++row) {
        const std::string words = "row " + std::to_string(row) + " of section 0";
        const std::size_t at = text.find(words);
        CAPTURE(words);
        REQUIRE(at != std::string::npos);
        CHECK(text.find(words, at + 1) == std::string::npos);
    }
}

TEST_CASE("A cell longer than a page goes on over the next", "[process]") {
    Document document;
    Table table;
    table.columns = {{"One", 1.0}, {"Two", 5.0}};
    std::string words;
    for (int word = 0; word < 900; ++word) words += "word" + std::to_string(word) + " ";
    table.rows = {{{words}, {"beside it"}}};
    document.blocks.emplace_back(table);
    const std::string text = test::pdf_text(pdf(lay_out(document)));
    CHECK(test::contains(text, "word0"));
    CHECK(test::contains(text, "word899"));
}

TEST_CASE("A figure stands at the scale said under it and is not cut", "[unit]") {
    drawing::Scene scene;
    drawing::Path path;
    path.contours = {{{{0.0, 0.0}, {}}, {{10.0, 10.0}, {}}}};
    scene.items.emplace_back(path);
    scene.bounds = {{0.0, 0.0}, {10.0, 10.0}};
    Document document;
    document.blocks.emplace_back(Space{200.0});
    Figure figure;
    figure.parts = {{scene, 1.0, true, "Plan"}};
    figure.height_mm = 70.0;
    document.blocks.emplace_back(figure);
    const Book book = lay_out(document);
    REQUIRE(book.sheets.size() == 2);
    CHECK(test::contains(test::pdf_text(pdf(book)), "Plan, 1:4"));  // 254 mm into 70
}

TEST_CASE("What a document got wrong is said to who built it", "[bad-input]") {
    Document twice;
    twice.blocks = {Heading{1, "A", "a"}, Heading{1, "B", "a"}};
    CHECK_THROWS_AS(lay_out(twice), std::invalid_argument);
    Document nowhere;
    nowhere.blocks = {Paragraph{"to", drawing::TextSize::small, false, false, 0.0, "nowhere", ""}};
    CHECK_THROWS_AS(lay_out(nowhere), std::invalid_argument);
    Document wide;
    wide.blocks = {Table{{{"One"}}, {{{"1"}, {"2"}}}, drawing::TextSize::fine, true}};
    CHECK_THROWS_AS(lay_out(wide), std::invalid_argument);
}
