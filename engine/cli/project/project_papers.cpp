#include "cli/project/project_papers.h"

#include "cli/console.h"
#include "cli/data_folder.h"
#include "cli/plugins.h"
#include "cli/resolve_project.h"
#include "paper/page/site_page.h"
#include "paper/project/line_papers.h"
#include "paper/project/near_post.h"
#include "paper/project/plate_papers.h"
#include "paper/project/project_documents.h"
#include "review/line/review_line.h"
#include "wording/line.h"

#include <algorithm>
#include <filesystem>
#include <utility>

namespace toehold::cli {
namespace {

using format::Locale;
using format::phrase;

struct OpenedProject {
    catalog::Catalog catalog;
    ResolvedProject input;  ///< with its project
};

std::optional<OpenedProject> open_project(const PaperCommand& command, const Locale& locale) {
    if (!load_plugins(command.plugins, locale)) return std::nullopt;
    std::optional<catalog::Catalog> catalog = load_catalog(command.data, locale);
    if (!catalog) return std::nullopt;
    ResolvedProject input = resolve_project(command.file, *catalog);
    complain(input.problems, locale);
    if (!input.project) return std::nullopt;
    return OpenedProject{std::move(*catalog), std::move(input)};
}

/// `porch-line-post-revA.pdf` for `porch.pdf`.
std::string name_of_paper(const std::string& output, const std::string& plate, const std::string& revision) {
    const std::filesystem::path path(output);
    std::string name = path.stem().string() + "-" + plate;
    if (!revision.empty()) name += "-rev" + revision;
    return (path.parent_path() / (name + path.extension().string())).string();
}

template <class Paper>
ExitStatus write_each(const std::vector<Paper>& papers, const PaperCommand& command, const std::string& output,
                      const Locale& locale) {
    for (const Paper& made : papers) {
        const std::string file = name_of_paper(output, made.name, command.wishes.revision);
        if (!write_paper(file, made.bytes, locale)) return ExitStatus::internal_fault;
    }
    return ExitStatus::adequate;
}

ExitStatus write_plates(const PaperCommand& command, const OpenedProject& opened, const std::string& output,
                        const Locale& locale) {
    const paper::Issue issue = issue_of(command.wishes, command.file, locale);
    const std::vector<paper::PlatePaper> papers =
        paper::plate_papers(ending_of(output), opened.input.posts, opened.input.sha256, issue);
    if (papers.empty()) {
        complain(phrase("{}: no post has a plate: there is nothing to cut in metal", command.file), locale);
        return ExitStatus::unusable_input;
    }
    return write_each(papers, command, output, locale);
}

/// Each post reviewed within its project, and described as it is built.
paper::SiteSubject subject_of(const OpenedProject& opened) {
    const model::Project& project = *opened.input.project;
    review::ProjectReview reviewed =
        review::review_project(project, opened.input.posts, opened.input.sha256, opened.input.lines, false);
    paper::SiteSubject subject{project.name, project.note, reviewed.verdict, opened.input.sha256, {}};
    for (review::PostReview& one : reviewed.posts) {
        catalog::Resolution built = catalog::resolve(paper::detail_at_post(project, one.post), opened.catalog);
        // What the whole project's catalog rows were found for is found for a part of it.
        if (built.resolved) one.review.resolved = std::move(*built.resolved);
        for (const review::LineReview& line : reviewed.lines) {
            const bool stands_in_it = std::any_of(line.posts.begin(), line.posts.end(),
                                                  [&one](const auto& post) { return post.post == one.post.id; });
            if (stands_in_it) one.review = paper::under_rail(std::move(one.review), line);
        }
        subject.posts.push_back({one.post.id, std::move(one.review), one.post});
    }
    for (const model::GuardLine& line : project.guard_lines) {
        subject.lines.push_back(line.posts);
        subject.quantities.push_back(
            phrase("Guard line {}: {}.", line.id, wording::role_counts(model::count_roles(project, line))));
    }
    return subject;
}

ExitStatus write_site(const PaperCommand& command, const OpenedProject& opened, const std::string& output,
                      const Locale& locale) {
    const paper::Issue issue = issue_of(command.wishes, command.file, locale);
    const paper::SiteSubject subject = subject_of(opened);
    const std::string bytes =
        ending_of(output) == "html" ? paper::site_page(subject, issue) : paper::site_book(subject, issue);
    return write_paper(output, bytes, locale) ? ExitStatus::adequate : ExitStatus::internal_fault;
}

/// The report says what every post assumes and what those that share come to alone; the letter does with less.
ExitStatus write_text(const PaperCommand& command, const OpenedProject& opened, const std::string& output,
                      const Locale& locale) {
    const model::Project& project = *opened.input.project;
    const bool report = command.kind == paper::Kind::report;
    const review::ProjectReview reviewed =
        review::review_project(project, opened.input.posts, opened.input.sha256, opened.input.lines, report);
    paper::ProjectSubject subject{project, reviewed};
    for (const review::PostReview& one : reviewed.posts)
        subject.built.push_back(catalog::resolve(paper::detail_at_post(project, one.post), opened.catalog).resolved);
    const paper::Issue issue = issue_of(command.wishes, command.file, locale);
    const paper::Document document =
        report ? paper::project_report(subject, issue) : paper::project_letter(subject, issue);
    return write_paper(output, paper::pdf(paper::lay_out(document)), locale) ? ExitStatus::adequate
                                                                             : ExitStatus::internal_fault;
}

/// Each line of guard a drawing of its own, with what each post sees of a push.
ExitStatus write_lines(const PaperCommand& command, const OpenedProject& opened, const std::string& output,
                       const Locale& locale) {
    const model::Project& project = *opened.input.project;
    if (project.guard_lines.empty()) {
        complain(phrase("{} has no guard line to draw", command.file), locale);
        return ExitStatus::unusable_input;
    }
    const std::vector<review::LineReview> lines = review::review_lines(project, opened.input.posts, opened.input.lines);
    const paper::Issue issue = issue_of(command.wishes, command.file, locale);
    return write_each(paper::line_papers(command.kind, ending_of(output), project, lines, issue), command, output,
                      locale);
}

ExitStatus refused(const format::Phrase& why, const Locale& locale) {
    complain(why, locale);
    return ExitStatus::unusable_input;
}

}  // namespace

ExitStatus write_project_papers(const PaperCommand& command, const std::string& output, const Locale& locale) {
    const bool shop = command.kind == paper::Kind::shop_drawing, site = command.kind == paper::Kind::site_sheet;
    const bool line = command.kind == paper::Kind::plan || command.kind == paper::Kind::elevation;
    const bool text = command.kind == paper::Kind::report || command.kind == paper::Kind::letter;
    if (!shop && !site && !line && !text) {
        return refused(phrase("{} is a project; of a project there are: toehold check, report, letter, bill, site, and "
                              "draw without --view or with --view plan or elevation",
                              command.file),
                       locale);
    }
    const std::string ending = ending_of(output);
    if (site && ending != "html" && ending != "pdf") {
        return refused(
            phrase("\"{}\": a project's site sheets are several pages; accepted endings: .html, .pdf", output), locale);
    }
    const std::optional<OpenedProject> opened = open_project(command, locale);
    if (!opened) return ExitStatus::unusable_input;
    if (text) return write_text(command, *opened, output, locale);
    if (line) return write_lines(command, *opened, output, locale);
    return shop ? write_plates(command, *opened, output, locale) : write_site(command, *opened, output, locale);
}

}  // namespace toehold::cli
