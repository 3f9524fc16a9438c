#pragma once
// Reading and writing projects, version 2 of the format: `project` as root, with framing, mounts and posts. A base
// detail of version 1 is read too, as a project of one post, and such a project is written as version 1 again.
#include "model/project.h"
#include "xml/detail/detail_file.h"

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

namespace toehold::xml {

struct ProjectRead {
    std::optional<model::Project> project;  ///< absent when there is any problem
    LineMap lines;
    model::Problems problems;  ///< of form; without such, of `model::validate`
    std::string sha256;        ///< of the file's bytes, hexadecimal; empty when it could not be read
};

[[nodiscard]] ProjectRead read_project(const std::filesystem::path& file);
/// The same from memory; `file` is used for messages and to find plate documents beside it.
[[nodiscard]] ProjectRead read_project_text(std::string_view text, const std::filesystem::path& file);
/// Version 1 where a base detail can say all of it, else version 2.
[[nodiscard]] std::string write_project(const model::Project& project);

}  // namespace toehold::xml
