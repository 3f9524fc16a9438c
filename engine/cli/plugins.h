#pragma once
// Loading the plug-ins a command names.
#include "format/phrase.h"

#include <string>
#include <vector>

namespace toehold::cli {

/// Loads each in turn; false, with the reason on standard error, at the first that is refused.
[[nodiscard]] bool load_plugins(const std::vector<std::string>& files, const format::Locale& locale);

}  // namespace toehold::cli
