#pragma once
// A text of several pages as plain values, and its layout into a book: headings with bookmarks and a table of contents,
// paragraphs, tables that break between rows and repeat their heads, figures, page heads and feet with page numbers.
#include "checks/result.h"
#include "format/phrase.h"
#include "paper/sheet.h"

#include <limits>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace toehold::paper {

struct Heading {
    int level = 1;  ///< 1 or 2; both get a bookmark, and a line in the contents
    std::string words;
    std::string name;  ///< destination: letters, digits, hyphens; unique in the document
};

struct Paragraph {
    std::string words;  ///< a line feed breaks the line
    drawing::TextSize size = drawing::TextSize::small;
    bool bold = false;
    bool math = false;  ///< subscripts, as in drawing::Text
    double indent_mm = 0.0;
    std::string link = {};  ///< name of a destination; empty: none
    std::string mark = {};  ///< stands before the first line, in the indent: `1.`, `•`
};

struct Column {
    std::string title;
    double share = 1.0;  ///< of the text's width; shares are divided by their sum
    drawing::Across across = drawing::Across::left;
    bool math = false;  ///< subscripts in its cells
};

struct Cell {
    std::string words;
    bool bold = false;
    std::string link = {};                               ///< name of a destination; empty: none
    std::optional<checks::Status> frame = std::nullopt;  ///< the status's frame around the words
};

/// Breaks between rows, never within one that fits on a page; its head is repeated.
struct Table {
    std::vector<Column> columns;
    std::vector<std::vector<Cell>> rows;  ///< as many cells as columns, or fewer
    drawing::TextSize size = drawing::TextSize::fine;
    bool ruled = true;  ///< a thin rule under every row
};

/// Label and words, in a frame, in so many columns: a title block.
struct Facts {
    struct Fact {
        std::string label, words;
    };
    std::vector<Fact> facts;
    int columns = 2;
};

/// Words in a frame that says a status: the verdict.
struct Verdict {
    std::string word;                    ///< large and bold
    std::vector<std::string> sentences;  ///< beside it
    checks::Status frame = checks::Status::holds;
};

/// Scenes side by side; never broken over pages.
struct Figure {
    struct Part {
        drawing::Scene scene;
        double share = 1.0;      ///< of the text's width
        bool to_scale = true;    ///< at a customary scale, which is written under it with `words`
        std::string words = {};  ///< under it
    };
    std::vector<Part> parts;
    double height_mm = 80.0;
    double lettering = 0.8;
};

struct Space {
    double height_mm = 3.0;
};

/// A new page, unless so much room is left on this one.
struct Room {
    double needed_mm = std::numeric_limits<double>::infinity();
};

/// The table of contents of the whole document, with page numbers and links.
struct Contents {
    int levels = 2;
};

using Block = std::variant<Heading, Paragraph, Table, Facts, Verdict, Figure, Space, Room, Contents>;

struct Document {
    Properties properties;
    PaperSize paper = PaperSize::letter;
    format::Locale locale = {};         ///< of the words that the layout adds: page numbers, scales
    std::string head_left, head_right;  ///< on every page but the first
    std::string foot;                   ///< on every page, beside the page number
    std::vector<Block> blocks;
};

/// Widest a figure, a table or a line of text may be on this paper, mm.
[[nodiscard]] double text_width_mm(PaperSize paper);

/// Throws std::invalid_argument for two headings of one name, a link to nowhere or a row with too many cells: faults of
/// the program that built the document.
[[nodiscard]] Book lay_out(const Document& document);

}  // namespace toehold::paper
