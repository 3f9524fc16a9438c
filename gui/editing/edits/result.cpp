#include "editing/edits/result.h"

#include "editing/parts/anchor_places.h"

namespace toehold::editing {

Phrase things(const model::BaseDetail& detail, const std::vector<std::string>& anchors,
              const std::vector<model::PartId>& other_parts) {
    const bool in_holes = shaped_plate(detail) != nullptr;
    const std::size_t count = anchors.size() + other_parts.size();
    if (count == 1 && anchors.empty()) return model::part_name(other_parts.front());
    if (count == 1) return in_holes ? phrase("hole {}", anchors.front()) : phrase("fastener {}", anchors.front());
    if (!other_parts.empty()) return phrase("{} parts", count);
    return in_holes ? phrase("{} holes", count) : phrase("{} fasteners", count);
}

}  // namespace toehold::editing
