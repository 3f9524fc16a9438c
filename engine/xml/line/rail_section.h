#pragma once
// A rail's section in the words of a post's: `shape`, and the attributes that go with it. Wood lies as framing does:
// its narrow face up unless `flat` says otherwise.
#include "model/guard_line.h"
#include "xml/document/element.h"
#include "xml/document/element_reader.h"

namespace toehold::xml {

[[nodiscard]] model::RailSection read_rail_section(ElementReader& reader);
void write_rail_section(Element& rail, const model::RailSection& section);

}  // namespace toehold::xml
