#include "checks/rail/rail_section.h"

#include "checks/basis/wood_basis.h"
#include "checks/rail/rail.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

namespace steel = resistance::steel;

struct RailShape {
    steel::TubeShape shape;
    bool solid = false;
};

RailShape shape_of(const model::RectangularTube& tube) {
    return {{false, tube.width_in, tube.depth_in, tube.wall_in}, false};
}
RailShape shape_of(const model::RoundTube& tube) {
    return {{true, tube.diameter_in, tube.diameter_in, tube.wall_in}, false};
}
RailShape shape_of(const model::SolidBar& bar) {
    return {{bar.round, bar.width_in, bar.depth_in, 0.5 * std::min(bar.width_in, bar.depth_in)}, true};
}
RailShape shape_of(const model::WoodRail&) { return {}; }

RailStiffness metal_stiffness(const catalog::ResolvedRail& rail) {
    const MetalSection metal = rail_section(rail, 0.0);
    const steel::TubeSection section = section_to_design(metal.shape, metal.solid, metal.metal);
    const double modulus = metal.metal.modulus_psi;
    return {modulus * section.area_in2, modulus * section.inertia_y_in4, modulus * section.inertia_x_in4};
}

}  // namespace

const model::WoodRail* wood_rail(const catalog::ResolvedRail& rail) {
    return std::get_if<model::WoodRail>(&rail.rail.section);
}

const catalog::LumberGrade& rail_grade(const catalog::ResolvedRail& rail) {
    return std::get<catalog::MemberMaterial>(rail.material).grade;
}

MetalSection rail_section(const catalog::ResolvedRail& rail, double free_in) {
    const RailShape shape = std::visit([](const auto& section) { return shape_of(section); }, rail.rail.section);
    const bool welded = rail.rail.run == model::RailRun::continuous;
    const double thickness_in = shape.solid ? 2.0 * shape.shape.wall_in : shape.shape.wall_in;
    return {shape.shape, shape.solid, 1, std::get<catalog::Metal>(rail.material), {welded, nullptr, thickness_in},
            free_in};
}

RailStiffness rail_stiffness(const catalog::ResolvedRail& rail, const model::Basis& basis) {
    const model::WoodRail* const wood = wood_rail(rail);
    if (wood == nullptr) return metal_stiffness(rail);
    const double modulus = adjust_modulus(rail_grade(rail), basis).value;
    const double b = wood->width_in, d = wood->depth_in;
    return {modulus * b * d, modulus * d * std::pow(b, 3) / 12.0, modulus * b * std::pow(d, 3) / 12.0};
}

}  // namespace toehold::checks
