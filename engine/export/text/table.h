#pragma once
// A table that never stands wider than the page: columns shrink and words wrap. A number is never broken; where not
// even that leaves room, `###` stands for it.
#include <string>
#include <vector>

namespace toehold::exporting {

enum class Align { left, right };

struct Column {
    std::string heading;
    Align align = Align::left;  ///< right: numbers, which shrink last
};

struct Row {
    std::vector<std::string> cells;  ///< as many as columns
    std::vector<std::string> below;  ///< paragraphs under the row, across the page; may be empty
    std::string above = {};          ///< heads this row and those that follow it, across the page; may be empty
};

/// Headings, then rows, two blanks in and two between columns. No headings at all: no heading line.
[[nodiscard]] std::string table(const std::vector<Column>& columns, const std::vector<Row>& rows);

}  // namespace toehold::exporting
