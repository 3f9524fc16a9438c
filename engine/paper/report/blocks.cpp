#include "paper/report/blocks.h"

#include <algorithm>
#include <array>

namespace toehold::paper::report {

Paragraph paragraph(std::string words) {
    Paragraph paragraph;
    paragraph.words = std::move(words);
    return paragraph;
}

Paragraph fine_print(std::string words) {
    Paragraph fine = paragraph(std::move(words));
    fine.size = drawing::TextSize::fine;
    return fine;
}

Paragraph item(std::string mark, std::string words) {
    constexpr double for_a_mark_mm = 5.0;
    Paragraph item = paragraph(std::move(words));
    item.indent_mm = for_a_mark_mm;
    item.mark = std::move(mark);
    return item;
}

std::string sentence(std::string words) {
    if (words.empty()) return words;
    if (words.front() >= 'a' && words.front() <= 'z') words.front() = static_cast<char>(words.front() - 'a' + 'A');
    if (words.back() != '.') words += '.';
    return words;
}

std::string named_together(const std::vector<std::string>& subjects) {
    // Kind, id, and what is behind the id: `joist`, `J1`, ` at beam S2`.
    const auto split = [](const std::string& subject) {
        const std::size_t id = std::min(subject.find(' '), subject.size() - 1) + 1;
        const std::size_t rest = std::min(subject.find(' ', id), subject.size());
        return std::array<std::string, 3>{subject.substr(0, id), subject.substr(id, rest - id), subject.substr(rest)};
    };
    if (subjects.size() == 1) return subjects.front();
    const auto first = split(subjects.front());
    std::vector<std::string> ids;
    for (const std::string& subject : subjects) {
        const auto parts = split(subject);
        const bool same = parts[0] == first[0] && parts[2] == first[2];
        if (!same || parts[1].empty()) return listed(subjects);
        ids.push_back(parts[1]);
    }
    return first[0].substr(0, first[0].size() - 1) + "s " + listed(ids) + first[2];
}

std::string counted(std::size_t count, std::string_view one, std::string_view several) {
    return std::to_string(count) + " " + std::string(count == 1 ? one : several);
}

std::string check_name(std::string_view id) {
    // A plug-in's id may hold what a name of a destination may not.
    std::string name = "check-";
    for (const char c : id) {
        const bool kept = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
        name += kept ? c : '-';
    }
    return name;
}

Document titled(const Issue& issue, const std::string& title, const std::string& detail) {
    Document document;
    document.properties = {title + ": " + detail, detail, issue.program, issue.date};
    document.paper = issue.paper;
    document.head_left = title;
    document.head_right = detail;
    document.foot =
        issue.program + (issue.file.empty() ? "" : " · " + issue.file) + (issue.date.empty() ? "" : " · " + issue.date);
    return document;
}

}  // namespace toehold::paper::report
