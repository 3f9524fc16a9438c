#include "cli/ask.h"

#include "export/text/columns.h"
#include "units/scan.h"

#include <cstdio>
#include <iostream>
#include <string>

namespace toehold::cli {
namespace {

using format::Locale;
using format::phrase;
using format::text;

void say(const std::string& words) { std::fputs(words.c_str(), stderr); }

/// Numbered, so that a number is as good as the words.
std::string choice_lines(const job::Question& question, const Locale& locale) {
    std::string lines;
    std::size_t number = 0;
    for (const job::Choice& choice : question.choices) {
        const std::string words = text(choice.words, locale);
        lines += exporting::paragraph(words == choice.answer ? words : choice.answer + ": " + words,
                                      "  " + exporting::padded_left(std::to_string(++number), 2) + "  ");
    }
    return lines;
}

/// The choice of this number, else the answer itself.
std::string meant(const job::Question& question, const std::string& answer) {
    for (std::size_t number = 1; number <= question.choices.size(); ++number)
        if (answer == std::to_string(number)) return question.choices[number - 1].answer;
    return answer;
}

}  // namespace

bool ask(const job::Question& question, job::Job& job, const Locale& locale) {
    say(exporting::paragraph(text(question.ask, locale)) + choice_lines(question, locale));
    const std::string standing = question.answer(job);
    while (true) {
        say(standing.empty() ? "> " : "[" + standing + "] > ");
        std::string line;
        if (!std::getline(std::cin, line)) {
            say("\n");
            return false;
        }
        const std::string answer(units::trimmed(line));
        if (answer.empty() && !standing.empty()) return true;
        const std::optional<format::Phrase> accepted = question.take(job, meant(question, answer));
        if (!accepted) return true;
        say(exporting::paragraph(text(phrase("Not understood. Accepted: {}", *accepted), locale)));
    }
}

}  // namespace toehold::cli
