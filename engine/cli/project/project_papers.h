#pragma once
// The papers of a project: its report and letter, a drawing or a cutting file for each kind of plate, the site page.
#include "cli/exit_status.h"
#include "cli/paper_command.h"

namespace toehold::cli {

/// `output`: the file named, or the customary one; of shop drawings and cutting files the plate and the revision are
/// put before its ending.
[[nodiscard]] ExitStatus write_project_papers(const PaperCommand& command, const std::string& output,
                                              const format::Locale& locale);

}  // namespace toehold::cli
