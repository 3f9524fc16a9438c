// Taking parts away, and every mention of them.
#include "editing/edits.h"
#include "editing/edits/result.h"
#include "editing/mounts/mount.h"
#include "editing/parts/anchor_places.h"
#include "editing/parts/holes.h"
#include "editing/parts/members.h"
#include "editing/parts/outline_shape.h"
#include "model/member.h"
#include "model/side_geometry.h"

#include <algorithm>
#include <optional>
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
    model::Plate* const plate = shaped_plate(detail);
    auto* const polygon = plate == nullptr ? nullptr : std::get_if<model::PolygonOutline>(&plate->outline);
    if (polygon == nullptr) return;
    for (std::size_t number = polygon->corners.size(); number > 0; --number) {
        const PartId part = model::corner_part(number - 1);
        if (!parts.contains(part) || polygon->corners.size() <= fewest_corners) continue;
        polygon->corners.erase(polygon->corners.begin() + static_cast<std::ptrdiff_t>(number) - 1);
        erased.insert(part);
        own_plate(detail);
    }
}

void erase_ties(model::SideFastened& mount, const Parts& parts, Parts& erased) {
    erase_named(mount.ties, PartKind::tie, parts, erased);
}

/// What only one kind of mount has.
void erase_of_mount(BaseDetail& detail, const Parts& parts, Parts& erased) {
    if (auto* const plate = std::get_if<model::PlateOnDeck>(&detail.mount)) erase_shims(plate->layers, parts, erased);
    if (auto* const side = std::get_if<model::SideFastened>(&detail.mount)) erase_ties(*side, parts, erased);
    erase_corners(detail, parts, erased);
}

/// The member the post is fastened to, where it is among the parts.
std::optional<model::Member> held_member(const BaseDetail& detail, const Parts& parts) {
    if (model::kind(detail.mount) != model::MountKind::side_fastened) return std::nullopt;
    const std::optional<model::Member> member = model::side_member(detail);
    return member && parts.contains(model::part_of(*member)) ? member : std::nullopt;
}

Phrase of_every_base(const BaseDetail& detail) {
    return shaped_plate(detail) != nullptr ? phrase("Plate, post, weld, guard and push belong to every base.")
                                           : phrase("Post, guard and push belong to every detail.");
}

Phrase refusal(const BaseDetail& detail, const Parts& parts) {
    if (std::any_of(parts.begin(), parts.end(),
                    [&](const model::PartId& part) { return corner_of(detail, part).has_value(); }))
        return phrase("Only an outline of free corners, with more than three, can lose one.");
    if (parts.contains({PartKind::decking})) {
        return shaped_plate(detail) != nullptr
                   ? phrase("What the plate stands on cannot be erased here; its fields say what it is.")
                   : phrase("The decking cannot be erased here; its fields say what it is.");
    }
    for (const PartKind whole : {PartKind::plate, PartKind::post, PartKind::weld, PartKind::guard, PartKind::push}) {
        if (parts.contains({whole})) return of_every_base(detail);
    }
    return phrase("Nothing is selected that can be erased.");
}

}  // namespace

Edit erase(const BaseDetail& detail, const std::vector<model::PartId>& parts) {
    const Parts named(parts.begin(), parts.end());
    if (const std::optional<model::Member> member = held_member(detail, named)) {
        return refused(detail, phrase("The post is fastened to {}: fasten it to another member first.",
                                      model::part_name(model::part_of(*member))));
    }
    BaseDetail after = detail;
    const std::vector<std::string> anchors = anchors_among(detail, parts);
    Parts erased;
    erase_anchors(after, anchors);
    erase_framing(after.framing, named, erased);
    erase_of_mount(after, named, erased);
    follow_change(after, detail);
    if (anchors.empty() && erased.empty()) return refused(detail, refusal(detail, named));
    return done(std::move(after), phrase("Erase {}", things(detail, anchors, {erased.begin(), erased.end()})), {});
}

}  // namespace toehold::editing
