#include "cli/size/worker.h"

#include "cli/console.h"
#include "search/judge/judge.h"
#include "search/run/journal.h"
#include "search/run/lines.h"
#include "search/run/run.h"

#include <charconv>
#include <iostream>
#include <iterator>
#include <string>
#include <string_view>

namespace toehold::cli {
namespace {

using format::Locale;
using format::phrase;
using search::Candidate;

/// Absent: no number of a candidate.
std::optional<Candidate> number_in(std::string_view line, Candidate count) {
    const std::size_t first = line.find_first_not_of(" \t\r"), last = line.find_last_not_of(" \t\r");
    if (first == std::string_view::npos) return std::nullopt;
    line = line.substr(first, last - first + 1);
    Candidate number = 0;
    const auto [end, error] = std::from_chars(line.data(), line.data() + line.size(), number);
    if (error != std::errc() || end != line.data() + line.size() || number >= count) return std::nullopt;
    return number;
}

bool is_blank(const std::string& line) { return line.find_first_not_of(" \t\r") == std::string::npos; }

}  // namespace

ExitStatus list_candidates(const SizeInput& input) {
    const Candidate count = search::size(input.space);
    std::string text;
    constexpr std::size_t enough = 1U << 16U;
    for (Candidate candidate = 0; candidate < count; ++candidate) {
        text += std::to_string(candidate) + "\n";
        if (text.size() < enough) continue;
        print(text);
        text.clear();
    }
    print(text);
    return ExitStatus::adequate;
}

ExitStatus judge_candidates(const SizeInput& input, const Locale& locale) {
    const Candidate count = search::size(input.space);
    const std::string name = search::name_of(input.space, input.context);
    search::Judge judge(input.space, input.catalog);
    std::string line;
    for (std::size_t at = 1; std::getline(std::cin, line); ++at) {
        if (is_blank(line)) continue;
        const std::optional<Candidate> number = number_in(line, count);
        if (!number) {
            complain(phrase("standard input:{}: not the number of a candidate (found \"{}\"; accepted: 0 to {})", at,
                            line, count - 1),
                     locale);
            return ExitStatus::unusable_input;
        }
        print(search::lines_of({judge.judge(*number)}, name));
        finish_printing();
    }
    return ExitStatus::adequate;
}

search::Judged gathered(const SizeInput& input) {
    const std::string text((std::istreambuf_iterator<char>(std::cin)), std::istreambuf_iterator<char>());
    search::Judged judged(search::size(input.space));
    search::add_lines(text, "standard input", search::name_of(input.space, input.context), judged);
    return judged;
}

}  // namespace toehold::cli
