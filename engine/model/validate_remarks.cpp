#include "model/validate_remarks.h"

#include <algorithm>
#include <chrono>

namespace toehold::model {
namespace {

using format::phrase;
using format::verbatim;

constexpr std::string_view blanks = " \t\r\n";

/// Characters of a UTF-8 text: the bytes that begin one.
std::size_t characters(std::string_view text) {
    const auto begins = [](char byte) { return (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U; };
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), begins));
}

int number(std::string_view digits) {
    int value = 0;
    for (const char digit : digits) value = 10 * value + (digit - '0');
    return value;
}

void check(ProblemList& problems, const Remark& remark) {
    if (remark.words.find_first_not_of(blanks) == std::string::npos) {
        problems.add(phrase("the remark is empty"), phrase("some words"));
    }
    if (const std::size_t length = characters(remark.words); length > longest_remark) {
        problems.add(phrase("the remark is too long"), phrase("at most {} characters", longest_remark),
                     phrase("{} characters", length));
    }
    if (remark.about.find_first_of(" \t\r\n\"'[]") != std::string::npos) {
        problems.add(phrase("not the id of a check or a finding"),
                     phrase("a name without blanks, quotes or square brackets"), verbatim(remark.about));
    }
    if (!remark.date.empty() && !is_iso_day(remark.date)) {
        problems.add(phrase("invalid date; use YYYY-MM-DD"), phrase("a day such as 2026-11-25"), verbatim(remark.date));
    }
}

}  // namespace

bool is_iso_day(std::string_view text) {
    constexpr std::string_view form = "dddd-dd-dd";
    const auto fits = [](char character, char wanted) {
        return wanted == 'd' ? character >= '0' && character <= '9' : character == wanted;
    };
    if (!std::equal(text.begin(), text.end(), form.begin(), form.end(), fits)) return false;
    const std::chrono::year year(number(text.substr(0, 4)));
    const std::chrono::month month(static_cast<unsigned>(number(text.substr(5, 2))));
    const std::chrono::day day(static_cast<unsigned>(number(text.substr(8, 2))));
    return year > std::chrono::year(0) && (year / month / day).ok();
}

void check_remarks(ProblemList& problems, const std::vector<Remark>& remarks) {
    if (remarks.size() > most_remarks) {
        problems.at("remarks").add(phrase("too many remarks"), phrase("at most {}", most_remarks),
                                   verbatim(std::to_string(remarks.size())));
        return;
    }
    for (std::size_t index = 0; index < remarks.size(); ++index) {
        problems.at("remarks/remark[" + std::to_string(index + 1) + "]");
        check(problems, remarks[index]);
    }
}

}  // namespace toehold::model
