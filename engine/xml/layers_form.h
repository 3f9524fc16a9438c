#pragma once
// How the layers between the plate and the framing stand in a detail.
#include "model/layers.h"
#include "xml/element.h"
#include "xml/element_reader.h"

namespace toehold::xml {

/// `<layers/>` without a child says that the plate stands on the framing itself.
[[nodiscard]] model::Layers read_layers(ElementReader& reader);
[[nodiscard]] Element layers_element(const model::Layers& layers);

}  // namespace toehold::xml
