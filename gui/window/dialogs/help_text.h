#pragma once
// The words of the help, in English and in French, as plain HTML without theme.
#include "window/dialogs/help.h"

#include <string_view>

namespace toehold::window {

/// UTF-8.
[[nodiscard]] std::string_view help_text_english(HelpPage page);
[[nodiscard]] std::string_view help_text_french(HelpPage page);

}  // namespace toehold::window
