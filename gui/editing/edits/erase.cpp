// Taking parts away, and every mention of them.
#include "editing/edits.h"
#include "editing/edits/result.h"
#include "editing/parts/holes.h"
#include "editing/parts/members.h"
#include "editing/parts/outline_shape.h"
#include "model/member.h"

#include <algorithm>
#include <set>

namespace toehold::editing {
namespace {

using model::BaseDetail;

using Parts = std::set<model::PartId>;
using model::PartId;
using model::PartKind;

constexpr std::size_t fewest_corners = 3;

template <class Item, class PartOf>
void erase_named(std::vector<Item>& items, const PartOf& part_of, const Parts& parts, Parts& erased) {
    std::erase_if(items, [&](const Item& item) {
        const PartId part = part_of(item);
        if (!parts.contains(part)) return false;
        erased.insert(part);
        return true;
    });
}

template <class Item>
void erase_named(std::vector<Item>& items, PartKind kind, const Parts& parts, Parts& erased) {
    erase_named(
        items,
        [kind](const Item& item) {
            return PartId{kind, item.id};
        },
        parts, erased);
}

/// Ends that met what is gone meet nothing any more; what fastened them waits for what they meet next.
void forget_members(model::Framing& framing, const Parts& erased) {
    const auto gone = [&](const std::string& id) {
        return erased.contains({PartKind::block, id}) || erased.contains({PartKind::joist, id}) ||
               erased.contains({PartKind::rim, id});
    };
    for (model::Block& block : framing.blocks) {
        for (model::BlockEnd* end : {&block.from_end, &block.to_end}) {
            if (gone(end->joist)) end->joist.clear();
        }
    }
}

void erase_framing(model::Framing& framing, const Parts& parts, Parts& erased) {
    Parts members;
    erase_named(framing.blocks, PartKind::block, parts, members);
    erase_named(framing.rims, PartKind::rim, parts, members);
    if (framing.joists) {
        erase_named(framing.joists->members, PartKind::joist, parts, members);
        if (framing.joists->members.empty()) framing.joists.reset();
    }
    forget_members(framing, members);
    erase_named(
        framing.supports, [](const model::JoistSupport& one) { return model::part_of(one); }, parts, members);
    erased.merge(members);
}

void erase_shims(model::Layers& layers, const Parts& parts, Parts& erased) {
    for (std::size_t number = layers.shims.size(); number > 0; --number) {
        const PartId part = model::shim_part(number - 1);
        if (!parts.contains(part)) continue;
        layers.shims.erase(layers.shims.begin() + static_cast<std::ptrdiff_t>(number) - 1);
        erased.insert(part);
    }
}

void erase_corners(BaseDetail& detail, const Parts& parts, Parts& erased) {
    auto* polygon = std::get_if<model::PolygonOutline>(&on_deck(detail).plate.outline);
    if (polygon == nullptr) return;
    for (std::size_t number = polygon->corners.size(); number > 0; --number) {
        const PartId part = model::corner_part(number - 1);
        if (!parts.contains(part) || polygon->corners.size() <= fewest_corners) continue;
        polygon->corners.erase(polygon->corners.begin() + static_cast<std::ptrdiff_t>(number) - 1);
        erased.insert(part);
        own_plate(detail);
    }
}

void erase_holes(BaseDetail& detail, const std::vector<std::string>& holes) {
    if (holes.empty()) return;
    std::erase_if(on_deck(detail).plate.holes, [&](const model::Hole& hole) {
        return std::find(holes.begin(), holes.end(), hole.id) != holes.end();
    });
    forget_anchors(detail, holes);
    own_plate(detail);
}

Phrase refusal(const BaseDetail& detail, const Parts& parts) {
    if (std::any_of(parts.begin(), parts.end(), [&](const model::PartId& part) {
            return corner_index(on_deck(detail).plate.outline, part).has_value();
        }))
        return phrase("Only an outline of free corners, with more than three, can lose one.");
    if (parts.contains({PartKind::decking}))
        return phrase("What the plate stands on cannot be erased here; its fields say what it is.");
    for (const PartKind whole : {PartKind::plate, PartKind::post, PartKind::weld, PartKind::guard, PartKind::push}) {
        if (parts.contains({whole})) return phrase("Plate, post, weld, guard and push belong to every base.");
    }
    return phrase("Nothing is selected that can be erased.");
}

}  // namespace

Edit erase(const BaseDetail& detail, const std::vector<model::PartId>& parts) {
    const Parts named(parts.begin(), parts.end());
    BaseDetail after = detail;
    const std::vector<std::string> holes = holes_among(detail, parts);
    Parts erased;
    erase_holes(after, holes);
    erase_framing(after.framing, named, erased);
    erase_shims(on_deck(after).layers, named, erased);
    erase_corners(after, named, erased);
    if (holes.empty() && erased.empty()) return refused(detail, refusal(detail, named));
    return done(std::move(after), phrase("Erase {}", things(holes, {erased.begin(), erased.end()})), {});
}

}  // namespace toehold::editing
