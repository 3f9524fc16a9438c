#pragma once
// Site sheets of the shipped details, and what stands on them, measured without the sheet's own layout.
#include "paper/papers.h"
#include "support/shipped.h"

#include <string>
#include <vector>

namespace toehold::test {

/// Of a detail that all the catalogs know; throws std::runtime_error otherwise.
[[nodiscard]] review::Review reviewed(const model::BaseDetail& detail);
/// Of a shipped detail, solved once. `demo`: its file's name without folder and ending.
[[nodiscard]] const review::Review& reviewed_demo(const std::string& demo);
[[nodiscard]] paper::Issue issue_in(units::System system);  ///< US on letter, SI on A4

/// A line of words on the sheet, mm from its top left corner, y down.
struct SheetWords {
    std::string words;
    double size_mm = 0.0;                                     ///< of the font
    double left = 0.0, top = 0.0, right = 0.0, bottom = 0.0;  ///< capitals, and what hangs below them
};
[[nodiscard]] std::vector<SheetWords> words_on(const paper::Sheet& sheet);
/// `words of one` over `words of another`, for each two that overlap.
[[nodiscard]] std::vector<std::string> overlaps(const std::vector<SheetWords>& words);
/// Words, and ends of lines, that stand nearer to the sheet's edge than a printer reaches (6 mm), or off it.
[[nodiscard]] std::vector<std::string> off_the_page(const paper::Sheet& sheet);

/// What a reader of others finds in the PDF, with blanks, and nothing else, between words.
[[nodiscard]] std::string read_site_sheet(const review::Review& review, units::System system);

}  // namespace toehold::test
