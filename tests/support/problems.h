#pragma once
// What a list of problems says, in its sentences.
#include "model/problem.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>

namespace toehold::test {

/// Whether some problem's sentence holds the words.
[[nodiscard]] inline bool tells(const model::Problems& problems, const std::string& words) {
    return std::any_of(problems.begin(), problems.end(), [&](const model::Problem& problem) {
        return model::sentence(problem).find(words) != std::string::npos;
    });
}

/// Whether some problem is at this element and its message holds the words.
[[nodiscard]] inline bool tells_at(const model::Problems& problems, const std::string& element,
                                   const std::string& words) {
    return std::any_of(problems.begin(), problems.end(), [&](const model::Problem& problem) {
        return problem.element == element && format::english(problem.message).find(words) != std::string::npos;
    });
}

/// All sentences, for INFO.
[[nodiscard]] inline std::string sentences(const model::Problems& problems) {
    std::string result;
    for (const model::Problem& problem : problems) result += model::sentence(problem) + "\n";
    return result;
}

/// Fails the test unless there is exactly one.
[[nodiscard]] inline model::Problem only_problem(const model::Problems& problems) {
    INFO(sentences(problems));
    REQUIRE(problems.size() == 1);
    return problems.front();
}

}  // namespace toehold::test
