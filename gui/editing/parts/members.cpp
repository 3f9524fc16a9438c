#include "editing/parts/members.h"

#include "editing/parts/measures.h"

#include <algorithm>
#include <cmath>

namespace toehold::editing {
namespace {

using model::PlanAxis;

template <class Item>
auto with_id(std::vector<Item>& items, const std::string& id) {
    return std::find_if(items.begin(), items.end(), [&](const Item& item) { return item.id == id; });
}

template <class Item>
std::vector<std::string> among(const std::vector<Item>& items, model::PartKind kind,
                               const std::vector<model::PartId>& parts) {
    std::vector<std::string> ids;
    for (const Item& item : items) {
        if (model::contains(parts, {kind, item.id})) ids.push_back(item.id);
    }
    return ids;
}

/// A block that ends on a joist: which of its ends does.
struct HeldEnd {
    std::size_t block = 0;
    bool upper = false;
};

std::vector<HeldEnd> ends_on(const model::Framing& framing, std::size_t joist) {
    const std::vector<model::Member> all = model::members(framing);
    std::vector<HeldEnd> held;
    for (std::size_t block = 0; block < framing.blocks.size(); ++block) {
        const model::Block& one = framing.blocks[block];
        for (const bool upper : {false, true}) {
            const bool named = (upper ? one.to_end : one.from_end).joist == all[joist].id;
            if (named && model::meets(all[block], upper ? one.to_in : one.from_in, upper, all[joist]))
                held.push_back({block, upper});
        }
    }
    return held;
}

}  // namespace

const model::Block* find_block(const model::Framing& framing, const std::string& id) {
    const auto found = std::find_if(framing.blocks.begin(), framing.blocks.end(),
                                    [&](const model::Block& block) { return block.id == id; });
    return found == framing.blocks.end() ? nullptr : &*found;
}

model::Block* find_block(model::Framing& framing, const std::string& id) {
    const auto found = with_id(framing.blocks, id);
    return found == framing.blocks.end() ? nullptr : &*found;
}

const model::Block* block_of(const model::Framing& framing, const model::PartId& part) {
    return part.kind == model::PartKind::block ? find_block(framing, part.id) : nullptr;
}

const model::Joist* joist_of(const model::Framing& framing, const model::PartId& part) {
    return part.kind == model::PartKind::joist ? find_joist(framing, part.id) : nullptr;
}

std::vector<std::string> blocks_among(const model::BaseDetail& detail, const std::vector<model::PartId>& parts) {
    return among(detail.framing.blocks, model::PartKind::block, parts);
}

std::vector<std::string> joists_among(const model::BaseDetail& detail, const std::vector<model::PartId>& parts) {
    if (!detail.framing.joists) return {};
    return among(detail.framing.joists->members, model::PartKind::joist, parts);
}

double along_part(PlanAxis axis, model::Position step) { return axis == PlanAxis::x ? step.x_in : step.y_in; }
double across_part(PlanAxis axis, model::Position step) { return axis == PlanAxis::x ? step.y_in : step.x_in; }

model::Position in_plan(PlanAxis axis, double along_in, double across_in) {
    return axis == PlanAxis::x ? model::Position{along_in, across_in} : model::Position{across_in, along_in};
}

model::Position middle(const model::Block& block) {
    return in_plan(block.along, 0.5 * (block.from_in + block.to_in), block.across_in);
}

double total_width_in(const model::Block& block) { return block.width_in * block.plies; }

std::optional<Face> face_at(const model::Framing& framing, const model::Block& block, bool upper_end, double end_in) {
    const std::vector<model::Member> all = model::members(framing);
    const auto self =
        std::find_if(all.begin(), all.end(), [&](const model::Member& one) { return one.id == block.id; });
    if (self == all.end()) return std::nullopt;
    std::optional<Face> nearest;
    for (const model::Member& holder : all) {
        if (holder.id == block.id || !model::meets(*self, end_in, upper_end, holder)) continue;
        const double half = 0.5 * holder.width_in;
        const double face_in = upper_end ? holder.across_in - half : holder.across_in + half;
        if (!nearest || std::abs(face_in - end_in) < std::abs(nearest->at_in - end_in))
            nearest = Face{holder.id, face_in};
    }
    return nearest;
}

void move_joist(model::Framing& framing, const std::string& id, double offset_in) {
    const std::optional<std::size_t> number = model::find_member(framing, id);
    if (!number || find_joist(framing, id) == nullptr) return;
    const double half = 0.5 * model::member(framing, *number).width_in;
    const std::vector<HeldEnd> held = ends_on(framing, *number);
    double lowest = -1e9, highest = 1e9;
    for (const HeldEnd& end : held) {
        const model::Block& block = framing.blocks[end.block];
        if (end.upper) lowest = std::max(lowest, block.from_in + shortest_length_in + half);
        if (!end.upper) highest = std::min(highest, block.to_in - shortest_length_in - half);
    }
    // Blocks shorter than that on both sides of it leave it no room at all.
    if (lowest > highest) return;
    const double place_in = std::clamp(bounded(offset_in), lowest, highest);
    with_id(framing.joists->members, id)->offset_in = place_in;
    for (const HeldEnd& end : held) {
        model::Block& block = framing.blocks[end.block];
        (end.upper ? block.to_in : block.from_in) = end.upper ? place_in - half : place_in + half;
    }
}

}  // namespace toehold::editing
