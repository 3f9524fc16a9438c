#pragma once
// What can be looked over when a thing is taken by hand: everywhere it may stand so that every check passes.
#include "editing/handles.h"
#include "model/part.h"
#include "study/region.h"

#include <cstddef>
#include <optional>
#include <string>

namespace toehold::editing {

struct Dragged {
    enum class Kind { anchor, edge, block, length };
    Kind kind = Kind::anchor;
    std::string id = {};  ///< of the hole or the block; of a length: of the hole it is seen at
    study::EdgeSide side = study::EdgeSide::right;  ///< of an edge
    std::size_t group = 0;                          ///< of a length: number of the anchors' group
    friend bool operator==(const Dragged&, const Dragged&) = default;
};

/// By this handle; absent: nothing is looked over.
[[nodiscard]] std::optional<Dragged> dragged_by(const model::BaseDetail& detail, const Handle& handle);
/// As a whole: an anchor, a block.
[[nodiscard]] std::optional<Dragged> dragged_whole(const model::BaseDetail& detail, const model::PartId& part);

/// Absent where the detail has no such thing.
[[nodiscard]] std::optional<study::Reach> reach_of(const study::Subject& subject, const Dragged& dragged);

/// Of a thing that moves along one axis of the plan: what it takes up across it, in.
struct AcrossExtent {
    double low = 0.0, high = 0.0;
};
[[nodiscard]] AcrossExtent extent_across(const model::BaseDetail& detail, const Dragged& dragged,
                                         model::PlanAxis along);

}  // namespace toehold::editing
