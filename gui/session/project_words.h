#pragma once
// A project in a few words: how far its review is, and what it came to.
#include "format/phrase.h"
#include "session/project_session.h"

namespace toehold::session {

/// What is shown of the project's verdict: of the newest review or, while one runs or was stopped, of the one before.
struct ProjectVerdict {
    std::optional<review::Verdict> verdict;  ///< absent: not reviewed, or it cannot be
    format::Phrase reason;                   ///< `30 posts; 28 adequate, 2 inadequate, 0 incomplete`, and the line's
    bool stale = false;                      ///< of an earlier state of the project
};
[[nodiscard]] ProjectVerdict project_verdict(const ProjectSession& session);

/// `Forces: 12 of 30 posts`, `Stopped: 12 of 30 posts reviewed`, `up to date`; empty where it cannot be reviewed.
[[nodiscard]] format::Phrase progress_words(const ProjectSession& session);
/// 0 to 1.
[[nodiscard]] double progress_share(const ProjectSession& session);

/// Above the checks of a line's rail: why its verdict is what it is, and how far the rail moves.
[[nodiscard]] std::vector<format::Phrase> line_sentences(const review::LineReview& line);
/// Below them: what counting on the neighbors rests on, or would; with a heading.
[[nodiscard]] std::vector<format::Phrase> resting_sentences(const review::LineReview& line);

}  // namespace toehold::session
