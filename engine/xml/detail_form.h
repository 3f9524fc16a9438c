#pragma once
// A whole detail as the element that is written of it.
#include "model/base_detail.h"
#include "xml/element.h"

namespace toehold::xml {

[[nodiscard]] Element detail_element(const model::BaseDetail& detail);

}  // namespace toehold::xml
