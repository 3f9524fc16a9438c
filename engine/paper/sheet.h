#pragma once
// A sheet of paper with scenes on it, and a book of sheets: what every paper of the program is before it becomes PDF,
// SVG or PNG. Measures on the sheet are mm from its top left corner, y down.
#include "drawing/scene/view.h"
#include "format/phrase.h"

#include <string>
#include <vector>

namespace toehold::paper {

enum class PaperSize { letter, a4, tabloid, a3 };  ///< tabloid: 11 x 17 in
enum class Turn { upright, lying };

/// Height and width, mm.
struct Size {
    double width_mm = 0.0, height_mm = 0.0;
};
[[nodiscard]] Size size_of(PaperSize paper, Turn turn);

/// On the sheet; left, top, width, height in mm.
using Frame = drawing::Area;

/// A scene as it stands on the sheet: a point of the thing drawn, where that point stands, and the scale.
struct Placed {
    drawing::Scene scene;
    drawing::Point center_in;  ///< of the thing drawn ...
    drawing::Point at_mm;      ///< ... stands here on the sheet
    double scale = 1.0;        ///< mm of paper for a mm of the thing drawn: 0.25 is 1:4
    double lettering = 1.0;    ///< mm of the sheet for a mm of the scene's lettering and marks
};

/// What a reader may click.
struct Link {
    Frame area;
    std::string to;  ///< name of a destination in the same book
};

/// A place that links and bookmarks lead to. Names hold letters, digits and hyphens.
struct Destination {
    std::string name;
    double top_mm = 0.0;
};

struct Sheet {
    Size size;
    std::vector<Placed> placed;  ///< painted in order
    std::vector<Link> links;
    std::vector<Destination> destinations;
};

struct Bookmark {
    int level = 1;  ///< 1: outermost
    std::string words;
    std::string to;  ///< name of a destination
};

/// What a reader's program shows about the file.
struct Properties {
    std::string title, subject;
    std::string program;  ///< `Toehold 0.6.0`
    std::string date;     ///< ISO 8601 (`2026-11-25`); empty: the file says 1970-01-01, never the clock's
};

struct Book {
    Properties properties;
    std::vector<Sheet> sheets;
    std::vector<Bookmark> bookmarks;
};

/// The scene as large as a customary scale (1:1, 1:2, 1:4 ... and 2:1) lets it be in the frame, in its middle.
[[nodiscard]] Placed placed_to_scale(drawing::Scene scene, const Frame& frame, double lettering = 1.0);
/// As large as fits, at whatever scale.
[[nodiscard]] Placed placed_to_fit(drawing::Scene scene, const Frame& frame, double lettering = 1.0);
/// A scene that is all paper: its origin stands at this point of the sheet; its mm are `lettering` mm of the sheet.
[[nodiscard]] Placed placed_on_paper(drawing::Scene scene, drawing::Point origin_mm, double lettering = 1.0);
/// `1:4`, `2:1`, `full size`; `not to scale` for one that is none of the customary.
[[nodiscard]] format::Phrase scale_words(double scale);

// Bytes of a file. The same book or sheet gives the same bytes on the same machine. Throw std::runtime_error when the
// drawing library reports an error.
[[nodiscard]] std::string pdf(const Book& book);
[[nodiscard]] std::string svg(const Sheet& sheet);
/// On white.
[[nodiscard]] std::string png(const Sheet& sheet, double dots_per_in = 200.0);

}  // namespace toehold::paper
