#pragma once
// How the connection at a member's end stands in a detail: one element inside the end, the rim or the support.
#include "model/connection.h"
#include "xml/element.h"
#include "xml/element_reader.h"

namespace toehold::xml {

/// One of nails, screws, toe-nails, angles and connector inside `holder`, or none.
[[nodiscard]] model::EndConnection read_connection(ElementReader& holder);
/// Nothing is added where nothing is described.
void add_connection(Element& holder, const model::EndConnection& connection);

}  // namespace toehold::xml
