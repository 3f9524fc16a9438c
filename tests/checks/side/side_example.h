#pragma once
// A 4x4 bolted to the outside of a rim, resolved by hand, and demands of a few states put together by hand: nothing
// read from a file. Southern pine No. 2 throughout, dry, ASD with a load duration factor of 1.0.
#include "catalog/resolve.h"
#include "demand/demand.h"
#include "model/member.h"

#include <algorithm>
#include <numbers>
#include <string>
#include <vector>

namespace toehold::test {

inline catalog::Metal carbon_steel() {
    return {"steel-a36", "ASTM A36", catalog::MetalKind::carbon_steel, 36000.0, 58000.0, 29e6, {}, {}, {}};
}

inline catalog::MemberMaterial pine() {
    catalog::LumberGrade grade{"southern-pine", "no-2", "No. 2", 3.5,   5.5,    catalog::SizeFactor::included,
                               1000.0,          600.0,  175.0,   565.0, 1400.0, 1.4e6,
                               510e3,           {}};
    grade.incising = catalog::IncisedBy::species_needs_none;
    return {{"southern-pine", "southern pine", 0.55, {}}, grade};
}

/// 1/2 in A307, its threads clear of the wood; nut and head 3/4 in across flats on washers of 2 in.
inline catalog::Anchor bolt_at(const std::string& id, double x_in, double below_in) {
    catalog::Anchor anchor;
    anchor.id = id;
    anchor.at = {x_in, -1.75, -below_in};
    anchor.axis = {0.0, -1.0, 0.0};
    anchor.kind = catalog::FastenerKind::through_bolt;
    anchor.name = "1/2 in through-bolt";
    anchor.diameter_in = 0.5;
    anchor.root_diameter_in = 0.4;
    anchor.head_width_in = 0.75;
    anchor.bending_yield_psi = 45000.0;
    anchor.bolt = model::ThroughBolt{"bolt-1/2", "a307", {}, {}, {}, model::Threads::excluded};
    anchor.bolt_grade = catalog::BoltGrade{"a307", "ASTM A307", 45000.0, 27000.0, {}};
    anchor.washer = anchor.washer_below = catalog::WasherSize{"w", "washer", 2.0, 0.53125, 0.1875, {}};
    anchor.hole_diameter_in = 0.5625;
    anchor.seat = model::Seat{2, std::min(below_in, 9.25 - below_in), 24.0};
    anchor.embedment_in = 1.5;
    return anchor;
}

inline model::Framing framing_behind() {
    model::Framing framing;
    model::Joists joists{model::PlanAxis::y, 1.5, 9.25, "southern-pine", "no-2", {{"J1", -8.0}, {"J2", 8.0}}};
    joists.from_in = -120.0;
    joists.to_in = -3.25;
    framing.joists = joists;
    const model::ReportedConnector angle{"angle", "test value", 800.0, 1500.0, 600.0, 1.5};
    framing.supports = {{"S1", model::JoistSupport::Kind::ledger, -120.0, 0.0, angle}};
    model::Rim rim;
    rim.id = "R1";
    rim.at_in = -2.5;
    rim.from_in = -24.0;
    rim.to_in = 24.0;
    rim.width_in = 1.5;
    rim.depth_in = 9.25;
    rim.species = "southern-pine";
    rim.grade = "no-2";
    rim.connection = angle;
    framing.rims = {rim};
    return framing;
}

/// Members: joists J1 (0), J2 (1), rim R1 (2). Places U and L 2 and 7 in below the rim's top; the post ends 9 in below.
inline catalog::Resolved side_example() {
    catalog::Resolved resolved;
    resolved.detail.name = "post on a side, by hand";
    resolved.detail.guard.height_in = 42.0;
    resolved.detail.basis.moisture = model::Moisture::dry;
    resolved.detail.basis.load_duration = 1.0;
    model::WoodPost post;
    post.width_in = post.depth_in = 3.5;
    resolved.detail.post = post;
    model::SideFastened mount;
    mount.member = "R1";
    mount.post_bottom_below_top_in = 9.0;
    mount.places = {{"U", 0.0, 2.0}, {"L", 0.0, 7.0}};
    model::AnchorGroup bolts;
    bolts.fastener = model::ThroughBolt{"bolt-1/2", "a307", {}};
    bolts.corrosion_protection = "hot-dip galvanized, ASTM A153";
    mount.anchors = {bolts};
    resolved.detail.mount = mount;
    resolved.detail.framing = framing_behind();
    resolved.mount = catalog::SideFastened{};
    resolved.post_species = pine().species;
    resolved.post_grade = pine().grade;
    resolved.joists = pine();
    resolved.rims = {pine()};
    resolved.anchors = {bolt_at("U", 0.0, 2.0), bolt_at("L", 0.0, 7.0)};
    return resolved;
}

/// A 2 x 2 x 3/16 tube on a bracket 6 x 8 x 3/8 whose top is 1/2 in below the rim's; bolts 2-1/4 in to either side.
inline catalog::Resolved bracket_example() {
    catalog::Resolved resolved = side_example();
    resolved.detail.post = model::RectangularTube{2.0, 2.0, 0.1875, "steel-a500-b"};
    resolved.post_metal = {
        "steel-a500-b", "ASTM A500 Gr B", catalog::MetalKind::carbon_steel, 46000.0, 58000.0, 29e6, {}, {}, {}};
    resolved.post_species.reset();
    resolved.post_grade.reset();
    model::SideFastened& mount = on_side(resolved.detail);
    mount.bracket = model::BracketPlate{6.0, 8.0, 0.5, 0.375, "steel-a36", 0.1875, "e70"};
    mount.places = {{"A", -2.25, 2.0}, {"B", 2.25, 2.0}, {"C", -2.25, 7.0}, {"D", 2.25, 7.0}};
    catalog::SideFastened materials;
    materials.bracket_metal = carbon_steel();
    materials.filler = catalog::Filler{"e70", "E70 electrode", catalog::MetalKind::carbon_steel, 70000.0, {}};
    resolved.mount = materials;
    resolved.anchors = {bolt_at("A", -2.25, 2.0), bolt_at("B", 2.25, 2.0), bolt_at("C", -2.25, 7.0),
                        bolt_at("D", 2.25, 7.0)};
    return resolved;
}

/// One state of 200 lb at 42 in, outward, with these forces on the anchors in order and nothing else.
inline demand::Demand side_demand(const catalog::Resolved& resolved, const std::vector<demand::AnchorForce>& forces) {
    demand::Demand result;
    result.cases = {{"concentrated", format::verbatim("200 lb at the top of the guard"), 200.0, 0.0, 42.0, 1.0,
                     format::verbatim("test")}};
    result.scenarios = {{1.0, 1.0, false}};
    demand::State state;
    state.direction_rad = 0.5 * std::numbers::pi;
    state.anchors = forces;
    state.anchors.resize(resolved.anchors.size());
    for (const demand::AnchorForce& force : state.anchors) {
        demand::AnchorEnvelope envelope;
        envelope.tension_lb = force.tension_lb;
        envelope.shear_lb = force.shear_lb();
        envelope.direction_rad = state.direction_rad;
        result.anchors.push_back(envelope);
    }
    result.states = {state};
    return result;
}

/// The same with one cut through the post.
inline demand::Demand with_cut(const catalog::Resolved& resolved, const demand::PostCut& cut) {
    demand::Demand result = side_demand(resolved, {});
    result.states.front().cuts = {cut};
    return result;
}

/// The same with these actions on the rim.
inline void act_on_rim(demand::Demand& demand, const demand::MemberActions& actions) {
    demand::FramingDemand framing;
    framing.joists_described = true;
    demand::FramingState state;
    state.members = {{}, {}, actions};
    framing.states = {state};
    demand.framing = framing;
}

}  // namespace toehold::test
