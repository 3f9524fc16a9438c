#pragma once
// Which bytes a document may hold: UTF-8 of the characters XML 1.0 permits (section 2.2, fifth edition).
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace toehold::xml {

/// Tab, line feed, carriage return, and everything from U+0020 but surrogates, U+FFFE and U+FFFF.
[[nodiscard]] bool is_xml_character(std::uint32_t code_point);

struct Character {
    std::uint32_t code_point = 0;
    std::size_t bytes = 0;
};

/// The character at the front of `text`; absent when the bytes are not UTF-8 in shortest form.
[[nodiscard]] std::optional<Character> first_character(std::string_view text);

/// Offset of the first byte that begins no permitted character; absent when all is well.
[[nodiscard]] std::optional<std::size_t> first_bad_byte(std::string_view text);

/// The text with each byte that begins no permitted character replaced by U+FFFD.
[[nodiscard]] std::string cleaned(std::string_view text);

/// The start of a text, for a message: one line, at most about 60 bytes, still UTF-8.
[[nodiscard]] std::string excerpt(std::string_view text);

[[nodiscard]] inline bool is_blank(char character) {
    return character == ' ' || character == '\t' || character == '\n' || character == '\r';
}
[[nodiscard]] std::string_view trimmed(std::string_view text);

}  // namespace toehold::xml
