#pragma once
// One file's review, and what is printed of it. Nothing is printed here, so that several threads may do this at once.
#include "catalog/catalog.h"
#include "cli/check/forms.h"
#include "cli/exit_status.h"
#include "demand/kept.h"

namespace toehold::cli {

struct Outcome {
    std::string text;
    SummaryRow row;
    model::Problems problems;
    std::string fault;  ///< of the program; empty: none
    ExitStatus status = ExitStatus::adequate;
};

/// One bad file does not stop the rest: what is wrong with it is in its outcome. `kept`: from file to file.
[[nodiscard]] Outcome outcome_of(const std::string& file, const catalog::Catalog& catalog, const Form& form,
                                 demand::Kept& kept);

/// Of a file whose turn did not come.
[[nodiscard]] Outcome not_begun(const std::string& file);

}  // namespace toehold::cli
