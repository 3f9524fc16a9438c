// Units, ground, language and layout, and the sheet on paper.
#include "review/review.h"
#include "window/driver.h"

#include "support/compare.h"
#include "window/frame/menus.h"
#include "window/theme/theme.h"

#include <wx/image.h>
#include <wx/print.h>
#include <wx/propgrid/propgrid.h>
#include <wx/textctrl.h>

using namespace toehold;
using namespace std::chrono_literals;

namespace {

/// What stands on the screen in a corner of the sheet, where nothing is drawn.
wxColour sheet_colour(window::DetailFrame& frame, const std::string& picture) {
    static const bool once = (wxImage::AddHandler(new wxPNGHandler), true);
    static_cast<void>(once);
    const wxImage image(wxString::FromUTF8(test::shot(picture).string()));
    REQUIRE(image.IsOk());
    const wxPoint at = frame.sheet().ClientToScreen(wxPoint(2, 2));
    return {image.GetRed(at.x, at.y), image.GetGreen(at.x, at.y), image.GetBlue(at.x, at.y)};
}

double luminance(const wxColour& colour) { return colour.GetLuminance(); }

}  // namespace

TEST_CASE("in SI every length is shown and typed in millimeters, and the detail stays as it was", "[preferences]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    const model::BaseDetail before = frame.session().detail();
    auto& x = test::control<wxTextCtrl>(frame, "place-x");
    auto& grid = test::control<wxPropertyGrid>(frame, "fields");
    test::click(test::hole_on_screen(frame, "A"));
    test::run_command(frame, window::command_si);
    test::let_work(100ms);
    CHECK(frame.GetMenuBar()->IsChecked(window::command_si));
    CHECK(grid.GetPropertyValueAsString("guard/height").Contains("42 in"));  // whole inches stay what they are
    CHECK(frame.session().detail() == before);
    test::shot("preferences-si");
    // A number without a unit counts in millimeters now.
    test::double_click(test::hole_on_screen(frame, "A"));
    test::type("-90");
    test::key(WXK_RETURN);
    CHECK_CLOSE(test::hole(frame, "A").center.x_in, -90.0 / 25.4, 1e-12, 0.0);
    CHECK(x.GetValue() == "-90 mm");
    // One press of an arrow is 2 mm.
    frame.sheet().SetFocus();
    test::key(WXK_RIGHT);
    CHECK_CLOSE(test::hole(frame, "A").center.x_in, -88.0 / 25.4, 1e-9, 0.0);
    CHECK(window::load_preferences(driver.preferences()).system == units::System::si);
    test::run_command(frame, window::command_us);
    CHECK(frame.GetMenuBar()->IsChecked(window::command_us));
}

TEST_CASE("the night negative is dark with pale ink, the paper light", "[preferences]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    const wxColour paper = sheet_colour(frame, "preferences-paper");
    test::run_command(frame, window::command_ground_night);
    test::let_work(200ms);
    const wxColour night = sheet_colour(frame, "preferences-night");
    CHECK(luminance(paper) > 0.8);
    CHECK(luminance(night) < 0.25);
    CHECK(luminance(window::theme_of(drawing::Ground::night).ink) > 0.6);
    CHECK(frame.GetBackgroundColour() == window::theme_of(drawing::Ground::night).paper);
    CHECK(window::load_preferences(driver.preferences()).ground == window::GroundChoice::night);
}

TEST_CASE("begun in French, the menus speak it and numbers keep their points", "[preferences]") {
    test::Driver driver;
    driver.begin([](window::Preferences& preferences) { preferences.language = window::Language::french; });
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    CHECK(frame.GetMenuBar()->GetMenuLabelText(0) == "Fichier");
    CHECK(test::menu_words(frame, wxID_SAVE) == "Enregistrer");
    test::click(test::hole_on_screen(frame, "A"));
    test::double_click(test::hole_on_screen(frame, "A"));
    test::type("-3.5");
    test::key(WXK_RETURN);
    CHECK(test::hole(frame, "A").center.x_in == -3.5);
    test::shot("preferences-french");
    driver.begin([](window::Preferences& preferences) { preferences.language = window::Language::english; });
    window::DetailFrame& english = driver.open_demo(test::holding_demo);
    CHECK(english.GetMenuBar()->GetMenuLabelText(0) == "File");
}

TEST_CASE("the layout and the window's size are as they were left", "[preferences]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    REQUIRE(test::shown_window("fields-panel", &frame) != nullptr);
    test::key(WXK_F4);
    CHECK(test::shown_window("fields-panel", &frame) == nullptr);
    CHECK_FALSE(frame.GetMenuBar()->IsChecked(window::command_show_fields));
    frame.SetSize(1200, 800);
    test::let_work(100ms);
    test::key('W', wxMOD_CONTROL);
    REQUIRE(test::settle([] { return window::application().frames().empty(); }, 5s));
    driver.begin();
    window::DetailFrame& again = driver.open_demo(test::holding_demo);
    CHECK(test::shown_window("fields-panel", &again) == nullptr);
    CHECK(test::shown_window("checks-panel", &again) != nullptr);
    CHECK(again.GetSize() == wxSize(1200, 800));
    test::run_command(again, window::command_reset_layout);
    CHECK(test::shown_window("fields-panel", &again) != nullptr);
}

TEST_CASE("preferences are asked in a dialog, which refuses a nudge of nothing", "[preferences]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    test::Script script;
    script.wait_for("preferences").click("nudge-us").key('A', wxMOD_CONTROL).type("0").press_ok("preferences");
    script.act([] { test::snap("preferences-dialog"); });
    script.click("nudge-us").key('A', wxMOD_CONTROL).type("1/2").press_ok("preferences").begin();
    test::key(',', wxMOD_CONTROL);
    CHECK(script.done());
    test::to_front(frame);
    test::click(test::hole_on_screen(frame, "A"));
    test::key(WXK_RIGHT);
    CHECK(test::hole(frame, "A").center.x_in == -3.25);
    CHECK(window::load_preferences(driver.preferences()).nudge_us_in == 0.5);
}

TEST_CASE("the print preview opens with its page and closes", "[preferences]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    test::key('P', wxMOD_CONTROL | wxMOD_SHIFT);
    REQUIRE(test::settle([] { return test::shown_window("preview") != nullptr; }, 10s));
    auto* preview = dynamic_cast<wxPreviewFrame*>(test::shown_window("preview"));
    REQUIRE(preview != nullptr);
    CHECK(preview->GetControlBar()->GetPrintPreview()->GetMaxPage() >= 1);
    test::let_work(400ms);
    test::shot("preferences-preview");
    preview->Close();
    CHECK(test::settle([] { return test::shown_window("preview") == nullptr; }, 5s));
    CHECK(driver.person.heard.empty());
    CHECK(frame.IsEnabled());
}
