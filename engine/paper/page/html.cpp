#include "paper/page/html.h"

#include "export/text/columns.h"

namespace toehold::paper::page {

std::string escaped(std::string_view words) {
    std::string safe;
    // Showable text has neither control characters nor bytes that are not UTF-8.
    for (const char letter : exporting::showable(words)) {
        switch (letter) {
            case '&':
                safe += "&amp;";
                break;
            case '<':
                safe += "&lt;";
                break;
            case '>':
                safe += "&gt;";
                break;
            case '"':
                safe += "&quot;";
                break;
            case '\'':
                safe += "&#39;";
                break;
            default:
                safe += letter;
        }
    }
    return safe;
}

std::string element(std::string_view tag, std::string_view attributes, std::string_view content) {
    std::string text = "<" + std::string(tag);
    if (!attributes.empty()) text += " " + std::string(attributes);
    return text + ">" + std::string(content) + "</" + std::string(tag) + ">";
}

std::string element(std::string_view tag, std::string_view content) { return element(tag, {}, content); }

}  // namespace toehold::paper::page
