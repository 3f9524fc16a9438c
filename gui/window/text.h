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
// TRANSITION
template <std::same_as<format::Phrase> Words>
[[nodiscard]] wxString text_of(const Words& phrase) {
    return text_of(std::string_view(format::english(phrase)));
}
[[nodiscard]] inline std::string utf8(const wxString& words) { return words.utf8_string(); }
[[nodiscard]] inline wxString shown_path(const std::filesystem::path& path) { return text_of(path.string()); }
[[nodiscard]] inline std::filesystem::path path_of(const wxString& text) { return {utf8(text)}; }

}  // namespace toehold::window
