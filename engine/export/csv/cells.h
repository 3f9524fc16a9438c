#pragma once
// Cells and lines of a table for a spreadsheet; see review_csv.h for the form.
#include <optional>
#include <string>
#include <vector>

namespace toehold::exporting {

/// One text as a cell: made harmless, then quoted where it must be.
[[nodiscard]] std::string csv_cell(const std::string& text);
/// The fewest digits that read back to the same number; empty for one that is not finite.
[[nodiscard]] std::string csv_number(double value);
[[nodiscard]] std::string csv_number(const std::optional<double>& value);
/// Cells that are ready, and the end of the line.
[[nodiscard]] std::string csv_line(const std::vector<std::string>& cells);

}  // namespace toehold::exporting
