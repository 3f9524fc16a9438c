#pragma once
// The groups of a project's fields, one file each.
#include "editing/fields/form.h"
#include "model/project.h"

namespace toehold::editing {

/// Sharing, the rail with its connection, one line after the other.
void line_fields(Form& form, model::Project& project);
/// Of a line's rail. Places stand below `path`, `line[L1]/rail`.
void rail_fields(Form& form, model::Rail& rail, const std::string& path, const model::Project& project,
                 const std::string& line);
/// Mark, place and mount of each post.
void post_at_fields(Form& form, model::Project& project);

}  // namespace toehold::editing
