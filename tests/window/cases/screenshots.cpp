// Pictures of the window, for people: see tests/window/screenshots.sh.
#include "window/driver.h"

#include "support/compare.h"
#include "support/parts.h"
#include "window/frame/menus.h"

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
