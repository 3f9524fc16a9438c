#pragma once
// The command line as values. Nothing is opened and nothing printed here.
#include "units/quantity.h"

#include <string>
#include <variant>
#include <vector>

namespace toehold::cli {

struct CheckCommand {
    std::vector<std::string> files;  ///< `-`: standard input
    bool json = false;
    std::string explain;  ///< id of a check, `all`, or empty
    bool all_rows = false;
    units::System system = units::System::us;
    std::string data;                  ///< folder; empty: found by `find_data_folder`
    std::vector<std::string> plugins;  ///< shared libraries that add checks
};

struct ValidateCommand {
    std::vector<std::string> files;
    std::string data;
};

struct ListCommand {
    std::string what;  ///< one of `list_names_text()`
    std::string data;
    std::vector<std::string> plugins;
};

/// `--help` or `--version`.
struct ShowText {
    std::string text;
};

struct UsageError {
    std::string message;  ///< one sentence
};

using Command = std::variant<CheckCommand, ValidateCommand, ListCommand, ShowText, UsageError>;

[[nodiscard]] Command parse_arguments(int count, const char* const* arguments);

}  // namespace toehold::cli
