// The commands that write a paper: report, draw, site, letter.
#include "cli/commands.h"
#include "cli/console.h"
#include "cli/opened_detail.h"
#include "cli/paper_command.h"
#include "cli/project/project_papers.h"
#include "cli/resolve_project.h"
#include "cli/review_file.h"
#include "search/remedies/remedies.h"
#include "xml/document/file.h"

#include <algorithm>
#include <cctype>
#include <filesystem>

namespace toehold::cli {
namespace {

std::string listed(const std::vector<std::string>& endings) {
    std::string text;
    for (const std::string& ending : endings) text += (text.empty() ? "." : ", .") + ending;
    return text;
}

/// A drawing needs no solve; the others say what the review says, a report also what would help.
review::Review needed_review(paper::Kind kind, const OpenedDetail& opened) {
    switch (kind) {
        case paper::Kind::report: {
            review::Review review = review::review(opened.resolved, opened.sha256);
            review.remedies = search::find_remedies(review, opened.catalog);
            return review;
        }
        case paper::Kind::site_sheet:
        case paper::Kind::letter:
            return review::evaluate(opened.resolved, opened.sha256);
        case paper::Kind::shop_drawing:
        case paper::Kind::plan:
        case paper::Kind::section:
        case paper::Kind::elevation:
            break;
    }
    review::Review review;
    review.detail = opened.resolved.detail.name;
    review.input_sha256 = opened.sha256;
    review.resolved = opened.resolved;
    return review;
}

/// The customary name, with the revision before its ending; a project's papers get theirs with the plate's.
std::string unnamed_output(const PaperCommand& command, const std::string& named, bool project) {
    const std::string name = paper::customary_name(command.kind, named);
    const std::string& revision = command.wishes.revision;
    const bool alone = !project || command.kind != paper::Kind::shop_drawing;
    return revision.empty() || !alone ? name : std::string(name).insert(name.rfind('.'), "-rev" + revision);
}

}  // namespace

std::string name_on_paper(const std::string& file) {
    return file == standard_input ? name_of(file) : std::filesystem::path(file).filename().string();
}

paper::Issue issue_of(const PaperWishes& wishes, const std::string& file, const format::Locale& spoken) {
    paper::Issue issue;
    issue.project = wishes.project;
    issue.date = wishes.date == "none" ? "" : wishes.date.empty() ? paper::today() : wishes.date;
    issue.file = name_on_paper(file);
    issue.program = "Toehold " TOEHOLD_VERSION;
    issue.locale = {wishes.system, spoken.catalogue};
    issue.paper = wishes.paper;
    issue.revision = wishes.revision;
    issue.link = wishes.link;
    return issue;
}

std::string ending_of(const std::string& file) {
    std::string ending = std::filesystem::path(file).extension().string();
    std::transform(ending.begin(), ending.end(), ending.begin(),
                   [](unsigned char letter) { return static_cast<char>(std::tolower(letter)); });
    return ending.empty() ? ending : ending.substr(1);
}

bool write_paper(const std::string& file, const std::string& bytes, const format::Locale& locale) {
    if (const auto problem = xml::save_atomically(file, bytes)) {
        complain(format::verbatim(model::sentence(*problem, locale)), locale);
        return false;
    }
    print(format::text(format::phrase("Written to {}", file), locale) + "\n");
    return true;
}

ExitStatus run(const PaperCommand& command, const format::Locale& locale) {
    const std::vector<std::string> endings = paper::endings(command.kind);
    const std::string named = command.file == standard_input ? "base-detail.xml" : name_on_paper(command.file);
    const bool project = is_project(command.file);
    const std::string output =
        command.wishes.output.empty() ? unnamed_output(command, named, project) : command.wishes.output;
    const std::string ending = ending_of(output);
    if (std::find(endings.begin(), endings.end(), ending) == endings.end()) {
        complain(format::phrase("\"{}\" is not a file this paper can be written to; accepted endings: {}", output,
                                listed(endings)),
                 locale);
        return ExitStatus::unusable_input;
    }
    if (project) return write_project_papers(command, output, locale);
    const std::optional<OpenedDetail> opened = open_detail(command.file, command.data, command.plugins, locale);
    if (!opened) return ExitStatus::unusable_input;
    if (const format::Phrase why = paper::why_not(command.kind, opened->resolved.detail); !why.empty()) {
        complain(format::phrase("{}: {}", command.file, why), locale);
        return ExitStatus::unusable_input;
    }
    const review::Review review = needed_review(command.kind, *opened);
    const std::string bytes =
        paper::paper_file(command.kind, ending, review, issue_of(command.wishes, command.file, locale));
    return write_paper(output, bytes, locale) ? ExitStatus::adequate : ExitStatus::internal_fault;
}

}  // namespace toehold::cli
