#include "cli/ask.h"
#include "cli/commands.h"
#include "cli/console.h"
#include "cli/data_folder.h"
#include "export/text/columns.h"
#include "job/file.h"
#include "xml/document/file.h"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>

namespace toehold::cli {
namespace {

using format::Locale;
using format::phrase;
using format::text;

constexpr std::string_view standard_output = "-";

bool is_given(const NewCommand& command, const std::string& id) {
    return std::any_of(command.answers.begin(), command.answers.end(),
                       [&id](const auto& answer) { return answer.first == id; });
}

/// The answers on the command line, in the questions' order. False, with the reason said, where one is refused.
bool take_given(const NewCommand& command, const std::vector<job::Question>& questions, job::Job& job,
                const Locale& locale) {
    for (const job::Question& question : questions) {
        for (const auto& [id, answer] : command.answers) {
            if (id != question.id) continue;
            const std::optional<format::Phrase> accepted = question.take(job, answer);
            if (!accepted) continue;
            complain(phrase("--{}: \"{}\" is not understood; accepted: {}", id, answer, *accepted), locale);
            return false;
        }
    }
    return true;
}

/// Those that must be answered and were not on the command line.
std::vector<job::Question> open_questions(const NewCommand& command, const std::vector<job::Question>& questions) {
    std::vector<job::Question> open;
    std::copy_if(
        questions.begin(), questions.end(), std::back_inserter(open),
        [&command](const job::Question& question) { return !question.optional && !is_given(command, question.id); });
    return open;
}

/// False, with what is still open said, where the answers end too soon.
bool ask_all(const std::vector<job::Question>& open, job::Job& job, const Locale& locale) {
    for (auto question = open.begin(); question != open.end(); ++question) {
        if (!question->asked(job) || ask(*question, job, locale)) continue;
        std::string missing;
        for (auto left = question; left != open.end(); ++left)
            if (left->asked(job)) missing += (missing.empty() ? "--" : ", --") + left->id;
        complain(phrase("not answered: {}; give these options, or answer the questions", missing), locale);
        return false;
    }
    return true;
}

std::optional<job::Job> told(const NewCommand& command, const catalog::Catalog& catalog, const Locale& locale) {
    job::Job job;
    const std::vector<job::Question> questions = job::questions(catalog);
    if (!take_given(command, questions, job, locale) || !ask_all(open_questions(command, questions), job, locale))
        return std::nullopt;
    model::Problems wrong = job::problems(job, catalog);
    for (model::Problem& problem : wrong) problem.element = "--" + problem.element;
    if (wrong.empty()) return job;
    complain(wrong, locale);
    return std::nullopt;
}

std::string assumed_lines(const job::Started& started, const Locale& locale) {
    std::string lines = exporting::paragraph(
        text(phrase("Assumed: {} values, each marked in the file. Confirm or replace them.", started.assumed.size()),
             locale));
    for (const job::Assumed& assumed : started.assumed) {
        const std::string what =
            assumed.attribute.empty() ? assumed.element : assumed.element + " " + assumed.attribute;
        lines += exporting::paragraph(
            fmt::format("{}: {}. {}", what, text(assumed.value, locale), text(assumed.why, locale)), "  ");
    }
    return lines;
}

void tell(const std::string& file, const job::Started& started, const Locale& locale) {
    print(text(phrase("Written to {}", file), locale) + "\n\n");
    print(assumed_lines(started, locale) + "\n");
    print(text(phrase("Next:"), locale) + "\n");
    for (const auto& [command, meaning] : {std::pair{"check", phrase("is this base adequate, and what governs?")},
                                           std::pair{"size", phrase("the least that holds")}}) {
        print(fmt::format("  toehold {} {}\n      {}\n", command, file, text(meaning, locale)));
    }
}

/// A file that is there, and may not be replaced, is better told of before any question.
bool is_in_the_way(const std::string& file, const NewCommand& command, const Locale& locale) {
    std::error_code ignored;
    if (command.force || file.empty() || !std::filesystem::exists(file, ignored)) return false;
    complain(phrase("{} is there already; give another name, or --force to replace it", file), locale);
    return true;
}

ExitStatus write(const std::string& file, const job::Started& started, const Locale& locale) {
    if (const auto problem = xml::save_atomically(file, job::as_file(started, locale))) {
        complain(model::Problems{*problem}, locale);
        return ExitStatus::internal_fault;
    }
    tell(file, started, locale);
    return ExitStatus::adequate;
}

}  // namespace

ExitStatus run(const NewCommand& command, const Locale& locale) {
    const bool to_standard_output = command.output == standard_output;
    if (!to_standard_output && is_in_the_way(command.output, command, locale)) return ExitStatus::unusable_input;
    const auto catalog = load_catalog(command.data, locale);
    if (!catalog) return ExitStatus::unusable_input;
    const std::optional<job::Job> job = told(command, *catalog, locale);
    if (!job) return ExitStatus::unusable_input;
    const job::Started started = job::start(*job, *catalog);
    if (to_standard_output) {
        print(job::as_file(started, locale));
        return ExitStatus::adequate;
    }
    const std::string file = command.output.empty() ? job::customary_name(*job) : command.output;
    if (is_in_the_way(file, command, locale)) return ExitStatus::unusable_input;
    return write(file, started, locale);
}

}  // namespace toehold::cli
