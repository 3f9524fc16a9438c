// A project opened: its schedule and its line, a post's base, and a change that is saved.
#include "window/driver.h"

#include "editing/document/project_document.h"
#include "review/project_review.h"
#include "support/compare.h"
#include "window/controls/flow_list.h"
#include "window/controls/scene_pane.h"
#include "window/frame/menus.h"
#include "window/panels/verdict_strip.h"
#include "window/project/line_checks.h"
#include "window/project/line_pane.h"
#include "window/project/project_frame.h"
#include "window/project/schedule_panel.h"
#include "xml/detail/project_file.h"

#include <wx/infobar.h>
#include <wx/notebook.h>
#include <wx/propgrid/propgrid.h>
#include <wx/stattext.h>

#include <algorithm>

using namespace toehold;
using namespace std::chrono_literals;
using State = session::ProjectSession::State;

namespace {

/// The shipped project of three posts without the last: each post is a review.
std::filesystem::path two_posts(test::Driver& driver) {
    const xml::ProjectRead read =
        xml::read_project(std::string(TOEHOLD_DATA_FOLDER) + "/projects/heron-landing-three-posts.xml");
    model::Project project = read.project.value();
    project.posts.pop_back();
    project.guard_lines.front().posts.pop_back();
    project.name = "Heron Landing, two posts";
    std::filesystem::path file = driver.folder() / "two-posts.xml";
    REQUIRE(editing::save_project(file, project).stamp);
    return file;
}

window::ProjectFrame& open(const std::filesystem::path& file) {
    auto* frame = dynamic_cast<window::ProjectFrame*>(window::application().open(file));
    REQUIRE(frame != nullptr);
    frame->Raise();
    test::let_work(200ms);
    return *frame;
}

wxPoint post_on_screen(window::ProjectFrame& frame, const std::string& id) {
    auto& plan = test::control<window::ScenePane>(frame, "line-plan");
    const model::Position at = model::find_post(frame.session().project(), id)->at;
    return plan.ClientToScreen(plan.pixel_of({at.x_in, at.y_in}));
}

/// Chooses a word in a field's line, as the grid does when its drop-down is used.
void choose(window::ProjectFrame& frame, const wxString& path, const wxString& word) {
    auto& grid = test::control<wxPropertyGrid>(frame, "fields");
    REQUIRE(grid.GetPropertyByName(path) != nullptr);
    grid.ChangePropertyValue(path, word);
    test::let_work(200ms);
}

void key_in_list(window::ProjectFrame& frame, int code) {
    auto& list = test::control<window::FlowList>(frame, "schedule");
    list.SetFocus();
    REQUIRE(test::settle([&list] { return list.HasFocus(); }));
    test::key(code);
}

void check_schedule(window::ProjectFrame& frame) {
    const auto& shown = test::control<window::SchedulePanel>(frame, "schedule-panel").shown();
    REQUIRE(shown.size() == 2);
    const review::ProjectReview& review = *frame.session().review();
    for (std::size_t at = 0; at < shown.size(); ++at) {
        REQUIRE(shown[at].outcome != nullptr);
        CHECK_FALSE(shown[at].stale);
        CHECK(shown[at].post == review.posts[at].post.id);
        CHECK(shown[at].outcome->verdict == review.posts[at].review.verdict);
    }
    CHECK(test::control<wxStaticText>(frame, "schedule-totals").GetLabel() == "2 ends");
    const auto& words = test::control<window::VerdictStrip>(frame, "verdict").words();
    CHECK(words.freshness == "up to date");
    CHECK_FALSE(words.stale);
}

/// By pointer in the plan and by key in the list; each is shown by the other.
void check_selection(window::ProjectFrame& frame) {
    auto& list = test::control<window::FlowList>(frame, "schedule");
    test::click(post_on_screen(frame, "P2"));
    CHECK(frame.session().selected() == "P2");
    CHECK(list.GetSelection() == 1);
    key_in_list(frame, WXK_UP);
    CHECK(frame.session().selected() == "P1");
}

void check_base(test::Driver& driver, window::ProjectFrame& frame) {
    key_in_list(frame, WXK_RETURN);
    REQUIRE(test::settle([] { return window::application().frames().size() == 1; }));
    window::DetailFrame& base = *window::application().frames().front();
    const model::Project project = frame.session().project();
    CHECK(base.session().detail().framing == model::detail_of(project, project.posts[0]).framing);
    CHECK(base.session().detail().mount == project.mounts[0].mount);
    CHECK(base.file().empty());
    CHECK_FALSE(base.unsaved());
    CHECK_FALSE(base.untouched());
    CHECK(base.GetTitle().Contains("P1"));
    CHECK(base.GetTitle().Contains("copy"));
    CHECK(test::control<wxInfoBar>(base, "notice").IsShown());
    test::shot("project-base");

    // Changed there, and put into the project: one step, which can be undone.
    model::BaseDetail thicker = base.session().detail();
    std::get<model::RectangularTube>(thicker.post).wall_in = 0.25;
    base.session().change(format::verbatim("A thicker post"), thicker);
    test::run_command(base, window::command_put_back);
    CHECK(driver.person.has_heard("Change mount line-post?"));
    CHECK(driver.person.has_heard("P1, P2"));
    CHECK(frame.session().project().mounts[0].post == thicker.post);
    CHECK(frame.unsaved());
    frame.session().undo();
    CHECK(frame.session().project() == project);
    CHECK_FALSE(frame.unsaved());
    base.Close();
    REQUIRE(test::settle([] { return window::application().frames().empty(); }));
}

}  // namespace

TEST_CASE("a project opens with its schedule; a post is selected, its base opened, sharing turned on and saved",
          "[project]") {
    test::Driver driver;
    const std::filesystem::path file = two_posts(driver);
    window::ProjectFrame* frame = &open(file);
    CHECK(window::application().open(file) == frame);
    REQUIRE(test::settle([frame] { return frame->session().state() == State::done; }, 200s));
    test::let_work(300ms);
    check_schedule(*frame);
    check_selection(*frame);
    test::shot("project");
    check_base(driver, *frame);

    test::control<wxNotebook>(*frame, "project-pages").SetSelection(1);
    choose(*frame, "line[L1]/described", "Yes");
    choose(*frame, "line[L1]/sharing", "Yes");
    CHECK(frame->session().project().guard_lines.front().sharing);
    CHECK(frame->unsaved());
    CHECK(frame->session().state() == State::running);
    CHECK(test::control<window::VerdictStrip>(*frame, "verdict").words().stale);
    CHECK(test::control<window::SchedulePanel>(*frame, "schedule-panel").shown()[0].stale);
    test::shot("project-stale");
    frame->session().stop();
    frame->Raise();
    key_in_list(*frame, WXK_DOWN);
    test::key('S', wxMOD_CONTROL);
    CHECK_FALSE(frame->unsaved());
    const model::Project saved = frame->session().project();
    test::key('Z', wxMOD_CONTROL);
    CHECK_FALSE(frame->session().project().guard_lines.front().sharing);
    CHECK(frame->unsaved());
    frame->session().stop();
    frame->Close();
    REQUIRE(test::settle([] { return window::application().windows().empty(); }));
    CHECK(driver.person.has_heard("unsaved Heron Landing, two posts"));

    frame = &open(file);
    CHECK(frame->session().project() == saved);
    CHECK(frame->session().project().guard_lines.front().sharing);
    frame->session().stop();
}
