#pragma once
// Every paper as the bytes of a file, chosen by kind and by the ending of the file's name: what command line and window
// share.
#include "format/phrase.h"

#include <string>
#include <string_view>
#include <vector>

namespace toehold::model {
struct BaseDetail;
}
namespace toehold::review {
struct Review;
}

namespace toehold::paper {

struct Issue;
struct Sheet;

enum class Kind {
    report,        ///< calculation report: pdf
    shop_drawing,  ///< pdf, svg, png, and dxf for the plate alone
    site_sheet,    ///< pdf, svg, png, and html: the site page
    letter,        ///< comment letter: pdf
    plan,          ///< the drawing alone: svg, pdf, png
    section,       ///< the same
    elevation      ///< the same
};

/// Endings of files this kind can become, without the dot; the first is the customary one.
[[nodiscard]] std::vector<std::string> endings(Kind kind);

/// Why this kind of paper cannot be made of the detail; empty where it can.
[[nodiscard]] format::Phrase why_not(Kind kind, const model::BaseDetail& detail);

/// `review` with assumptions, cautions and remedies for a report, evaluated at least for the others. Throws
/// std::invalid_argument for an ending that is not among `endings(kind)`, and for a paper that cannot be made.
[[nodiscard]] std::string paper_file(Kind kind, std::string_view ending, const review::Review& review,
                                     const Issue& issue);

/// `heron-landing-corner` for `heron-landing-corner.xml`, with what the paper is: `heron-landing-corner-report.pdf`.
[[nodiscard]] std::string customary_name(Kind kind, std::string_view detail_file);

/// Day in the local calendar, ISO 8601; of SOURCE_DATE_EPOCH (UTC) where that is set, so that a build may repeat
/// itself.
[[nodiscard]] std::string today();

/// Bytes of one sheet: `svg`, `png`, else `pdf` under this title.
[[nodiscard]] std::string sheet_file(const Sheet& sheet, std::string_view ending, const std::string& title,
                                     const Issue& issue);

}  // namespace toehold::paper
