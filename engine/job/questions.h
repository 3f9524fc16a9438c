#pragma once
// What is asked of a job: one table for the command line's options, the questions on a terminal, and the window's first
// page.
#include "job/job.h"

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace toehold::job {

/// An answer that can be picked.
struct Choice {
    std::string answer;    ///< what `take` accepts
    format::Phrase words;  ///< for people
};

struct Question {
    std::string id;               ///< also the option's name: `height`, `occupancy`, `post`, `joist-size`
    format::Phrase title;         ///< a few words: `Guard height`
    format::Phrase ask;           ///< the question: `How high is the top of the guard above the deck?`
    std::vector<Choice> choices;  ///< common answers; where `open`, others are taken too
    bool open = false;            ///< free text is taken: a length, a section
    bool optional = false;        ///< may stay unanswered, and is then assumed
    /// Puts the answer into the job; returns what would be accepted where it is refused, and leaves the job alone. An
    /// empty answer takes an optional one back.
    std::function<std::optional<format::Phrase>(Job&, std::string_view answer)> take;
    /// The answer that stands in the job now; empty where there is none.
    std::function<std::string(const Job&)> answer;
    /// Whether it is to be asked of this job at all: a tributary length only where a code has a load along the rail.
    std::function<bool(const Job&)> asked;
};

/// In the order they are asked: the seven that every job has, the tributary length where the code needs it, then the
/// optional ones. They refer to the catalog, which must outlive them.
[[nodiscard]] std::vector<Question> questions(const catalog::Catalog& catalog);
/// The one with this id; throws std::out_of_range.
[[nodiscard]] Question question(std::string_view id, const catalog::Catalog& catalog);

}  // namespace toehold::job
