#include "editing/edits/result.h"

namespace toehold::editing {

Phrase things(const std::vector<std::string>& holes, const std::vector<model::PartId>& other_parts) {
    const std::size_t count = holes.size() + other_parts.size();
    if (count == 1 && holes.empty()) return model::part_name(other_parts.front());
    if (count == 1) return phrase("hole {}", holes.front());
    return other_parts.empty() ? phrase("{} holes", count) : phrase("{} parts", count);
}

}  // namespace toehold::editing
