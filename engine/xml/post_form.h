#pragma once
// How the guard, the post and the weld at its foot stand in a detail.
#include "model/base_detail.h"
#include "xml/element.h"
#include "xml/element_reader.h"

namespace toehold::xml {

/// The guard and how far below the walking surface the mount stands.
void read_guard(ElementReader& reader, model::BaseDetail& detail);
[[nodiscard]] Element guard_element(const model::BaseDetail& detail);

/// The attribute `shape` says which other attributes belong to a post; one of wood holds its shoe.
[[nodiscard]] model::Post read_post(ElementReader& reader);
[[nodiscard]] Element post_element(const model::Post& post);

[[nodiscard]] model::Weld read_weld(ElementReader& reader);
[[nodiscard]] Element weld_element(const model::Weld& weld);

}  // namespace toehold::xml
