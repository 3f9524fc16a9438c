#include "support/example_detail.h"

namespace toehold::test {
namespace {

model::Block block(const std::string& id, double across_in) {
    model::Block result;
    result.id = id;
    result.along = model::PlanAxis::x;
    result.from_in = -7.25;
    result.to_in = 7.25;
    result.across_in = across_in;
    result.width_in = 3.5;
    result.depth_in = 5.5;
    result.species = "southern-pine";
    result.grade = "no-2";
    result.from_end = {"J1", model::ReportedConnector{"angle both sides", "test value", 1200.0, 1500.0, 600.0, 3.5}};
    result.to_end = {"J2", model::EndGrainFasteners{model::EndGrainFasteners::Kind::nail, 0.162, 3.5, 4, 4.0}};
    return result;
}

}  // namespace

model::BaseDetail example_detail() {
    model::BaseDetail detail;
    detail.name = "example for tests";
    detail.guard.height_in = 42.0;
    detail.post = model::RectangularTube{2.0, 2.0, 0.125, "steel-a500-b"};
    on_deck(detail).plate.id = "P1";
    on_deck(detail).plate.metal = "steel-a36";
    on_deck(detail).plate.thickness_in = 0.375;
    on_deck(detail).plate.outline = model::RectangleOutline{5.5, 7.0, 0.0, {}};
    on_deck(detail).weld = model::Weld{0.1875, "e70"};
    on_deck(detail).layers.decking = model::Decking{"wood-southern-pine", 1.0, ""};
    detail.framing.joists =
        model::Joists{model::PlanAxis::y, 1.5, 9.25, "southern-pine", "no-2", {{"J1", -8.0}, {"J2", 8.0}}};
    detail.framing.blocks = {block("B1", -2.5), block("B2", 2.5)};
    on_deck(detail).anchors = {
        model::AnchorGroup{{}, model::LagScrew{"lag-3/8", 6.0, {}}, {}, "hot-dip galvanized, ASTM A153"}};
    detail.loads.concentrated = model::ConcentratedLoad{};
    detail.loads.stated = true;
    const model::Position places[] = {{-2.0, -2.5}, {2.0, -2.5}, {2.0, 2.5}, {-2.0, 2.5}};
    const char* ids[] = {"A", "B", "C", "D"};
    for (std::size_t index = 0; index < 4; ++index) {
        on_deck(detail).plate.holes.push_back({ids[index], places[index], model::RoundHole{0.4375}});
    }
    return detail;
}

void push_outward_alone(model::BaseDetail& detail) {
    detail.loads.directions = model::Directions::outward;
    detail.guard.handrail = false;
    detail.basis.code = model::BuildingCode::irc_2021;
}

}  // namespace toehold::test
