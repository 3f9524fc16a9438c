// A document into a book. Twice: page numbers in the contents are known only when everything has been set, and setting
// it again with them moves nothing, since each stands on a line of its own.
#include "drawing/render/lettering.h"
#include "paper/layout/blocks.h"
#include "paper/layout/on_paper.h"

#include <map>
#include <set>
#include <stdexcept>

namespace toehold::paper {
namespace {

using drawing::Across;
using drawing::TextSize;
using layout::Pages;
using PageNumbers = std::map<std::string, int>;

void require(bool holds, const std::string& sentence) {
    if (!holds) throw std::invalid_argument(sentence);
}

void refuse_faults(const Document& document) {
    std::set<std::string> names;
    for (const Block& block : document.blocks) {
        if (const auto* heading = std::get_if<Heading>(&block))
            require(names.insert(heading->name).second, "two headings have the name \"" + heading->name + "\"");
    }
    const auto leads = [&names](const std::string& to) {
        require(to.empty() || names.contains(to), "a link leads to \"" + to + "\", which is no heading");
    };
    for (const Block& block : document.blocks) {
        if (const auto* paragraph = std::get_if<Paragraph>(&block)) leads(paragraph->link);
        const auto* table = std::get_if<Table>(&block);
        if (table == nullptr) continue;
        for (const std::vector<Cell>& row : table->rows) {
            require(row.size() <= table->columns.size(), "a row has more cells than its table has columns");
            for (const Cell& cell : row) leads(cell.link);
        }
    }
}

void set_contents(Pages& pages, const Document& document, const Contents& contents, const PageNumbers& numbers) {
    constexpr double number_mm = 10.0;
    const TextSize size = TextSize::small;
    const double spacing = drawing::line_spacing_mm(size), right = pages.left() + pages.width();
    for (const Block& block : document.blocks) {
        const auto* heading = std::get_if<Heading>(&block);
        if (heading == nullptr || heading->level > contents.levels) continue;
        pages.need(spacing);
        const bool bold = heading->level == 1;
        const double left = pages.left() + (bold ? 0.0 : 5.0), foot = pages.y() + drawing::capitals_mm(size);
        const std::string words =
            drawing::broken_into_lines(heading->words, right - number_mm - left, {size, bold, false}).front();
        pages.write({{left, foot}, words, size, Across::left, bold, false});
        const auto page = numbers.find(heading->name);
        pages.write({{right, foot},
                     page == numbers.end() ? "0" : std::to_string(page->second),
                     size,
                     Across::right,
                     false,
                     false});
        const double end = left + drawing::text_width_mm(words, {size, bold, false});
        pages.rule({end + 2.0, foot}, {right - 0.8 * number_mm, foot}, drawing::Pen::grid);
        pages.link({left, pages.y() - 0.4, right - left, spacing}, heading->name);
        pages.advance(spacing);
    }
    pages.advance(3.0);
}

struct LaidOut {
    std::vector<Sheet> sheets;
    PageNumbers numbers;
};

LaidOut set_blocks(const Document& document, const PageNumbers& numbers) {
    Pages pages(size_of(document.paper, Turn::upright), document.locale);
    LaidOut result;
    for (const Block& block : document.blocks) {
        if (const auto* contents = std::get_if<Contents>(&block)) {
            set_contents(pages, document, *contents, numbers);
            continue;
        }
        std::visit(
            [&pages](const auto& one) {
                if constexpr (!std::is_same_v<std::decay_t<decltype(one)>, Contents>) layout::set(pages, one);
            },
            block);
        if (const auto* heading = std::get_if<Heading>(&block)) result.numbers[heading->name] = pages.page();
    }
    result.sheets = pages.take();
    return result;
}

/// Cut to a width, with an ellipsis for what was cut.
std::string fitted(const std::string& words, double width_mm) {
    const drawing::Lettering lettering{TextSize::fine, false, false};
    if (drawing::text_width_mm(words, lettering) <= width_mm) return words;
    const double ellipsis = drawing::text_width_mm("…", lettering);
    return drawing::broken_into_lines(words, width_mm - ellipsis, lettering).front() + "…";
}

/// Head and foot of one page.
drawing::Scene running_words(const Document& document, const Size& size, std::size_t page, std::size_t pages) {
    const layout::Margins margins;
    const double left = margins.left, right = size.width_mm - margins.right;
    const layout::Style at_left{TextSize::fine}, at_right{TextSize::fine, false, Across::right};
    drawing::Scene scene;
    if (page > 0 && !(document.head_left.empty() && document.head_right.empty())) {
        const double foot = margins.top - 8.0;
        constexpr double between_mm = 6.0;
        const std::string head = fitted(document.head_left, right - left);
        const double taken = drawing::text_width_mm(head, {TextSize::fine, false, false}) + between_mm;
        layout::add_words(scene, {left, foot}, head, at_left);
        layout::add_words(scene, {right, foot}, fitted(document.head_right, right - left - taken), at_right);
        layout::add_rule(scene, {left, foot + 1.6}, {right, foot + 1.6}, drawing::Pen::thin);
    }
    const double foot = size.height_mm - margins.bottom + 9.0;
    layout::add_rule(scene, {left, foot - 4.0}, {right, foot - 4.0}, drawing::Pen::thin);
    layout::add_words(scene, {left, foot}, document.foot, at_left);
    const format::Phrase number = format::phrase("Page {} of {}", page + 1, pages);
    layout::add_words(scene, {right, foot}, format::text(number, document.locale), at_right);
    return scene;
}

}  // namespace

double text_width_mm(PaperSize paper) { return Pages(size_of(paper, Turn::upright), {}).width(); }

Book lay_out(const Document& document) {
    refuse_faults(document);
    LaidOut laid_out = set_blocks(document, set_blocks(document, {}).numbers);
    Book book{document.properties, std::move(laid_out.sheets), {}};
    for (std::size_t page = 0; page < book.sheets.size(); ++page) {
        Sheet& sheet = book.sheets[page];
        sheet.placed.push_back(placed_on_paper(running_words(document, sheet.size, page, book.sheets.size()), {}));
    }
    for (const Block& block : document.blocks) {
        if (const auto* heading = std::get_if<Heading>(&block))
            book.bookmarks.push_back({heading->level, heading->words, heading->name});
    }
    return book;
}

}  // namespace toehold::paper
