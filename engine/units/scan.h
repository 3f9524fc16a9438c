#pragma once
// Taking a text apart from its left end. A scanner that fails leaves the text as it was.
#include <optional>
#include <string_view>

namespace toehold::units {

[[nodiscard]] std::string_view trimmed(std::string_view text);
/// Takes blanks and tabs; whether there were any.
bool take_blanks(std::string_view& text);
bool take(std::string_view& text, char expected);
/// A decimal number such as `36`, `.5`, `1.5e3`, without a sign. Finite; never hexadecimal, `nan` or `inf`.
[[nodiscard]] std::optional<double> take_decimal(std::string_view& text);
/// A whole number of at most four digits, as a fraction's parts are.
[[nodiscard]] std::optional<int> take_whole(std::string_view& text);
/// Takes `+` or `-`; -1 after a minus, else +1.
[[nodiscard]] double take_sign(std::string_view& text);

}  // namespace toehold::units
