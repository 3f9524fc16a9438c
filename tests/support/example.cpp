#include "support/example.h"

#include "demand/framing/find_framing.h"

#include <numbers>

namespace toehold::test {
namespace {

catalog::Anchor lag_anchor(const std::string& id, model::Position at, std::size_t block) {
    catalog::Anchor anchor;
    anchor.id = id;
    anchor.at = {at.x_in, at.y_in, 0.0};
    anchor.kind = catalog::FastenerKind::lag_screw;
    anchor.name = "3/8 in lag screw x 6 in";
    anchor.diameter_in = 0.375;
    anchor.root_diameter_in = 0.265;
    anchor.length_in = 6.0;
    anchor.thread_length_in = 3.5;
    anchor.tip_length_in = 0.21875;
    anchor.head_width_in = 0.5625;
    anchor.bending_yield_psi = 45000.0;
    anchor.metal = {"steel-lag", "lag screw steel", catalog::MetalKind::carbon_steel, 36000.0, 60000.0, 29e6, {}, {},
                    {}};
    anchor.hole_diameter_in = 0.4375;
    anchor.seat = model::Seat{block, 1.75, 5.25};
    anchor.embedment_in = 6.0 - 0.375 - 1.0;
    anchor.thread_in_block_in = 3.5 - 0.21875;
    return anchor;
}

}  // namespace

catalog::Resolved example_resolved() {
    catalog::Resolved resolved;
    resolved.detail = example_detail();
    for (const model::Hole& hole : on_deck(resolved.detail).plate.holes)
        resolved.anchors.push_back(lag_anchor(hole.id, hole.center, hole.center.y_in < 0.0 ? 0 : 1));
    on_deck(resolved).plate_metal = {
        "steel-a36", "ASTM A36", catalog::MetalKind::carbon_steel, 36000.0, 58000.0, 29e6, {}, {}, {}};
    resolved.post_metal = {
        "steel-a500-b", "ASTM A500 Gr B", catalog::MetalKind::carbon_steel, 46000.0, 58000.0, 29e6, {}, {}, {}};
    on_deck(resolved).filler = catalog::Filler{"e70", "E70 electrode", catalog::MetalKind::carbon_steel, 70000.0, {}};
    on_deck(resolved).decking = catalog::DeckingMaterial{"wood-southern-pine",
                                                         "southern pine boards",
                                                         catalog::DeckingKind::wood,
                                                         70000.0,
                                                         true,
                                                         565.0,
                                                         "southern-pine",
                                                         {}};
    const catalog::Species pine{"southern-pine", "southern pine", 0.55, {}};
    const catalog::LumberGrade grade{"southern-pine", "no-2", "No. 2", 3.5,   5.5,    catalog::SizeFactor::included,
                                     1000.0,          600.0,  175.0,   565.0, 1400.0, 1.4e6,
                                     510e3,           {}};
    resolved.blocks = {{pine, grade}, {pine, grade}};
    resolved.joists = catalog::MemberMaterial{pine, grade};
    return resolved;
}

demand::Demand example_demand(const catalog::Resolved& resolved, demand::AnchorForce on_each,
                              const std::vector<double>& bearing_lb) {
    demand::Demand result;
    result.cases = {{"concentrated", format::verbatim("200 lb at the top of the guard"), 200.0, 0.0, 42.0, 1.0,
                     format::verbatim("test")}};
    result.scenarios = {{1.0, 1.0, false}};
    demand::State state;
    state.direction_rad = std::numbers::pi / 2.0;
    state.anchors.assign(resolved.anchors.size(), on_each);
    for (std::size_t index = 0; index < bearing_lb.size(); ++index) {
        const model::PlanRectangle rectangle = model::plan(model::member(resolved.detail.framing, index));
        const model::Position at{0.5 * (rectangle.x_min_in + rectangle.x_max_in),
                                 0.5 * (rectangle.y_min_in + rectangle.y_max_in)};
        result.supports.push_back({demand::SupportKind::member,
                                   index,
                                   {model::PartKind::block, rectangle.id},
                                   28000.0,
                                   format::verbatim("test")});
        state.supports.push_back({bearing_lb[index], at, bearing_lb[index] / 5.0, at, 10.0});
    }
    result.states = {state};
    for (std::size_t index = 0; index < resolved.anchors.size(); ++index) {
        demand::AnchorEnvelope envelope;
        envelope.tension_lb = on_each.tension_lb;
        envelope.direction_rad = state.direction_rad;
        envelope.shear_lb = on_each.shear_lb();
        result.anchors.push_back(envelope);
    }
    result.framing = demand::find_framing(resolved, result);
    return result;
}

}  // namespace toehold::test
