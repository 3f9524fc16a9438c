#include "export/text/project_text.h"

#include "export/text/columns.h"
#include "export/text/line_text.h"
#include "export/text/table.h"
#include "format/figures.h"
#include "review/assumptions.h"
#include "review/schedule/post_schedule.h"
#include "wording/line.h"
#include "wording/marks.h"
#include "wording/project.h"
#include "wording/status.h"

#include <algorithm>

namespace toehold::exporting {
namespace {

using format::Locale;
using format::Phrase;
using format::phrase;

Row row_of(const review::ProjectReview& review, const review::ScheduleRow& row, const Locale& locale) {
    Row cells{
        {showable(format::text(wording::marks(row.marks), locale)), std::to_string(row.posts.size()),
         showable(row.mount), std::string(model::word(row.facing)), format::text(wording::word(row.verdict), locale),
         row.cause.ratio ? format::ratio_text(*row.cause.ratio) : std::string("-"),
         row.tension ? format::figure_text(row.tension->tension_lb, "lb", locale.system) : std::string("-"),
         row.share ? format::ratio_text(*row.share) : std::string("-")},
        {}};
    cells.below.push_back(showable(format::text(wording::worst_reason(review, row.worst, row.posts.size()), locale)));
    return cells;
}

/// Posts that are alike on one row.
std::string schedule_table(const review::ProjectReview& review, const Locale& locale) {
    std::vector<Row> rows;
    for (const review::ScheduleRow& row : review::post_schedule(review)) rows.push_back(row_of(review, row, locale));
    const auto heading = [&locale](const Phrase& words) { return format::text(words, locale); };
    return table({{heading(phrase("mark"))},
                  {heading(phrase("qty")), Align::right},
                  {heading(phrase("mount"))},
                  {heading(phrase("faces"))},
                  {heading(phrase("verdict"))},
                  {heading(phrase("D/C")), Align::right},
                  {heading(phrase("tension")), Align::right},
                  {heading(phrase("share")), Align::right}},
                 rows);
}

std::string shared_lines(const review::ProjectReview& review, const Locale& locale) {
    if (review.shared.empty()) return {};
    std::string text = "\n" + format::text(phrase("FRAMING SHARED BY POSTS"), locale) + "\n";
    for (const review::SharedMember& one : review.shared) {
        text += paragraph(
            format::text(phrase("{}: posts {}", model::part_name(one.part), wording::marks(one.posts)), locale), "  ");
    }
    return text;
}

std::string bullets(const Phrase& heading, const std::vector<Phrase>& sentences, const Locale& locale) {
    if (sentences.empty()) return {};
    std::string text = "\n" + format::text(heading, locale) + "\n";
    for (const Phrase& sentence : sentences) text += paragraph(format::text(sentence, locale), "  - ");
    return text;
}

}  // namespace

std::string project_text(const review::ProjectReview& review, const TextOptions& options, bool full) {
    using review::Verdict;
    const Locale& locale = options.locale;
    std::string text = paragraph(review.project.empty() ? format::text(phrase("Project"), locale) : review.project);
    text += paragraph(format::text(
        phrase("{}: {} posts; {} adequate, {} inadequate, {} incomplete", wording::word(review.verdict),
               review.posts.size(), review::posts_with(review, Verdict::adequate),
               review::posts_with(review, Verdict::inadequate), review::posts_with(review, Verdict::incomplete)),
        locale));
    if (const Phrase reason = wording::line_reason(review); !reason.empty())
        text += paragraph(showable(format::text(reason, locale)), "  ");
    text += "\n" + schedule_table(review, locale);
    if (const Phrase roles = wording::role_counts(review.roles); !roles.empty())
        text += paragraph(format::text(phrase("In all: {}.", roles), locale), "  ");
    text += paragraph(format::text(wording::schedule_legend(), locale), "  ");
    if (!review.lines.empty()) text += "\n" + format::text(phrase("LINES OF GUARD"), locale) + "\n";
    for (const review::LineReview& line : review.lines) text += line_text(line, locale);
    text += shared_lines(review, locale);
    text += bullets(phrase("LOADS ON SHARED FRAMING"), review.assumptions, locale);
    if (!full) return text + bullets(phrase("CAUTIONS"), review::cautions(), locale);
    const std::string rule = "\n" + std::string(page_columns, '=') + "\n\n";
    for (const review::PostReview& one : review.posts) text += rule + review_text(one.review, options);
    return text;
}

}  // namespace toehold::exporting
