#pragma once
// TRANSITION: parts as text, for scenes and selections that do not carry `model::PartId` yet: `plate`, `anchor A`,
// `shim 1`, `block B1`, `support S1`. What a result is about is never read from these; see marked_parts.h.
#include "checks/result.h"
#include "model/base_detail.h"

#include <string>
#include <string_view>
#include <vector>

namespace toehold::drawing {

[[nodiscard]] std::string anchor_part(std::string_view id);
/// `anchor A` gives `A`; a part of another kind gives an empty text. Kind is the word before the id.
[[nodiscard]] std::string id_of(std::string_view part, std::string_view kind);

[[nodiscard]] bool contains(const std::vector<std::string>& parts, std::string_view part);

/// Every part of a detail, in the order of the load path.
[[nodiscard]] std::vector<std::string> parts(const model::BaseDetail& detail);

/// `marked_parts` of what a result or a finding is about.
[[nodiscard]] std::vector<std::string> parts_of(const checks::CheckResult& result, const model::BaseDetail& detail);
[[nodiscard]] std::vector<std::string> parts_of(const checks::Finding& finding, const model::BaseDetail& detail);

}  // namespace toehold::drawing
