// A guard line: drawn, what counting on it rests on, and its rail checked with worked steps.
#include "drawing/line/line_drawings.h"
#include "paper/project/project_sections.h"
#include "paper/project/renamed.h"
#include "paper/report/results.h"
#include "paper/report/sections.h"
#include "wording/line.h"
#include "wording/status.h"

#include <algorithm>

namespace toehold::paper::project {
namespace {

using format::Phrase;
using format::phrase;

void add_bullets(Blocks& blocks, const ProjectSource& source, const Phrase& head, const std::vector<Phrase>& all) {
    if (all.empty()) return;
    blocks.emplace_back(report::paragraph(source.text(head)));
    for (const Phrase& one : all) blocks.emplace_back(report::item("•", source.text(one)));
}

void add_drawings(Blocks& blocks, const ProjectSource& source, std::size_t number, const review::LineReview& line) {
    constexpr double lettering = 0.68;
    const drawing::LineSubject subject{source.subject.project, source.subject.project.guard_lines.at(number), &line,
                                       source.locale()};
    Figure plan, elevation;
    plan.height_mm = 92.0;
    elevation.height_mm = 62.0;
    plan.lettering = elevation.lettering = lettering;
    plan.parts = {{drawing::line_plan(subject), 1.0, false, source.text(phrase("Guard line {}, plan", line.id))}};
    elevation.parts = {
        {drawing::line_elevation(subject), 1.0, false, source.text(phrase("Guard line {}, elevation", line.id))}};
    blocks.emplace_back(std::move(plan));
    blocks.emplace_back(std::move(elevation));
}

void add_verdict(Blocks& blocks, const ProjectSource& source, const review::LineReview& line) {
    const Phrase reason = wording::line_reason(line);
    Verdict verdict{source.text(wording::word(line.verdict)), {}, report::frame_of(line.verdict)};
    verdict.sentences.push_back(source.text(
        !reason.empty() ? reason
        : line.checks.empty()
            ? phrase("No rail is described: each post is reviewed by itself, and no rail is checked.")
            : phrase("The rail and its connections, as far as they are described, carry what is asked of them.")));
    blocks.emplace_back(std::move(verdict));
}

/// All in one set of names of their own: another line has the same checks.
void add_rail_checks(Blocks& blocks, const ProjectSource& source, const review::LineReview& line,
                     const std::string& prefix) {
    if (line.checks.empty()) return;
    const review::Review rail = review_of_rail(source.subject, line);
    const report::Source of_rail{rail, source.issue};
    Blocks own;
    own.emplace_back(Heading{2, source.text(phrase("Guard line {}: rail and connections", line.id)), "rail"});
    own.emplace_back(
        report::results_table(source.text(phrase("worst part")), report::results_by_check(rail), source.locale()));
    report::add_check_steps(own, of_rail, line.id);
    report::add_sources(own, of_rail, Heading{2, source.text(phrase("Guard line {}: sources", line.id)), "cautions"});
    append_renamed(blocks, std::move(own), prefix);
}

}  // namespace

review::Review review_of_rail(const ProjectSubject& subject, const review::LineReview& line) {
    review::Review rail;
    rail.detail = line.id;
    rail.input_sha256 = subject.review.input_sha256;
    rail.verdict = line.verdict;
    rail.resolved.detail.basis = subject.project.basis;
    rail.checks = line.checks;
    return rail;
}

void add_line(Blocks& blocks, const ProjectSource& source, std::size_t number) {
    const review::LineReview& line = source.subject.review.lines.at(number);
    const std::string prefix = "line-" + std::to_string(number + 1);
    blocks.emplace_back(Heading{1, source.text(wording::line_title(line)), prefix});
    blocks.emplace_back(report::paragraph(source.text(phrase("{}.", wording::role_counts(review::roles_of(line))))));
    add_verdict(blocks, source, line);
    add_drawings(blocks, source, number, line);
    add_line_tables(blocks, source, line);
    if (!line.unsolved.empty()) blocks.emplace_back(report::paragraph(source.text(line.unsolved)));
    add_bullets(blocks, source,
                line.sharing ? phrase("Sharing rests on:") : phrase("Counting on sharing would rest on:"),
                line.rests_on);
    add_bullets(blocks, source, phrase("Assumed of the rail:"), line.assumptions);
    if (const Phrase proof = wording::line_proof(line); !proof.empty())
        blocks.emplace_back(report::fine_print(source.text(proof)));
    add_rail_checks(blocks, source, line, prefix + "-");
}

}  // namespace toehold::paper::project
