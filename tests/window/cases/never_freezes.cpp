// The window answers while a hand drags and results are on their way.
#include "window/driver.h"

#include "support/compare.h"
#include "window/engine_says.h"

#include <wx/timer.h>

#include <algorithm>
#include <cmath>
#include <iostream>

using namespace toehold;
using namespace std::chrono_literals;
using editing::Sheet;

namespace {

/// Handled every 10 ms where nothing is in the way; keeps the longest time between two.
class Pulse : public wxTimer {
  public:
    Pulse() { Start(10); }
    void Notify() override {
        const auto now = std::chrono::steady_clock::now();
        if (beats_++ > 0) longest_ = std::max(longest_, now - last_);
        last_ = now;
    }
    [[nodiscard]] double longest_ms() const { return std::chrono::duration<double, std::milli>(longest_).count(); }
    [[nodiscard]] int beats() const { return beats_; }

  private:
    std::chrono::steady_clock::time_point last_;
    std::chrono::steady_clock::duration longest_{};
    int beats_ = 0;
};

}  // namespace

TEST_CASE("a long drag never holds the window up, forces follow it, and the last place wins", "[never_freezes]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    int answers = 0;
    double last_pull = 0.0;
    const int listening = frame.session().listen([&](session::Change change) {
        const drawing::Overlay overlay = frame.session().overlay();
        if (change != session::Change::results || overlay.anchors.empty()) return;
        if (overlay.anchors[0].largest_tension_lb != last_pull) ++answers;
        last_pull = overlay.anchors[0].largest_tension_lb;
    });
    test::move_to(test::hole_on_screen(frame, "A"));
    test::button_down();
    const auto began = std::chrono::steady_clock::now();
    double longest_ms = 0.0;
    int beats = 0;
    {
        Pulse pulse;
        constexpr int moves = 150;
        for (int move = 1; move <= moves; ++move) {
            // Round and round between the rim of the plate and the post.
            const double turn = 0.12 * move, reach = 3.75 + 0.5 * std::sin(0.31 * move);
            const double x_in = -reach + 0.4 * std::cos(turn), y_in = -3.25 + 0.6 * std::sin(turn);
            test::move_to(test::on_screen(frame, Sheet::plan, x_in, y_in));
        }
        longest_ms = pulse.longest_ms();
        beats = pulse.beats();
    }
    const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - began).count();
    test::move_to(test::on_screen(frame, Sheet::plan, -3.0, -3.25));
    test::button_up();
    frame.session().stop_listening(listening);
    std::cout << "drag of 150 moves: " << seconds << " s, longest gap of a 10 ms timer " << longest_ms << " ms, "
              << beats << " beats, " << answers << " answers on the way\n";
    CHECK(longest_ms < 1000.0);
    CHECK(beats > 20);
    CHECK(answers > 5);
    CHECK(test::hole(frame, "A").center == model::Position{-3.0, -3.25});
    CHECK(test::menu_words(frame, wxID_UNDO) == "Undo: Move hole A");
    test::key('Z', wxMOD_CONTROL);
    CHECK_FALSE(frame.unsaved());  // the whole drag was one step
    test::key('Z', wxMOD_CONTROL | wxMOD_SHIFT);

    REQUIRE(test::checked(frame));
    const review::Review truth = test::evaluation(frame.session().detail());
    CHECK_CLOSE(frame.session().overlay().anchors[0].largest_tension_lb, truth.demand->anchors[0].tension_lb, 1e-9,
                0.0);
}

TEST_CASE("an answer that comes late never takes a newer one's place", "[never_freezes]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    solving::Request old{1, frame.session().detail(), std::nullopt, false};
    const solving::Result late = solving::solve_quick(old, test::shipped_catalog());
    REQUIRE(late.quick);
    test::click(test::hole_on_screen(frame, "A"));
    for (int times = 0; times < 8; ++times) test::key(WXK_RIGHT);
    REQUIRE(test::checked(frame));
    const auto pulls = [&] {
        std::vector<double> all;
        for (const auto& mark : frame.session().overlay().anchors) all.push_back(mark.largest_tension_lb);
        return all;
    };
    const std::vector<double> before = pulls();
    const review::Review* review = frame.session().review();
    frame.session().receive(late);
    CHECK(pulls() == before);
    CHECK(frame.session().review() == review);
    CHECK(frame.session().freshness() == session::Freshness::current);
}

TEST_CASE("while a review is on its way the old one is marked", "[never_freezes]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::failing_demo);
    test::click(test::hole_on_screen(frame, "A"));
    test::tap(WXK_RIGHT);
    REQUIRE(test::settle([&] { return frame.session().freshness() != session::Freshness::current; }, 10s));
    const wxString label = wxWindow::FindWindowByName("checks-freshness", &frame)->GetLabel();
    CHECK(label == "out of date");
    REQUIRE(test::checked(frame));
    CHECK(wxWindow::FindWindowByName("checks-freshness", &frame)->GetLabel().empty());
}
