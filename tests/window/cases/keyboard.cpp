// Everything within reach of the keyboard.
#include "window/driver.h"

#include "support/compare.h"
#include "support/parts.h"
#include "window/frame/menus.h"

#include <map>
#include <set>

using namespace toehold;
namespace parts = toehold::test::parts;
using namespace std::chrono_literals;

namespace {

/// Name of the nearest window around the focus that has one of these names.
std::string focus_among(const std::set<std::string>& names) {
    for (const wxWindow* window = wxWindow::FindFocus(); window != nullptr; window = window->GetParent()) {
        const std::string name = window->GetName().utf8_string();
        if (names.count(name) != 0) return name;
    }
    return {};
}

}  // namespace

TEST_CASE("Tab reaches sheet, properties and checks, and leaves the sheet for the places with Ctrl", "[keyboard]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    const std::set<std::string> wanted{"sheet", "place-x", "fields-filter", "fields", "checks"};
    test::click(test::hole_on_screen(frame, "A"));  // so that a place can be typed
    test::key(WXK_TAB, wxMOD_CONTROL);
    CHECK(focus_among(wanted) == "place-x");
    CHECK(frame.session().selection() == std::vector<model::PartId>{parts::anchor("A")});
    std::set<std::string> reached;
    for (int presses = 0; presses < 90 && reached != wanted; ++presses) {
        const std::string name = focus_among(wanted);
        if (!name.empty()) reached.insert(name);
        test::tap(WXK_TAB);
        test::let_work(25ms);
    }
    CHECK(reached == wanted);
}

TEST_CASE("the sheet's parts are chosen by Tab, and moved by arrows without a pointer", "[keyboard]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    for (int presses = 0; presses < 20; ++presses) {
        if (frame.session().selection() == std::vector<model::PartId>{parts::anchor("A")}) break;
        test::key(WXK_TAB);
    }
    REQUIRE(frame.session().selection() == std::vector<model::PartId>{parts::anchor("A")});
    test::key(WXK_DOWN);
    CHECK(test::hole(frame, "A").center == model::Position{-3.75, -3.875});
}

TEST_CASE("the menus open by their mnemonics, and a step is undone from there", "[keyboard]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    const model::BaseDetail before = frame.session().detail();
    test::click(test::hole_on_screen(frame, "A"));
    test::key(WXK_RIGHT);
    REQUIRE(frame.unsaved());
    test::key('E', wxMOD_ALT);
    test::let_work(200ms);
    test::snap("keyboard-edit-menu");
    test::key(WXK_RETURN);  // the first item of the menu
    test::let_work(100ms);
    CHECK(frame.session().detail() == before);
}

TEST_CASE("no two items of a menu answer to the same letter, in either language", "[keyboard]") {
    test::Driver driver;
    for (const auto language : {window::Language::french, window::Language::english}) {
        driver.begin([language](window::Preferences& preferences) { preferences.language = language; });
        window::DetailFrame& frame = driver.open_demo(test::holding_demo);
        const wxMenuBar& bar = *frame.GetMenuBar();
        for (std::size_t at = 0; at < bar.GetMenuCount(); ++at) {
            std::map<wxUniChar, wxString> taken;
            for (const wxMenuItem* item : bar.GetMenu(at)->GetMenuItems()) {
                const wxString label = item->GetItemLabel();
                const int mark = label.Find('&');
                if (mark == wxNOT_FOUND) continue;
                const wxUniChar letter = label.Upper()[static_cast<std::size_t>(mark) + 1];
                INFO(label.utf8_string() << " and " << taken[letter].utf8_string());
                CHECK(taken[letter].empty());
                taken[letter] = label;
            }
        }
    }
}

TEST_CASE("F1 opens the help, Escape closes it", "[keyboard]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    test::key(WXK_F1);
    REQUIRE(test::settle([] { return test::shown_window("help") != nullptr; }, 5s));
    test::let_work(200ms);
    test::shot("keyboard-help");
    test::shown_window("help")->Raise();
    test::let_work(100ms);
    test::key(WXK_ESCAPE);
    CHECK(test::settle([] { return test::shown_window("help") == nullptr; }, 5s));
    CHECK_FALSE(frame.unsaved());
}

TEST_CASE("a hand for holes by its key, set by a click, left by Escape", "[keyboard]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    test::key('h');
    CHECK(frame.sheet().tool() == window::Tool::hole);
    test::click(test::on_screen(frame, editing::Sheet::plan, 0.0, -2.5));
    REQUIRE(on_deck(frame.session().detail()).plate.holes.size() == 5);
    CHECK(test::hole(frame, "E").center == model::Position{0.0, -2.5});
    test::key(WXK_ESCAPE);
    CHECK(frame.sheet().tool() == window::Tool::select);
}
