#include "model/mount.h"

#include "format/phrase.h"
#include "model/base_detail.h"

#include <algorithm>
#include <array>
#include <stdexcept>
#include <utility>

namespace toehold::model {
namespace {

constexpr std::array<std::string_view, std::variant_size_v<Mount>> words{"plate-on-deck", "side-fastened"};

const std::vector<AnchorGroup>& groups_of(const PlateOnDeck& mount) { return mount.anchors; }
const std::vector<AnchorGroup>& groups_of(const SideFastened& mount) { return mount.anchors; }
template <class Places>
std::vector<std::string> ids(const Places& places) {
    std::vector<std::string> all;
    all.reserve(places.size());
    for (const auto& place : places) all.push_back(place.id);
    return all;
}
std::vector<std::string> places_of(const PlateOnDeck& mount) { return ids(mount.plate.holes); }
std::vector<std::string> places_of(const SideFastened& mount) { return ids(mount.places); }
double below_of(const PlateOnDeck& mount) { return mount.plate_below_surface_in; }
double below_of(const SideFastened& mount) { return mount.decking ? mount.decking->thickness_in : 0.0; }
PartId main_part_of(const PlateOnDeck& /*mount*/) { return {PartKind::plate}; }
PartId main_part_of(const SideFastened& mount) { return {mount.bracket ? PartKind::plate : PartKind::post}; }
format::Phrase words_of(const PlateOnDeck& mount) {
    return format::phrase("{}, {} thick, {}", mount.plate.id, format::Dimension{mount.plate.thickness_in},
                          mount.plate.metal);
}
format::Phrase words_of(const SideFastened& mount) {
    const bool outside = mount.face == MemberFace::outside;
    if (mount.bracket) {
        const format::Dimension thickness{mount.bracket->thickness_in};
        return outside ? format::phrase("bracket plate {} thick, outside {}", thickness, mount.member)
                       : format::phrase("bracket plate {} thick, inside {}", thickness, mount.member);
    }
    return outside ? format::phrase("outside face of {}", mount.member)
                   : format::phrase("inside face of {}", mount.member);
}
const Decking* boards_of(const PlateOnDeck& mount) { return mount.layers.decking ? &*mount.layers.decking : nullptr; }
const Decking* boards_of(const SideFastened& mount) { return mount.decking ? &*mount.decking : nullptr; }

}  // namespace

MountKind kind(const Mount& mount) { return static_cast<MountKind>(mount.index()); }

std::string_view word(MountKind kind) { return words.at(static_cast<std::size_t>(kind)); }

const std::vector<AnchorGroup>& anchor_groups(const BaseDetail& detail) {
    return std::visit([](const auto& mount) -> const std::vector<AnchorGroup>& { return groups_of(mount); },
                      detail.mount);
}

std::vector<AnchorGroup>& anchor_groups(BaseDetail& detail) {
    return const_cast<std::vector<AnchorGroup>&>(anchor_groups(std::as_const(detail)));
}

std::vector<std::string> anchor_place_ids(const BaseDetail& detail) {
    return std::visit([](const auto& mount) { return places_of(mount); }, detail.mount);
}

bool preloaded(const BaseDetail& detail) {
    const std::vector<AnchorGroup>& groups = anchor_groups(detail);
    return std::any_of(groups.begin(), groups.end(),
                       [](const AnchorGroup& group) { return group.preload_lb.has_value(); });
}

double below_surface_in(const BaseDetail& detail) {
    return std::visit([](const auto& mount) { return below_of(mount); }, detail.mount);
}

double lever_height_in(const BaseDetail& detail) { return detail.guard.height_in + below_surface_in(detail); }

PartId main_part(const BaseDetail& detail) {
    return std::visit([](const auto& mount) { return main_part_of(mount); }, detail.mount);
}

format::Phrase main_part_words(const BaseDetail& detail) {
    return std::visit([](const auto& mount) { return words_of(mount); }, detail.mount);
}

const Decking* deck_boards(const BaseDetail& detail) {
    return std::visit([](const auto& mount) { return boards_of(mount); }, detail.mount);
}

const PlateOnDeck& on_deck(const BaseDetail& detail) {
    const auto* mount = std::get_if<PlateOnDeck>(&detail.mount);
    if (mount == nullptr) throw std::logic_error("the detail's mount is not a plate on the deck");
    return *mount;
}

PlateOnDeck& on_deck(BaseDetail& detail) { return const_cast<PlateOnDeck&>(on_deck(std::as_const(detail))); }

const SideFastened& on_side(const BaseDetail& detail) {
    const auto* mount = std::get_if<SideFastened>(&detail.mount);
    if (mount == nullptr) throw std::logic_error("the detail's mount is not a post on a member's side");
    return *mount;
}

SideFastened& on_side(BaseDetail& detail) { return const_cast<SideFastened&>(on_side(std::as_const(detail))); }

const AnchorGroup* anchor_group(const BaseDetail& detail, const std::string& place_id) {
    const AnchorGroup* for_all_others = nullptr;
    for (const AnchorGroup& group : anchor_groups(detail)) {
        if (group.holes.empty()) {
            for_all_others = &group;
        } else if (std::find(group.holes.begin(), group.holes.end(), place_id) != group.holes.end()) {
            return &group;
        }
    }
    return for_all_others;
}

std::vector<Position> packing_places(const BaseDetail& detail) {
    const PlateOnDeck& mount = on_deck(detail);
    if (!mount.layers.packing || !mount.layers.packing->places.empty())
        return mount.layers.packing ? mount.layers.packing->places : std::vector<Position>{};
    std::vector<Position> places;
    for (const Hole& hole : mount.plate.holes) {
        if (anchor_group(detail, hole.id) != nullptr) places.push_back(hole.center);
    }
    return places;
}

}  // namespace toehold::model
