#include "xml/document/characters.h"

#include <algorithm>

namespace toehold::xml {
namespace {

/// Bytes of the sequence a lead byte announces; 0 for a byte that leads none.
std::size_t sequence_length(unsigned char lead) {
    if (lead < 0x80) return 1;
    if (lead >= 0xC2 && lead <= 0xDF) return 2;
    if (lead >= 0xE0 && lead <= 0xEF) return 3;
    if (lead >= 0xF0 && lead <= 0xF4) return 4;
    return 0;
}

/// The smallest code point each sequence length may hold: anything less is an overlong form.
std::uint32_t smallest(std::size_t length) {
    if (length == 2) return 0x80;
    if (length == 3) return 0x800;
    return length == 4 ? 0x10000 : 0;
}

}  // namespace

bool is_xml_character(std::uint32_t code_point) {
    if (code_point < 0x20) return code_point == 0x9 || code_point == 0xA || code_point == 0xD;
    if (code_point >= 0xD800 && code_point <= 0xDFFF) return false;
    return code_point != 0xFFFE && code_point != 0xFFFF && code_point <= 0x10FFFF;
}

std::optional<Character> first_character(std::string_view text) {
    if (text.empty()) return std::nullopt;
    const auto lead = static_cast<unsigned char>(text.front());
    const std::size_t length = sequence_length(lead);
    if (length == 0 || length > text.size()) return std::nullopt;
    std::uint32_t code_point = length == 1 ? lead : lead & (0xFFU >> (length + 1));
    for (std::size_t index = 1; index < length; ++index) {
        const auto byte = static_cast<unsigned char>(text[index]);
        if ((byte & 0xC0U) != 0x80U) return std::nullopt;
        code_point = (code_point << 6U) | (byte & 0x3FU);
    }
    if (code_point < smallest(length) || code_point > 0x10FFFF) return std::nullopt;
    return Character{code_point, length};
}

std::optional<std::size_t> first_bad_byte(std::string_view text) {
    std::size_t at = 0;
    while (at < text.size()) {
        const std::optional<Character> character = first_character(text.substr(at));
        if (!character || !is_xml_character(character->code_point)) return at;
        at += character->bytes;
    }
    return std::nullopt;
}

std::string cleaned(std::string_view text) {
    std::string result;
    while (!text.empty()) {
        const std::size_t good = first_bad_byte(text).value_or(text.size());
        result.append(text.substr(0, good));
        text.remove_prefix(good);
        if (text.empty()) break;
        result += "\xEF\xBF\xBD";
        text.remove_prefix(1);
    }
    return result;
}

std::string excerpt(std::string_view text) {
    constexpr std::size_t most = 60;
    std::string result = cleaned(text.substr(0, most + 4));
    for (char& character : result) {
        if (is_blank(character)) character = ' ';
    }
    if (text.size() <= most) return result;
    std::size_t cut = std::min(most, result.size());
    while (cut > 0 && (static_cast<unsigned char>(result[cut]) & 0xC0U) == 0x80U) --cut;
    return result.substr(0, cut) + "...";
}

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && is_blank(text.front())) text.remove_prefix(1);
    while (!text.empty() && is_blank(text.back())) text.remove_suffix(1);
    return text;
}

}  // namespace toehold::xml
