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

#include <set>

namespace toehold::cli {
namespace {

using format::Locale;
using format::Phrase;
using format::phrase;
using model::Remark;

/// A document as it is laid out, and what it says.
struct Document {
    std::string text;
    model::BaseDetail detail;
};

std::optional<Document> read_document(const std::string& file, const Locale& locale) {
    const xml::TextRead text = xml::read_text(file);
    if (!text.text) {
        complain(text.problems, locale);
        return std::nullopt;
    }
    xml::DetailRead read = xml::read_detail_text(*text.text, file);
    complain(read.problems, locale);
    if (!read.detail) return std::nullopt;
    return Document{*text.text, std::move(*read.detail)};
}

std::string remark_lines(const Remark& remark, std::size_t number, const Locale& locale) {
    const Phrase state = remark.state == Remark::State::open ? phrase("open") : phrase("settled");
    std::string head = fmt::format("{}. {}", number, format::text(state, locale));
    if (!remark.about.empty()) head += " [" + remark.about + "]";
    if (!remark.subject.empty()) head += " " + remark.subject;
    if (!remark.by.empty()) head += ", " + format::text(phrase("by {}", remark.by), locale);
    if (!remark.date.empty()) head += ", " + remark.date;
    return exporting::paragraph(head) + exporting::paragraph(remark.words, "   ");
}

ExitStatus list_remarks(const model::BaseDetail& detail, const Locale& locale) {
    if (detail.remarks.empty()) print(format::text(phrase("no remarks"), locale) + "\n");
    for (std::size_t index = 0; index < detail.remarks.size(); ++index) {
        print(remark_lines(detail.remarks[index], index + 1, locale));
    }
    return ExitStatus::adequate;
}

template <class Entries>
void add_ids(const Entries& entries, std::set<std::string>& ids) {
    for (const auto& entry : entries) ids.insert(entry.id);
}

/// A check or a finding rule; the review's own finding of a base that turns over is one too.
bool is_known(const std::string& about, const Locale& locale) {
    std::set<std::string> ids{"no-equilibrium"};
    add_ids(checks::registered_checks(), ids);
    add_ids(checks::registered_findings(), ids);
    if (ids.contains(about)) return true;
    complain(
        phrase("there is no check or finding \"{}\"; there are: {}", about, fmt::format("{}", fmt::join(ids, ", "))),
        locale);
    return false;
}

template <class Results>
void add_part_keys(const Results& results, const std::string& about, std::set<std::string>& keys) {
    for (const auto& result : results) {
        if (result.id == about) keys.insert(model::key(result.part));
    }
}

/// Whether the check or finding has a result on the part named, for the detail.
bool has_result_on(const RemarkCommand& command, const model::BaseDetail& detail, const Locale& locale) {
    const auto catalog = load_catalog(command.data, locale);
    if (!catalog) return false;
    catalog::Resolution resolution = catalog::resolve(detail, *catalog);
    for (model::Problem& problem : resolution.problems) problem.file = command.file;
    complain(resolution.problems, locale);
    if (!resolution.resolved) return false;
    const review::Review review = review::evaluate(*resolution.resolved, {});
    std::set<std::string> keys;
    add_part_keys(review.checks, command.about, keys);
    add_part_keys(review.findings, command.about, keys);
    if (keys.contains(command.subject)) return true;
    if (keys.empty()) {
        complain(phrase("{} has no result for this detail, so none for \"{}\"", command.about, command.subject),
                 locale);
    } else {
        complain(phrase("{} has no result for \"{}\"; there are: {}", command.about, command.subject,
                        fmt::format("{}", fmt::join(keys, ", "))),
                 locale);
    }
    return false;
}

bool can_be_written(const RemarkCommand& command, const Locale& locale) {
    for (const std::string& text : {command.words, command.by}) {
        if (!xml::first_bad_byte(text)) continue;
        complain(phrase("not valid in a file: a remark is UTF-8 text without control characters"), locale);
        return false;
    }
    return true;
}

/// The file with the detail's remarks in it and all else as it was.
ExitStatus save(const std::string& file, const Document& document, const model::BaseDetail& changed,
                const Locale& locale) {
    model::Problems problems = model::validate(changed);
    for (model::Problem& problem : problems) problem.file = file;
    if (!problems.empty()) return complain(problems, locale);
    const std::optional<std::string> text = xml::with_remarks(document.text, changed.remarks);
    // A document that was laid out past our understanding is written in our own layout rather than damaged.
    const bool sound = text && xml::read_detail_text(*text, file).detail == changed;
    const auto refused = xml::save_atomically(file, sound ? *text : xml::write_detail(changed));
    return refused ? complain(model::Problems{*refused}, locale) : ExitStatus::adequate;
}

ExitStatus add_remark(const RemarkCommand& command, const Document& document, const Locale& locale) {
    if (!can_be_written(command, locale)) return ExitStatus::unusable_input;
    if (!command.about.empty() && !is_known(command.about, locale)) return ExitStatus::unusable_input;
    if (!command.subject.empty() && !has_result_on(command, document.detail, locale)) return ExitStatus::unusable_input;
    model::BaseDetail changed = document.detail;
    changed.remarks.push_back(
        {command.about, command.subject, command.words, command.by, command.date, Remark::State::open});
    const ExitStatus status = save(command.file, document, changed, locale);
    if (status == ExitStatus::adequate) print(remark_lines(changed.remarks.back(), changed.remarks.size(), locale));
    return status;
}

ExitStatus settle_remark(const RemarkCommand& command, const Document& document, const Locale& locale) {
    model::BaseDetail changed = document.detail;
    if (command.settle > changed.remarks.size()) {
        complain(
            phrase("{}: there is no remark {}; there are {}", command.file, command.settle, changed.remarks.size()),
            locale);
        return ExitStatus::unusable_input;
    }
    Remark& settled = changed.remarks[command.settle - 1];
    settled.state = Remark::State::settled;
    const ExitStatus status = save(command.file, document, changed, locale);
    if (status == ExitStatus::adequate) print(remark_lines(settled, command.settle, locale));
    return status;
}

}  // namespace

ExitStatus run(const RemarkCommand& command, const Locale& locale) {
    if (!load_plugins(command.plugins, locale)) return ExitStatus::unusable_input;
    const std::optional<Document> document = read_document(command.file, locale);
    if (!document) return ExitStatus::unusable_input;
    if (command.words_given) return add_remark(command, *document, locale);
    return command.settle > 0 ? settle_remark(command, *document, locale) : list_remarks(document->detail, locale);
}

}  // namespace toehold::cli
