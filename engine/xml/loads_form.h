#pragma once
// How the loads stand in a detail.
#include "model/loads.h"
#include "xml/element.h"
#include "xml/element_reader.h"

namespace toehold::xml {

/// `stated` is set when at least one load is named.
[[nodiscard]] model::Loads read_loads(ElementReader& reader);
[[nodiscard]] Element loads_element(const model::Loads& loads);

}  // namespace toehold::xml
