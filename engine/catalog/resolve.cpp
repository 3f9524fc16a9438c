#include "catalog/resolve.h"

#include "catalog/closest_ids.h"
#include "catalog/resolve_anchors.h"
#include "catalog/resolve_metal.h"
#include "catalog/resolve_side.h"
#include "catalog/resolve_wood.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <stdexcept>
#include <utility>

namespace toehold::catalog {
namespace {

struct Work {
    const Catalog& catalog;
    Resolved& resolved;
    model::Problems& problems;

    [[nodiscard]] WoodSources wood_sources() const { return {catalog, resolved.detail.framing.materials}; }

    [[nodiscard]] Metal metal(const std::string& id, std::string_view element) const {
        return resolve_metal(id, catalog, element, problems);
    }
};

template <class Tube>
void resolve_tube(const Work& work, const Tube& tube) {
    work.resolved.post_metal = resolve_tube_metal(tube.metal, tube.certificate, work.catalog, "post", work.problems);
    if (tube.stub) work.resolved.stub_metal = work.metal(tube.stub->metal, "post/stub");
}

void resolve_post(const Work& work, const model::RectangularTube& tube) { resolve_tube(work, tube); }
void resolve_post(const Work& work, const model::RoundTube& tube) { resolve_tube(work, tube); }

template <class Bar>
void resolve_post(const Work& work, const Bar& bar) {
    work.resolved.post_metal = work.metal(bar.metal, "post");
}

void resolve_post(const Work& work, const model::WoodPost& post) {
    if (model::is_described(post.shoe)) work.resolved.post_metal = work.metal(post.shoe.metal, "post/shoe");
    const WoodMember member{post.species, post.grade, post.width_in, post.depth_in};
    const std::optional<MemberMaterial> wood = resolve_wood(member, work.wood_sources(), "post", work.problems);
    if (!wood) return;
    work.resolved.post_species = wood->species;
    work.resolved.post_grade = wood->grade;
}

void resolve_weld(const Work& work, const std::optional<model::Weld>& weld, PlateOnDeck& into) {
    if (!weld) return;
    const Filler* const filler = require(work.catalog.fillers, weld->filler, "filler", "weld", work.problems);
    if (filler != nullptr) into.filler = *filler;
}

/// With what the boards' own report gives.
DeckingMaterial with_reported(DeckingMaterial material, const model::Decking& decking) {
    if (decking.modulus_psi > 0.0) material.modulus_perp_psi = decking.modulus_psi;
    if (decking.bearing_psi > 0.0) {
        material.bearing_psi = decking.bearing_psi;
        material.may_bear = true;
    }
    return material;
}

void resolve_layers(const Work& work, const model::Layers& layers, PlateOnDeck& into) {
    const auto material = [&](const std::string& id, const std::string& element) {
        return require(work.catalog.decking, id, "decking or shim material", element, work.problems);
    };
    if (layers.decking) {
        const DeckingMaterial* const row = material(layers.decking->material, "layers/decking");
        if (row != nullptr) into.decking = with_reported(*row, *layers.decking);
    }
    if (layers.packing) {
        const DeckingMaterial* const row = material(layers.packing->material, "layers/packing");
        if (row != nullptr) into.packing = *row;
    }
    for (std::size_t index = 0; index < layers.shims.size(); ++index) {
        const DeckingMaterial* const row =
            material(layers.shims[index].material, fmt::format("layers/shim[{}]", index + 1));
        if (row != nullptr) into.shims.push_back(*row);
    }
}

PlateOnDeck resolve_mount(const Work& work, const model::PlateOnDeck& mount) {
    PlateOnDeck materials;
    materials.plate_metal = work.metal(mount.plate.metal, mount.plate_reference ? "plate-from" : "plate");
    resolve_weld(work, mount.weld, materials);
    resolve_layers(work, mount.layers, materials);
    return materials;
}

SideFastened resolve_mount(const Work& work, const model::SideFastened& mount) {
    SideFastened materials = resolve_side_mount(mount, work.catalog, work.problems);
    if (mount.decking && materials.decking) materials.decking = with_reported(*materials.decking, *mount.decking);
    return materials;
}

/// The section of one piece: grades are listed by it, however many lie side by side.
template <class Section>
std::optional<MemberMaterial> resolve_section(const Work& work, const Section& section, const std::string& element) {
    const WoodMember member{section.species, section.grade, section.width_in, section.depth_in};
    return resolve_wood(member, work.wood_sources(), element, work.problems);
}

void resolve_connection(const Work& work, const model::EndConnection& connection, const std::string& element) {
    const auto* const angles = std::get_if<model::SideAngles>(&connection);
    if (angles != nullptr) work.resolved.angle_metals[angles->metal] = work.metal(angles->metal, element);
}

void resolve_framing(const Work& work, const model::Framing& framing) {
    for (const model::Block& block : framing.blocks) {
        const std::string element = fmt::format("framing/block[{}]", block.id);
        if (const auto wood = resolve_section(work, block, element)) work.resolved.blocks.push_back(*wood);
        resolve_connection(work, block.from_end.connection, element);
        resolve_connection(work, block.to_end.connection, element);
    }
    if (framing.joists) work.resolved.joists = resolve_section(work, *framing.joists, "framing/joists");
    for (const model::Rim& rim : framing.rims) {
        const std::string element = fmt::format("framing/rim[{}]", rim.id);
        if (const auto wood = resolve_section(work, rim, element)) work.resolved.rims.push_back(*wood);
        resolve_connection(work, rim.connection, element);
    }
    for (const model::JoistSupport& support : framing.supports)
        resolve_connection(work, support.connection, fmt::format("framing/support[{}]", support.id));
}

/// A wood post counts as treated where the framing is.
void set_incising(Resolved& resolved) {
    const bool treated = resolved.detail.framing.preservative_treated;
    for (MemberMaterial& wood : resolved.blocks) set_incising(wood, treated);
    if (resolved.joists) set_incising(*resolved.joists, treated);
    for (MemberMaterial& wood : resolved.rims) set_incising(wood, treated);
    if (!resolved.post_species || !resolved.post_grade) return;
    MemberMaterial post{*resolved.post_species, *resolved.post_grade};
    set_incising(post, treated);
    resolved.post_grade = post.grade;
}

/// As the parts stand in a file.
void put_in_order(model::Problems& problems) {
    constexpr std::array<std::string_view, 7> order = {"plate",   "post",   "side-fastened", "weld",
                                                       "anchors", "layers", "framing"};
    const auto place = [&order](const model::Problem& problem) {
        return std::find_if(order.begin(), order.end(),
                            [&problem](std::string_view part) { return problem.element.starts_with(part); }) -
               order.begin();
    };
    std::stable_sort(problems.begin(), problems.end(),
                     [&place](const model::Problem& a, const model::Problem& b) { return place(a) < place(b); });
}

}  // namespace

Resolution resolve(const model::BaseDetail& detail, const Catalog& catalog) {
    Resolution resolution;
    Resolved resolved;
    resolved.detail = detail;
    const Work work{catalog, resolved, resolution.problems};
    std::visit([&](const auto& post) { resolve_post(work, post); }, detail.post);
    std::visit([&](const auto& mount) { resolved.mount = resolve_mount(work, mount); }, detail.mount);
    resolved.anchors = resolve_anchors(resolved, catalog, resolution.problems);
    resolve_framing(work, detail.framing);
    set_incising(resolved);
    put_in_order(resolution.problems);
    if (resolution.problems.empty()) resolution.resolved = std::move(resolved);
    return resolution;
}

const Metal& foot_metal(const Resolved& resolved) {
    return resolved.stub_metal ? *resolved.stub_metal : resolved.post_metal;
}

const SideFastened& on_side(const Resolved& resolved) {
    const auto* mount = std::get_if<SideFastened>(&resolved.mount);
    if (mount == nullptr) throw std::logic_error("the detail's mount is not a post on a member's side");
    return *mount;
}

const PlateOnDeck& on_deck(const Resolved& resolved) {
    const auto* mount = std::get_if<PlateOnDeck>(&resolved.mount);
    if (mount == nullptr) throw std::logic_error("the detail's mount is not a plate on the deck");
    return *mount;
}

PlateOnDeck& on_deck(Resolved& resolved) { return const_cast<PlateOnDeck&>(on_deck(std::as_const(resolved))); }

const model::Seat& shear_seat(const Anchor& anchor) { return anchor.crossed ? *anchor.crossed : anchor.seat.value(); }

double footprint_radius_in(const Anchor& anchor) {
    if (anchor.washer) return 0.5 * anchor.washer->outside_diameter_in;
    return anchor.head_width_in > 0.0 ? 0.5 * anchor.head_width_in : anchor.diameter_in;
}

const MemberMaterial& wood(const Resolved& resolved, std::size_t member) {
    const std::size_t blocks = resolved.blocks.size();
    if (member < blocks) return resolved.blocks[member];
    const std::size_t joists = resolved.detail.framing.joists ? resolved.detail.framing.joists->members.size() : 0;
    if (member < blocks + joists) return resolved.joists.value();
    return resolved.rims.at(member - blocks - joists);
}

Resolved::Resolved() = default;
Resolved::Resolved(const Resolved&) = default;
Resolved::Resolved(Resolved&&) noexcept = default;
Resolved& Resolved::operator=(const Resolved&) = default;
Resolved& Resolved::operator=(Resolved&&) noexcept = default;
Resolved::~Resolved() = default;

Anchor::Anchor() = default;
Anchor::Anchor(const Anchor&) = default;
Anchor::Anchor(Anchor&&) noexcept = default;
Anchor& Anchor::operator=(const Anchor&) = default;
Anchor& Anchor::operator=(Anchor&&) noexcept = default;
Anchor::~Anchor() = default;

}  // namespace toehold::catalog
