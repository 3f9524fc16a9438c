#pragma once
// A study on paper: one lying sheet with its chart, its notes and a title block; or its numbers as CSV.
#include "paper/sheet.h"
#include "study/study.h"

#include <string>
#include <string_view>
#include <vector>

namespace toehold::paper {

struct Issue;

/// What was studied.
struct Studied {
    const catalog::Resolved& resolved;
    std::string input_sha256;
};

/// `Demand over capacity against guard height`.
[[nodiscard]] format::Phrase chart_title(const study::AnyStudy& study);
[[nodiscard]] Sheet chart_sheet(const study::AnyStudy& study, const Studied& studied, const Issue& issue);

/// Endings of files a study can become, without the dot.
[[nodiscard]] std::vector<std::string> chart_endings();
/// Bytes of the file. Throws std::invalid_argument for an ending that is not among `chart_endings`.
[[nodiscard]] std::string chart_file(const study::AnyStudy& study, std::string_view ending, const Studied& studied,
                                     const Issue& issue);

}  // namespace toehold::paper
