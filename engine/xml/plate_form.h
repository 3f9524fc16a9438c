#pragma once
// How a plate stands in a file, alone in a plate document or inside a detail.
#include "model/plate.h"
#include "xml/element.h"
#include "xml/element_reader.h"

namespace toehold::xml {

/// `id_required`: in a library the id is what a detail refers to; inside a detail it may be left out.
[[nodiscard]] model::Plate read_plate(ElementReader& reader, bool id_required);
[[nodiscard]] Element plate_element(const model::Plate& plate);

[[nodiscard]] model::PlateReference read_plate_reference(ElementReader& reader);
[[nodiscard]] Element plate_reference_element(const model::PlateReference& reference);

}  // namespace toehold::xml
