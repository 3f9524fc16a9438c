#pragma once
// Variations of the example that tests of metal parts share, and a demand of several pushes.
#include "support/example.h"

#include <numbers>

namespace toehold::test {

/// Values of 6061-T6 and its weld zone (from memory), for arithmetic only.
inline catalog::Metal example_aluminum() {
    return {"aluminum", "test aluminum", catalog::MetalKind::aluminum, 35000.0, 38000.0, 10.1e6, 15000.0, 24000.0, {}};
}

inline void make_aluminum(catalog::Resolved& resolved) {
    on_deck(resolved).plate_metal = resolved.post_metal = example_aluminum();
    on_deck(resolved).filler = catalog::Filler{"filler", "test filler", catalog::MetalKind::aluminum, 17000.0, {}};
}

/// 200 lb at 42 in towards each of these directions; no anchor force.
inline demand::Demand pushes(const catalog::Resolved& resolved, const std::vector<double>& directions_deg) {
    demand::Demand demand = example_demand(resolved, {}, {});
    const demand::State plain = demand.states.at(0);
    demand.states.clear();
    for (const double direction : directions_deg) {
        demand::State state = plain;
        state.direction_rad = direction * std::numbers::pi / 180.0;
        demand.states.push_back(state);
    }
    return demand;
}

/// A 2 x 2 x 3/16 in tube over a solid stub 1 9/16 in square, 6 in high, of the tube's steel; plate 3/8 in, weld 3/16
/// in.
inline catalog::Resolved post_over_stub_example() {
    catalog::Resolved resolved = example_resolved();
    auto& tube = std::get<model::RectangularTube>(resolved.detail.post);
    tube.wall_in = 0.1875;
    tube.stub = model::Stub{1.5625, 1.5625, 0.0, 6.0, "steel", model::StubFixing::set_screws};
    on_deck(resolved.detail).weld->leg_in = 0.1875;
    resolved.stub_metal = resolved.post_metal;
    return resolved;
}

/// A 4x4 post (3.5 in square, southern pine No. 2) in a welded steel shoe 6 in high.
inline catalog::Resolved wood_post_example() {
    catalog::Resolved resolved = example_resolved();
    model::WoodPost post{3.5, 3.5, "southern-pine", "no-2", false, {}};
    post.shoe = model::Shoe{model::ShoeAttachment::welded, 4.0, 4.0, 0.25, 6.0, "steel", {}, {}};
    resolved.detail.post = post;
    resolved.post_species = resolved.blocks.at(0).species;
    resolved.post_grade = resolved.blocks.at(0).grade;
    return resolved;
}

}  // namespace toehold::test
