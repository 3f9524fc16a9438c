// Places typed, nudged, copied, mirrored and set in rows.
#include "window/driver.h"

#include "support/compare.h"
#include "support/parts.h"

#include <wx/choice.h>
#include <wx/stattext.h>
#include <wx/textctrl.h>

using namespace toehold;
namespace parts = toehold::test::parts;

namespace {

using Place = model::Position;

std::size_t holes(window::DetailFrame& frame) { return on_deck(frame.session().detail()).plate.holes.size(); }

}  // namespace

TEST_CASE("a typed place is taken as people write it, and a half typed one is refused in words", "[places]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    auto& x = test::control<wxTextCtrl>(frame, "place-x");
    test::click(test::hole_on_screen(frame, "A"));
    CHECK(x.GetValue() == "-3 3/4 in");
    test::double_click(test::hole_on_screen(frame, "A"));
    REQUIRE(x.HasFocus());
    test::type("1 7/8");
    test::key(WXK_RETURN);
    CHECK(test::hole(frame, "A").center == Place{1.875, -3.75});
    CHECK(x.GetValue() == "1 7/8 in");

    const model::BaseDetail before = frame.session().detail();
    test::click(test::middle_of(x));
    test::key('A', wxMOD_CONTROL);
    test::type("1 7/");
    test::key(WXK_RETURN);
    CHECK(frame.session().detail() == before);
    CHECK(x.GetValue() == "1 7/");
    const wxString said = test::control<wxStaticText>(frame, "place-said").GetLabel();
    CHECK(said.Contains("3 3/8 in"));  // what would be accepted, by an example
    // Where words are typed, Delete means the words.
    test::key(WXK_HOME);
    test::key(WXK_DELETE);
    CHECK(x.GetValue() == " 7/");
    test::key(WXK_ESCAPE);
    CHECK(x.GetValue() == "1 7/8 in");
    CHECK(frame.session().detail() == before);
}

TEST_CASE("arrows nudge by the step as one step of the history, and Delete takes a hole out", "[places]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    test::click(test::hole_on_screen(frame, "B"));
    test::key(WXK_LEFT);
    test::key(WXK_LEFT);
    test::key(WXK_UP);
    CHECK(test::hole(frame, "B").center == Place{3.5, -3.625});
    CHECK(test::menu_words(frame, wxID_UNDO) == "Undo: Move hole B");
    test::key('Z', wxMOD_CONTROL);
    CHECK(test::hole(frame, "B").center == Place{3.75, -3.75});
    CHECK_FALSE(frame.session().history().can_undo());

    test::key(WXK_DELETE);
    CHECK(holes(frame) == 3);
    CHECK(frame.session().selection().empty());
    test::key('Z', wxMOD_CONTROL);
    CHECK(holes(frame) == 4);
    CHECK(frame.session().detail() == [&] {
        editing::Opened opened = editing::open_detail(frame.file(), frame.session().catalog());
        return *opened.detail;
    }());
}

TEST_CASE("holes are copied, mirrored and set in rows by their commands", "[places]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    test::click(test::hole_on_screen(frame, "A"));
    test::key('D', wxMOD_CONTROL);
    REQUIRE(holes(frame) == 5);
    CHECK(test::hole(frame, "E").center == Place{-3.25, -3.25});
    CHECK(frame.session().selection() == std::vector<model::PartId>{parts::anchor("E")});

    // About the y axis, the second of the list; the original stays.
    test::Script mirror;
    mirror.wait_for("quantities")
        .act([] { dynamic_cast<wxChoice&>(*test::shown_window("value-0")).SetSelection(1); })
        .press_ok("quantities")
        .begin();
    test::key('M', wxMOD_CONTROL);
    CHECK(mirror.done());
    REQUIRE(holes(frame) == 6);
    CHECK(test::hole(frame, "F").center == Place{3.25, -3.25});

    test::key('Z', wxMOD_CONTROL);
    test::key('Z', wxMOD_CONTROL);
    REQUIRE(holes(frame) == 4);
    test::to_front(frame);
    test::click(test::hole_on_screen(frame, "A"));
    test::Script rows;
    rows.wait_for("quantities").type("3").key(WXK_TAB).type("1 1/4").key(WXK_TAB).type("2").key(WXK_TAB).type("-");
    rows.type("1/2").act([] { test::snap("places-array"); }).press_ok("quantities").begin();
    test::key('A', wxMOD_CONTROL | wxMOD_SHIFT);
    CHECK(rows.done());
    REQUIRE(holes(frame) == 9);
    CHECK(test::hole(frame, "E").center == Place{-2.5, -3.75});
    // Three columns 1 1/4 in apart, two rows 1/2 in apart toward the heel.
    std::vector<Place> new_ones;
    for (std::size_t at = 4; at < 9; ++at) new_ones.push_back(on_deck(frame.session().detail()).plate.holes[at].center);
    for (const Place wanted :
         {Place{-2.5, -3.75}, Place{-1.25, -3.75}, Place{-3.75, -4.25}, Place{-2.5, -4.25}, Place{-1.25, -4.25}}) {
        CHECK(std::count(new_ones.begin(), new_ones.end(), wanted) == 1);
    }
    test::key('Z', wxMOD_CONTROL);
    CHECK(holes(frame) == 4);
}

TEST_CASE("a dialog refuses what it cannot read and stays, and Escape leaves everything as it was", "[places]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    const model::BaseDetail before = frame.session().detail();
    test::click(test::hole_on_screen(frame, "A"));
    std::string refusal;
    test::Script script;
    script.wait_for("quantities").type("0").press_ok("quantities");
    script.until([&refusal] {
        auto* words = dynamic_cast<wxStaticText*>(test::shown_window("refusal"));
        if (words != nullptr) refusal = words->GetLabel().utf8_string();
        return !refusal.empty();
    });
    script.key(WXK_ESCAPE).begin();
    test::key('A', wxMOD_CONTROL | wxMOD_SHIFT);
    CHECK(script.done());
    CHECK(refusal.find("Enter a whole number from 1 to 99") != std::string::npos);
    CHECK(frame.session().detail() == before);
}
