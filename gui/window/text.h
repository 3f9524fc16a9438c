#pragma once
// Text and paths between the toolkit and the rooms below it. Both sides are UTF-8, whatever the locale.
#include "format/phrase.h"

#include <wx/string.h>

#include <concepts>

#include <filesystem>
#include <string>
#include <string_view>

namespace toehold::window {

[[nodiscard]] inline wxString text_of(std::string_view utf8) { return wxString::FromUTF8(utf8.data(), utf8.size()); }
/// The engine's sentences in the reader's language and units.
template <std::same_as<format::Phrase> Words>
[[nodiscard]] wxString text_of(const Words& phrase, const format::Locale& locale) {
    return text_of(format::text(phrase, locale));
}
/// Its words that are data too.
[[nodiscard]] inline wxString text_of(std::string_view word, const format::Locale& locale) {
    return text_of(format::text(word, locale));
}
[[nodiscard]] inline std::string utf8(const wxString& words) { return words.utf8_string(); }
[[nodiscard]] inline wxString shown_path(const std::filesystem::path& path) { return text_of(path.string()); }
[[nodiscard]] inline std::filesystem::path path_of(const wxString& text) { return {utf8(text)}; }

/// Words of the window's own, for the status line.
[[nodiscard]] inline format::Phrase said(const wxString& words) { return format::verbatim(utf8(words)); }

}  // namespace toehold::window
