#include "paper/words.h"

namespace toehold::paper {

std::string listed(const std::vector<std::string>& names) {
    std::string words;
    for (std::size_t index = 0; index < names.size(); ++index) {
        if (index > 0) words += index + 1 == names.size() ? " and " : ", ";
        words += names[index];
    }
    return words;
}

std::string project_of(const Issue& issue, const model::BaseDetail& detail) {
    return issue.project.empty() ? detail.project : issue.project;
}

}  // namespace toehold::paper
