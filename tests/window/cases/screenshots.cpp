// Pictures of the window, for people: see tests/window/screenshots.sh.
#include "window/driver.h"

#include "support/compare.h"
#include "support/parts.h"
#include "window/charts/chart_pane.h"
#include "window/frame/menus.h"

#include <wx/choice.h>

#include <numbers>

using namespace toehold;
namespace parts = toehold::test::parts;
using namespace std::chrono_literals;

namespace {

window::DetailFrame& shown(test::Driver& driver, const char* name) {
    window::DetailFrame& frame = driver.open_demo(name);
    frame.SetSize(0, 0, 1400, 900);
    test::let_work(400ms);
    test::move_to({1399, 899});
    return frame;
}

}  // namespace

/// The region is waited for until all of it is confirmed.
void shoot_region(window::DetailFrame& frame, wxPoint from, wxPoint to, const std::string& name) {
    test::move_to(from);
    test::button_down();
    test::move_to({from.x + 20, from.y - 20});
    test::move_to(to);
    const auto known = [&frame] { return frame.sheet().where_it_holds().known() != nullptr; };
    CHECK(test::settle(known, 20s));
    test::shot(name + "-begun");
    CHECK(test::settle([&] { return known() && frame.sheet().where_it_holds().known()->last; }, 200s));
    test::shot(name);
    test::key(WXK_ESCAPE);
    test::button_up();
}

void shoot_chart(window::DetailFrame& frame, int kind, const std::string& name) {
    auto& kinds = test::control<wxChoice>(frame, "chart-kind");
    if (kinds.GetSelection() != kind) {
        kinds.SetSelection(kind);
        wxCommandEvent chosen(wxEVT_CHOICE, kinds.GetId());
        kinds.ProcessWindowEvent(chosen);
    }
    auto& line = test::control<wxWindow>(frame, "chart-line");
    auto& chart = test::control<window::ChartPane>(frame, "chart");
    CHECK(test::settle([&] { return !line.IsShown() && !chart.chart().spots.empty(); }, 250s));
    test::shot(name);
}

TEST_CASE("pictures of where it holds", "[.looks]") {
    test::Driver driver;
    window::DetailFrame& frame = shown(driver, test::holding_demo);
    const auto plan = [&](double x_in, double y_in) {
        return test::on_screen(frame, editing::Sheet::plan, x_in, y_in);
    };
    shoot_region(frame, test::hole_on_screen(frame, "A"), plan(-3.625, -3.625), "where-it-holds");
    shoot_region(frame, plan(4.75, 0.5), plan(5.0, 0.5), "where-the-edge-holds");
    shoot_region(frame, plan(2.0, -3.75), plan(2.0, -4.0), "where-the-block-holds");
}

TEST_CASE("pictures of charts", "[.looks]") {
    test::Driver driver;
    window::DetailFrame& frame = shown(driver, test::holding_demo);
    test::key(WXK_F9);
    shoot_chart(frame, 0, "chart-ratios");
    shoot_chart(frame, 1, "chart-tornado");
    shoot_chart(frame, 2, "chart-map");
}

TEST_CASE("pictures", "[.screenshots]") {
    test::Driver driver;
    window::DetailFrame* frame = &shown(driver, test::holding_demo);
    frame->session().select({parts::anchor("A")});
    test::shot("sheet");
    test::run_command(*frame, window::command_ground_night);
    test::let_work(300ms);
    test::shot("night");
    test::run_command(*frame, window::command_ground_paper);
    driver.close_all();

    frame = &shown(driver, test::failing_demo);
    test::key(WXK_F8);
    test::key('E', wxMOD_CONTROL);
    test::shot("inadequate");
    driver.close_all();

    frame =
        &driver.open(std::filesystem::path(TOEHOLD_DATA_FOLDER) / "situations" / "side" / "solid-rim-on-angles.xml");
    frame->SetSize(0, 0, 1400, 900);
    test::move_to({1399, 899});
    REQUIRE(test::checked(*frame));
    frame->session().select({parts::anchor("U")});
    test::let_work(600ms);
    test::shot("side");
    driver.close_all();

    frame = &shown(driver, test::holding_demo);
    frame->session().turn_push(30.0 * std::numbers::pi / 180.0);
    REQUIRE(test::checked(*frame));
    test::run_command(*frame, window::command_bent);
    test::let_work(600ms);
    test::shot("push-turned");
    driver.begin([](window::Preferences& preferences) { preferences.language = window::Language::french; });
    frame = &shown(driver, test::holding_demo);
    test::shot("french");
}
