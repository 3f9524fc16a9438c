#include "paper/report/blocks.h"

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

Paragraph title(std::string words, drawing::TextSize size) {
    Paragraph title = paragraph(std::move(words));
    title.size = size;
    title.bold = true;
    return title;
}

Heading section(int number, const format::Phrase& words, std::string name, const format::Locale& locale) {
    return {1, std::to_string(number) + "  " + written(words, locale), std::move(name)};
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

Document titled(const Issue& issue, const format::Phrase& title, const std::string& detail) {
    Document document;
    const std::string words = written(title, issue.locale);
    document.properties = {words + ": " + detail, detail, issue.program, issue.date};
    document.paper = issue.paper;
    document.locale = issue.locale;
    document.head_left = words;
    document.head_right = detail;
    document.foot =
        issue.program + (issue.file.empty() ? "" : " · " + issue.file) + (issue.date.empty() ? "" : " · " + issue.date);
    return document;
}

}  // namespace toehold::paper::report
