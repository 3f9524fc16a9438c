#include "drawing/ink/markup.h"

#include <glib.h>

#include <cctype>
#include <memory>

namespace toehold::drawing::ink {
namespace {

std::string escaped(std::string_view words) {
    const std::unique_ptr<char, decltype(&g_free)> text(
        g_markup_escape_text(words.data(), static_cast<gssize>(words.size())), g_free);
    return text.get();
}

/// Bytes of letters beyond ASCII count as letters.
bool letter(char c) {
    const auto byte = static_cast<unsigned char>(c);
    return byte >= 0x80 || std::isalpha(byte) != 0;
}
bool letter_or_digit(char c) { return letter(c) || (c >= '0' && c <= '9'); }

/// Length of a bare subscript at the start of the text.
std::size_t bare_length(std::string_view text) {
    std::size_t length = 0;
    while (length < text.size()) {
        const bool comma = text[length] == ',' && length + 1 < text.size() && letter_or_digit(text[length + 1]);
        if (!comma && !letter_or_digit(text[length])) break;
        ++length;
    }
    return length;
}

struct Subscript {
    std::string_view words;
    std::size_t length = 0;  ///< of everything, from the `_` on; 0: no subscript starts here
};

Subscript subscript(std::string_view text) {
    if (text.size() < 2 || text.front() != '_') return {};
    if (letter(text[1])) {
        const std::size_t length = bare_length(text.substr(1));
        return {text.substr(1, length), length + 1};
    }
    const std::size_t end = text.find('}');
    if (text[1] != '{' || end == std::string_view::npos) return {};
    return {text.substr(2, end - 2), end + 1};
}

}  // namespace

std::string math_markup(std::string_view words) {
    std::string markup;
    std::size_t plain_from = 0;
    for (std::size_t at = 0; at < words.size();) {
        const Subscript sub = subscript(words.substr(at));
        if (sub.length == 0) {
            ++at;
            continue;
        }
        markup += escaped(words.substr(plain_from, at - plain_from)) + "<sub>" + escaped(sub.words) + "</sub>";
        at += sub.length;
        plain_from = at;
    }
    return markup + escaped(words.substr(plain_from));
}

}  // namespace toehold::drawing::ink
