#pragma once
// The names by which drawings, selection and reviews mean the same thing: `plate`, `post`, `weld`, `guard`, `push`,
// `decking`, `shim 1`, `anchor A` (and the hole it stands in), `block B1`, `joist J1`, `rim R1`, `support S1`.
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

/// The parts that a check's or a finding's subject (`anchor A`, `block B1`, `upper end of block B1`, `joist J2 at
/// ledger S1` ...) speaks of; all anchors for a subject about anchors without naming one; empty where nothing is meant.
[[nodiscard]] std::vector<std::string> parts_of_subject(std::string_view subject, const model::BaseDetail& detail);

}  // namespace toehold::drawing
