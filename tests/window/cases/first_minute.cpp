// From nothing to an adequate detail: a job told, sizes looked for, one taken. Counted in presses of the pointer.
#include "window/driver.h"

#include "support/compare.h"
#include "window/charts/chart_pane.h"
#include "window/controls/flow_list.h"
#include "window/controls/picture_choice.h"
#include "window/engine_says.h"
#include "window/frame/menus.h"
#include "window/panels/verdict_strip.h"
#include "window/sizes/sizes_page.h"

#include <wx/button.h>
#include <wx/choice.h>
#include <wx/combobox.h>

#include <iostream>

using namespace toehold;
using namespace std::chrono_literals;

namespace {

/// Presses, counted.
class Presses {
  public:
    void on(wxPoint place) {
        ++count_;
        test::click(place);
    }
    void on(const wxString& name, const wxWindow* within = nullptr) {
        wxWindow* found = nullptr;
        REQUIRE(test::settle([&] { return (found = test::shown_window(name, within)) != nullptr; }, 20s));
        on(test::middle_of(*found));
    }
    [[nodiscard]] int count() const { return count_; }

  private:
    int count_ = 0;
};

/// Where a row of a list is on the screen.
wxPoint row_of(window::FlowList& list, std::size_t row) {
    const wxRect place = list.GetItemRect(row);
    return list.ClientToScreen(wxPoint(place.x + place.width / 3, place.y + place.height / 2));
}

window::DetailFrame& only_frame() {
    REQUIRE(test::settle([] { return window::application().frames().size() == 1; }, 20s));
    return *window::application().frames().front();
}

/// The answer that stands there is replaced by keys.
void answer_by_hand(Presses& presses, const wxString& question, const std::string& answer) {
    auto* entry = dynamic_cast<wxComboBox*>(test::shown_window(question));
    REQUIRE(entry != nullptr);
    const wxRect all = entry->GetScreenRect();
    presses.on(wxPoint(all.x + all.width / 4, all.y + all.height / 2));
    test::key('A', wxMOD_CONTROL);
    test::type(answer);
    CHECK(entry->GetValue() == answer);
}

/// The answer below the one that stands there, by the keys of an open list.
void answer_from_list(Presses& presses, const wxString& question) {
    auto* list = dynamic_cast<wxChoice*>(test::shown_window(question));
    REQUIRE(list != nullptr);
    const int before = list->GetSelection();
    presses.on(test::middle_of(*list));
    test::key(WXK_DOWN);
    test::key(WXK_RETURN);
    CHECK(list->GetSelection() == before + 1);
}

}  // namespace

TEST_CASE("from nothing to an adequate detail in twenty presses at most", "[first_minute]") {
    test::Driver driver;
    const auto began = std::chrono::steady_clock::now();
    window::application().show_start_window();
    REQUIRE(test::settle([] { return test::shown_window("job-find") != nullptr; }, 20s));
    test::let_work(300ms);
    test::shot("first-minute-job");
    Presses presses;
    auto* places = dynamic_cast<window::PictureChoice*>(test::shown_window("job-place"));
    REQUIRE(places != nullptr);
    const wxRect second = places->cell(1);
    presses.on(places->ClientToScreen(wxPoint(second.x + second.width / 2, second.y + second.height / 2)));
    CHECK(places->selected() == 1);
    const wxRect first = places->cell(0);
    presses.on(places->ClientToScreen(wxPoint(first.x + first.width / 2, first.y + first.height / 2)));
    answer_by_hand(presses, "job-height", "42 in");
    answer_by_hand(presses, "job-joist-size", "2x12");
    answer_by_hand(presses, "job-joist-spacing", "12 in");
    answer_from_list(presses, "job-code");
    test::shot("first-minute-answered");
    presses.on("job-find");

    window::DetailFrame& frame = only_frame();
    auto& page = test::control<window::SizesPage>(frame, "sizes-page");
    CHECK(page.sizes().state() == session::Sizes::State::running);
    CHECK(frame.unsaved());  // what was told would have to be told again
    REQUIRE(test::settle([&] { return page.sizes().progress().counts.found > 0; }, 200s));
    presses.on("sizes-find", &frame);  // stop: one is enough
    REQUIRE(test::settle([&] { return page.sizes().state() == session::Sizes::State::done; }));
    REQUIRE_FALSE(page.sizes().rows().empty());
    test::let_work(200ms);
    const model::BaseDetail start = frame.session().detail();
    CHECK(start.guard.height_in == 42.0);
    CHECK(start.framing.joists->depth_in == 11.25);
    presses.on(row_of(test::control<window::FlowList>(frame, "sizes-results"), 0));
    CHECK_FALSE(frame.session().detail() == start);
    REQUIRE(test::checked(frame));
    const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - began).count();
    std::cout << "from nothing to an adequate detail: " << presses.count() << " presses, " << seconds << " s\n";
    CHECK(presses.count() <= 20);
#ifndef __SANITIZE_ADDRESS__
    CHECK(seconds < 60.0);
#endif
    CHECK(test::control<window::VerdictStrip>(frame, "verdict").words().word == "ADEQUATE");
    CHECK(test::evaluation(frame.session().detail()).verdict == review::Verdict::adequate);
    test::shot("first-minute-found");

    // As any other step it is undone.
    test::key('Z', wxMOD_CONTROL);
    CHECK(frame.session().detail() == start);
}

TEST_CASE("a point of a chart shows its detail, which is taken or dropped", "[first_minute]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    const model::BaseDetail start = frame.session().detail();
    test::key(WXK_F9);
    auto& chart = test::control<window::ChartPane>(frame, "chart");
    REQUIRE(test::settle([&] { return !chart.chart().spots.empty(); }, 200s));
    test::let_work(100ms);
    const auto press_first = [&] {
        test::click(chart.ClientToScreen(chart.pixel_of(chart.chart().spots.front())));
        REQUIRE(test::settle([] { return test::shown_window("preview-take") != nullptr; }, 5s));
    };
    press_first();
    test::shot("chart-preview");
    CHECK(frame.session().detail() == start);
    test::click(test::middle_of(*test::shown_window("preview-drop")));
    CHECK(test::shown_window("preview-take") == nullptr);
    CHECK_FALSE(frame.session().history().can_undo());
    test::double_click(chart.ClientToScreen(chart.pixel_of(chart.chart().spots.front())));
    CHECK_FALSE(frame.session().detail() == start);
    CHECK(test::menu_words(frame, wxID_UNDO) == "Undo: Use a detail from the chart");
}
