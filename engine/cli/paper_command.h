#pragma once
// The commands that write a paper, as values.
#include "paper/issue.h"
#include "paper/paper_file.h"
#include "units/quantity.h"

#include <string>
#include <vector>

namespace toehold::cli {

/// What every paper is told beside the detail.
struct PaperWishes {
    std::string output;   ///< file to write; empty: named after the detail, in the working folder
    std::string project;  ///< empty: the detail's own
    std::string date;     ///< ISO 8601 day, or `none`; empty: today
    paper::PaperSize paper = paper::PaperSize::letter;
    units::System system = units::System::us;
    std::string revision = {};  ///< on the paper, and in the name of a file that is not named; empty: none
    std::string link = {};      ///< URL under which a site page can be fetched; empty: none
};

struct PaperCommand {
    paper::Kind kind = paper::Kind::report;
    std::string file;  ///< `-`: standard input
    PaperWishes wishes;
    std::string data;
    std::vector<std::string> plugins;
};

/// In the units wished for and the language spoken.
[[nodiscard]] paper::Issue issue_of(const PaperWishes& wishes, const std::string& file, const format::Locale& spoken);
/// Name of the file on paper: without its folder.
[[nodiscard]] std::string name_on_paper(const std::string& file);

/// Ending of a file's name, in lower case and without its dot.
[[nodiscard]] std::string ending_of(const std::string& file);

/// Writes the bytes; false, with the reason said on standard error, where that fails.
[[nodiscard]] bool write_paper(const std::string& file, const std::string& bytes, const format::Locale& locale);

}  // namespace toehold::cli
