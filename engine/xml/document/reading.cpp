#include "xml/document/reading.h"

#include <algorithm>
#include <string_view>
#include <utility>

namespace toehold::xml {
namespace {

constexpr std::size_t most_told = 100;

/// Line of the element, or of the nearest one above it that was read; 0 when there is none.
int line_of(std::string_view element, const LineMap& lines) {
    while (true) {
        const auto found = lines.find(element);
        if (found != lines.end()) return found->second;
        if (element.empty()) return 0;
        // An id in brackets may hold a slash of its own (`block[3/8]`), so the step is cut before its bracket.
        const std::size_t bracket = element.ends_with(']') ? element.rfind('[') : std::string_view::npos;
        const std::size_t slash = element.rfind('/', bracket);
        element = slash == std::string_view::npos ? std::string_view() : element.substr(0, slash);
    }
}

}  // namespace

void locate(model::Problems& problems, const std::filesystem::path& file, const LineMap& lines) {
    const std::string own = file.string();
    for (model::Problem& problem : problems) {
        if (problem.file.empty()) problem.file = own;
        if (problem.line == 0 && problem.file == own) problem.line = line_of(problem.element, lines);
    }
}

void finish_reading(Reading& reading, const std::filesystem::path& file) {
    model::Problems& problems = reading.problems;
    locate(problems, file, reading.lines);
    const auto place = [own = file.string()](const model::Problem& problem) {
        return std::pair(problem.file != own, problem.line);
    };
    std::stable_sort(problems.begin(), problems.end(),
                     [&](const model::Problem& a, const model::Problem& b) { return place(a) < place(b); });
    if (problems.size() <= most_told) return;
    const std::size_t more = problems.size() - (most_told - 1);
    const bool is_counted = problems.size() < most_problems_recorded;
    problems.resize(most_told - 1);
    problems.push_back(
        {file.string(),
         0,
         {},
         {},
         {},
         is_counted ? format::phrase("and {} more problems", more) : format::phrase("and very many more problems")});
}

}  // namespace toehold::xml
