#pragma once
// The file behind a project's window, and the copy kept against a crash: as `editing/document.h` has them of a detail.
#include "editing/document.h"
#include "model/project.h"

#include <filesystem>
#include <optional>
#include <string>

namespace toehold::editing {

struct OpenedProject {
    std::optional<model::Project> project;  ///< absent: `problems` says why
    model::Problems problems;
    FileStamp stamp;
};

/// A project that `model::validate` has problems with is not opened: `set_project_field` lets nobody make one.
[[nodiscard]] OpenedProject open_project(const std::filesystem::path& file);

/// The project as that file will hold it: references of its mounts that do not give what is drawn, looked for from the
/// file's folder, are dropped, and what they stood for written into the project.
[[nodiscard]] model::Project as_saved(const std::filesystem::path& file, const model::Project& project);
/// Atomic, of the project `as_saved`.
[[nodiscard]] Saved save_project(const std::filesystem::path& file, const model::Project& project);

/// As of a detail. False: could not.
bool keep_copy(const std::filesystem::path& folder, int window, const std::filesystem::path& of,
               const model::Project& project);
/// The project as it was when the copy was kept; `stamp` is of the file it is of, as that is now.
[[nodiscard]] OpenedProject open_project_copy(const RecoveryCopy& copy);

/// What `keep_copy` writes: the project with its plates in it, and where it is from.
[[nodiscard]] std::string copy_text(const std::filesystem::path& of, const model::Project& project);

}  // namespace toehold::editing
