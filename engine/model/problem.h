#pragma once
// A problem with an input: one clear sentence, and where it is. Problems are data; the program that shows
// them makes the line. Every reader and validator returns all the problems it finds, not the first.
#include "format/phrase.h"

#include <string>
#include <vector>

namespace toehold::model {

struct Problem {
    std::string file;         ///< as the user named it; empty until the reader knows it
    int line = 0;             ///< 1-based; 0 when the problem belongs to no single line
    std::string element;      ///< path inside the detail, for instance `plate/hole[A]` or `framing/block[B1]/end[to]`
    format::Phrase found;     ///< what stands there, as the user wrote it; empty when something is absent
    format::Phrase accepted;  ///< what would be accepted: all of it, or said to be the closest
    format::Phrase message;   ///< the sentence: what is wrong

    friend bool operator==(const Problem&, const Problem&) = default;
};

using Problems = std::vector<Problem>;

/// `file:line: element: message (found "…"; accepted: …)`, leaving out what is empty, in the reader's language.
[[nodiscard]] std::string sentence(const Problem& problem, const format::Locale& locale = {});

}  // namespace toehold::model
