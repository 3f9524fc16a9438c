#pragma once
// How the layers under the plate and the framing below them stand in a detail.
#include "model/framing.h"
#include "xml/element.h"
#include "xml/element_reader.h"

namespace toehold::xml {

/// `<layers/>` without a child says that the plate stands on the framing itself.
[[nodiscard]] model::Layers read_layers(ElementReader& reader);
[[nodiscard]] Element layers_element(const model::Layers& layers);

[[nodiscard]] model::Framing read_framing(ElementReader& reader);
[[nodiscard]] Element framing_element(const model::Framing& framing);

}  // namespace toehold::xml
