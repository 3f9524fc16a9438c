#pragma once
// The command line as values. Nothing is opened and nothing printed here; help is in the language of `locale`.
#include "cli/chart/command.h"
#include "cli/new_command.h"
#include "cli/paper_command.h"
#include "cli/project/bill_command.h"
#include "cli/proof/command.h"
#include "cli/size/command.h"
#include "format/phrase.h"
#include "units/quantity.h"

#include <string>
#include <variant>
#include <vector>

namespace toehold::cli {

/// One row an anchor, a result, a post or a file.
enum class CsvTable { none, anchors, checks, posts, files };

struct CheckCommand {
    std::vector<std::string> files;  ///< `-`: standard input; a folder: the base details in it
    bool json = false;
    std::string explain;  ///< id of a check, `all`, or empty
    bool all_rows = false;
    units::System system = units::System::us;
    std::string data;                  ///< folder; empty: found by `find_data_folder`
    std::vector<std::string> plugins;  ///< shared libraries that add checks
    CsvTable csv = CsvTable::none;
    bool full = false;     ///< every review of several files, not their summary
    std::size_t jobs = 0;  ///< reviews at the same time; 0: as many as there are cores
};

/// Two files, or one file on two bases: exactly one of `second` and `second_basis` is given.
struct CompareCommand {
    std::string first, second;
    std::vector<std::string> second_basis;  ///< `KEY=VALUE`; each has its `=`
    bool json = false;
    bool all_rows = false;
    units::System system = units::System::us;
    std::string data;
    std::vector<std::string> plugins;
    PaperWishes wishes = {};  ///< `output` empty: printed, and not written to a file
};

/// Adds a remark, settles one, or lists them.
struct RemarkCommand {
    std::string file;
    std::string words, about, subject, by, date;
    bool words_given = false;
    std::size_t settle = 0;  ///< number of the remark, from 1; 0: none
    std::string data;
    std::vector<std::string> plugins;
};

struct ValidateCommand {
    std::vector<std::string> files;
    std::string data;
};

struct ListCommand {
    std::string what;  ///< one of `list_names_text()`
    std::string data;
    bool json = false;
    std::vector<std::string> plugins;
};

/// `--help` or `--version`.
struct ShowText {
    std::string text;
};

struct UsageError {
    format::Phrase message;  ///< one sentence
};

using Command =
    std::variant<NewCommand, SizeCommand, CheckCommand, CompareCommand, RemarkCommand, PaperCommand, BillCommand,
                 ChartCommand, ProofCommand, ValidateCommand, ListCommand, ShowText, UsageError>;

[[nodiscard]] Command parse_arguments(int count, const char* const* arguments, const format::Locale& locale);

}  // namespace toehold::cli
