#pragma once
// A base that two lag screws hold, by hand: a rigid plate that turns about its toe edge on a bed that hardly gives, so
// that each screw pulls h/(2 d) for a pound of push; all else far stronger.
//   plate 5.5 x 7 in, screws at y = -2.5, toe edge at y = +3.5: d = 6 in
//   3/8 x 6 lag screws, 0.75 in plate and 1 in decking above the block: thread 6/2 + 1/2 = 3.5 in, of which a tip of
//   7/32 in does not hold: 3.28125 in of thread in southern pine, G 0.55
#include "catalog/resolve.h"
#include "model/mount.h"
#include "support/example_detail.h"
#include "support/shipped.h"

namespace toehold::test {

inline constexpr double screw_arm_in = 6.0, screw_thread_in = 3.28125, screw_gravity = 0.55, screw_in = 0.375;

[[nodiscard]] inline model::BaseDetail two_screws() {
    model::BaseDetail detail = example_detail();
    detail.basis.plate = model::PlateBehaviour::rigid;
    detail.basis.stiffness = model::FixedStiffness{1e8, 1e3, "a plate that turns about its edge"};
    detail.post = model::RectangularTube{3.0, 3.0, 0.25, "steel-a500-b"};
    on_deck(detail).plate.thickness_in = 0.75;
    on_deck(detail).plate.metal = "steel-a572-50";
    on_deck(detail).plate.holes.resize(2);
    on_deck(detail).weld = model::Weld{0.25, "e70"};
    // On a seat and hooked over the top, so that the whole depth carries the shear.
    model::ReportedConnector strong{"angle both sides", "test value", 12000.0, 15000.0, 6000.0, 3.5};
    strong.from_top_in = strong.from_bottom_in = 0.0;
    for (model::Block& block : detail.framing.blocks) block.from_end.connection = block.to_end.connection = strong;
    return detail;
}

[[nodiscard]] inline double lever_in() { return model::lever_height_in(two_screws()); }

}  // namespace toehold::test
