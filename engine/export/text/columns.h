#pragma once
// Text in columns of a terminal: how wide it stands, and breaking it at a width. UTF-8.
#include <string>
#include <string_view>
#include <vector>

namespace toehold::exporting {

inline constexpr std::size_t page_columns = 100;

/// Fit to be shown: control characters, which could drive a terminal, and bytes that are not UTF-8 become `?`;
/// line ends and tabs become blanks.
[[nodiscard]] std::string showable(std::string_view text);

/// Columns the text takes: wide East Asian characters two, combining marks none. Text must be showable.
[[nodiscard]] std::size_t columns(std::string_view text);

/// Lines of at most `width` columns (two at least), broken at blanks; a longer word is broken where it must be.
/// Makes the text showable. Empty text gives one empty line.
[[nodiscard]] std::vector<std::string> wrapped(std::string_view text, std::size_t width);

/// A paragraph of the page: `first` before its first line, blanks as wide before the others; each ends with a newline.
[[nodiscard]] std::string paragraph(std::string_view text, std::string_view first = "");

[[nodiscard]] std::string padded_left(std::string_view text, std::size_t width);
[[nodiscard]] std::string padded_right(std::string_view text, std::size_t width);

}  // namespace toehold::exporting
