#include "paper/project/line_papers.h"

#include "drawing/line/line_drawings.h"
#include "paper/project/plate_papers.h"
#include "paper/sheet.h"

#include <algorithm>
#include <stdexcept>

namespace toehold::paper {
namespace {

std::string line_file(drawing::Scene scene, std::string_view ending, const std::string& title, const Issue& issue) {
    constexpr double margin_mm = 10.0;
    Sheet sheet;
    sheet.size = size_of(issue.paper, Turn::lying);
    sheet.placed.push_back(placed_to_fit(std::move(scene), {margin_mm, margin_mm, sheet.size.width_mm - 2.0 * margin_mm,
                                                            sheet.size.height_mm - 2.0 * margin_mm}));
    return sheet_file(sheet, ending, title, issue);
}

}  // namespace

std::vector<LinePaper> line_papers(Kind kind, std::string_view ending, const model::Project& project,
                                   const std::vector<review::LineReview>& lines, const Issue& issue) {
    const std::vector<std::string> known = endings(Kind::plan);
    if ((kind != Kind::plan && kind != Kind::elevation) || std::find(known.begin(), known.end(), ending) == known.end())
        throw std::invalid_argument("no drawing of a guard line ends in ." + std::string(ending));
    std::vector<LinePaper> papers;
    for (std::size_t number = 0; number < project.guard_lines.size(); ++number) {
        const model::GuardLine& line = project.guard_lines[number];
        const drawing::LineSubject subject{project, line, number < lines.size() ? &lines[number] : nullptr,
                                           issue.locale};
        std::string name = unlike(fit_for_file_name(line.id), papers);
        papers.push_back({std::move(name),
                          line_file(kind == Kind::plan ? drawing::line_plan(subject) : drawing::line_elevation(subject),
                                    ending, project.name + ", " + line.id, issue)});
    }
    return papers;
}

}  // namespace toehold::paper
