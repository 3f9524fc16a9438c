// Closing a window with unsaved work.
#include "window/driver.h"

#include "support/compare.h"
#include "window/engine_says.h"
#include "xml/detail/detail_file.h"

using namespace toehold;
using namespace std::chrono_literals;

namespace {

void change(window::DetailFrame& frame) {
    test::click(test::hole_on_screen(frame, "A"));
    test::key(WXK_RIGHT);
    REQUIRE(frame.unsaved());
}

bool no_window() {
    return test::settle([] { return window::application().frames().empty(); }, 5s);
}

}  // namespace

TEST_CASE("closing asks about unsaved work: cancel keeps the window, discard leaves the file", "[unsaved]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    const std::filesystem::path file = frame.file();
    change(frame);
    const model::BaseDetail changed = frame.session().detail();
    driver.person.unsaved = window::Unsaved::cancel;
    test::key('W', wxMOD_CONTROL);
    CHECK(driver.person.has_heard("unsaved Heron Landing"));
    REQUIRE(window::application().frames().size() == 1);
    CHECK(frame.session().detail() == changed);
    driver.person.unsaved = window::Unsaved::discard;
    test::key('W', wxMOD_CONTROL);
    CHECK(no_window());
    CHECK(*xml::read_detail(file).detail == test::demo_detail(test::holding_demo));
}

TEST_CASE("closing saves where that is asked, and stays where it cannot", "[unsaved]") {
    test::Driver driver;
    window::DetailFrame* start = window::application().start_on(test::shipped_catalog().stock_plates.front());
    REQUIRE(start != nullptr);
    test::to_front(*start);
    change(*start);
    const model::BaseDetail changed = start->session().detail();
    driver.person.unsaved = window::Unsaved::save;
    driver.person.file_to_save = std::nullopt;  // thought better of it
    test::key('W', wxMOD_CONTROL);
    REQUIRE(window::application().frames().size() == 1);
    driver.person.file_to_save = driver.folder() / "new.xml";
    test::key('W', wxMOD_CONTROL);
    CHECK(no_window());
    const xml::DetailRead read = xml::read_detail(driver.folder() / "new.xml");
    REQUIRE(read.detail);
    CHECK(*read.detail == changed);
}

TEST_CASE("a window without unsaved work closes unasked", "[unsaved]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    test::to_front(frame);
    test::key('W', wxMOD_CONTROL);
    CHECK(no_window());
    CHECK(driver.person.heard.empty());
}
