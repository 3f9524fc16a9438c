// A post on the side of a member, in the same window: begun, moved by pointer and keys, named in its own words.
#include "window/driver.h"

#include "review/review.h"
#include "support/compare.h"
#include "support/parts.h"
#include "window/frame/menus.h"

#include <wx/stattext.h>
#include <wx/textctrl.h>
#include <wx/tglbtn.h>

using namespace toehold;
namespace parts = toehold::test::parts;

namespace {

window::DetailFrame& begun_on_the_side(test::Driver& driver) {
    test::run_command(driver.open_demo(test::holding_demo), window::command_new_side_post);
    const auto frames = [] { return window::application().frames(); };
    REQUIRE(test::settle([&] { return frames().size() == 2; }));
    window::DetailFrame& frame = *frames().back();
    REQUIRE(model::kind(frame.session().detail().mount) == model::MountKind::side_fastened);
    test::to_front(frame);
    REQUIRE(test::settle([&] { return test::checked(frame); }));
    return frame;
}

const model::SidePlace& place_a(window::DetailFrame& frame) { return on_side(frame.session().detail()).places.front(); }

wxPoint on_face(window::DetailFrame& frame, double x_in, double z_in) {
    return test::on_screen(frame, editing::Sheet::plan, x_in, z_in);
}

}  // namespace

TEST_CASE("a post on the side is begun from the menu, reviewed, and its fasteners move by hand and keys", "[side]") {
    test::Driver driver;
    window::DetailFrame& frame = begun_on_the_side(driver);
    CHECK(frame.session().problems().empty());
    CHECK(frame.session().failure().empty());
    REQUIRE(frame.session().review() != nullptr);
    CHECK(frame.session().review()->demand);
    const model::BaseDetail start = frame.session().detail();

    test::click(on_face(frame, 0.0, -2.0));
    REQUIRE(frame.session().selection() == std::vector{parts::anchor("A")});
    CHECK(test::control<wxTextCtrl>(frame, "place-y").GetValue() == "-2 in");
    test::key(WXK_DOWN);
    test::key(WXK_DOWN);
    CHECK(place_a(frame) == model::SidePlace{"A", 0.0, 2.25});
    CHECK(test::menu_words(frame, wxID_UNDO) == "Undo: Move fastener A");
    test::key('Z', wxMOD_CONTROL);
    CHECK(frame.session().detail() == start);

    test::drag(on_face(frame, 0.0, -2.0), on_face(frame, 0.02, -3.0));
    CHECK(place_a(frame) == model::SidePlace{"A", 0.0, 3.0});
    test::shot("side-dragged");
    test::key('Z', wxMOD_CONTROL);
    CHECK(frame.session().detail() == start);
}

TEST_CASE("a fastener's place is typed, and the mount's own words stand on tools and menus", "[side]") {
    test::Driver driver;
    window::DetailFrame& frame = begun_on_the_side(driver);
    CHECK(test::menu_words(frame, window::command_add_hole) == "Add fastener");
    CHECK(test::control<wxToggleButton>(frame, "tool-hole").GetLabel() == "Fastener");
    CHECK_FALSE(test::control<wxToggleButton>(frame, "tool-corner").IsEnabled());
    CHECK_FALSE(test::control<wxToggleButton>(frame, "show-bent").IsEnabled());
    CHECK_FALSE(test::control<wxToggleButton>(frame, "show-holds").IsEnabled());

    test::double_click(on_face(frame, 0.0, -2.0));
    test::key(WXK_TAB);
    test::key('A', wxMOD_CONTROL);
    test::type("-2 1/2");
    test::key(WXK_RETURN);
    CHECK(place_a(frame).below_top_in == 2.5);

    // The tool adds one on the face, with the mount's own step.
    test::to_front(frame);
    test::key('H');
    test::click(on_face(frame, 1.0, -5.0));
    REQUIRE(on_side(frame.session().detail()).places.size() == 3);
    CHECK(test::menu_words(frame, wxID_UNDO) == "Undo: Add fastener C");
    test::key(WXK_ESCAPE);
    test::key(WXK_DELETE);
    CHECK(on_side(frame.session().detail()).places.size() == 2);
}

TEST_CASE("pictures of a post on the side", "[.looks]") {
    test::Driver driver;
    window::DetailFrame& frame = begun_on_the_side(driver);
    frame.SetSize(0, 0, 1400, 900);
    test::let_work(std::chrono::milliseconds(600));
    test::move_to({1399, 899});
    REQUIRE(test::settle([&] { return test::reviewed(frame); }, std::chrono::milliseconds(200000)));
    test::shot("side-sheet");
    frame.session().select({parts::anchor("A")});
    test::shot("side-selected");
    test::key(WXK_F7);
    test::let_work(std::chrono::milliseconds(1500));
    test::shot("side-sizes");
    for (const char* const name :
         {"tube-on-a-bracket", "inside-the-rim", "ties-at-both-bolts", "stringer-with-blocks"}) {
        window::DetailFrame& opened = driver.open(std::filesystem::path(TOEHOLD_DATA_FOLDER) / "situations" / "side" /
                                                  (std::string(name) + ".xml"));
        opened.SetSize(0, 0, 1400, 900);
        test::let_work(std::chrono::milliseconds(600));
        test::shot(std::string("side-") + name);
        driver.close_all();
    }
}
