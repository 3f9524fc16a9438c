#include "cli/command_options.h"
#include "cli/option_pieces.h"
#include "job/questions.h"

#include <CLI/CLI.hpp>

namespace toehold::cli {
namespace {

using format::Locale;
using format::phrase;
using format::text;

/// Lists of ids are the catalog's, which is not open yet.
std::string choices_text(const job::Question& question, const Locale& locale) {
    if (question.choices.empty()) return text(phrase(" (an id; see toehold list)"), locale);
    std::string words;
    for (const job::Choice& choice : question.choices) words += (words.empty() ? " (" : ", ") + choice.answer;
    return words + ")";
}

void add_answer(CLI::App& command, const job::Question& question, NewCommand& given, const Locale& locale) {
    const auto keep = [&given, id = question.id](const std::string& answer) { given.answers.emplace_back(id, answer); };
    command
        .add_option_function<std::string>("--" + question.id, keep,
                                          text(question.ask, locale) + choices_text(question, locale))
        ->type_name("ANSWER");
}

}  // namespace

void add_new(CLI::App& app, NewCommand& command, const Locale& locale) {
    const auto said = [&locale](const format::Phrase& words) { return text(words, locale); };
    CLI::App* added = app.add_subcommand(
        "new", said(phrase("start a base detail from the job: ask, choose the rest, mark what is assumed")));
    const catalog::Catalog not_open;
    for (const job::Question& question : job::questions(not_open)) add_answer(*added, question, command, locale);
    added
        ->add_option("-o,--output", command.output,
                     said(phrase("file to write; - writes to standard output; else named after the job")))
        ->type_name("FILE");
    added->add_flag("--force", command.force, said(phrase("replace a file that is there")));
    add_language(*added, locale);
    add_data(*added, command.data, locale);
}

}  // namespace toehold::cli
