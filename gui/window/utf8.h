#pragma once
// The toolkit's text and the engine's, which is UTF-8.
#include "format/phrase.h"

#include <wx/string.h>

#include <concepts>

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

}  // namespace toehold::window
