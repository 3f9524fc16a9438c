// What leaves the window as a file, and a remark that stays with the detail.
#include "window/driver.h"

#include "support/compare.h"
#include "support/file_bytes.h"
#include "window/engine_says.h"
#include "window/frame/menus.h"
#include "window/panels/checks/checks_list.h"

using namespace toehold;
using namespace std::chrono_literals;
namespace fs = std::filesystem;

TEST_CASE("every paper is written under the name a person gives, and begins as its kind does", "[papers]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    REQUIRE(test::reviewed(frame));
    struct Paper {
        int command;
        const char* name;
        const char* begins;
    };
    const std::vector<Paper> papers = {
        {window::command_report, "r.pdf", "%PDF"},        {window::command_letter, "l.pdf", "%PDF"},
        {window::command_shop_drawing, "s.svg", "<?xml"}, {window::command_cutting_file, "c.dxf", "999"},
        {window::command_site_sheet, "h.png", "\x89PNG"}, {window::command_plan, "p.svg", "<?xml"},
        {window::command_checks_table, "k.csv", "file"},  {window::command_anchors_table, "a.csv", "file"}};
    for (const Paper& paper : papers) {
        CAPTURE(paper.name);
        driver.person.file_to_save = driver.folder() / paper.name;
        test::run_command(frame, paper.command);
        CHECK(test::bytes_of(*driver.person.file_to_save).rfind(paper.begins, 0) == 0);
    }
    CHECK(driver.person.heard.empty());
    CHECK_FALSE(frame.unsaved());
}

TEST_CASE("a paper that cannot be written is said, and an edit under way is waited for", "[papers]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    REQUIRE(test::reviewed(frame));
    driver.person.file_to_save = "/proc/report.pdf";
    test::run_command(frame, window::command_report);
    CHECK(driver.person.has_heard("No file was written."));
    driver.person.heard.clear();
    driver.person.file_to_save = driver.folder() / "early.pdf";
    test::click(test::hole_on_screen(frame, "A"));
    model::BaseDetail next = frame.session().detail();
    on_deck(next).plate.thickness_in += 0.0625;
    frame.session().change(format::verbatim("Thickness"), next);
    test::run_command(frame, window::command_report);
    CHECK(driver.person.has_heard("The checks are still running."));
    CHECK_FALSE(fs::exists(*driver.person.file_to_save));
    CHECK(test::reviewed(frame));
}

TEST_CASE("a remark on the selected result is one step, kept with the detail", "[papers]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::failing_demo);
    REQUIRE(test::reviewed(frame));
    const checks::CheckResult worst = frame.session().review()->checks.front();
    auto& list = test::control<window::ChecksList>(frame, "checks");
    const wxRect row = list.GetItemRect(0);
    test::click(list.ClientToScreen(wxPoint(row.x + row.width / 2, row.y + 12)));
    driver.person.remark = "Longer lags, or through-bolts?";
    test::key('R', wxMOD_CONTROL | wxMOD_SHIFT);
    REQUIRE(frame.session().detail().remarks.size() == 1);
    CHECK(frame.session().detail().remarks.front().about == worst.id);
    CHECK(frame.session().detail().remarks.front().subject == model::key(worst.part));
    CHECK(frame.session().detail().remarks.front().words == driver.person.remark);
    CHECK(driver.person.has_heard(format::english(worst.title)));
    test::key('Z', wxMOD_CONTROL);
    CHECK(frame.session().detail().remarks.empty());
}
