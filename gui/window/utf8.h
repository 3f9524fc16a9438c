#pragma once
// The toolkit's text and the engine's, which is UTF-8.
#include <wx/string.h>

#include <string>
#include <string_view>

namespace toehold::window {

[[nodiscard]] inline wxString text_of(std::string_view utf8) { return wxString::FromUTF8(utf8.data(), utf8.size()); }
[[nodiscard]] inline std::string utf8(const wxString& words) { return words.utf8_string(); }

}  // namespace toehold::window
