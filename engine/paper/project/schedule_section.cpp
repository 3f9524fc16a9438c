// Which posts there are and what each comes to; and what they do to each other.
#include "format/figures.h"
#include "paper/project/project_sections.h"
#include "review/schedule/post_schedule.h"
#include "wording/line.h"
#include "wording/marks.h"
#include "wording/project.h"

namespace toehold::paper::project {
namespace {

using drawing::Across;
using format::Phrase;
using format::phrase;
using report::words_cell;

std::vector<Cell> row_of(const ProjectSource& source, const review::ScheduleRow& row) {
    const format::Locale& locale = source.locale();
    return {{source.text(wording::marks(row.marks)), true},
            words_cell(std::to_string(row.posts.size())),
            words_cell(row.mount),
            words_cell(std::string(model::word(row.facing))),
            report::verdict_cell(row.verdict, locale),
            words_cell(row.cause.ratio ? format::ratio_text(*row.cause.ratio) : "-"),
            words_cell(row.tension ? format::number_text(row.tension->tension_lb, "lb", locale.system) : "-"),
            words_cell(row.share ? format::ratio_text(*row.share) : "-"),
            words_cell(source.text(wording::worst_reason(source.subject.review, row.worst, row.posts.size())))};
}

Table schedule_table(const ProjectSource& source) {
    Table table;
    table.columns = {{source.text(phrase("mark")), 0.13},
                     {source.text(phrase("qty")), 0.05, Across::right},
                     {source.text(phrase("mount")), 0.13},
                     {source.text(phrase("faces")), 0.065},
                     {source.text(phrase("verdict")), 0.13},
                     {source.text(phrase("D/C")), 0.055, Across::right},
                     {source.text(phrase("tension, {}", unit_of("lb", source.locale().system))), 0.085, Across::right},
                     {source.text(phrase("share")), 0.06, Across::right},
                     {source.text(phrase("why")), 0.295}};
    for (const review::ScheduleRow& row : review::post_schedule(source.subject.review))
        table.rows.push_back(row_of(source, row));
    return table;
}

}  // namespace

void add_schedule(Blocks& blocks, const ProjectSource& source) {
    const review::ProjectReview& review = source.subject.review;
    blocks.emplace_back(Heading{1, source.text(phrase("Schedule of posts")), "schedule"});
    if (const Phrase roles = wording::role_counts(review.roles); !roles.empty())
        blocks.emplace_back(report::paragraph(source.text(phrase("In all: {}.", roles))));
    blocks.emplace_back(schedule_table(source));
    blocks.emplace_back(report::fine_print(source.text(wording::schedule_legend())));
}

void add_posts_together(Blocks& blocks, const ProjectSource& source) {
    const review::ProjectReview& review = source.subject.review;
    if (review.shared.empty() && review.assumptions.empty()) return;
    blocks.emplace_back(Heading{1, source.text(phrase("Posts together on the framing")), "together"});
    if (!review.shared.empty()) {
        Table table;
        table.columns = {{source.text(phrase("member")), 0.3}, {source.text(phrase("loaded by posts")), 0.7}};
        for (const review::SharedMember& one : review.shared) {
            table.rows.push_back({words_cell(source.text(model::part_name(one.part))),
                                  words_cell(source.text(wording::marks(one.posts)))});
        }
        blocks.emplace_back(std::move(table));
    }
    for (const Phrase& assumption : review.assumptions) blocks.emplace_back(report::item("•", source.text(assumption)));
}

}  // namespace toehold::paper::project
