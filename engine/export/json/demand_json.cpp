#include "export/json/demand_json.h"

#include "demand/hardware_demand.h"
#include "format/figures.h"

namespace toehold::exporting::as_json {
namespace {

using Json = nlohmann::ordered_json;

/// An array of one object for every item; empty, never null, when there is none.
template <class Items, class Object>
Json array_of(const Items& items, Object&& object) {
    Json array = Json::array();
    for (const auto& item : items) array.push_back(object(item));
    return array;
}

Json text(const format::Phrase& phrase) { return format::english(phrase); }

Json anchor(const catalog::Anchor& anchor, const demand::AnchorEnvelope& envelope) {
    return {{"id", anchor.id},
            {"x_in", anchor.at.x_in},
            {"y_in", anchor.at.y_in},
            {"tension_lb", envelope.tension_lb},
            {"shear_lb", envelope.shear_lb},
            {"direction_deg", format::degrees(envelope.direction_rad)},
            {"hand_tension_lb", envelope.hand_edge_lb},
            {"rigid_tension_lb", envelope.rigid_tension_lb},
            {"flexible_tension_lb", envelope.flexible_tension_lb ? Json(*envelope.flexible_tension_lb) : Json(nullptr)},
            {"tension_low_lb", envelope.tension_low_lb},
            {"proof_tension_lb", envelope.proof_tension_lb},
            {"hand_to_anchor_tension_lb", envelope.hand_anchor_lb},
            {"stiffness_lb_per_in", envelope.stiffness_lb_per_in},
            {"stiffness_source", text(envelope.stiffness_source)},
            {"fastener", anchor.name},
            {"embedment_in", anchor.embedment_in},
            {"thread_in_block_in", anchor.thread_in_block_in},
            {"z_in", anchor.at.z_in},
            {"axis", {anchor.axis.x, anchor.axis.y, anchor.axis.z}}};
}

Json anchors(const review::Review& review) {
    Json array = Json::array();
    if (!review.demand) return array;
    for (std::size_t index = 0; index < review.demand->anchors.size(); ++index) {
        array.push_back(anchor(review.resolved.anchors.at(index), review.demand->anchors[index]));
    }
    return array;
}

Json bearing(const std::optional<demand::Demand>& demand) {
    if (!demand || demand->states.empty()) return nullptr;
    const demand::State& state = demand->states.at(demand->peak_bearing_state);
    double contact_area_in2 = 0.0;
    for (const demand::SupportForce& support : state.supports) contact_area_in2 += support.contact_area_in2;
    return {{"peak_psi", demand->peak_bearing_psi},
            {"contact_area_in2", contact_area_in2},
            {"direction_deg", format::degrees(state.direction_rad)}};
}

Json tie(const demand::TieDemand& tie) {
    return {{"id", tie.part.id},
            {"name", tie.name},
            {"into", model::key(tie.into)},
            {"x_in", tie.x_in},
            {"z_in", tie.z_in},
            {"tension_lb", tie.tension_lb},
            {"direction_deg", format::degrees(tie.direction_rad)},
            {"allowable_lb", tie.allowable_lb},
            {"chosen", tie.chosen}};
}

Json hand_couple(const demand::HandCouple& couple) {
    return {{"push_lb", couple.push_lb},
            {"height_in", couple.height_in},
            {"arm_in", couple.arm_in},
            {"tension_lb", couple.tension_lb},
            {"direction_deg", format::degrees(couple.direction_rad)}};
}

Json plate_field(const std::optional<demand::DeflectedShape>& field) {
    if (!field) return nullptr;
    Json nodes = Json::array();
    for (const demand::DeflectedShape::Node& node : field->nodes) {
        nodes.push_back({{"x_in", node.at.x_in},
                         {"y_in", node.at.y_in},
                         {"lift_in", node.lift_in},
                         {"pressure_psi", node.pressure_psi}});
    }
    return {
        {"direction_deg", format::degrees(field->direction_rad)}, {"nodes", nodes}, {"triangles", field->triangles}};
}

Json plate_accuracy(const std::optional<demand::MeshAccuracy>& plate) {
    if (!plate) return nullptr;
    return {{"unknowns", plate->unknowns},
            {"reduced_unknowns", plate->reduced_unknowns},
            {"mesh_error", plate->mesh_error},
            {"reduction_error", plate->reduction_error}};
}

Json proof(const std::optional<demand::Demand>& demand) {
    if (!demand) return nullptr;
    return {{"force_residual", demand->proof.force_residual},
            {"moment_residual", demand->proof.moment_residual},
            {"complementarity_residual", demand->proof.complementarity_residual},
            {"solves", demand->proof.solves},
            {"plate", plate_accuracy(demand->proof.plate)}};
}

Json bending(const std::optional<demand::Bending>& bending) {
    if (!bending) return nullptr;
    return {{"prying", bending->prying},
            {"prying_direction_deg", format::degrees(bending->prying_direction_rad)},
            {"softest_lb_in_per_rad", bending->softest_lb_in_per_rad},
            {"rigid_softest_lb_in_per_rad", bending->rigid_softest_lb_in_per_rad},
            {"blocks_change", bending->framing_change ? Json(*bending->framing_change) : Json(nullptr)}};
}

/// Moment over rotation of the post's foot at the stiffness as computed, by the direction of the push.
Json rotational_stiffness(const std::optional<demand::Demand>& demand) {
    if (!demand) return nullptr;
    return array_of(demand->rotational_stiffness.samples(), [](const demand::RotationalStiffness::Sample& sample) {
        return Json{{"direction_deg", format::degrees(sample.direction_rad)}, {"lb_in_per_rad", sample.lb_in_per_rad}};
    });
}

Json load(const demand::LoadCase& load) {
    return {{"id", load.id},
            {"name", text(load.name)},
            {"push_lb", load.push_lb},
            {"down_lb", load.down_lb},
            {"height_in", load.height_in},
            {"load_factor", load.load_factor},
            {"wind_lb", load.wind_lb},
            {"wind_height_in", load.wind_height_in},
            {"covered", load.covered_by.has_value()},
            {"source", text(load.source)}};
}

Json scenario(const demand::StiffnessScenario& scenario) {
    return {{"bed", scenario.bed}, {"anchors", scenario.anchors}, {"blocks_give", scenario.flexible_framing}};
}

Json range_ends(const std::optional<demand::StiffnessRange>& range) {
    if (!range) return nullptr;
    const auto end = [](double factor, const format::Phrase& source) -> Json {
        return {{"factor", factor}, {"source", text(source)}};
    };
    return {{"center", end(1.0, range->central_source)},
            {"soft", end(range->soft, range->soft_source)},
            {"stiff", end(range->stiff, range->stiff_source)}};
}

Json support(const demand::Support& support) {
    return {{"id", model::symbol(support.part)},
            {"stiffness_psi_per_in", support.stiffness_psi_per_in},
            {"stiffness_source", text(support.stiffness_source)}};
}

Json member_support(const review::Review& review, const demand::MemberSupport& support) {
    const demand::SupportStiffness& stiffness = support.stiffness;
    return {{"member", model::key(model::part_of(model::member(review.resolved.detail.framing, support.member)))},
            {"to", model::key(support.holder_part)},
            {"vertical_lb_per_in", stiffness.vertical_lb_per_in},
            {"torque_lb_in_per_rad", stiffness.torque_lb_in},
            {"turning_lb_in_per_rad", stiffness.moment_lb_in},
            {"source", text(stiffness.source)},
            {"nominal", stiffness.vertical_is_nominal || stiffness.torque_is_nominal || stiffness.moment_is_nominal}};
}

Json framing(const review::Review& review) {
    if (!review.demand || !review.demand->framing) return nullptr;
    const demand::FramingDemand& framing = *review.demand->framing;
    Json supports = Json::array();
    for (const demand::MemberSupport& one : framing.supports) supports.push_back(member_support(review, one));
    return {{"joists_described", framing.joists_described},
            {"unstable", text(framing.unstable)},
            {"residual", framing.residual},
            {"holds", supports}};
}

}  // namespace

DemandFields demand_fields(const review::Review& review) {
    const demand::Demand nothing;
    const demand::Demand& demand = review.demand ? *review.demand : nothing;
    return {anchors(review),
            bearing(review.demand),
            proof(review.demand),
            array_of(demand.cases, load),
            array_of(demand.scenarios, scenario),
            array_of(demand.supports, support),
            bending(demand.bending),
            plate_field(demand.field),
            framing(review),
            rotational_stiffness(review.demand),
            array_of(demand::tie_demands(review.resolved, demand), tie),
            array_of(demand::hand_couples(demand), hand_couple),
            {{"bed", range_ends(demand.bed_range)}, {"anchors", range_ends(demand.anchor_range)}}};
}

}  // namespace toehold::exporting::as_json
