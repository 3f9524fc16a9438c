#pragma once
// The fields of a project's guard lines and posts, as `editing/fields.h` has those of a detail: its rails, how they are
// joined to the posts, whether neighbors are counted on, and where each post stands on which mount.
#include "editing/fields.h"
#include "model/project.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::editing {

/// Paths: `line[L1]/sharing`, `line[L1]/rail/width`, `post[P2]/spacing`. A post's fields are of the part that a post
/// is.
[[nodiscard]] std::vector<Field> project_fields(const model::Project& project, const catalog::Catalog& catalog,
                                                units::System system);

struct ProjectFieldEdit {
    std::optional<model::Project> project;  ///< absent: refused
    format::Phrase step;                    ///< `Change Post P2: Mount`
    format::Phrase refusal;                 ///< one sentence: what would be accepted
};

/// The field with that path set from text. Refused too where `model::validate` would then have a problem that it has
/// not now: a project that is edited here can always be saved and opened again. A mark that changes is followed by the
/// guard lines that name it.
[[nodiscard]] ProjectFieldEdit set_project_field(const model::Project& project, const catalog::Catalog& catalog,
                                                 units::System system, const std::string& path,
                                                 const std::string& text);

}  // namespace toehold::editing
