// Files: saved, opened, changed by others, broken, refused.
#include "window/driver.h"

#include "support/compare.h"
#include "support/file_bytes.h"
#include "window/engine_says.h"
#include "window/frame/menus.h"
#include "xml/detail/detail_file.h"

#include <sys/resource.h>
#include <wx/dnd.h>
#include <wx/infobar.h>

#include <csignal>
#include <iostream>

using namespace toehold;
using namespace std::chrono_literals;
namespace fs = std::filesystem;

namespace {

void replace(std::string& text, const std::string& old, const std::string& with) {
    const std::size_t at = text.find(old);
    REQUIRE(at != std::string::npos);
    text.replace(at, old.size(), with);
}

/// No file may grow past this many bytes while it stands: a full disk, as far as a program can tell.
class FullDisk {
  public:
    explicit FullDisk(rlim_t bytes) {
        before_ = std::signal(SIGXFSZ, SIG_IGN);
        ::getrlimit(RLIMIT_FSIZE, &limit_);
        const rlimit less{bytes, limit_.rlim_max};
        ::setrlimit(RLIMIT_FSIZE, &less);
    }
    FullDisk(const FullDisk&) = delete;
    FullDisk& operator=(const FullDisk&) = delete;
    ~FullDisk() {
        ::setrlimit(RLIMIT_FSIZE, &limit_);
        std::signal(SIGXFSZ, before_);
    }

  private:
    rlimit limit_{};
    void (*before_)(int) = nullptr;
};

}  // namespace

TEST_CASE("saved under another name and opened in a second window, a detail is the same", "[files]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    test::click(test::hole_on_screen(frame, "A"));
    test::key(WXK_RIGHT);
    CHECK(frame.unsaved());
    driver.person.file_to_save = driver.folder() / "with a blank.xml";
    test::key('S', wxMOD_CONTROL | wxMOD_SHIFT);
    CHECK_FALSE(frame.unsaved());
    CHECK(frame.file() == *driver.person.file_to_save);
    CHECK(frame.GetTitle().Contains("with a blank.xml"));
    CHECK_FALSE(frame.GetTitle().StartsWith("*"));
    const model::BaseDetail saved = frame.session().detail();
    const xml::DetailRead read = xml::read_detail(*driver.person.file_to_save);
    REQUIRE(read.detail);
    CHECK(*read.detail == saved);
    CHECK(test::bytes_of(driver.folder() / (std::string(test::holding_demo) + ".xml")) ==
          test::bytes_of(fs::path(TOEHOLD_DATA_FOLDER) / "demo" / (std::string(test::holding_demo) + ".xml")));

    // The window that has the file already is shown again, not a second one of it.
    CHECK(window::application().open(*driver.person.file_to_save) == &frame);
    const fs::path copy = driver.folder() / "copy.xml";
    fs::copy_file(*driver.person.file_to_save, copy);
    auto* second = dynamic_cast<window::DetailFrame*>(window::application().open(copy));
    REQUIRE(second != nullptr);
    CHECK(second != &frame);
    CHECK(second->session().detail() == saved);
    CHECK(window::application().frames().size() == 2);
    CHECK(window::application().recent().GetHistoryFile(0).EndsWith("copy.xml"));
}

TEST_CASE("a change of the file by another program is noticed and can be taken up", "[files]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    auto& notice = test::control<wxInfoBar>(frame, "notice");
    CHECK_FALSE(notice.IsShown());
    std::string text = test::bytes_of(frame.file());
    replace(text, "length=\"8 in\"", "length=\"7 in\"");
    test::put_bytes(frame.file(), text);
    REQUIRE(test::settle([&notice] { return notice.IsShown(); }, 10s));
    test::let_work(300ms);
    test::shot("files-changed-outside");
    // Read it again, left of Keep mine: the toolkit's own buttons, which no name finds.
    const wxRect bar = notice.GetScreenRect();
    test::click({bar.GetRight() - 183, bar.y + bar.height / 2});
    CHECK(std::get<model::LagScrew>(on_deck(frame.session().detail()).anchors[0].fastener).length_in == 7.0);
    CHECK_FALSE(frame.unsaved());
    CHECK(test::settle([&notice] { return !notice.IsShown(); }, 5s));

    // Changed there again and here too: saving asks first, and a no leaves the file to the other.
    replace(text, "length=\"7 in\"", "length=\"6 in\"");
    test::put_bytes(frame.file(), text);
    REQUIRE(test::settle([&notice] { return notice.IsShown(); }, 10s));
    test::let_work(400ms);
    test::click(test::hole_on_screen(frame, "A"));
    test::key(WXK_LEFT);
    driver.person.confirms = false;
    test::key('S', wxMOD_CONTROL);
    CHECK(driver.person.has_heard("changed by another program"));
    CHECK(test::bytes_of(frame.file()) == text);
    CHECK(frame.unsaved());
}

TEST_CASE("a broken file is told of with its line, and the window stays", "[files]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    const model::BaseDetail before = frame.session().detail();
    std::string text = test::bytes_of(frame.file());
    replace(text, "height=\"42 in\"", "height=\"42 wide\"");
    const fs::path broken = driver.folder() / "broken.xml";
    test::put_bytes(broken, text);
    const xml::DetailRead read = xml::read_detail(broken);
    REQUIRE(read.problems.size() == 1);
    CHECK(read.problems[0].line == 4);  // of the demo's file, where the guard stands

    driver.person.files_to_open = {broken};
    test::key('O', wxMOD_CONTROL);
    CHECK(driver.person.has_heard("cannot be opened"));
    CHECK(driver.person.has_heard("broken.xml:4"));
    CHECK(window::application().frames() == std::vector<window::DetailFrame*>{&frame});
    CHECK(frame.session().detail() == before);
}

TEST_CASE("a detail of three thousand blocks is refused at once, by the limit a review has", "[files]") {
    test::Driver driver;
    const std::filesystem::path file = driver.folder() / "many.xml";
    model::BaseDetail many = test::demo_detail(test::holding_demo);
    on_deck(many).plate_reference.reset();  // its document is not beside the file
    const model::Block block = many.framing.blocks.front();
    for (int number = 0; number < 3000; ++number) {
        many.framing.blocks.push_back(block);
        many.framing.blocks.back().id = "X" + std::to_string(number);
    }
    test::put_bytes(file, xml::write_detail(many));
    const auto began = std::chrono::steady_clock::now();
    CHECK(window::application().open(file) == nullptr);
    const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - began).count();
    std::cout << "a detail of 3,002 blocks refused in " << seconds << " s\n";
    CHECK(driver.person.has_heard("cannot be opened"));
    CHECK(driver.person.has_heard("too many blocks"));
    CHECK(driver.person.has_heard("at most 50"));
}

TEST_CASE("where a file cannot be written the reader is told and the old one is whole", "[files]") {
    test::Driver driver;
    window::DetailFrame& frame = driver.open_demo(test::holding_demo);
    test::click(test::hole_on_screen(frame, "A"));
    test::key(WXK_RIGHT);
    driver.person.file_to_save = "/proc/toehold.xml";
    test::key('S', wxMOD_CONTROL | wxMOD_SHIFT);
    CHECK(driver.person.has_heard("The detail was not saved."));
    CHECK(frame.unsaved());
    CHECK(frame.file() == driver.folder() / (std::string(test::holding_demo) + ".xml"));

    driver.person.heard.clear();
    const std::string before = test::bytes_of(frame.file());
    {
        const FullDisk full(1000);
        test::key('S', wxMOD_CONTROL);
    }
    CHECK(driver.person.has_heard("The detail was not saved."));
    CHECK(test::bytes_of(frame.file()) == before);
    CHECK(frame.unsaved());
    test::key('S', wxMOD_CONTROL);
    CHECK_FALSE(frame.unsaved());
    CHECK(test::bytes_of(frame.file()) != before);
}

TEST_CASE("a file dropped on the window opens, and an untouched start gives its place", "[files]") {
    test::Driver driver;
    window::DetailFrame* start = window::application().start_on(test::shipped_catalog().stock_plates.front());
    REQUIRE(start != nullptr);
    CHECK(start->untouched());
    test::let_work(200ms);
    const auto drop = [start](const fs::path& file) {
        auto* target = dynamic_cast<wxFileDropTarget*>(start->GetDropTarget());
        REQUIRE(target != nullptr);
        wxArrayString names;
        names.Add(wxString::FromUTF8(file.string()));
        target->OnDropFiles(10, 10, names);
        test::let_work(300ms);
    };
    drop(driver.copy_demo(test::holding_demo));
    CHECK(window::application().frames().size() == 1);
    CHECK(start->session().detail() == test::demo_detail(test::holding_demo));
    drop(driver.copy_demo(test::failing_demo));
    CHECK(window::application().frames().size() == 2);
}
