#include "export/text/table.h"

#include "export/text/columns.h"

#include <algorithm>
#include <numeric>

namespace toehold::exporting {
namespace {

constexpr std::size_t indent = 2;
constexpr std::size_t gap = 2;
constexpr std::size_t narrowest_text = 8;
constexpr std::size_t narrowest = 2;

using Widths = std::vector<std::size_t>;

std::size_t longest_word(const std::string& text) {
    std::size_t longest = 0;
    std::size_t begin = 0;
    while (begin < text.size()) {
        const std::size_t end = std::min(text.find(' ', begin), text.size());
        longest = std::max(longest, columns(text.substr(begin, end - begin)));
        begin = end + 1;
    }
    return longest;
}

/// As wide as the widest cell; a heading of several words gives way to the cells below it.
Widths natural_widths(const std::vector<Column>& all, const std::vector<Row>& rows) {
    Widths widths;
    for (std::size_t column = 0; column < all.size(); ++column) {
        std::size_t width = longest_word(all[column].heading);
        for (const Row& row : rows) width = std::max(width, columns(showable(row.cells.at(column))));
        widths.push_back(std::max(width, narrowest));
    }
    return widths;
}

std::size_t total(const Widths& widths) {
    return indent + std::accumulate(widths.begin(), widths.end(), gap * (widths.size() - 1));
}

/// Takes one from the widest column that may give; false when none may.
bool shrink_one(Widths& widths, const std::vector<Column>& all, bool numbers, std::size_t least) {
    std::size_t* widest = nullptr;
    for (std::size_t column = 0; column < widths.size(); ++column) {
        if ((all[column].align == Align::right) != numbers || widths[column] <= least) continue;
        if (widest == nullptr || widths[column] > *widest) widest = &widths[column];
    }
    if (widest == nullptr) return false;
    --*widest;
    return true;
}

void fit_page(Widths& widths, const std::vector<Column>& all) {
    while (total(widths) > page_columns) {
        if (shrink_one(widths, all, false, narrowest_text)) continue;
        if (shrink_one(widths, all, false, narrowest)) continue;
        if (!shrink_one(widths, all, true, narrowest)) return;
    }
}

/// A number on two lines would be read as two: one that cannot stand whole is not shown.
std::vector<std::string> whole_number(const std::string& cell, std::size_t width) {
    const std::string shown = showable(cell);
    return {columns(shown) <= width ? shown : std::string(width, '#')};
}

/// One row of cells, as many lines as its longest cell needs. Headings stand at the foot of their lines.
std::string lines_of(const std::vector<std::string>& cells, const std::vector<Column>& all, const Widths& widths,
                     bool at_foot) {
    std::vector<std::vector<std::string>> broken;
    std::size_t height = 0;
    for (std::size_t column = 0; column < all.size(); ++column) {
        const bool number = all[column].align == Align::right && !at_foot;
        broken.push_back(number ? whole_number(cells.at(column), widths[column])
                                : wrapped(cells.at(column), widths[column]));
        height = std::max(height, broken.back().size());
    }
    std::string text;
    for (std::size_t line = 0; line < height; ++line) {
        std::string row(indent, ' ');
        for (std::size_t column = 0; column < all.size(); ++column) {
            const auto& cell = broken[column];
            const std::size_t skipped = at_foot ? height - cell.size() : 0;
            const std::string part = line >= skipped && line - skipped < cell.size() ? cell[line - skipped] : "";
            if (column > 0) row += std::string(gap, ' ');
            row += all[column].align == Align::right ? padded_left(part, widths[column])
                                                     : padded_right(part, widths[column]);
        }
        row.erase(row.find_last_not_of(' ') + 1);
        text += row + "\n";
    }
    return text;
}

std::string heading_lines(const std::vector<Column>& all, const Widths& widths) {
    std::vector<std::string> headings;
    std::size_t letters = 0;
    for (const Column& column : all) {
        headings.push_back(column.heading);
        letters += column.heading.size();
    }
    if (letters == 0) return {};
    const std::size_t rule = total(widths) - indent;
    return lines_of(headings, all, widths, true) + std::string(indent, ' ') + std::string(rule, '-') + "\n";
}

}  // namespace

std::string table(const std::vector<Column>& all, const std::vector<Row>& rows) {
    if (all.empty()) return {};
    Widths widths = natural_widths(all, rows);
    fit_page(widths, all);
    std::string text = heading_lines(all, widths);
    for (const Row& row : rows) {
        if (!row.above.empty())
            text += (&row == &rows.front() ? "" : "\n") + paragraph(row.above, std::string(indent, ' '));
        text += lines_of(row.cells, all, widths, false);
        for (const std::string& below : row.below) text += paragraph(below, std::string(2 * indent, ' '));
    }
    return text;
}

}  // namespace toehold::exporting
