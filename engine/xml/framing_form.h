#pragma once
// How the framing below the layers stands in a detail: joists with what holds them, and blocks.
#include "model/framing.h"
#include "xml/element.h"
#include "xml/element_reader.h"

namespace toehold::xml {

[[nodiscard]] model::Framing read_framing(ElementReader& reader);
[[nodiscard]] Element framing_element(const model::Framing& framing);

}  // namespace toehold::xml
