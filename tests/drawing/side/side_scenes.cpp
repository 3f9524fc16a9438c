// Drawings of a post beside a rim, against places worked out by hand.
#include "drawing/annotation/overlay.h"
#include "drawing/drawings.h"
#include "drawing/scene_reading.h"
#include "support/beside_rim.h"
#include "support/compare.h"
#include "support/parts.h"
#include "support/shipped.h"

#include <cmath>
#include <limits>
#include <numbers>

using namespace toehold;
namespace parts = toehold::test::parts;

namespace {

const model::PartId post{model::PartKind::post};

struct Drawn {
    catalog::Resolved resolved;
    drawing::Overlay overlay = {};
    bool with_forces = false;

    [[nodiscard]] drawing::Subject subject() const {
        return {resolved.detail, &resolved, with_forces ? &overlay : nullptr, units::System::us};
    }
};

Drawn drawn(const model::BaseDetail& detail = test::beside_rim()) { return {test::resolved_by_shipped(detail)}; }

/// 500 lb outward at the top; anchor U pulls 2,000 lb, the post's lower end presses with 400 psi over its lowest 3 in.
Drawn pushed(const model::BaseDetail& detail = test::beside_rim()) {
    Drawn one = drawn(detail);
    one.with_forces = true;
    one.overlay.push = drawing::PushShown{0.5 * std::numbers::pi, 500.0, 0.0, 37.0, true};
    for (const catalog::Anchor& anchor : one.resolved.anchors) {
        drawing::AnchorMark mark;
        mark.part = model::anchor_part(anchor.id);
        mark.tension_lb = anchor.id == "U" ? 2000.0 : 150.0;
        mark.largest_tension_lb = 2000.0;
        mark.shear_lb = 100.0;
        mark.shear_direction_rad = -0.5 * std::numbers::pi;
        one.overlay.anchors.push_back(mark);
    }
    one.overlay.bearings = {{parts::rim("R1"), 2150.0, 400.0, 1.75, -9.25, -6.25}};
    return one;
}

/// Around all paths of a part.
drawing::Box extent(const drawing::Scene& scene, const model::PartId& part) {
    constexpr double far = std::numeric_limits<double>::max();
    drawing::Box all{{far, far}, {-far, -far}};
    for (const drawing::Path& path : test::paths(scene, part)) {
        const drawing::Box one = test::box(path);
        all = {{std::min(all.low.x, one.low.x), std::min(all.low.y, one.low.y)},
               {std::max(all.high.x, one.high.x), std::max(all.high.y, one.high.y)}};
    }
    return all;
}

}  // namespace

// Bolts of 1/2 in the usual hole, 1/16 over; places 2 and 6 1/2 below the top of a rim 9 1/4 deep.
TEST_CASE("The face shows holes where the file has them, with their heights in a chain", "[drawing][side]") {
    const Drawn one = drawn();
    const drawing::Scene face = drawing::plan(one.subject(), {});
    const auto holes = test::circles(face, parts::anchor("U"));
    REQUIRE(holes.size() == 2);
    CHECK(holes[1].center.at == drawing::Point{0.0, -2.0});
    CHECK_CLOSE(holes[1].radius_in, 0.28125, 0.0, 1e-12);
    CHECK_CLOSE(holes[0].radius_in, 0.6875, 0.0, 1e-12);  // of the washer
    for (const char* const words : {"2", "4 1/2", "2 3/4", "post 9 1/4", "R1", "J1", "B1"})
        CHECK(test::says(face, words));
    CHECK(test::box(test::paths(face, post).front()).low.y == -9.25);
    CHECK(test::sound(face));
}

// The post is 3 1/2 deep, so that its face towards the rim stands at y = -1 3/4; under the head a washer of 0.109, and
// so its underside at 1.859. The rim is 3 in of two plies: the nut's washer bears at -4 3/4. Head and nut are 0.65 and
// 0.87 of 1/2 in high, the bolt ends 0.3 of a nut beyond it: 1.859 + 0.325 and -4.75 - 0.109 - 1.3 x 0.435.
TEST_CASE("The section shows a bolt from its head to its nut through post and rim", "[drawing][side]") {
    const Drawn one = drawn();
    const drawing::Scene section = drawing::section(one.subject(), {});
    const drawing::Box bolt = extent(section, parts::anchor("U"));
    CHECK_CLOSE(bolt.high.x, 2.184, 0.0, 1e-9);
    CHECK_CLOSE(bolt.low.x, -5.4245, 0.0, 1e-9);
    CHECK(test::box(test::paths(section, parts::rim("R1")).front()) == drawing::Box{{-4.75, -9.25}, {-1.75, 0.0}});
    CHECK(test::says(section, "rim R1, 2 of 1 1/2 × 9 1/4"));
    CHECK(test::sound(section));
}

// Where no joist says how far the deck goes, its boards end at the member's outward face and not beyond the post.
TEST_CASE("Boards end where the member does", "[drawing][side]") {
    model::BaseDetail detail = test::beside_rim();
    detail.framing.joists.reset();
    const Drawn one = drawn(detail);
    CHECK(test::box(test::paths(drawing::section(one.subject(), {}), parts::decking).front()).high.x == -1.75);
    CHECK(test::box(test::paths(drawing::elevation(one.subject()), parts::decking).front()).high.x == -1.75);
}

// An inside post stands the other way round: the rim at larger y.
TEST_CASE("Inside the rim everything is turned round", "[drawing][side]") {
    model::BaseDetail detail = test::beside_rim();
    on_side(detail).face = model::MemberFace::inside;
    detail.framing.rims.front().at_in = 3.25;
    const Drawn one = drawn(detail);
    const drawing::Scene section = drawing::section(one.subject(), {});
    CHECK_CLOSE(extent(section, parts::anchor("U")).low.x, -2.184, 0.0, 1e-9);
    CHECK_CLOSE(extent(section, parts::anchor("U")).high.x, 5.4245, 0.0, 1e-9);
    CHECK(test::sound(drawing::from_above(one.subject())));
}

TEST_CASE("Pulls stand at the heads and the face presses in a wedge", "[drawing][side]") {
    const Drawn one = pushed();
    const drawing::Scene section = drawing::section(one.subject(), {});
    for (const char* const words : {"2000 lb", "150 lb", "400 psi", "500 lb at 37 in", "toward 90°, governing"})
        CHECK(test::says(section, words));
    const drawing::Scene face = drawing::plan(one.subject(), {});
    CHECK(test::says(face, "2000 lb"));
    CHECK(test::sound(face));
    CHECK(test::sound(section));
    CHECK(test::sound(drawing::elevation(one.subject())));
    CHECK(test::sound(drawing::from_above(one.subject())));
}

TEST_CASE("The elevation's post passes down the face to its lower end", "[drawing][side]") {
    const Drawn one = drawn();
    const drawing::Scene elevation = drawing::elevation(one.subject());
    CHECK(extent(elevation, post).low == drawing::Point{-1.75, -9.25});
    CHECK(extent(elevation, post).high == drawing::Point{1.75, 37.0});  // 36 over boards of 1 in
}

// 6 x 7 in, its upper edge 1 in down.
TEST_CASE("A bracket plate stands on the face with its holes", "[drawing][side]") {
    const Drawn one = drawn(test::bracket_beside_rim());
    const drawing::Scene face = drawing::plan(one.subject(), {});
    CHECK(test::box(test::paths(face, parts::plate).front()) == drawing::Box{{-3.0, -8.0}, {3.0, -1.0}});
    CHECK(test::circles(face, parts::anchor("B")).front().center.at == drawing::Point{2.0, -2.0});
    CHECK(test::says(drawing::section(one.subject(), {}), "bracket plate 3/4"));
}

// 36.87 deg: 3 in of rise in 4 in of run; an effective depth of 4 in measures 5 in plumb.
TEST_CASE("A stringer's edges rise with the stair", "[drawing][side]") {
    model::BaseDetail detail = test::beside_rim();
    on_side(detail).stringer = model::StringerSlope{std::atan(0.75) * 180.0 / std::numbers::pi, 4.0, ""};
    const Drawn one = drawn(detail);
    const drawing::Scene face = drawing::plan(one.subject(), {});
    const drawing::Path strip = test::paths(face, parts::rim("R1")).front();
    const std::vector<drawing::Point> corners = test::points(strip);
    REQUIRE(corners.size() == 4);
    CHECK_CLOSE(corners[1].y - corners[0].y, 0.75 * (corners[1].x - corners[0].x), 1e-12, 1e-12);
    CHECK_CLOSE(corners[2].y - corners[1].y, 5.0, 1e-12, 1e-12);
}

TEST_CASE("A tie is drawn back to its joist, from above and in the section", "[drawing][side]") {
    model::BaseDetail detail = test::beside_rim();
    on_side(detail).ties = {test::tie_to_joist()};
    Drawn one = pushed(detail);
    one.overlay.ties_lb = {1200.0};
    const drawing::Scene section = drawing::section(one.subject(), {});
    CHECK(test::says(section, "T1 to J2"));
    CHECK(test::says(section, "1200 lb"));
    CHECK(test::says(drawing::from_above(one.subject()), "T1 to J2"));
}

TEST_CASE("Details that lack what they need are drawn without it", "[drawing][side][bad-input]") {
    constexpr double nan = std::numeric_limits<double>::quiet_NaN();
    std::vector<model::BaseDetail> odd(5, test::beside_rim());
    on_side(odd[0]).member = "nobody";
    on_side(odd[1]).places.clear();
    on_side(odd[2]).places.front().below_top_in = nan;
    odd[3].framing = {};
    on_side(odd[4]).post_bottom_below_top_in = 1e300;
    for (const model::BaseDetail& detail : odd) {
        const drawing::Subject subject{detail, nullptr, nullptr, units::System::us};
        CHECK(test::sound(drawing::plan(subject, {true, true, {parts::anchor("U"), parts::plate}})));
        CHECK(test::sound(drawing::section(subject, {})));
        CHECK(test::sound(drawing::elevation(subject)));
        CHECK(test::sound(drawing::from_above(subject)));
    }
}
