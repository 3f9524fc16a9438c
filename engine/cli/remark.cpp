#include "checks/registry.h"
#include "cli/commands.h"
#include "cli/console.h"
#include "cli/data_folder.h"
#include "cli/plugins.h"
#include "export/text/columns.h"
#include "model/validate.h"
#include "review/review.h"
#include "xml/detail/detail_file.h"
#include "xml/detail/remarks.h"
#include "xml/document/characters.h"
#include "xml/document/file.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace toehold::cli {
namespace {

using model::Remark;

/// A document as it is laid out, and what it says.
struct Document {
    std::string text;
    model::BaseDetail detail;
};

std::optional<Document> read_document(const std::string& file) {
    const xml::TextRead text = xml::read_text(file);
    if (!text.text) {
        complain(text.problems);
        return std::nullopt;
    }
    xml::DetailRead read = xml::read_detail_text(*text.text, file);
    complain(read.problems);
    if (!read.detail) return std::nullopt;
    return Document{*text.text, std::move(*read.detail)};
}

std::string remark_lines(const Remark& remark, std::size_t number) {
    std::string head = fmt::format("{}. {}", number, remark.state == Remark::State::open ? "open" : "settled");
    if (!remark.about.empty()) head += " [" + remark.about + "]";
    if (!remark.subject.empty()) head += " " + remark.subject;
    if (!remark.by.empty()) head += ", by " + remark.by;
    if (!remark.date.empty()) head += ", " + remark.date;
    return exporting::paragraph(head) + exporting::paragraph(remark.words, "   ");
}

ExitStatus list_remarks(const model::BaseDetail& detail) {
    if (detail.remarks.empty()) print("no remarks\n");
    for (std::size_t index = 0; index < detail.remarks.size(); ++index) {
        print(remark_lines(detail.remarks[index], index + 1));
    }
    return ExitStatus::adequate;
}

template <class Entries>
void add_ids(const Entries& entries, std::set<std::string>& ids) {
    for (const auto& entry : entries) ids.insert(entry.id);
}

/// A check or a finding rule; the review's own finding of a base that turns over is one too.
bool is_known(const std::string& about) {
    std::set<std::string> ids{"no-equilibrium"};
    add_ids(checks::registered_checks(), ids);
    add_ids(checks::registered_findings(), ids);
    if (ids.contains(about)) return true;
    complain(fmt::format("there is no check or finding \"{}\"; there are: {}", about, fmt::join(ids, ", ")));
    return false;
}

template <class Results>
void add_subjects(const Results& results, const std::string& about, std::set<std::string>& subjects) {
    for (const auto& result : results) {
        if (result.id == about) subjects.insert(result.subject);
    }
}

/// Whether the check or finding has a result of this subject for the detail.
bool is_subject(const RemarkCommand& command, const model::BaseDetail& detail) {
    const auto catalog = load_catalog(command.data);
    if (!catalog) return false;
    catalog::Resolution resolution = catalog::resolve(detail, *catalog);
    for (model::Problem& problem : resolution.problems) problem.file = command.file;
    complain(resolution.problems);
    if (!resolution.resolved) return false;
    const review::Review review = review::evaluate(*resolution.resolved, {});
    std::set<std::string> subjects;
    add_subjects(review.checks, command.about, subjects);
    add_subjects(review.findings, command.about, subjects);
    if (subjects.contains(command.subject)) return true;
    if (subjects.empty()) {
        complain(fmt::format("{} has no result for this detail, so none on \"{}\"", command.about, command.subject));
    } else {
        complain(fmt::format("{} has no subject \"{}\"; there are: {}", command.about, command.subject,
                             fmt::join(subjects, ", ")));
    }
    return false;
}

bool can_be_written(const RemarkCommand& command) {
    for (const std::string& text : {command.words, command.by}) {
        if (!xml::first_bad_byte(text)) continue;
        complain("a remark holds bytes that no file can: text in UTF-8 without control characters is needed");
        return false;
    }
    return true;
}

/// The file with the detail's remarks in it and all else as it was.
ExitStatus save(const std::string& file, const Document& document, const model::BaseDetail& changed) {
    model::Problems problems = model::validate(changed);
    for (model::Problem& problem : problems) problem.file = file;
    if (!problems.empty()) return complain(problems);
    const std::optional<std::string> text = xml::with_remarks(document.text, changed.remarks);
    // A document that was laid out past our understanding is written in our own layout rather than damaged.
    const bool sound = text && xml::read_detail_text(*text, file).detail == changed;
    const auto refused = xml::save_atomically(file, sound ? *text : xml::write_detail(changed));
    return refused ? complain(model::Problems{*refused}) : ExitStatus::adequate;
}

ExitStatus add_remark(const RemarkCommand& command, const Document& document) {
    if (!can_be_written(command)) return ExitStatus::unusable_input;
    if (!command.about.empty() && !is_known(command.about)) return ExitStatus::unusable_input;
    if (!command.subject.empty() && !is_subject(command, document.detail)) return ExitStatus::unusable_input;
    model::BaseDetail changed = document.detail;
    changed.remarks.push_back(
        {command.about, command.subject, command.words, command.by, command.date, Remark::State::open});
    const ExitStatus status = save(command.file, document, changed);
    if (status == ExitStatus::adequate) print(remark_lines(changed.remarks.back(), changed.remarks.size()));
    return status;
}

ExitStatus settle_remark(const RemarkCommand& command, const Document& document) {
    model::BaseDetail changed = document.detail;
    if (command.settle > changed.remarks.size()) {
        complain(fmt::format("{}: there is no remark {}; there are {}", command.file, command.settle,
                             changed.remarks.size()));
        return ExitStatus::unusable_input;
    }
    Remark& settled = changed.remarks[command.settle - 1];
    settled.state = Remark::State::settled;
    const ExitStatus status = save(command.file, document, changed);
    if (status == ExitStatus::adequate) print(remark_lines(settled, command.settle));
    return status;
}

}  // namespace

ExitStatus run(const RemarkCommand& command) {
    if (!load_plugins(command.plugins)) return ExitStatus::unusable_input;
    const std::optional<Document> document = read_document(command.file);
    if (!document) return ExitStatus::unusable_input;
    if (command.words_given) return add_remark(command, *document);
    return command.settle > 0 ? settle_remark(command, *document) : list_remarks(document->detail);
}

}  // namespace toehold::cli
