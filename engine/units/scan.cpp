#include "units/scan.h"

#include <charconv>
#include <cmath>

namespace toehold::units {
namespace {

bool is_blank(char character) { return character == ' ' || character == '\t'; }
bool is_digit(char character) { return character >= '0' && character <= '9'; }

}  // namespace

std::string_view trimmed(std::string_view text) {
    take_blanks(text);
    while (!text.empty() && is_blank(text.back())) text.remove_suffix(1);
    return text;
}

bool take_blanks(std::string_view& text) {
    const std::size_t before = text.size();
    while (!text.empty() && is_blank(text.front())) text.remove_prefix(1);
    return text.size() != before;
}

bool take(std::string_view& text, char expected) {
    if (text.empty() || text.front() != expected) return false;
    text.remove_prefix(1);
    return true;
}

std::optional<double> take_decimal(std::string_view& text) {
    // from_chars would take a minus, `nan` and `inf`; a number here starts with a digit or a point.
    if (text.empty() || !(is_digit(text.front()) || text.front() == '.')) return std::nullopt;
    double value = 0.0;
    const auto [end, error] =
        std::from_chars(text.data(), text.data() + text.size(), value, std::chars_format::general);
    if (error != std::errc{} || !std::isfinite(value)) return std::nullopt;
    text.remove_prefix(static_cast<std::size_t>(end - text.data()));
    return value;
}

std::optional<int> take_whole(std::string_view& text) {
    constexpr std::size_t most_digits = 4;
    std::size_t digits = 0;
    while (digits < text.size() && is_digit(text[digits])) ++digits;
    if (digits == 0 || digits > most_digits) return std::nullopt;
    int value = 0;
    std::from_chars(text.data(), text.data() + digits, value);
    text.remove_prefix(digits);
    return value;
}

double take_sign(std::string_view& text) {
    if (take(text, '-')) return -1.0;
    take(text, '+');
    return 1.0;
}

}  // namespace toehold::units
