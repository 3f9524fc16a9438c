#include "demand/plate_on_deck/kept_plates.h"

#include <algorithm>
#include <utility>

namespace toehold::demand {
namespace {

constexpr std::size_t most_meshes = 48, most_plates = 24;  // about 50 kB and 1 MB each

/// The outline alone: a mesh knows nothing of the wall.
bool same(const model::Footprint& a, const model::Footprint& b) {
    return a.round == b.round && a.width_in == b.width_in && a.depth_in == b.depth_in;
}

/// The one that fits, moved to the front; nullptr: none does.
template <class Kept, class Fits>
Kept* find_kept(std::list<Kept>& all, Fits&& fits) {
    const auto found = std::find_if(all.begin(), all.end(), std::forward<Fits>(fits));
    if (found == all.end()) return nullptr;
    all.splice(all.begin(), all, found);
    return &all.front();
}

template <class Kept>
Kept& keep(std::list<Kept>& all, Kept one, std::size_t most) {
    all.push_front(std::move(one));
    if (all.size() > most) all.pop_back();
    return all.front();
}

}  // namespace

Kept::Kept() : plates_(std::make_unique<Plates>()) {}
Kept::~Kept() = default;
Kept::Kept(Kept&&) noexcept = default;
Kept& Kept::operator=(Kept&&) noexcept = default;

bool Kept::Plates::same(const Shape& one, const Shape& other) {
    return one.fineness == other.fineness && one.outline == other.outline && demand::same(one.foot, other.foot) &&
           one.footprints == other.footprints;
}

bool Kept::Plates::same(const KeptPlate& kept, const MeshedPlate* mesh, const mechanics::FlexiblePlateInput& input) {
    return kept.mesh.get() == mesh && kept.modulus_psi == input.modulus_psi && kept.poisson == input.poisson &&
           kept.thickness_in == input.thickness_in && kept.bed == input.bed;
}

std::shared_ptr<const MeshedPlate> Kept::Plates::mesh(const catalog::Resolved& resolved, double fineness) {
    Shape shape{on_deck(resolved.detail).plate.outline, model::footprint(resolved.detail.post), footprints(resolved),
                fineness};
    if (KeptMesh* const kept = find_kept(meshes_, [&](const KeptMesh& one) { return same(one.of, shape); }))
        return kept->mesh;
    auto made = std::make_shared<const MeshedPlate>(meshed_plate(resolved, fineness));
    return keep(meshes_, {std::move(shape), std::move(made)}, most_meshes).mesh;
}

mechanics::FlexiblePlate Kept::Plates::plate(const catalog::Resolved& resolved, const Bed& bed,
                                             const std::vector<Stiffness>& anchors, double fineness) {
    std::shared_ptr<const MeshedPlate> meshed = mesh(resolved, fineness);
    mechanics::FlexiblePlateInput input = plate_input(resolved, bed, anchors, *meshed);
    if (KeptPlate* const kept =
            find_kept(plates_, [&](const KeptPlate& one) { return same(one, meshed.get(), input); }))
        return kept->plate.with(std::move(input.anchors));
    std::vector<mechanics::FlexibleAnchor> own = input.anchors;
    KeptPlate made{std::move(meshed),  input.modulus_psi, input.poisson,
                   input.thickness_in, input.bed,         mechanics::FlexiblePlate(std::move(input))};
    return keep(plates_, std::move(made), most_plates).plate.with(std::move(own));
}

}  // namespace toehold::demand
