#pragma once
// `<guard-line>` of a project: the posts it names, its rail, walls and infill; and how a post stands in it.
#include "model/project.h"
#include "xml/document/element.h"
#include "xml/document/element_reader.h"

#include <vector>

namespace toehold::xml {

/// Of `<guard-lines>`.
[[nodiscard]] std::vector<model::GuardLine> read_guard_lines(ElementReader& reader);
[[nodiscard]] Element guard_line_element(const model::GuardLine& line);

/// Of `<posts>`.
[[nodiscard]] std::vector<model::PlacedPost> read_posts(ElementReader& reader);
[[nodiscard]] Element post_at_element(const model::PlacedPost& post);

}  // namespace toehold::xml
