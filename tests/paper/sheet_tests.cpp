// A sheet as PDF, SVG and PNG: measured by programs of others.
#include "paper/sheet.h"

#include "paper/read_back.h"
#include "support/compare.h"

using namespace toehold;
using namespace toehold::paper;
using format::english;

namespace {

drawing::Scene words(const std::string& what, drawing::Point mm) {
    drawing::Text text;
    text.words = what;
    text.at = {{}, {mm.x, -mm.y}};
    text.math = true;
    drawing::Scene scene;
    scene.items.emplace_back(text);
    return scene;
}

/// A square of so many inches with its lower left corner at the origin.
drawing::Scene square(double side_in) {
    drawing::Path path;
    path.contours = {{{{0.0, 0.0}, {}}, {{side_in, 0.0}, {}}, {{side_in, side_in}, {}}, {{0.0, side_in}, {}}}};
    path.closed = true;
    path.fill = drawing::Fill::demand;
    path.pen = drawing::Pen::none;
    drawing::Scene scene;
    scene.items.emplace_back(path);
    scene.bounds = {{0.0, 0.0}, {side_in, side_in}};
    return scene;
}

Sheet sheet_with(drawing::Scene scene, PaperSize paper = PaperSize::letter) {
    Sheet sheet;
    sheet.size = size_of(paper, Turn::upright);
    sheet.placed.push_back(placed_on_paper(std::move(scene), {}));
    return sheet;
}

Book book_of(std::vector<Sheet> sheets) {
    return {{"A title", "A subject", "Toehold 0", "2026-11-25"}, std::move(sheets), {}};
}

}  // namespace

TEST_CASE("Paper has the sizes of its standards", "[published]") {
    // ISO 216: A4 210 x 297 mm, A3 297 x 420 mm; ANSI/ASME Y14.1: A 8.5 x 11 in, B 11 x 17 in.
    const auto is = [](Size size, double width, double height) {
        CHECK_CLOSE(size.width_mm, width, 1e-12, 0.0);
        CHECK_CLOSE(size.height_mm, height, 1e-12, 0.0);
    };
    is(size_of(PaperSize::a4, Turn::upright), 210.0, 297.0);
    is(size_of(PaperSize::a3, Turn::lying), 420.0, 297.0);
    is(size_of(PaperSize::letter, Turn::upright), 8.5 * 25.4, 11.0 * 25.4);
    is(size_of(PaperSize::tabloid, Turn::lying), 17.0 * 25.4, 11.0 * 25.4);
    const std::string facts = test::read_by("pdfinfo", pdf(book_of({sheet_with({}, PaperSize::a4)})), "pdf");
    CHECK(test::contains(facts, "(A4)"));
}

TEST_CASE("A thing stands on paper at the scale that is written", "[closed-form]") {
    const Frame frame{20.0, 30.0, 120.0, 120.0};
    const Placed placed = placed_to_scale(square(10.0), frame);  // 254 mm: the largest customary scale that fits is 1:4
    CHECK(placed.scale == 0.25);
    CHECK(english(scale_words(placed.scale)) == "1:4");
    Sheet sheet = sheet_with({});
    sheet.placed.push_back(placed);
    // In its picture at 254 dots an inch, 10 dots a mm: 63.5 mm wide in the middle of the frame.
    const std::string box =
        test::read_by("convert FILE -fuzz 20% -trim -format %w,%h,%O info:", png(sheet, 254.0), "png");
    const auto number = [&box](std::size_t from) { return std::stod(box.substr(from)); };
    CHECK_CLOSE(number(0), 635.0, 0.0, 2.0);
    CHECK_CLOSE(number(box.find(',') + 1), 635.0, 0.0, 2.0);
    const std::size_t left = box.find('+');
    CHECK_CLOSE(number(left + 1), 10.0 * (20.0 + 60.0 - 31.75), 0.0, 2.0);
    CHECK_CLOSE(number(box.find('+', left + 1) + 1), 10.0 * (30.0 + 60.0 - 31.75), 0.0, 2.0);
}

TEST_CASE("Scales are said as the trade says them", "[unit]") {
    CHECK(english(scale_words(1.0)) == "full size");
    CHECK(english(scale_words(2.0)) == "2:1");
    CHECK(english(scale_words(1.0 / 48.0)) == "1:48");
    CHECK(english(scale_words(0.3)) == "not to scale");
}

TEST_CASE("A PDF keeps its words, its fonts, its links and its bookmarks", "[process]") {
    Sheet first = sheet_with(words("W'_perp and σ_a", {30.0, 40.0}));
    first.links.push_back({{25.0, 30.0, 60.0, 15.0}, "there"});
    Sheet second = sheet_with(words("second page", {30.0, 40.0}));
    second.destinations.push_back({"there", 100.0});
    Book book = book_of({first, second});
    book.bookmarks = {{1, "Outer", "there"}, {2, "Inner & <more>", "there"}};
    const std::string bytes = pdf(book);
    CHECK(test::pdf_pages(bytes) == 2);
    CHECK(test::contains(test::pdf_text(bytes), "second page"));
    CHECK(test::contains(test::pdf_text(bytes), "σ"));
    REQUIRE_FALSE(test::pdf_fonts(bytes).empty());
    for (const test::PdfFont& font : test::pdf_fonts(bytes)) {
        CAPTURE(font.name);
        CHECK(font.embedded);
        CHECK(font.subset);
        CHECK(font.to_unicode);
    }
    const std::string facts = test::read_by("pdfinfo", bytes, "pdf");
    CHECK(test::contains(facts, "A title"));
    CHECK(test::contains(facts, "Toehold 0"));
    CHECK(test::contains(test::read_by("pdfinfo -dests", bytes, "pdf"), "\"there\""));
    const std::string links = test::read_by("pdftohtml -xml -i -stdout", bytes, "pdf");
    CHECK(test::contains(links, "html#2\">"));
    CHECK(test::contains(links, "Inner &amp; &lt;more&gt;"));
}

TEST_CASE("The same book gives the same bytes, and a date changes nothing but itself", "[process]") {
    const Book book = book_of({sheet_with(words("the same", {30.0, 40.0}))});
    CHECK(pdf(book) == pdf(book));
    Book undated = book;
    undated.properties.date.clear();
    CHECK(test::contains(test::read_by("pdfinfo", pdf(undated), "pdf"), "1970"));
    CHECK(pdf(undated).size() == pdf(book).size());
    CHECK(svg(book.sheets.front()) == svg(book.sheets.front()));
    CHECK(png(book.sheets.front()) == png(book.sheets.front()));
}

TEST_CASE("An SVG is well formed and as large as its sheet", "[process]") {
    const std::string bytes = svg(sheet_with(words("words", {30.0, 40.0}), PaperSize::a4));
    CHECK(test::read_by("xmllint --noout", bytes, "svg").empty());
    CHECK(test::contains(bytes, "width=\"595.275591pt\""));  // 210 mm at 72 points an inch
}

TEST_CASE("A book without a sheet is refused", "[bad-input]") { CHECK_THROWS_AS(pdf(Book{}), std::runtime_error); }
