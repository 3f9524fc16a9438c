#pragma once
// Loading a plug-in: a shared library that adds checks through the C interface of toehold_plugin.h.
#include "format/phrase.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace toehold::plugin {

struct LoadedPlugin {
    std::string name;
    std::vector<std::string> checks;  ///< ids, as registered
};

struct LoadOutcome {
    std::optional<LoadedPlugin> plugin;
    format::Phrase error;  ///< one sentence that names the file; empty when it was loaded
};

/// Loads the library and registers all its checks, or none. It stays loaded until the program ends.
///
/// A library's own start-up code runs before anything in it can be looked at: load only files the user has named. The
/// same file twice is refused, because its checks' ids are then taken. Not for several threads at once.
[[nodiscard]] LoadOutcome load(const std::filesystem::path& file);

}  // namespace toehold::plugin
