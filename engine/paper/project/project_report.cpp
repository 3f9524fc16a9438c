// The calculation of a whole guard: what is the same for many posts stands once.
#include "paper/project/project_sections.h"
#include "paper/report/sections.h"
#include "paper/report/standards.h"
#include "wording/line.h"
#include "wording/project.h"
#include "wording/status.h"

#include <algorithm>

namespace toehold::paper {
namespace project {
namespace {

using format::Phrase;
using format::phrase;
using report::Standard;

/// Those whose sections the report has: each mount's governing post, and the rails.
std::vector<review::Review> reviews_shown(const ProjectSubject& subject) {
    std::vector<review::Review> shown;
    for (const model::NamedMount& mount : subject.project.mounts) {
        const std::size_t post = governing_post(subject.review, mount.id);
        if (post < subject.review.posts.size()) shown.push_back(subject.review.posts[post].review);
    }
    for (const review::LineReview& line : subject.review.lines) shown.push_back(review_of_rail(subject, line));
    return shown;
}

/// In the order they are printed, each once.
std::vector<Standard> standards_of(const std::vector<review::Review>& shown) {
    std::vector<std::string> used;
    for (const review::Review& review : shown) {
        for (const Standard& standard : report::standards_used(review)) used.emplace_back(standard.name);
    }
    std::vector<Standard> all;
    for (const Standard& standard : report::known_standards()) {
        if (std::find(used.begin(), used.end(), standard.name) != used.end()) all.push_back(standard);
    }
    return all;
}

Facts facts(const ProjectSource& source, const std::vector<Standard>& standards) {
    const units::System system = source.locale().system;
    Facts facts;
    facts.columns = 3;
    const auto add = [&](const Phrase& label, std::string words) {
        facts.facts.push_back({source.text(label), std::move(words)});
    };
    add(phrase("PROJECT"), source.issue.project.empty() ? source.subject.review.project : source.issue.project);
    add(phrase("POSTS"), source.text(wording::role_counts(source.subject.review.roles)));
    add(phrase("FILE"), source.issue.file);
    add(phrase("PROGRAM AND UNITS"),
        source.issue.program + "; " + (system == units::System::us ? "in, lb, psi" : "mm, N, MPa"));
    add(phrase("DATE"), source.issue.date);
    add(phrase("CHECKED BY"), "");
    const auto& mounts = source.subject.project.mounts;
    const bool plates = std::any_of(mounts.begin(), mounts.end(), [](const model::NamedMount& one) {
        return kind(one.mount) == model::MountKind::plate_on_deck;
    });
    for (Facts::Fact& fact : report::basis_facts(source.subject.project.basis, standards, source.locale(), plates))
        facts.facts.push_back(std::move(fact));
    add(phrase("SHA-256 OF THE FILE"), source.subject.review.input_sha256);
    return facts;
}

void add_head(Blocks& blocks, const ProjectSource& source, const std::vector<Standard>& standards) {
    const review::ProjectReview& review = source.subject.review;
    blocks.emplace_back(report::title(source.text(phrase("Calculation of a guard")), drawing::TextSize::title));
    blocks.emplace_back(facts(source, standards));
    if (!source.subject.project.note.empty())
        blocks.emplace_back(
            report::paragraph(source.text(phrase("Note in the file: {}", source.subject.project.note))));
    Verdict verdict{source.text(wording::word(review.verdict)),
                    {source.text(wording::verdict_counts(review))},
                    report::frame_of(review.verdict)};
    if (const Phrase reason = wording::line_reason(review); !reason.empty())
        verdict.sentences.push_back(source.text(reason));
    blocks.emplace_back(std::move(verdict));
    blocks.emplace_back(report::title(source.text(phrase("Contents")), drawing::TextSize::normal));
    blocks.emplace_back(Contents{1});
}

/// Each once, however many posts they are of.
void add_cautions(Blocks& blocks, const ProjectSource& source, const std::vector<review::Review>& shown,
                  const std::vector<Standard>& standards) {
    blocks.emplace_back(Heading{1, source.text(phrase("Cautions and standards")), "cautions"});
    std::vector<Phrase> said;
    for (const review::Review& review : shown) {
        for (const Phrase& caution : review.cautions) {
            if (std::find(said.begin(), said.end(), caution) != said.end()) continue;
            said.push_back(caution);
            blocks.emplace_back(report::item("•", source.text(caution)));
        }
    }
    blocks.emplace_back(report::standards_table(standards, source.locale()));
}

}  // namespace
}  // namespace project

Document project_report(const ProjectSubject& subject, const Issue& issue) {
    const project::ProjectSource source{subject, issue};
    Document document = report::titled(issue, format::phrase("Calculation of a guard"), subject.review.project);
    report::Blocks& blocks = document.blocks;
    const std::vector<review::Review> shown = project::reviews_shown(subject);
    const std::vector<report::Standard> standards = project::standards_of(shown);
    project::add_head(blocks, source, standards);
    project::add_schedule(blocks, source);
    project::add_posts_together(blocks, source);
    for (std::size_t line = 0; line < subject.review.lines.size(); ++line) project::add_line(blocks, source, line);
    std::size_t number = 0;
    for (const model::NamedMount& mount : subject.project.mounts)
        project::add_mount(blocks, source, mount.id, ++number);
    project::add_cautions(blocks, source, shown, standards);
    return document;
}

}  // namespace toehold::paper
