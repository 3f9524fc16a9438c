#pragma once
// How the design basis stands in a detail. What the file leaves out stays absent: the model has the defaults.
#include "model/basis.h"
#include "xml/element.h"
#include "xml/element_reader.h"

namespace toehold::xml {

[[nodiscard]] model::Basis read_basis(ElementReader& reader);
[[nodiscard]] Element basis_element(const model::Basis& basis);

}  // namespace toehold::xml
