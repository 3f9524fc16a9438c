#pragma once
// The language of the program's words.
#include "format/phrase.h"
#include "window/frame/preferences.h"

#include <memory>

namespace toehold::window {

/// Before the first window. Decimal points stay points: the numbers of the trade's files do not change with a language.
/// Gives the engine's translations, which are the window's too; nullptr: English.
std::shared_ptr<const format::Catalogue> speak(Language language);
/// Whether the words in force are French.
[[nodiscard]] bool speaks_french();

}  // namespace toehold::window
