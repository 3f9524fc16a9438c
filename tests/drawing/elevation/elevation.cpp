#include "drawing/annotation/overlay.h"
#include "drawing/drawings.h"
#include "drawing/scene_reading.h"
#include "support/compare.h"
#include "support/example.h"
#include "support/parts.h"

#include <algorithm>
#include <numbers>

using namespace toehold;
namespace parts = toehold::test::parts;

namespace {

constexpr double pi = std::numbers::pi;

drawing::Overlay pushed(double direction_rad) {
    drawing::Overlay overlay;
    overlay.push = drawing::PushShown{direction_rad, 200.0, 0.0, 42.0, false};
    return overlay;
}

drawing::Scene elevation_of(const catalog::Resolved& resolved, const drawing::Overlay* overlay = nullptr) {
    return drawing::elevation({resolved.detail, &resolved, overlay, units::System::us});
}

/// Tip of the arrow of the push that stands highest.
drawing::Point arrow_tip(const drawing::Scene& scene) {
    drawing::Point tip{0.0, -1e9};
    for (const drawing::Path& path : test::paths(scene, parts::push)) {
        if (path.closed && path.fill == drawing::Fill::demand && path.contours[0][0].at.y > tip.y)
            tip = path.contours[0][0].at;
    }
    return tip;
}

}  // namespace

TEST_CASE("The elevation is the guard to scale", "[drawing][elevation]") {
    catalog::Resolved resolved = test::example_resolved();
    const drawing::Scene scene = elevation_of(resolved);
    const auto post = test::paths(scene, parts::post);
    REQUIRE(post.size() == 1);
    CHECK(test::box(post[0]) == drawing::Box{{-1.0, 0.375}, {1.0, 42.0}});
    CHECK(test::says(scene, "guard 42"));
    CHECK(test::says(scene, "lever arm 42"));
    CHECK(test::says(scene, "joists 1 1/2 \u00d7 9 1/4"));
    // A plate 3/8 below the walking surface: the arm is longer than the guard is high.
    on_deck(resolved.detail).plate_below_surface_in = 0.375;
    CHECK(test::says(elevation_of(resolved), "guard 42"));
    CHECK(test::says(elevation_of(resolved), "lever arm 42 3/8"));
}

// 200 lb at 42 in: 8400 lb in.
TEST_CASE("The push acts at its height on the face it meets, with its moment at the foot", "[drawing][elevation]") {
    const catalog::Resolved resolved = test::example_resolved();
    const drawing::Overlay outward = pushed(0.5 * pi), inward = pushed(-0.5 * pi);
    const drawing::Scene out = elevation_of(resolved, &outward), in = elevation_of(resolved, &inward);
    CHECK(arrow_tip(out) == drawing::Point{-1.0, 42.0});
    CHECK(arrow_tip(in) == drawing::Point{1.0, 42.0});
    CHECK(test::says(out, "200 lb at 42 in"));
    const auto words = test::words(out);
    CHECK(std::any_of(words.begin(), words.end(), [](const std::string& one) { return one.find("8400") == 0; }));
}

TEST_CASE("A push along the rail is seen end on", "[drawing][elevation]") {
    const catalog::Resolved resolved = test::example_resolved();
    const drawing::Overlay along = pushed(0.0);
    const auto rings = test::circles(elevation_of(resolved, &along), parts::push);
    REQUIRE_FALSE(rings.empty());
    CHECK(rings.front().center.at == drawing::Point{0.0, 42.0});
}

TEST_CASE("Supports stand on the sheet or are named at its edge", "[drawing][elevation]") {
    catalog::Resolved resolved = test::example_resolved();
    model::Framing& framing = resolved.detail.framing;
    framing.joists->from_in = -96.0;
    framing.joists->to_in = 9.0;
    framing.supports = {{"S1", model::JoistSupport::Kind::ledger, -96.0, 0.0, {}},
                        {"S2", model::JoistSupport::Kind::beam, -12.0, 3.0, {}}};
    const drawing::Scene scene = elevation_of(resolved);
    CHECK(test::says(scene, "beam S2"));
    CHECK(test::says(scene, "\u2190 ledger S1 at 96"));
    const auto beam = test::paths(scene, parts::beam("S2"));
    REQUIRE_FALSE(beam.empty());
    CHECK(test::box(beam[0]).low.x == -13.5);
    CHECK(test::box(beam[0]).high.x == -10.5);
    CHECK(test::box(beam[0]).high.y == -10.25);  // under 1 in of decking and a joist of 9 1/4
}

TEST_CASE("The elevation draws only parts that the detail has", "[drawing][elevation]") {
    const catalog::Resolved resolved = test::example_resolved();
    const drawing::Overlay overlay = pushed(0.5 * pi);
    const std::vector<model::PartId> known = model::parts(resolved.detail);
    const std::set<model::PartId> drawn = test::parts_drawn(elevation_of(resolved, &overlay));
    for (const model::PartId& part : drawn) {
        INFO(model::key(part));
        CHECK(std::find(known.begin(), known.end(), part) != known.end());
    }
    for (const model::PartId& part : {parts::guard, parts::push, parts::post, parts::plate, parts::decking,
                                      parts::anchor("A"), parts::block("B1"), parts::joist("J1")}) {
        INFO(model::key(part));
        CHECK(drawn.count(part) == 1);
    }
}
