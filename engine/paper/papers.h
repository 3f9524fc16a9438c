#pragma once
// The papers the work leaves the program as. Each is a pure function of what was reviewed; none solves anything, reads
// a clock or writes a file.
#include "paper/document.h"

#include <string>

namespace toehold::catalog {
struct Resolved;
}
namespace toehold::format {
struct Locale;
}
namespace toehold::model {
struct Plate;
}
namespace toehold::review {
struct Comparison;
struct Review;
}  // namespace toehold::review

namespace toehold::paper {

struct Issue;

/// The whole calculation, for a reviewer: 6 to 14 pages. `review` with assumptions, cautions and remedies.
[[nodiscard]] Document calculation_report(const review::Review& review, const Issue& issue);

/// One lying sheet for the shop that makes the plate: third-angle views, dimensions, schedules of holes and anchors,
/// weld, material, tolerances; of a post on a member's side its bracket plate. Throws std::invalid_argument where
/// there is none. `issue.paper` letter or a4 are taken as tabloid or a3. Says nothing of strength.
[[nodiscard]] Sheet shop_drawing(const catalog::Resolved& resolved, const std::string& input_sha256,
                                 const Issue& issue);

/// The plate for a laser or plasma table, DXF R12: outline and holes closed, at net size, on layers of their own. In
/// inches or mm, which the file says. Round corners and slot ends are true arcs.
/// `order`: further lines among the notes that are not cut: marks, quantity, revision.
[[nodiscard]] std::string cutting_file(const model::Plate& plate, const format::Locale& locale,
                                       const std::vector<std::string>& order = {});

/// One page for whoever builds what is under the boards, legible at arm's length.
[[nodiscard]] Sheet site_sheet(const review::Review& review, const Issue& issue);

/// The reviewer's remarks that the detail keeps, as a letter with the results they speak of.
[[nodiscard]] Document comment_letter(const review::Review& review, const Issue& issue);

/// What differs between two details, or between two bases of one.
[[nodiscard]] Document comparison_report(const review::Comparison& comparison, const Issue& issue);

}  // namespace toehold::paper
