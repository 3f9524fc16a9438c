#include "export/json/review_json.h"

#include "export/json/check_json.h"
#include "export/json/keys.h"
#include "format/figures.h"
#include "review/groups.h"
#include "wording/outcomes.h"
#include "wording/verdict.h"

#include <nlohmann/json.hpp>

namespace toehold::exporting {
namespace {

// Keys keep the order in which they are written; an infinite number is written as null.
using Json = nlohmann::ordered_json;
using as_json::check;
using as_json::part;

Json optional_number(const std::optional<double>& value) { return value ? Json(*value) : Json(nullptr); }

/// An array of one object for every item; empty, never null, when there is none.
template <class Items, class Object>
Json array_of(const Items& items, Object&& object) {
    Json array = Json::array();
    for (const auto& item : items) array.push_back(object(item));
    return array;
}

Json text(const format::Phrase& phrase) { return format::english(phrase); }

Json governing(const review::Governing& governing) {
    if (governing.check.empty()) return nullptr;
    return {{"check", governing.check},
            {"ratio", governing.ratio},
            {"direction_deg", optional_number(governing.direction_deg)},
            {"title", text(governing.title)},
            {"subject", model::key(governing.part)},
            {"part", part(governing.part)}};
}

Json counts(const review::Counts& counts) {
    return {{"holds", counts.pass},
            {"fails", counts.fail},
            {"no_path", counts.no_path},
            {"missing_evidence", counts.not_specified},
            {"findings_fail", counts.findings_fail},
            {"findings_missing", counts.findings_missing},
            {"cautions", counts.cautions}};
}

Json first_cause(const std::optional<review::FirstCause>& cause) {
    if (!cause) return nullptr;
    return {{"check", cause->check},       {"title", text(cause->title)},  {"subject", model::key(cause->part)},
            {"part", part(cause->part)},   {"status", key(cause->status)}, {"ratio", cause->ratio},
            {"explains", cause->explained}};
}

Json first_finding(const std::optional<review::FindingFact>& finding) {
    if (!finding) return nullptr;
    return {{"id", finding->rule},
            {"title", text(finding->title)},
            {"subject", model::key(finding->part)},
            {"part", part(finding->part)},
            {"message", text(finding->message)}};
}

Json shortfall(const std::optional<review::Shortfall>& shortfall) {
    if (!shortfall) return nullptr;
    return {
        {"lacking", shortfall->lacking()}, {"unit", shortfall->unit}, {"factor", optional_number(shortfall->factor())}};
}

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

Json finding(const checks::Finding& finding) {
    return {{"id", finding.id},
            {"severity", key(finding.severity)},
            {"clause", finding.clause},
            {"message", text(finding.message)},
            {"subject", model::key(finding.part)},
            {"part", part(finding.part)}};
}

Json path_link(const review::PathLink& link) {
    return {{"from", model::key(link.link.from)},
            {"to", model::key(link.link.to)},
            {"by", text(link.link.by)},
            {"demand", link.demand},
            {"capacity", link.capacity},
            {"unit", link.unit},
            {"ratio", link.ratio},
            {"status", key(link.status)},
            {"check", link.check}};
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

Json assumption(const review::Assumption& assumption) {
    Json other = nullptr;
    if (assumption.other) {
        other = {{"choice", text(assumption.other->choice)},
                 {"ratio_before", optional_number(assumption.other->ratio_before)},
                 {"ratio_after", optional_number(assumption.other->ratio_after)},
                 {"failing_before", assumption.other->failing_before},
                 {"failing_after", assumption.other->failing_after}};
    }
    return {
        {"text", text(assumption.text)}, {"other_choice", text(wording::other_choice(assumption))}, {"other", other}};
}

/// Results that come to the same: their places in `checks`, worst first.
Json group(const review::Group& group) { return {{"worst", group.worst()}, {"checks", group.results}}; }

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

Json proof_factor(const std::optional<review::ProofFactor>& proof) {
    if (!proof) return nullptr;
    return {{"multiple", proof->multiple},
            {"concentrated_lb", proof->concentrated_lb},
            {"check", text(proof->title)},
            {"part", model::key(proof->part)}};
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

Json remedy(const review::Remedy& remedy) {
    return {{"id", remedy.id},
            {"change", text(remedy.text)},
            {"verdict", key(remedy.verdict)},
            {"governing", governing(remedy.governing)},
            {"failing_results", remedy.failing_results},
            {"failing_findings", remedy.failing_findings}};
}

Json document(const review::Review& review) {
    const demand::Demand nothing;
    const demand::Demand& demand = review.demand ? *review.demand : nothing;
    return {{"schema", "toehold.review/1"},
            {"detail", review.detail},
            {"input_sha256", review.input_sha256},
            {"verdict", key(review.verdict)},
            {"governing", governing(review.governing)},
            {"anchors", anchors(review)},
            {"bearing", bearing(review.demand)},
            {"checks", array_of(review.checks, check)},
            {"findings", array_of(review.findings, finding)},
            {"load_path", array_of(review.load_path, path_link)},
            {"proof", proof(review.demand)},
            {"assumptions", array_of(review.assumptions, assumption)},
            {"cautions", array_of(review.cautions, text)},
            {"reason", text(wording::verdict_reason(review))},
            {"no_demand", review.demand ? Json(nullptr) : text(review.no_demand)},
            {"loads", array_of(demand.cases, load)},
            {"range", array_of(demand.scenarios, scenario)},
            {"supports", array_of(demand.supports, support)},
            {"bending", bending(demand.bending)},
            {"plate_field", plate_field(demand.field)},
            {"remedies", array_of(review.remedies, remedy)},
            {"framing", framing(review)},
            {"counts", counts(review.facts.counts)},
            {"first_cause", first_cause(review.facts.first_cause)},
            {"first_finding", first_finding(review.facts.first_finding)},
            {"shortfall", shortfall(review.facts.shortfall)},
            {"rotational_stiffness", rotational_stiffness(review.demand)},
            {"proof_factor", proof_factor(review.facts.proof_factor)},
            {"groups", array_of(review::grouped(review.checks), group)},
            {"range_ends", {{"bed", range_ends(demand.bed_range)}, {"anchors", range_ends(demand.anchor_range)}}}};
}

}  // namespace

std::string review_json(const review::Review& review, std::string_view file) {
    constexpr int indent = 2;
    Json whole = document(review);
    if (!file.empty()) whole["file"] = file;
    // A stray byte in somebody's text must not cost the reader the review.
    return whole.dump(indent, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace toehold::exporting
