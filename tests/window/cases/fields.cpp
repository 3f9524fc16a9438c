// The properties, filled in as a person types.
#include "window/driver.h"

#include "support/compare.h"
#include "window/panels/fields/fields_panel.h"

#include <wx/propgrid/propgrid.h>
#include <wx/textctrl.h>

using namespace toehold;
using namespace std::chrono_literals;

namespace {

/// The line of a field, in sight, with the pointer on its value.
wxPoint value_of(window::DetailFrame& frame, const std::string& path) {
    auto& grid = test::control<wxPropertyGrid>(frame, "fields");
    wxPGProperty* line = grid.GetPropertyByName(path);
    if (line == nullptr) throw std::runtime_error("no field " + path);
    grid.EnsureVisible(line);
    test::let_work(50ms);
    const wxRect row = grid.GetPropertyRect(line, line);
    const int x = grid.GetSplitterPosition() + 30;
    return grid.ClientToScreen(grid.CalcScrolledPosition(wxPoint(x, row.y + row.height / 2)));
}

wxString help(window::DetailFrame& frame) { return test::control<wxTextCtrl>(frame, "fields-help").GetValue(); }

}  // namespace

TEST_CASE("a block's depth is typed in its field, and what cannot be read is refused and kept", "[fields]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    auto& grid = test::control<wxPropertyGrid>(frame, "fields");

    auto& filter = test::control<wxTextCtrl>(frame, "fields-filter");
    test::click(test::middle_of(filter));
    test::type("block b1 depth");
    REQUIRE(grid.GetPropertyByName("framing/block[B1]/depth") != nullptr);
    CHECK(grid.GetPropertyByName("framing/block[B2]/depth") == nullptr);
    CHECK(grid.GetPropertyByName("post/width") == nullptr);

    test::click(value_of(frame, "framing/block[B1]/depth"));
    REQUIRE(grid.GetEditorTextCtrl() != nullptr);
    CHECK(grid.GetEditorTextCtrl()->GetValue() == "7 1/4 in");
    test::key('A', wxMOD_CONTROL);
    test::type("5 1/2");
    test::key(WXK_RETURN);
    CHECK(frame.session().detail().framing.blocks[0].depth_in == 5.5);
    CHECK(frame.session().detail().framing.blocks[1].depth_in == 7.25);
    CHECK(grid.GetPropertyValueAsString("framing/block[B1]/depth") == "5 1/2 in");
    const model::BaseDetail before = frame.session().detail();

    test::click(value_of(frame, "framing/block[B1]/depth"));
    test::key('A', wxMOD_CONTROL);
    test::type("5 1/");
    test::key(WXK_RETURN);
    CHECK(frame.session().detail() == before);
    CHECK(help(frame).StartsWith("Not accepted: "));
    CHECK(help(frame).Contains("3 3/8 in"));
    REQUIRE(grid.GetEditorTextCtrl() != nullptr);
    CHECK(grid.GetEditorTextCtrl()->GetValue() == "5 1/");
    test::shot("fields-refused");
    test::key(WXK_ESCAPE);
    CHECK(grid.GetPropertyValueAsString("framing/block[B1]/depth") == "5 1/2 in");

    // In the other system's unit, and then taken back.
    test::click(value_of(frame, "framing/block[B1]/depth"));
    test::key('A', wxMOD_CONTROL);
    test::type("140 mm");
    test::key(WXK_RETURN);
    CHECK_CLOSE(frame.session().detail().framing.blocks[0].depth_in, 140.0 / 25.4, 1e-12, 0.0);
    CHECK(grid.GetPropertyValueAsString("framing/block[B1]/depth") == "140 mm");
    test::to_front(frame);
    test::key('Z', wxMOD_CONTROL);
    test::key('Z', wxMOD_CONTROL);
    CHECK(frame.session().detail().framing.blocks[0].depth_in == 7.25);
    CHECK_FALSE(frame.unsaved());
}

TEST_CASE("a lag screw's size is found in the list by typing, and the detail takes it", "[fields]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    auto& grid = test::control<wxPropertyGrid>(frame, "fields");
    test::click(value_of(frame, "anchors[1]/size"));
    REQUIRE(grid.GetEditorControlSecondary() != nullptr);
    test::Script pick;
    pick.wait_for("choice").type("lag-1/2").act([] { test::snap("fields-choice"); }).key(WXK_RETURN).begin();
    test::click(test::middle_of(*grid.GetEditorControlSecondary()));
    CHECK(pick.done());
    test::let_work(100ms);
    const auto& fastener = on_deck(frame.session().detail()).anchors[0].fastener;
    REQUIRE(std::holds_alternative<model::LagScrew>(fastener));
    CHECK(std::get<model::LagScrew>(fastener).size == "lag-1/2");
    CHECK(frame.unsaved());
}
