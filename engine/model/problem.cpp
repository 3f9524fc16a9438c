#include "model/problem.h"

namespace toehold::model {

std::string sentence(const Problem& problem) {
    std::string text;
    if (!problem.file.empty()) {
        text += problem.file;
        if (problem.line > 0) text += ":" + std::to_string(problem.line);
        text += ": ";
    }
    if (!problem.element.empty()) text += problem.element + ": ";
    text += problem.message;
    std::string detail;
    if (!problem.found.empty()) detail += "found \"" + problem.found + "\"";
    if (!problem.accepted.empty()) detail += (detail.empty() ? "" : "; ") + ("accepted: " + problem.accepted);
    if (!detail.empty()) text += " (" + detail + ")";
    return text;
}

}  // namespace toehold::model
