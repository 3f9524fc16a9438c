#pragma once
// Papers read back with programs of others: poppler's tools for PDF, xmllint for SVG, ImageMagick for PNG.
#include "support/contains.h"

#include <string>
#include <vector>

namespace toehold::test {

/// Standard output of a program that is given one file as its last argument. Throws std::runtime_error, with what it
/// printed, when it does not end well.
[[nodiscard]] std::string read_by(const std::string& program_and_options, const std::string& bytes,
                                  const std::string& ending);

[[nodiscard]] std::string pdf_text(const std::string& bytes);  ///< in reading order, by pdftotext -layout
[[nodiscard]] int pdf_pages(const std::string& bytes);
/// Of every font: name, and whether it is embedded, a subset, and has a table from glyphs to characters.
struct PdfFont {
    std::string name;
    bool embedded = false, subset = false, to_unicode = false;
};
[[nodiscard]] std::vector<PdfFont> pdf_fonts(const std::string& bytes);

}  // namespace toehold::test
