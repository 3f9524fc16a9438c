// A hole taken by the pointer.
#include "window/driver.h"

#include "support/compare.h"
#include "support/parts.h"
#include "window/engine_says.h"
#include "window/panels/checks/checks_list.h"

#include <algorithm>

using namespace toehold;
namespace parts = toehold::test::parts;
using namespace std::chrono_literals;
using editing::Sheet;

namespace {

void check_envelope(const drawing::Overlay& overlay, const review::Review& truth) {
    REQUIRE(truth.demand);
    REQUIRE(overlay.anchors.size() == truth.demand->anchors.size());
    for (std::size_t at = 0; at < overlay.anchors.size(); ++at) {
        INFO(model::key(overlay.anchors[at].part));
        CHECK_CLOSE(overlay.anchors[at].largest_tension_lb, truth.demand->anchors[at].tension_lb, 1e-9, 0.0);
    }
}

}  // namespace

TEST_CASE("a hole dragged by the pointer comes to the snapped place, and is undone and redone by keys", "[dragging]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    const model::BaseDetail start = test::demo_detail(test::holding_demo);

    // More than the reach of a catch away from every line of another hole, so that the step of 1/8 in decides.
    test::drag(test::hole_on_screen(frame, "A"), test::on_screen(frame, Sheet::plan, -3.0, -3.25));
    model::BaseDetail moved = start;
    on_deck(moved).plate.holes[0].center = {-3.0, -3.25};
    on_deck(moved).plate_reference.reset();  // the plate is no longer the one in the library
    CHECK(test::hole(frame, "A").center.x_in == -3.0);
    CHECK(test::hole(frame, "A").center.y_in == -3.25);
    CHECK(frame.session().detail() == moved);
    CHECK(frame.session().selection() == std::vector<model::PartId>{parts::anchor("A")});
    CHECK(frame.unsaved());
    CHECK(frame.GetTitle().StartsWith("*"));
    CHECK(test::menu_words(frame, wxID_UNDO) == "Undo: Move hole A");

    REQUIRE(test::checked(frame));
    const review::Review truth = test::evaluation(moved);
    check_envelope(frame.session().overlay(), truth);
    // Nearer to the post, the hole's arm is shorter: it is no longer one of four alike.
    const auto& anchors = truth.demand->anchors;
    CHECK(std::abs(anchors[0].tension_lb - anchors[2].tension_lb) > 0.02 * anchors[2].tension_lb);
    test::shot("dragging");

    test::key('Z', wxMOD_CONTROL);
    CHECK(frame.session().detail() == start);
    CHECK_FALSE(frame.unsaved());
    CHECK(test::menu_words(frame, wxID_REDO) == "Redo: Move hole A");
    test::key('Z', wxMOD_CONTROL | wxMOD_SHIFT);
    CHECK(frame.session().detail() == moved);
    test::key('Z', wxMOD_CONTROL);
    test::key('Y', wxMOD_CONTROL);
    CHECK(frame.session().detail() == moved);
}

TEST_CASE("a dragged hole catches on another's line, and Escape takes a drag back", "[dragging]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    const model::BaseDetail start = frame.session().detail();

    // Three pixels off the line of holes B and C: within the reach of 6.
    const wxPoint beside = test::on_screen(frame, Sheet::plan, 3.75, -2.75) + wxPoint(3, 0);
    test::drag(test::hole_on_screen(frame, "B"), beside);
    CHECK(test::hole(frame, "B").center.x_in == 3.75);
    CHECK(test::hole(frame, "B").center.y_in == -2.75);
    test::key('Z', wxMOD_CONTROL);

    test::move_to(test::hole_on_screen(frame, "C"));
    test::button_down();
    test::move_to(test::on_screen(frame, Sheet::plan, 3.3, 3.3));
    test::move_to(test::on_screen(frame, Sheet::plan, 2.75, 3.0));
    test::let_work(100ms);
    CHECK(test::hole(frame, "C").center.x_in == 2.75);
    test::shot("dragging-with-dimensions");
    test::key(WXK_ESCAPE);
    test::button_up();
    CHECK(frame.session().detail() == start);
    CHECK_FALSE(frame.unsaved());
}

TEST_CASE("several selected holes move together, and a corner of the plate by itself", "[dragging]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    // The rubber band around holes C and D, from the bare plate.
    test::drag(test::on_screen(frame, Sheet::plan, -4.4, 2.4), test::on_screen(frame, Sheet::plan, 4.5, 4.5));
    CHECK(frame.session().selection() == std::vector<model::PartId>{parts::anchor("C"), parts::anchor("D")});
    test::drag(test::hole_on_screen(frame, "C"), test::on_screen(frame, Sheet::plan, 3.25, 3.0));
    CHECK(test::hole(frame, "C").center == model::Position{3.25, 3.0});
    CHECK(test::hole(frame, "D").center == model::Position{-4.25, 3.0});
    CHECK(test::menu_words(frame, wxID_UNDO) == "Undo: Move 2 holes");

    REQUIRE(test::checked(frame));  // a sheet that has come to rest fits its drawings anew
    test::key(WXK_ESCAPE);
    test::drag(test::on_screen(frame, Sheet::plan, 4.75, 4.75), test::on_screen(frame, Sheet::plan, 5.25, 5.25));
    const auto& outline = std::get<model::RectangleOutline>(on_deck(frame.session().detail()).plate.outline);
    CHECK(outline.width_in == 10.0);
    CHECK(outline.depth_in == 10.0);
    CHECK(outline.center == model::Position{0.25, 0.25});
}

TEST_CASE("an opened row of anchors alike stays open when a drag takes its worst from them", "[dragging]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    REQUIRE(test::reviewed(frame));
    auto& list = test::control<window::ChecksList>(frame, "checks");
    REQUIRE(list.shown().front().alike.size() == 4);  // each hole as far from the edge of its block
    const checks::CheckResult first = frame.session().review()->checks[list.shown().front().result];
    REQUIRE(first.part == parts::anchor("A"));
    const wxRect row = list.GetItemRect(0);
    test::click(list.ClientToScreen(wxPoint(row.x + row.width / 2, row.y + 12)));
    test::key(WXK_RETURN);
    REQUIRE(list.shown()[1].kind == window::RowKind::covers);

    test::drag(test::hole_on_screen(frame, "A"), test::on_screen(frame, Sheet::plan, -3.0, -3.25));
    REQUIRE(test::checked(frame));
    const auto& rows = list.shown();
    const auto& results = frame.session().review()->checks;
    const auto of_others = std::find_if(rows.begin(), rows.end(), [&](const window::CheckRow& one) {
        return one.kind == window::RowKind::result && results[one.result].id == first.id && one.alike.size() == 3;
    });
    REQUIRE(of_others + 1 < rows.end());
    CHECK(results[of_others->result].part != first.part);
    CHECK((of_others + 1)->kind == window::RowKind::covers);
    CHECK((of_others + 1)->result == of_others->result);
}
