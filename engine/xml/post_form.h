#pragma once
// How the guard, the post and the weld at its foot stand in a detail.
#include "model/base_detail.h"
#include "xml/element.h"
#include "xml/element_reader.h"

namespace toehold::xml {

[[nodiscard]] model::Guard read_guard(ElementReader& reader);
[[nodiscard]] Element guard_element(const model::Guard& guard);

/// The attribute `shape` says which other attributes belong to a post; one of wood holds its shoe.
[[nodiscard]] model::Post read_post(ElementReader& reader);
[[nodiscard]] Element post_element(const model::Post& post);

[[nodiscard]] model::Weld read_weld(ElementReader& reader);
[[nodiscard]] Element weld_element(const model::Weld& weld);

}  // namespace toehold::xml
