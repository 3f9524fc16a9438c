#include "study/proof_load/link_strength.h"

#include "catalog/resolve.h"
#include "checks/anchor/lateral_joint.h"
#include "checks/anchor/seating.h"
#include "mechanics/sampling/variate.h"
#include "resistance/aluminum/member.h"
#include "resistance/steel/bolt.h"
#include "resistance/steel/member.h"
#include "resistance/steel/weld.h"
#include "resistance/ultimate/metal.h"
#include "resistance/ultimate/withdrawal.h"
#include "resistance/ultimate/wood.h"
#include "resistance/wood/withdrawal.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace toehold::study {
namespace {

namespace steel = resistance::steel;
namespace ultimate = resistance::ultimate;
using catalog::FastenerKind;
using catalog::MetalKind;
using checks::CheckResult;
using ultimate::Link;

struct Asked {
    const catalog::Resolved& resolved;
    const TestedState& state;
    const CheckResult& result;
};

std::size_t anchor_index(const Asked& asked) {
    const auto& anchors = asked.resolved.anchors;
    const auto found = std::find_if(anchors.begin(), anchors.end(), [&asked](const catalog::Anchor& anchor) {
        return anchor.id == asked.result.part.id;
    });
    return static_cast<std::size_t>(found - anchors.begin());
}

const catalog::Anchor& anchor_of(const Asked& asked) { return asked.resolved.anchors.at(anchor_index(asked)); }

InTest deforms(const Asked& /*asked*/) { return NoStrength{LeftOutFor::deforms_only, Link::bearing_across_grain}; }
InTest covered(const Asked& /*asked*/) { return Covered{}; }
InTest no_link(const Asked& /*asked*/) { return NoStrength{}; }
template <Link link>
InTest unknown(const Asked& /*asked*/) {
    return NoStrength{LeftOutFor::no_published_mean, link};
}

/// Whether the post stands on a plate, whose metal and weld have means here.
bool on_plate(const Asked& asked) { return kind(asked.resolved.detail.mount) == model::MountKind::plate_on_deck; }

/// The Wood Handbook's mean over the standard's value, both per inch of the same thread.
InTest withdrawal(const Asked& asked) {
    const catalog::Anchor& anchor = anchor_of(asked);
    if (anchor.kind == FastenerKind::reported)
        return NoStrength{LeftOutFor::no_published_mean, Link::reported_hardware};
    const double gravity = checks::wood_of(asked.resolved, anchor).species.specific_gravity, d = anchor.diameter_in;
    LinkStrength strength{.wood = true, .fastened = true, .member = checks::member_part(asked.resolved, anchor)};
    if (anchor.kind == FastenerKind::lag_screw) {
        strength.link = Link::lag_withdrawal;
        strength.mean_over_capacity =
            ultimate::lag_mean_lb_per_in(gravity, d) / resistance::lag_withdrawal_lb_per_in(gravity, d);
    } else {
        strength.link = Link::wood_screw_withdrawal;
        strength.mean_over_capacity =
            ultimate::wood_screw_mean_lb_per_in(gravity, d) / resistance::wood_screw_withdrawal_lb_per_in(gravity, d);
    }
    return strength;
}

InTest shank_tension(const Asked& asked) {
    const catalog::Anchor& anchor = anchor_of(asked);
    if (anchor.kind == FastenerKind::reported)
        return NoStrength{LeftOutFor::no_published_mean, Link::reported_hardware};
    const bool bolt = anchor.kind == FastenerKind::through_bolt;
    const MetalKind kind = bolt && anchor.bolt_grade ? anchor.bolt_grade->kind : anchor.metal.kind;
    if (kind != MetalKind::carbon_steel) return NoStrength{LeftOutFor::no_published_mean, Link::bolt_tension};
    if (anchor.kind == FastenerKind::lag_screw) {
        const double mean_lb = ultimate::lag_tensile_psi * steel::circle_area_in2(anchor.root_diameter_in);
        return LinkStrength{.link = Link::lag_tension, .mean_over_capacity = mean_lb / asked.result.capacity};
    }
    return LinkStrength{.link = Link::bolt_tension,
                        .mean_over_capacity = steel::bolt_safety.omega * ultimate::bolt_tension.mean_over_nominal};
}

/// The least yield mode without its reduction term over the least with it; all other factors stay.
InTest lateral(const Asked& asked) {
    if (anchor_of(asked).kind == FastenerKind::reported)
        return NoStrength{LeftOutFor::no_published_mean, Link::reported_hardware};
    const checks::LateralJoint joint = checks::lateral_joint(asked.resolved, anchor_index(asked));
    const checks::LateralValue value = checks::lateral_value(joint, asked.state.demand.states.front());
    resistance::DowelConnection dowel = joint.dowel;
    dowel.main_bearing_psi = value.main_bearing_psi;
    dowel.side_bearing_psi = value.side_bearing_psi;
    const double yield_lb =
        resistance::governing(resistance::single_shear_with_gap(dowel, resistance::ReductionTerms{})).value_lb;
    return LinkStrength{.link = Link::fastener_lateral,
                        .mean_over_capacity = yield_lb / value.reference.value_lb,
                        .wood = true,
                        .fastened = true,
                        .member = checks::member_part(asked.resolved, anchor_of(asked))};
}

InTest wood_bending(Link link, double calculation_power) {
    return LinkStrength{.link = link,
                        .mean_over_capacity = mechanics::lognormal_mean_of_fifth(ultimate::bending_fifth_psi(1.0),
                                                                                 ultimate::basis_of(link).variation),
                        .calculation_power = calculation_power,
                        .wood = true};
}

InTest member_bending(const Asked& /*asked*/) { return wood_bending(Link::member_bending, 1.0); }

InTest member_shear(const Asked& /*asked*/) {
    return LinkStrength{.link = Link::member_shear,
                        .mean_over_capacity = mechanics::lognormal_mean_of_fifth(
                            ultimate::shear_fifth_psi(1.0), ultimate::basis_of(Link::member_shear).variation),
                        .wood = true};
}

/// Of a metal section whose usable moment is its nominal one over the standard's safety factor.
InTest metal_bending(const catalog::Metal& metal, Link steel_link, double yield_over_nominal,
                     double calculation_power) {
    LinkStrength strength{.calculation_power = calculation_power};
    if (metal.kind == MetalKind::stainless_steel) return NoStrength{LeftOutFor::no_published_mean, steel_link};
    if (metal.kind == MetalKind::aluminum) {
        strength.link = Link::aluminum_bending;
        strength.mean_over_capacity =
            resistance::aluminum::yield_safety.omega * ultimate::aluminum_yield.mean_over_nominal;
    } else {
        strength.link = steel_link;
        strength.mean_over_capacity = steel::flexure_safety.omega * yield_over_nominal;
    }
    return strength;
}

/// A calculated moment in a plate is twice as uncertain as the forces: the square of their common factor.
constexpr double plate_power = 2.0;

InTest plate_bending(const Asked& asked) {
    if (!on_plate(asked)) return unknown<Link::steel_plate_bending>(asked);
    return metal_bending(on_deck(asked.resolved).plate_metal, Link::steel_plate_bending,
                         ultimate::steel_plate_yield.mean_over_nominal, plate_power);
}

/// Only cold-formed tubes have the tubes' mean; pipe, bars and sleeves the plates', the least of the published ones.
double yield_over_nominal(const catalog::Metal& metal) {
    const bool tube = std::string_view(metal.id).starts_with("steel-a500");
    return (tube ? ultimate::steel_tube_yield : ultimate::steel_plate_yield).mean_over_nominal;
}

InTest post_bending(const Asked& asked) {
    const bool wood = std::holds_alternative<model::WoodPost>(asked.resolved.detail.post);
    if (wood && asked.result.part.kind == model::PartKind::post) return wood_bending(Link::wood_post_bending, 0.0);
    const bool over_stub = asked.result.aspect == "over-stub";
    const catalog::Metal& metal = over_stub ? asked.resolved.post_metal : foot_metal(asked.resolved);
    return metal_bending(metal, Link::steel_post_bending, yield_over_nominal(metal), 0.0);
}

const checks::Step* step_of(const CheckResult& result, std::string_view symbol) {
    const auto found = std::find_if(result.steps.begin(), result.steps.end(),
                                    [symbol](const checks::Step& step) { return step.symbol == symbol; });
    return found == result.steps.end() ? nullptr : &*found;
}

/// The weld's own metal. The post's wall beside it bends with the post; a joint of full penetration is no link.
InTest weld(const Asked& asked) {
    if (!on_plate(asked)) return unknown<Link::fillet_weld>(asked);
    const auto& filler = on_deck(asked.resolved).filler;
    const auto& described = on_deck(asked.resolved.detail).weld;
    if (described && described->kind == model::WeldKind::complete_penetration) return Covered{};
    if (filler && filler->kind == MetalKind::aluminum) return unknown<Link::aluminum_weld>(asked);
    const checks::Step* const used = step_of(asked.result, "u_w");
    const bool fillet = described && described->kind == model::WeldKind::fillet && used != nullptr;
    if (!filler || filler->kind != MetalKind::carbon_steel || !fillet) return unknown<Link::fillet_weld>(asked);
    const double capacity = asked.result.demand / used->value;
    return LinkStrength{.link = Link::fillet_weld,
                        .mean_over_capacity = capacity / asked.result.capacity * steel::weld_safety.omega *
                                              ultimate::fillet_weld_shear.mean_over_nominal,
                        .calculation_power = 0.0,
                        .fastened = true};
}

/// A washer or a plate sinks in; a bare head is drawn through.
InTest head_on_post(const Asked& asked) {
    const catalog::Anchor& anchor = anchor_of(asked);
    return anchor.washer || anchor.head_plate ? deforms(asked) : unknown<Link::head_pull_through>(asked);
}

struct Row {
    std::string_view check;
    InTest (*in_test)(const Asked&);
};

// A check that is not here, as one of a plug-in, is a link without a published mean.
constexpr std::array<Row, 30> rows{{
    {"anchor-withdrawal", withdrawal},
    {"anchor-steel-tension", shank_tension},
    {"anchor-steel-shear", no_link},
    {"anchor-lateral", lateral},
    {"anchor-combined", covered},        // tension and lateral force, each a link
    {"anchor-steel-combined", covered},  // the same
    {"head-pull-through", unknown<Link::head_pull_through>},
    {"bearing-decking", deforms},
    {"bearing-framing", deforms},
    {"bearing-packing", deforms},
    {"lower-plate-bearing", deforms},
    {"support-bearing", deforms},
    {"washer-bearing", deforms},
    {"member-bending", member_bending},
    {"member-shear", covered},    // with torsion, below
    {"member-torsion", covered},  // the same
    {"member-shear-torsion", member_shear},
    {"member-end-shear", unknown<Link::shear_at_fasteners>},
    {"member-shear-at-anchors", unknown<Link::shear_at_fasteners>},
    {"member-tension-perp", unknown<Link::tension_across_grain>},
    {"plate-bending", plate_bending},
    {"post-bending", post_bending},
    {"side-head-bearing", head_on_post},
    {"side-post-bearing", deforms},
    {"side-post-bending", post_bending},
    {"tie-by-report", unknown<Link::reported_hardware>},
    {"member-shear-at-post", unknown<Link::shear_at_fasteners>},
    {"weld", weld},
    {"guard-deflection", covered},  // no strength
    {"packing-seat", covered},      // the same
}};

}  // namespace

InTest in_test(const catalog::Resolved& resolved, const TestedState& state, const CheckResult& result) {
    if (result.unit == "in") return Covered{};  // a least distance or a movement
    const auto row =
        std::find_if(rows.begin(), rows.end(), [&result](const Row& one) { return one.check == result.id; });
    if (row != rows.end() && row->in_test == covered) return Covered{};
    if (result.status == checks::Status::missing_evidence) return NoStrength{LeftOutFor::not_specified};
    if (row == rows.end()) return NoStrength{};
    if (result.status == checks::Status::no_path) return NoStrength{};
    return row->in_test({resolved, state, result});
}

}  // namespace toehold::study
