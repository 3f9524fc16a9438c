#include "catalog/resolve_rail.h"

#include "catalog/resolve_metal.h"
#include "catalog/resolve_wood.h"

#include <utility>

namespace toehold::catalog {
namespace {

struct RailWork {
    const Catalog& catalog;
    const model::Framing& framing;
    const std::string& element;
    model::Problems& problems;
};

using RailMaterial = std::variant<Metal, MemberMaterial>;

template <class Tube>
RailMaterial rail_material(const RailWork& work, const Tube& tube) {
    return resolve_tube_metal(tube.metal, tube.certificate, work.catalog, work.element, work.problems);
}

RailMaterial rail_material(const RailWork& work, const model::SolidBar& bar) {
    return resolve_metal(bar.metal, work.catalog, work.element, work.problems);
}

RailMaterial rail_material(const RailWork& work, const model::WoodRail& rail) {
    const WoodMember member{rail.species, rail.grade, rail.width_in, rail.depth_in};
    std::optional<MemberMaterial> wood =
        resolve_wood(member, {work.catalog, work.framing.materials}, work.element, work.problems);
    if (!wood) return MemberMaterial{};
    set_incising(*wood, work.framing.preservative_treated);
    return std::move(*wood);
}

}  // namespace

RailResolution resolve_rail(const model::Rail& rail, const model::Framing& framing, const Catalog& catalog,
                            const std::string& element) {
    RailResolution resolution;
    const RailWork work{catalog, framing, element, resolution.problems};
    ResolvedRail resolved{rail,
                          std::visit([&](const auto& section) { return rail_material(work, section); }, rail.section)};
    if (resolution.problems.empty()) resolution.rail = std::move(resolved);
    return resolution;
}

}  // namespace toehold::catalog
