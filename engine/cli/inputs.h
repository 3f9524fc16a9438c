#pragma once
// The files a command is to work on: those named, and the base details of a folder that is named.
#include "format/phrase.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::cli {

struct Inputs {
    std::vector<std::string> files;
    bool several = false;  ///< more than one name, or a folder
};

/// A folder stands for its own files `*.xml` that are base details or projects, by name; of its others a word is said
/// on standard error. Absent, with the reason said, where a folder cannot be read or holds none.
[[nodiscard]] std::optional<Inputs> find_inputs(const std::vector<std::string>& names, const format::Locale& locale);

}  // namespace toehold::cli
