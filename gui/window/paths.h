#pragma once
// Text and paths between the toolkit and the rooms below it. Both sides are UTF-8, whatever the locale.
#include "format/phrase.h"

#include <wx/string.h>

#include <concepts>

#include <filesystem>
#include <string>
#include <string_view>

namespace toehold::window {

[[nodiscard]] inline wxString shown_text(std::string_view text) { return wxString::FromUTF8(text.data(), text.size()); }
// TRANSITION
template <std::same_as<format::Phrase> Words>
[[nodiscard]] wxString shown_text(const Words& phrase) {
    return shown_text(std::string_view(format::english(phrase)));
}
[[nodiscard]] inline std::string plain_text(const wxString& text) { return text.utf8_string(); }
[[nodiscard]] inline wxString shown_path(const std::filesystem::path& path) { return shown_text(path.string()); }
[[nodiscard]] inline std::filesystem::path path_of(const wxString& text) { return {plain_text(text)}; }

}  // namespace toehold::window
