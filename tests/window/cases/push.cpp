// The push looked at: turned by hand and by keys, and its forces by each method.
#include "window/driver.h"

#include "support/compare.h"
#include "window/engine_says.h"

#include <wx/tglbtn.h>

#include <numbers>

using namespace toehold;

namespace {

constexpr double degree = std::numbers::pi / 180.0;

wxPoint in_rose(window::DetailFrame& frame, double direction_deg) {
    const double turn = direction_deg * degree;
    return frame.sheet().ClientToScreen(frame.sheet().pixel_in_rose({0.6 * std::cos(turn), 0.6 * std::sin(turn)}));
}

/// Until the forces shown are those of the push looked at.
void wait_for_push(window::DetailFrame& frame, double direction_deg) {
    REQUIRE(test::settle([&] {
        const auto& push = frame.session().overlay().push;
        return push && std::abs(push->direction_rad - direction_deg * degree) < 1e-9;
    }));
    REQUIRE(test::checked(frame));
}

/// Middle of what the bed presses with.
drawing::Point middle_of_pressure(const demand::DeflectedShape& field) {
    double sum = 0.0, x = 0.0, y = 0.0;
    for (const auto& node : field.nodes) {
        sum += node.pressure_psi;
        x += node.pressure_psi * node.at.x_in;
        y += node.pressure_psi * node.at.y_in;
    }
    REQUIRE(sum > 0.0);
    return {x / sum, y / sum};
}

void press_tool(window::DetailFrame& frame, const wxString& name) {
    test::click(test::middle_of(test::control<wxToggleButton>(frame, name)));
    REQUIRE(test::control<wxToggleButton>(frame, name).GetValue());
}

}  // namespace

TEST_CASE("the push is turned by the rose's hand, and anchors and bearing zone follow", "[push]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    const model::BaseDetail detail = frame.session().detail();
    for (const double direction_deg : {30.0, 195.0}) {
        test::drag(in_rose(frame, direction_deg - 60.0), in_rose(frame, direction_deg));
        REQUIRE(frame.session().display().direction_rad);
        CHECK_CLOSE(*frame.session().display().direction_rad, direction_deg * degree, 1e-12, 0.0);
        wait_for_push(frame, direction_deg);
        const drawing::Overlay overlay = frame.session().overlay();
        const demand::PushResult truth = test::under_push(detail, direction_deg * degree);
        REQUIRE(overlay.anchors.size() == truth.flexible.size());
        for (std::size_t at = 0; at < truth.flexible.size(); ++at) {
            REQUIRE(overlay.anchors[at].tension_lb);
            CHECK_CLOSE(*overlay.anchors[at].tension_lb, truth.flexible[at].tension_lb, 1e-9, 1e-9);
        }
        // The plate presses where the push leans on it, and the anchors behind it pull.
        REQUIRE(overlay.field);
        const drawing::Point middle = middle_of_pressure(*overlay.field);
        const double cosine = std::cos(direction_deg * degree), sine = std::sin(direction_deg * degree);
        CHECK(middle.x * cosine + middle.y * sine > 2.0);
        test::shot("push-" + std::to_string(static_cast<int>(direction_deg)));
    }
    test::key('G', wxMOD_CONTROL);
    CHECK_FALSE(frame.session().display().direction_rad);
    CHECK_FALSE(frame.unsaved());  // looking changes nothing
}

TEST_CASE("the brackets turn the push by whole steps of 5 degrees", "[push]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    frame.session().turn_push(88.0 * degree);
    wait_for_push(frame, 88.0);
    test::key(']');
    wait_for_push(frame, 90.0);
    test::key(']');
    wait_for_push(frame, 95.0);
    test::key('[');
    wait_for_push(frame, 90.0);
    frame.session().turn_push(88.0 * degree);
    test::key('[');
    wait_for_push(frame, 85.0);
}

TEST_CASE("by hand, rigid and flexible: the figures are the engine's for each", "[push]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    frame.session().turn_push(90.0 * degree);
    wait_for_push(frame, 90.0);
    const demand::PushResult truth = test::under_push(frame.session().detail(), 90.0 * degree);

    press_tool(frame, "method-rigid");
    drawing::Overlay overlay = frame.session().overlay();
    for (std::size_t at = 0; at < truth.rigid.size(); ++at) {
        REQUIRE(overlay.anchors[at].tension_lb);
        CHECK_CLOSE(*overlay.anchors[at].tension_lb, truth.rigid[at].tension_lb, 1e-9, 1e-9);
    }
    // A square base under a push square to it: the two heel anchors pull alike, the toe ones hardly.
    CHECK_CLOSE(*overlay.anchors[0].tension_lb, *overlay.anchors[1].tension_lb, 1e-6, 0.0);
    CHECK(*overlay.anchors[2].tension_lb < 0.1 * *overlay.anchors[0].tension_lb);

    press_tool(frame, "method-hand");
    overlay = frame.session().overlay();
    REQUIRE(overlay.anchors[0].tension_lb);
    // 200 lb at 42 in over two anchors 8 1/2 in from the toe edge.
    CHECK_CLOSE(*overlay.anchors[0].tension_lb, 200.0 * 42.0 / (2.0 * 8.5), 1e-9, 0.0);
    CHECK_FALSE(overlay.field);
    test::shot("push-by-hand");

    press_tool(frame, "method-flexible");
    overlay = frame.session().overlay();
    CHECK_CLOSE(*overlay.anchors[0].tension_lb, truth.flexible[0].tension_lb, 1e-9, 0.0);
}
