#include "editing/document/origin.h"

#include <fmt/format.h>

#include <algorithm>

namespace toehold::editing {
namespace {

constexpr std::string_view comment_start = "<!-- Unsaved work:";
constexpr std::string_view comment_end = " -->\n";
constexpr std::string_view hexadecimal = "0123456789ABCDEF";

/// No blank, and no two hyphens that would end the comment.
std::string encoded(std::string_view value) {
    std::string text;
    for (const char character : value) {
        const bool plain = (character >= 'a' && character <= 'z') || (character >= 'A' && character <= 'Z') ||
                           (character >= '0' && character <= '9') || character == '/' || character == '.' ||
                           character == '_';
        if (plain) {
            text += character;
            continue;
        }
        const auto byte = static_cast<unsigned char>(character);
        text += {'%', hexadecimal[byte >> 4U], hexadecimal[byte & 15U]};
    }
    return text;
}

std::string decoded(std::string_view text) {
    std::string value;
    for (std::size_t at = 0; at < text.size(); ++at) {
        const bool escape = text[at] == '%' && at + 2 < text.size();
        const std::size_t high = escape ? hexadecimal.find(text[at + 1]) : std::string_view::npos;
        const std::size_t low = escape ? hexadecimal.find(text[at + 2]) : std::string_view::npos;
        if (high == std::string_view::npos || low == std::string_view::npos) {
            value += text[at];
            continue;
        }
        value += static_cast<char>(static_cast<unsigned char>(16 * high + low));
        at += 2;
    }
    return value;
}

}  // namespace

std::string comment(const Origin& origin) {
    std::string text(comment_start);
    for (const auto& [key, value] : origin) text += fmt::format(" {}={}", key, encoded(value));
    return text + std::string(comment_end);
}

Origin read_comment(std::string_view text) {
    Origin origin;
    const std::size_t start = text.rfind(comment_start);
    if (start == std::string_view::npos) return origin;
    std::string_view rest = text.substr(start + comment_start.size());
    rest = rest.substr(0, rest.find(comment_end));
    while (!rest.empty()) {
        const std::size_t end = std::min(rest.find(' '), rest.size());
        const std::string_view word = rest.substr(0, end);
        const std::size_t equals = word.find('=');
        if (equals != std::string_view::npos)
            origin[std::string(word.substr(0, equals))] = decoded(word.substr(equals + 1));
        rest.remove_prefix(std::min(end + 1, rest.size()));
    }
    return origin;
}

Origin origin_of(const std::filesystem::path& of, Origin references) {
    Origin origin = std::move(references);
    if (!of.empty()) origin["of"] = std::filesystem::absolute(of).string();
    return origin;
}

}  // namespace toehold::editing
