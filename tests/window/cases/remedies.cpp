// A detail that does not hold: its worst check on the sheet, its remedy applied, and taken back.
#include "window/driver.h"

#include "drawing/marked_parts.h"
#include "review/groups.h"
#include "support/compare.h"
#include "window/engine_says.h"
#include "window/frame/menus.h"
#include "window/panels/checks/checks_list.h"
#include "window/panels/verdict_strip.h"

#include <wx/button.h>
#include <wx/html/htmlwin.h>

#include <algorithm>

using namespace toehold;
using namespace std::chrono_literals;

namespace {

const window::VerdictWords& words(window::DetailFrame& frame) {
    return test::control<window::VerdictStrip>(frame, "verdict").words();
}

/// Brings the button into sight as a reader does, page by page.
void scroll_to(window::DetailFrame& frame, const wxButton& button) {
    auto& page = test::control<wxHtmlWindow>(frame, "notes");
    const auto in_sight = [&] { return page.GetScreenRect().Contains(button.GetScreenRect()); };
    page.SetFocus();
    for (int pages = 0; pages < 40 && !in_sight(); ++pages) {
        const bool below = button.GetScreenRect().GetBottom() > page.GetScreenRect().GetBottom();
        test::key(below ? WXK_DOWN : WXK_UP);
    }
    REQUIRE(in_sight());
}

}  // namespace

TEST_CASE("a failing detail: the worst row shows its part, a remedy is applied by its button and undone",
          "[remedies]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::failing_demo);
    REQUIRE(test::reviewed(frame));
    const model::BaseDetail start = test::demo_detail(test::failing_demo);
    const review::Review truth = test::evaluation(start);
    CHECK(truth.verdict == review::Verdict::inadequate);
    CHECK(words(frame).word == "INADEQUATE");
    CHECK(words(frame).reason.utf8_string() == test::reason_told(truth));
    // What is named beside it is the first cause, which need not be the largest ratio.
    REQUIRE(truth.facts.first_cause);
    CHECK(words(frame).governing.utf8_string() == format::english(truth.facts.first_cause->title) + ", " +
                                                      format::english(model::part_name(truth.facts.first_cause->part)));
    // The heavy and doubled frame, or the broken one where nothing is there to resist.
    const bool doubled = drawing::stroke(words(frame).frame, drawing::Ground::paper).doubled;
    CHECK((words(frame).frame == drawing::Pen::fails || words(frame).frame == drawing::Pen::no_path));
    CHECK(doubled == (words(frame).frame == drawing::Pen::fails));

    auto& list = test::control<window::ChecksList>(frame, "checks");
    REQUIRE(list.shown().front().kind == window::RowKind::result);
    const checks::CheckResult& worst = frame.session().review()->checks.front();
    CHECK(worst.id == truth.checks.front().id);
    CHECK(worst.part == truth.checks.front().part);
    const wxRect row = list.GetItemRect(0);
    test::click(list.ClientToScreen(wxPoint(row.x + row.width / 2, row.y + 12)));
    CHECK(frame.session().selection() == drawing::marked_parts(worst.part, start));
    CHECK_FALSE(frame.session().selection().empty());
    test::key(WXK_RETURN);  // opens to its worked steps
    CHECK(list.shown()[1].kind != window::RowKind::result);
    test::shot("remedies-worst");

    const wxString text = test::control<wxHtmlWindow>(frame, "notes").ToText();
    for (const format::Phrase& caution : frame.session().review()->cautions) {
        CHECK(text.Contains(wxString::FromUTF8(format::english(caution).substr(0, 30))));
    }
    CHECK_FALSE(frame.session().review()->cautions.empty());

    REQUIRE_FALSE(frame.session().review()->remedies.empty());
    const review::Remedy remedy = frame.session().review()->remedies.front();
    CHECK_FALSE(remedy.detail == start);
    test::key('F', wxMOD_CONTROL);
    auto& apply = test::control<wxButton>(frame, "apply-remedy-0");
    scroll_to(frame, apply);
    test::shot("remedies-notes");
    test::click(test::middle_of(apply));
    REQUIRE(test::settle([&] { return frame.session().detail() == remedy.detail; }, 5s));
    CHECK(format::english(frame.session().history().undo_name()).rfind("Apply remedy: ", 0) == 0);
    REQUIRE(test::checked(frame));
    const review::Review after = test::evaluation(remedy.detail);
    CHECK(after.verdict == remedy.verdict);
    CHECK(words(frame).word == (after.verdict == review::Verdict::adequate     ? "ADEQUATE"
                                : after.verdict == review::Verdict::incomplete ? "INCOMPLETE"
                                                                               : "INADEQUATE"));
    CHECK(words(frame).reason.utf8_string() == test::reason_told(after));
    test::shot("remedies-applied");

    test::key('Z', wxMOD_CONTROL);
    CHECK(frame.session().detail() == start);
    CHECK_FALSE(frame.unsaved());
    REQUIRE(test::checked(frame));
    CHECK(words(frame).reason.utf8_string() == test::reason_told(truth));
}

TEST_CASE("what does not hold is found key by key", "[remedies]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::failing_demo);
    auto& list = test::control<window::ChecksList>(frame, "checks");
    test::key(WXK_F8);
    REQUIRE(list.current() != nullptr);
    // Row after row: the results that come to the same share one, of which the worst is named.
    const std::vector<checks::CheckResult>& results = frame.session().review()->checks;
    std::vector<review::Group> failing = review::grouped(results);
    failing.erase(std::remove_if(failing.begin(), failing.end(),
                                 [&](const review::Group& group) {
                                     return results[group.worst()].status == checks::Status::holds;
                                 }),
                  failing.end());
    REQUIRE(failing.size() > 1);
    CHECK(list.current()->result == failing[0].worst());
    CHECK(list.current()->alike == failing[0].results);
    test::key(WXK_F8);
    CHECK(list.current()->result == failing[1].worst());
    // Round the end to the first again.
    for (std::size_t at = 2; at <= failing.size(); ++at) test::key(WXK_F8);
    CHECK(list.current()->result == failing[0].worst());
}
