#include "catalog/fastened.h"

#include "catalog/resolve_side.h"
#include "model/member.h"

#include <algorithm>
#include <stdexcept>

namespace toehold::catalog {
namespace {

Fastened fastened_by(const PlateOnDeck& materials, const model::PlateOnDeck& mount) {
    using model::PlanAxis;
    Fastened fastened;
    fastened.side = {materials.plate_metal,
                     mount.plate.thickness_in,
                     extent_in(mount.plate.outline, PlanAxis::x),
                     extent_in(mount.plate.outline, PlanAxis::y),
                     std::nullopt,
                     mount.plate.thickness_in};
    if (mount.layers.decking) {
        const bool packed = mount.layers.packing.has_value();
        fastened.layers.push_back({(packed ? materials.packing : materials.decking).value_or(DeckingMaterial{}),
                                   mount.layers.decking->thickness_in, packed});
    }
    for (std::size_t index = 0; index < mount.layers.shims.size(); ++index) {
        fastened.layers.push_back({index < materials.shims.size() ? materials.shims[index] : DeckingMaterial{},
                                   mount.layers.shims[index].thickness_in});
    }
    return fastened;
}

/// A bracket's plate, else the post, which the anchor crosses from its far side.
SideMember side_member(const Resolved& resolved, const SideFastened& materials, const model::SideFastened& mount) {
    if (mount.bracket) {
        const model::BracketPlate& plate = *mount.bracket;
        return {materials.bracket_metal.value_or(Metal{}),
                plate.thickness_in,
                plate.width_in,
                plate.height_in,
                std::nullopt,
                plate.thickness_in};
    }
    const model::Footprint post = model::shaft(resolved.detail.post);
    SideMember side{resolved.post_metal, post_depth_in(resolved.detail), post.width_in, mount.post_bottom_below_top_in};
    side.bears_in = post.wall_in > 0.0 ? std::min(post.wall_in, side.thickness_in) : side.thickness_in;
    if (resolved.post_species && resolved.post_grade)
        side.wood = MemberMaterial{*resolved.post_species, *resolved.post_grade};
    return side;
}

/// The member the post lies against, where the anchor is taken through it into another behind.
std::optional<Interlayer> crossed_member(const Resolved& resolved, const model::SideFastened& mount,
                                         const Anchor& anchor) {
    const std::string& into = mount.anchors.at(anchor.group).into;
    const model::Framing& framing = resolved.detail.framing;
    const std::optional<model::Member> crossed = model::side_member(resolved.detail);
    const auto behind = model::find_member(framing, into);
    if (into.empty() || into == mount.member || !crossed || !behind) return std::nullopt;
    if (anchor.seat && anchor.seat->member != *behind) return std::nullopt;  // looked at where it crosses
    DeckingMaterial wood;
    wood.id = wood.name = crossed->id;
    const SideJoint joint = side_joint(resolved.detail);
    const double from_in = model::to_near_face_in(joint, *crossed);
    // With what is open between the two, as where a rod goes on to the next joist.
    return Interlayer{wood, model::to_near_face_in(joint, model::member(framing, *behind)) - from_in, true};
}

Fastened fastened_by(const Resolved& resolved, const SideFastened& materials, const model::SideFastened& mount,
                     const Anchor& anchor) {
    Fastened fastened;
    fastened.side = side_member(resolved, materials, mount);
    for (std::size_t index = mount.layers.size(); index-- > 0;) {
        fastened.layers.push_back({index < materials.layers.size() ? materials.layers[index] : DeckingMaterial{},
                                   mount.layers[index].thickness_in});
    }
    if (const auto crossed = crossed_member(resolved, mount, anchor)) fastened.layers.push_back(*crossed);
    return fastened;
}

}  // namespace

double Fastened::layers_in() const {
    double total = 0.0;
    for (const Interlayer& layer : layers) total += layer.thickness_in;
    return total;
}

Fastened fastened_by(const Resolved& resolved, const Anchor& anchor) {
    switch (kind(resolved.detail.mount)) {
        case model::MountKind::plate_on_deck:
            return fastened_by(on_deck(resolved), on_deck(resolved.detail));
        case model::MountKind::side_fastened:
            return fastened_by(resolved, on_side(resolved), on_side(resolved.detail), anchor);
    }
    throw std::logic_error("a mount without anchors");
}

double above_member_in(const Resolved& resolved, const Anchor& anchor) {
    const Fastened fastened = fastened_by(resolved, anchor);
    const double washer_in = anchor.washer ? anchor.washer->thickness_in : 0.0;
    return (anchor.head_plate ? anchor.head_plate->thickness_in : washer_in) + fastened.side.thickness_in +
           fastened.layers_in();
}

double below_in(const Anchor& anchor) {
    if (anchor.washer_below) return anchor.washer_below->thickness_in;
    if (anchor.backing) return anchor.backing->thickness_in;
    return anchor.lower ? anchor.lower->thickness_in : 0.0;
}

}  // namespace toehold::catalog
