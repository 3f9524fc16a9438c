#pragma once
// A problem with an input: one clear sentence, and where it is. Problems are data; the program that shows
// them makes the line. Every reader and validator returns all the problems it finds, not the first.
#include <string>
#include <vector>

namespace toehold::model {

struct Problem {
    std::string file;      ///< as the user named it; empty until the reader knows it
    int line = 0;          ///< 1-based; 0 when the problem belongs to no single line
    std::string element;   ///< path inside the detail, for instance `plate/hole[A]` or `framing/block[B1]/end[to]`
    std::string found;     ///< what stands there, as the user wrote it; empty when something is absent
    std::string accepted;  ///< what would be accepted
    std::string message;   ///< the sentence: what is wrong

    friend bool operator==(const Problem&, const Problem&) = default;
};

using Problems = std::vector<Problem>;

/// `file:line: element: message (found "…"; accepted: …)`, leaving out what is empty.
[[nodiscard]] std::string sentence(const Problem& problem);

}  // namespace toehold::model
