#pragma once
// How a reviewer's remarks stand in a detail, in the order in which they were made.
#include "model/remark.h"
#include "xml/element.h"
#include "xml/element_reader.h"

#include <vector>

namespace toehold::xml {

[[nodiscard]] std::vector<model::Remark> read_remarks(ElementReader& reader);
[[nodiscard]] Element remarks_element(const std::vector<model::Remark>& remarks);

}  // namespace toehold::xml
