#pragma once
// A whole detail as the element that is written of it, and the part of it that a project's mount holds too: the post, its
// plate, weld, anchors and layers.
#include "model/base_detail.h"
#include "xml/element.h"
#include "xml/element_reader.h"

#include <filesystem>

namespace toehold::xml {

[[nodiscard]] Element detail_element(const model::BaseDetail& detail);

/// Reads post and plate on deck from the children of `reader`; a plate's document is looked for in `folder`.
void read_post_on_deck(ElementReader& reader, model::BaseDetail& detail, Reading& reading,
                       const std::filesystem::path& folder);
void add_post_on_deck(Element& element, const model::Post& post, const model::PlateOnDeck& mount);

}  // namespace toehold::xml
