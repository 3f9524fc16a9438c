#include "model/problem.h"

namespace toehold::model {
namespace {

using format::phrase;

format::Phrase with_values(const Problem& problem) {
    if (problem.found.empty() && problem.accepted.empty()) return problem.message;
    if (problem.found.empty()) return phrase("{} (accepted: {})", problem.message, problem.accepted);
    if (problem.accepted.empty()) return phrase("{} (found \"{}\")", problem.message, problem.found);
    return phrase("{} (found \"{}\"; accepted: {})", problem.message, problem.found, problem.accepted);
}

}  // namespace

std::string sentence(const Problem& problem, const format::Locale& locale) {
    std::string text;
    if (!problem.file.empty()) {
        text += problem.file;
        if (problem.line > 0) text.append(":").append(std::to_string(problem.line));
        text += ": ";
    }
    if (!problem.element.empty()) text += problem.element + ": ";
    return text + format::text(with_values(problem), locale);
}

}  // namespace toehold::model
