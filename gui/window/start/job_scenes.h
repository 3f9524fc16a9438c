#pragma once
// Pictures of a detail that is only being thought of.
#include "catalog/catalog.h"
#include "drawing/scene/scene.h"
#include "format/phrase.h"
#include "model/base_detail.h"

namespace toehold::window {

/// Its plan with the framing below and, where wished, dimensions. Drawn also where it cannot be resolved.
[[nodiscard]] drawing::Scene plan_of(const model::BaseDetail& detail, const catalog::Catalog& catalog,
                                     const format::Locale& locale, bool dimensions);
/// The same small: lines and areas without a word.
[[nodiscard]] drawing::Scene small_plan_of(const model::BaseDetail& detail, const catalog::Catalog& catalog);

}  // namespace toehold::window
