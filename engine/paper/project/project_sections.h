#pragma once
// The parts of a project's report, each in the file its name says. Each puts its headings and blocks at the end.
#include "paper/project/project_documents.h"
#include "paper/report/blocks.h"

#include <string>

namespace toehold::paper::project {

using report::Blocks;

/// What every part is written from.
struct ProjectSource {
    const ProjectSubject& subject;
    const Issue& issue;
    [[nodiscard]] const format::Locale& locale() const { return issue.locale; }
    [[nodiscard]] std::string text(const format::Phrase& phrase) const { return written(phrase, issue.locale); }
};

void add_schedule(Blocks& blocks, const ProjectSource& source);
/// Framing that posts share, and what was taken of loads on it; nothing for one post.
void add_posts_together(Blocks& blocks, const ProjectSource& source);
/// The line of this number among the project's.
void add_line(Blocks& blocks, const ProjectSource& source, std::size_t number);
/// How a push is shared among the line's posts, and how far the rail moves: tables.
void add_line_tables(Blocks& blocks, const ProjectSource& source, const review::LineReview& line);

/// Number among the project's posts of the one that governs its mount: the gravest verdict, then the largest ratio.
[[nodiscard]] std::size_t governing_post(const review::ProjectReview& review, const std::string& mount);
/// A mount as an ordinary report has it, by the post that governs it. `number`: of the mount, from 1.
void add_mount(Blocks& blocks, const ProjectSource& source, const std::string& mount, std::size_t number);

/// The line's rail and its connections as a review of checks alone, so that their steps are printed as a base's are.
[[nodiscard]] review::Review review_of_rail(const ProjectSubject& subject, const review::LineReview& line);

}  // namespace toehold::paper::project
