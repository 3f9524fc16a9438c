// A tube post over a stub: the couple of the two over their overlap, on the walls of both and on their shear. No
// standard names the joint; statics gives the forces, AISC 360-16 G4, G5 and J10.2 the walls. Aluminum takes the same
// forms with its own safety (Aluminum Design Manual 2020 G and J.8, from memory).
#include "catalog/resolve.h"
#include "checks/basis/metal_basis.h"
#include "checks/basis/result_parts.h"
#include "checks/post/filler.h"
#include "checks/post/foot.h"
#include "checks/post/overlap.h"
#include "model/building_code.h"
#include "resistance/aluminum/member.h"
#include "resistance/steel/shear.h"

#include <algorithm>
#include <utility>

namespace toehold::checks {
namespace {

using format::phrase;

namespace steel = resistance::steel;
using catalog::MetalKind;

/// The tube or its stub where they overlap.
struct Wall {
    steel::TubeShape shape;
    bool solid = false;
    const catalog::Metal& metal;
    BesideWeld used;
    double wall_in = 0.0;  ///< to design with
};

Wall wall_of(const steel::TubeShape& shape, bool solid, const catalog::Metal& metal, const Welding& welding) {
    const bool reduced = !solid && metal.kind != MetalKind::aluminum;
    return {shape, solid, metal, strengths(metal, welding),
            reduced ? steel::design_wall_in(shape.wall_in, metal.full_wall) : shape.wall_in};
}

Wall tube_wall(const CheckInput& input) {
    const model::Footprint tube = model::shaft(input.resolved.detail.post);
    return wall_of({tube.round, tube.width_in, tube.depth_in, tube.wall_in}, false, input.resolved.post_metal, {});
}

Wall stub_wall(const CheckInput& input) {
    const PostFoot foot = post_foot(input.resolved.detail.post);
    return wall_of(foot.tube, foot.solid, foot_metal(input.resolved),
                   {true, weld_filler(input.resolved), foot.thickness_in});
}

const resistance::Safety& safety_of(const Wall& wall, const resistance::Safety& steel_safety) {
    return wall.metal.kind == MetalKind::aluminum ? resistance::aluminum::yield_safety : steel_safety;
}

Capacity bearing_capacity(const Wall& wall, const model::Basis& basis) {
    const double nominal = steel::side_walls_lb_per_in(wall.wall_in, wall.used.yield_psi);
    Capacity capacity{0.0, steel_clause(wall.metal, "AISC 360-16 J10.2"), {}, wall.used.missing};
    const Adjusted usable = available(nominal, safety_of(wall, steel::local_yield_safety), basis, capacity.clause);
    capacity.value = usable.value;
    capacity.steps = {
        yield_step(wall.metal, wall.used),
        {"w_n", phrase("nominal strength of the two side walls"), "2 F_y t", nominal, "lb/in", capacity.clause}};
    append(capacity.steps, usable.steps);
    return capacity;
}

Capacity shear_capacity(const Wall& wall, bool along_x, const model::Basis& basis) {
    const double nominal = wall.solid ? steel::bar_shear_lb(wall.shape, wall.used.yield_psi)
                                      : steel::tube_shear_lb(wall.shape, wall.wall_in, along_x, wall.used.yield_psi);
    Capacity capacity{
        0.0, steel_clause(wall.metal, wall.shape.round ? "AISC 360-16 G5" : "AISC 360-16 G4"), {}, wall.used.missing};
    const Adjusted usable = available(nominal, safety_of(wall, steel::shear_safety), basis, capacity.clause);
    capacity.value = usable.value;
    capacity.steps = {yield_step(wall.metal, wall.used),
                      {"V_n", phrase("nominal shear strength"),
                       wall.solid         ? "0.60 F_y A over the peak of an elastic section"
                       : wall.shape.round ? "0.60 F_y A/2"
                                          : "0.60 F_y 2 (d - 3 t) t",
                       nominal, "lb", capacity.clause}};
    append(capacity.steps, usable.steps);
    return capacity;
}

CheckResult result_of(const Overlap& overlap, const WorstCouple& worst, const char* aspect, double demand,
                      const char* unit, const Capacity& capacity) {
    CheckResult result;
    result.part = {model::PartKind::post};
    result.aspect = aspect;
    result.unit = unit;
    result.demand = demand;
    result.direction_deg = worst.direction_deg;
    result.steps = couple_steps(overlap, worst);
    if (take_capacity(result, capacity)) conclude(result);
    return result;
}

std::vector<CheckResult> post_overlap(const CheckInput& input) {
    if (model::stub_of(input.resolved.detail.post) == nullptr) return {};
    const std::optional<Overlap> overlap = overlap_of(input.resolved);
    if (!overlap) {
        CheckResult result;
        result.part = {model::PartKind::post};
        nothing_resists(result, 0.0, "lb", phrase("The stub ends below the foot of the post. Use a longer stub."));
        return {result};
    }
    const model::Basis& basis = input.resolved.detail.basis;
    const WorstCouple worst = worst_couple(input, *overlap);
    const Wall tube = tube_wall(input), stub = stub_wall(input);
    std::vector<CheckResult> results = {
        result_of(*overlap, worst, "post-walls", worst.couple.line_lb_per_in, "lb/in", bearing_capacity(tube, basis)),
        result_of(*overlap, worst, "post-shear", std::max(worst.couple.lower_lb, worst.push_lb), "lb",
                  shear_capacity(tube, worst.along_x, basis)),
        result_of(*overlap, worst, "stub-shear", worst.couple.upper_lb, "lb",
                  shear_capacity(stub, worst.along_x, basis))};
    if (!stub.solid)
        results.push_back(result_of(*overlap, worst, "stub-walls", worst.couple.line_lb_per_in, "lb/in",
                                    bearing_capacity(stub, basis)));
    return results;
}

// The load at the guard's top acts in any direction, also up; a post that nothing keeps on its stub has no path for it.

std::vector<Finding> stub_not_held(const catalog::Resolved& resolved) {
    const model::Stub* const stub = model::stub_of(resolved.detail.post);
    if (stub == nullptr || stub->fixing != model::StubFixing::none) return {};
    return {
        finding_on({model::PartKind::post}, Severity::fails,
                   phrase("Nothing described keeps the post from lifting off its stub, and the guard's load acts "
                          "in any direction, also up. Use set screws or a through-bolt."),
                   model::clause(model::building_code(resolved.detail.basis), model::Provision::guard_load_standard))};
}

const RegisterCheck registered{
    {"post-overlap", phrase("Post over its stub"), "statics; AISC 360-16 G4, G5, J10.2",
     phrase("Bearing couple between a tube post and the stub inside it: side walls and shear of both."), post_overlap},
    {model::MountKind::plate_on_deck}};
const RegisterFinding held_rule{{"stub-not-held", phrase("Post on its stub"), "common practice", stub_not_held},
                                {model::MountKind::plate_on_deck},
                                Cause::load_path};

}  // namespace
}  // namespace toehold::checks
