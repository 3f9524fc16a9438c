#pragma once
// The length of a group's fastener, as a hand changes it.
#include "model/base_detail.h"

#include <optional>
#include <string>

namespace toehold::editing {

/// No anchor made by hand is shorter, in.
inline constexpr double shortest_anchor_in = 0.25;

/// Under the head; absent for a bolt that is as long as it must be.
[[nodiscard]] std::optional<double> length_in(const model::Fastener& fastener);
/// A length of thread that is stated stays within the fastener. A bolt that is as long as it must be stays so.
void set_length(model::Fastener& fastener, double length_in);

/// The group that gives this place its anchor; nullptr when none does.
[[nodiscard]] model::AnchorGroup* group_of(model::BaseDetail& detail, const std::string& anchor);

}  // namespace toehold::editing
