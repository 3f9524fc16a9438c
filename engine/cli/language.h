#pragma once
// Which language the program speaks, and the catalogue it speaks it with.
#include "format/phrase.h"

#include <string>

namespace toehold::cli {

/// `fr` where `--language` asks for it; else where the first set of LANGUAGE, LC_ALL, LC_MESSAGES and LANG begins so.
/// Otherwise `en`. The command line is only looked through here, not yet understood.
[[nodiscard]] std::string chosen_language(int count, const char* const* arguments);

/// With the catalogue of that language, from beside the program while it is built or where it is installed; English
/// where there is none.
[[nodiscard]] format::Locale locale_of(const std::string& language);

}  // namespace toehold::cli
