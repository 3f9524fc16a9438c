#pragma once
// How the anchors stand in a detail: groups of holes, each with one fastener.
#include "model/anchor.h"
#include "xml/element.h"
#include "xml/element_reader.h"

namespace toehold::xml {

/// `<anchors>` holds one of lag-screw, wood-screw, through-bolt and reported-fastener, and perhaps a washer.
[[nodiscard]] model::AnchorGroup read_anchor_group(ElementReader& reader);
[[nodiscard]] Element anchor_group_element(const model::AnchorGroup& group);

}  // namespace toehold::xml
