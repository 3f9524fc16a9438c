#include "xml/detail_file.h"

namespace toehold::xml {
namespace {

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

}  // namespace toehold::xml
