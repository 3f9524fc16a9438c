#pragma once
// Blocks and joists by their ids, and moving them so that what was held stays held where it can.
#include "model/base_detail.h"
#include "model/member.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::editing {

[[nodiscard]] const model::Block* find_block(const model::Framing& framing, const std::string& id);
[[nodiscard]] model::Block* find_block(model::Framing& framing, const std::string& id);
/// nullptr for a part of another kind.
[[nodiscard]] const model::Block* block_of(const model::Framing& framing, const model::PartId& part);
[[nodiscard]] const model::Joist* joist_of(const model::Framing& framing, const model::PartId& part);
[[nodiscard]] std::vector<std::string> blocks_among(const model::BaseDetail& detail,
                                                    const std::vector<model::PartId>& parts);
[[nodiscard]] std::vector<std::string> joists_among(const model::BaseDetail& detail,
                                                    const std::vector<model::PartId>& parts);

[[nodiscard]] model::Position middle(const model::Block& block);
/// The block's two coordinates of a step in plan.
[[nodiscard]] double along_part(model::PlanAxis axis, model::Position step);
[[nodiscard]] double across_part(model::PlanAxis axis, model::Position step);
[[nodiscard]] model::Position in_plan(model::PlanAxis axis, double along_in, double across_in);
[[nodiscard]] double total_width_in(const model::Block& block);

/// Where the face lies that an end of the block comes nearest to, of the members it can meet there.
struct Face {
    std::string member;
    double at_in = 0.0;
};
/// Absent where no face is within the fit of an end (`model::end_fit_in`).
[[nodiscard]] std::optional<Face> face_at(const model::Framing& framing, const model::Block& block, bool upper_end,
                                          double end_in);

/// The joist moved to this place, as far as the blocks that end on it leave it; their ends follow its faces.
void move_joist(model::Framing& framing, const std::string& id, double offset_in);

}  // namespace toehold::editing
