#include "catalog/sample_detail.h"

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
    return result;
}

}  // namespace

model::BaseDetail sample_detail() {
    model::BaseDetail detail;
    detail.guard.height_in = 42.0;
    detail.post = model::RectangularTube{2.0, 2.0, 0.125, "steel-a500-b"};
    on_deck(detail).plate.metal = "steel-a36";
    on_deck(detail).plate.thickness_in = 0.375;
    on_deck(detail).plate.outline = model::RectangleOutline{5.0, 7.0, 0.0, {}};
    const model::Position places[] = {{-1.75, -2.75}, {1.75, -2.75}, {1.75, 2.75}, {-1.75, 2.75}};
    for (std::size_t index = 0; index < std::size(places); ++index) {
        const std::string id(1, static_cast<char>('A' + static_cast<int>(index)));
        on_deck(detail).plate.holes.push_back({id, places[index], model::RoundHole{0.4375}});
    }
    on_deck(detail).weld = model::Weld{0.1875, "e70"};
    on_deck(detail).anchors = {model::AnchorGroup{{}, model::LagScrew{"lag-3/8", 6.0, {}}, {}, ""}};
    on_deck(detail).layers.decking = model::Decking{"wood-southern-pine", 1.0, ""};
    detail.framing.joists = model::Joists{model::PlanAxis::y, 1.5, 9.25, "southern-pine", "no-2", {}};
    detail.framing.blocks = {block("B1", -2.75), block("B2", 2.75)};
    return detail;
}

}  // namespace toehold::test
