#pragma once
// The section of a tube or a bar, as posts and rails have it. What stands in a tube (a post's stub) is its reader's.
#include "model/post.h"
#include "xml/document/element.h"
#include "xml/document/element_reader.h"

namespace toehold::xml {

/// Width for both sides.
[[nodiscard]] model::RectangularTube read_square_tube(ElementReader& reader);
[[nodiscard]] model::RectangularTube read_rectangular_tube(ElementReader& reader);
[[nodiscard]] model::RoundTube read_round_tube(ElementReader& reader);
[[nodiscard]] model::SolidBar read_bar(ElementReader& reader);
[[nodiscard]] model::SolidBar read_round_bar(ElementReader& reader);

/// A square one without its depth, which its shape says.
void write_tube(Element& element, const model::RectangularTube& tube);
void write_tube(Element& element, const model::RoundTube& tube);
void write_bar(Element& element, const model::SolidBar& bar);

}  // namespace toehold::xml
