#pragma once
// The language of the window's words.
#include "window/frame/preferences.h"

namespace toehold::window {

/// Before the first window. Decimal points stay points: the numbers of the trade's files do not change with a language.
void speak(Language language);
/// Whether the words in force are French.
[[nodiscard]] bool speaks_french();

}  // namespace toehold::window
