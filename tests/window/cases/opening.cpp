// A detail opened: what the window says of it is what the engine says.
#include "window/driver.h"

#include "review/groups.h"
#include "support/compare.h"
#include "window/engine_says.h"
#include "window/panels/checks/checks_list.h"
#include "window/panels/checks/checks_panel.h"
#include "window/panels/notes/notes_panel.h"
#include "window/panels/verdict_strip.h"

#include <wx/stattext.h>

#include <algorithm>

using namespace toehold;

TEST_CASE("an opened detail shows the engine's verdict, its checks worst first, and nothing stale", "[opening]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    REQUIRE(test::reviewed(frame));
    const review::Review truth = test::evaluation(test::demo_detail(test::holding_demo));
    CHECK(frame.session().detail() == test::demo_detail(test::holding_demo));

    const std::string title = frame.GetTitle().utf8_string();
    CHECK(title.rfind(truth.detail, 0) == 0);
    CHECK(title.find(std::string(test::holding_demo) + ".xml") != std::string::npos);

    const auto& words = test::control<window::VerdictStrip>(frame, "verdict").words();
    CHECK(truth.verdict == review::Verdict::adequate);
    CHECK(words.word == "ADEQUATE");
    CHECK(words.frame == drawing::Pen::holds);
    CHECK(words.reason.utf8_string() == test::reason_told(truth));
    CHECK(words.governing.utf8_string() ==
          format::english(truth.governing.title) + ", " + format::english(model::part_name(truth.governing.part)));
    REQUIRE(words.ratio);
    CHECK_CLOSE(*words.ratio, truth.governing.ratio, 1e-9, 0.0);
    CHECK(words.freshness == "up to date");
    CHECK_FALSE(words.stale);
    CHECK(test::control<wxStaticText>(frame, "checks-freshness").GetLabel().empty());
    CHECK_FALSE(test::control<window::NotesPanel>(frame, "notes-panel").text().Contains("out of date"));

    const auto& results = frame.session().review()->checks;
    REQUIRE(results.size() == truth.checks.size());
    double worst = results.front().ratio;
    for (std::size_t at = 0; at < results.size(); ++at) {
        CHECK(results[at].id == truth.checks[at].id);
        CHECK(results[at].part == truth.checks[at].part);
        CHECK_CLOSE(results[at].ratio, truth.checks[at].ratio, 1e-9, 1e-12);
        // All of them hold, so that the worst is the largest ratio.
        CHECK(results[at].status == checks::Status::holds);
        CHECK(results[at].ratio <= worst);
        worst = results[at].ratio;
    }
    // A row stands for results of one check that come to the same; every result has one, and each its worst's place.
    const auto& rows = test::control<window::ChecksList>(frame, "checks").shown();
    REQUIRE(rows.size() == review::grouped(truth.checks).size());
    std::vector<std::size_t> told;
    for (std::size_t row = 0; row < rows.size(); ++row) {
        CHECK(rows[row].kind == window::RowKind::result);
        REQUIRE_FALSE(rows[row].alike.empty());
        CHECK(rows[row].result == rows[row].alike.front());
        if (row > 0) CHECK(rows[row - 1].result < rows[row].result);
        const checks::CheckResult& own = results[rows[row].result];
        for (const std::size_t at : rows[row].alike) {
            CHECK(at >= rows[row].result);
            CHECK(results[at].id == own.id);
            CHECK(results[at].ratio >= 0.99 * own.ratio);
            told.push_back(at);
        }
    }
    std::sort(told.begin(), told.end());
    CHECK(told.size() == results.size());
    for (std::size_t at = 0; at < told.size(); ++at) CHECK(told[at] == at);

    const drawing::Overlay overlay = frame.session().overlay();
    REQUIRE(overlay.anchors.size() == truth.demand->anchors.size());
    CHECK_FALSE(overlay.stale);
    for (std::size_t at = 0; at < overlay.anchors.size(); ++at) {
        CHECK_CLOSE(overlay.anchors[at].largest_tension_lb, truth.demand->anchors[at].tension_lb, 1e-9, 0.0);
    }
    test::shot("opening");
}
