#include "export/text/columns.h"

#include <algorithm>

namespace toehold::exporting {
namespace {

struct Character {
    char32_t code = 0;
    std::size_t bytes = 1;
    bool sound = false;
};

bool continues(char byte) { return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U; }

Character many_bytes(std::string_view text, std::size_t bytes, char32_t lead_bits, char32_t smallest) {
    if (text.size() < bytes) return {};
    char32_t code = lead_bits;
    for (std::size_t index = 1; index < bytes; ++index) {
        if (!continues(text[index])) return {};
        code = (code << 6U) | (static_cast<unsigned char>(text[index]) & 0x3FU);
    }
    const bool surrogate = code >= 0xD800 && code <= 0xDFFF;
    if (code < smallest || code > 0x10FFFF || surrogate) return {};
    return {code, bytes, true};
}

/// The first character of a text that is not empty; not sound where the bytes are not UTF-8.
Character first_character(std::string_view text) {
    const auto lead = static_cast<unsigned char>(text.front());
    if (lead < 0x80U) return {lead, 1, true};
    if ((lead & 0xE0U) == 0xC0U) return many_bytes(text, 2, lead & 0x1FU, 0x80);
    if ((lead & 0xF0U) == 0xE0U) return many_bytes(text, 3, lead & 0x0FU, 0x800);
    if ((lead & 0xF8U) == 0xF0U) return many_bytes(text, 4, lead & 0x07U, 0x10000);
    return {};
}

struct Range {
    char32_t from, to;
};

bool within(char32_t code, const Range* begin, const Range* end) {
    return std::any_of(begin, end, [code](const Range& range) { return code >= range.from && code <= range.to; });
}

// Blocks whose characters terminals show two columns wide, and those that add no column (Unicode Annex 11, in outline).
constexpr Range wide[] = {{0x1100, 0x115F}, {0x2E80, 0xA4CF}, {0xAC00, 0xD7A3},   {0xF900, 0xFAFF},
                          {0xFE30, 0xFE6F}, {0xFF00, 0xFF60}, {0x1F300, 0x1FAFF}, {0x20000, 0x3FFFD}};
constexpr Range combining[] = {{0x0300, 0x036F}, {0x200B, 0x200D}, {0x20D0, 0x20FF}, {0xFE00, 0xFE0F}};
// Controls, and marks that turn the direction of writing.
constexpr Range unshowable[] = {{0x00, 0x1F},     {0x7F, 0x9F},     {0x200E, 0x200F}, {0x2028, 0x202E},
                                {0x2066, 0x2069}, {0xFEFF, 0xFEFF}, {0xFFFE, 0xFFFF}};

std::size_t width_of(char32_t code) {
    if (within(code, std::begin(combining), std::end(combining))) return 0;
    return within(code, std::begin(wide), std::end(wide)) ? 2 : 1;
}

/// Bytes of the longest start of a showable text that fits; one character at least.
std::size_t bytes_that_fit(std::string_view text, std::size_t width) {
    std::size_t bytes = 0;
    std::size_t used = 0;
    while (bytes < text.size()) {
        const Character character = first_character(text.substr(bytes));
        used += width_of(character.code);
        if (used > width && bytes > 0) break;
        bytes += character.bytes;
    }
    return bytes;
}

std::vector<std::string_view> words(std::string_view text) {
    std::vector<std::string_view> all;
    std::size_t begin = 0;
    while ((begin = text.find_first_not_of(' ', begin)) != std::string_view::npos) {
        const std::size_t end = std::min(text.find(' ', begin), text.size());
        all.push_back(text.substr(begin, end - begin));
        begin = end;
    }
    return all;
}

}  // namespace

std::string showable(std::string_view text) {
    std::string shown;
    while (!text.empty()) {
        const Character character = first_character(text);
        const char first = text.front();
        if (first == '\n' || first == '\r' || first == '\t') {
            shown += ' ';
        } else if (!character.sound || within(character.code, std::begin(unshowable), std::end(unshowable))) {
            shown += '?';
        } else {
            shown += text.substr(0, character.bytes);
        }
        text.remove_prefix(character.bytes);
    }
    return shown;
}

std::size_t columns(std::string_view text) {
    std::size_t sum = 0;
    while (!text.empty()) {
        const Character character = first_character(text);
        sum += width_of(character.code);
        text.remove_prefix(character.bytes);
    }
    return sum;
}

std::vector<std::string> wrapped(std::string_view text, std::size_t width) {
    width = std::max<std::size_t>(width, 2);
    const std::string shown = showable(text);
    std::vector<std::string> lines(1);
    for (std::string_view word : words(shown)) {
        const std::size_t gap = lines.back().empty() ? 0 : 1;
        if (columns(lines.back()) + gap + columns(word) <= width) {
            lines.back() += std::string(gap, ' ') + std::string(word);
            continue;
        }
        if (gap > 0) lines.emplace_back();
        while (columns(word) > width) {
            const std::size_t bytes = bytes_that_fit(word, width);
            lines.back() = std::string(word.substr(0, bytes));
            lines.emplace_back();
            word.remove_prefix(bytes);
        }
        lines.back() = std::string(word);
    }
    return lines;
}

std::string paragraph(std::string_view text, std::string_view first) {
    const std::size_t indent = columns(first);
    std::string page;
    std::string_view before = first;
    const std::string blanks(indent, ' ');
    for (const std::string& line : wrapped(text, page_columns - indent)) {
        page += std::string(before) + line + "\n";
        before = blanks;
    }
    return page;
}

std::string padded_left(std::string_view text, std::size_t width) {
    const std::size_t used = columns(text);
    return std::string(width > used ? width - used : 0, ' ') + std::string(text);
}

std::string padded_right(std::string_view text, std::size_t width) {
    const std::size_t used = columns(text);
    return std::string(text) + std::string(width > used ? width - used : 0, ' ');
}

}  // namespace toehold::exporting
