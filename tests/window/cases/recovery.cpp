// The program killed in the middle of work, and begun again.
#include "window/driver.h"

#include "support/compare.h"
#include "window/engine_says.h"

#include <sys/wait.h>
#include <unistd.h>
#include <wx/utils.h>

#include <csignal>
#include <cstdlib>

using namespace toehold;
using namespace std::chrono_literals;
namespace fs = std::filesystem;

namespace {

const char* const where_to_die = "TOEHOLD_TEST_FOLDER_OF_THE_KILLED";

/// Runs the case below in a process of its own; how that ended.
int run_the_killed(const fs::path& folder) {
    ::setenv(where_to_die, folder.c_str(), 1);
    const pid_t child = ::fork();
    if (child == 0) {
        ::execl("/proc/self/exe", "test_window", "[.killed]", static_cast<char*>(nullptr));
        ::_exit(127);
    }
    ::unsetenv(where_to_die);
    int status = 0;
    pid_t ended = 0;
    REQUIRE(test::settle([&] { return (ended = ::waitpid(child, &status, WNOHANG)) != 0; }, 120s));
    REQUIRE(ended == child);
    return status;
}

}  // namespace

TEST_CASE("works on a detail and is killed", "[.killed]") {
    const char* folder = std::getenv(where_to_die);
    REQUIRE(folder != nullptr);
    test::Driver driver;
    window::Beginning beginning;
    beginning.data = TOEHOLD_DATA_FOLDER;
    beginning.preferences = driver.preferences();
    beginning.recovery = fs::path(folder) / "recovery";
    beginning.start_window = false;
    REQUIRE(window::application().begin(beginning));
    auto* frame = dynamic_cast<window::DetailFrame*>(window::application().open(fs::path(folder) / "work.xml"));
    REQUIRE(frame != nullptr);
    test::to_front(*frame);
    test::click(test::hole_on_screen(*frame, "A"));
    test::key(WXK_RIGHT);
    test::key(WXK_UP);
    // Nobody saves. The copy is written when the hand has rested.
    REQUIRE(test::settle([&] { return fs::exists(beginning.recovery) && !fs::is_empty(beginning.recovery); }, 30s));
    fs::remove_all(driver.folder());
    std::raise(SIGKILL);
}

TEST_CASE("work that was not saved when the program was killed is offered and opened", "[recovery]") {
    test::Driver driver;
    fs::rename(driver.copy_demo(test::holding_demo), driver.folder() / "work.xml");
    const int status = run_the_killed(driver.folder());
    REQUIRE(WIFSIGNALED(status));
    REQUIRE(WTERMSIG(status) == SIGKILL);

    model::BaseDetail worked_on = test::demo_detail(test::holding_demo);
    on_deck(worked_on).plate.holes[0].center = {-3.625, -3.625};
    on_deck(worked_on).plate_reference.reset();

    // First put off: nothing opens, and the copy is kept.
    driver.person.of_copies = window::Fate::keep;
    driver.begin();
    CHECK(driver.person.has_heard("recover Heron Landing"));
    CHECK(window::application().frames().empty());

    driver.person.of_copies = window::Fate::open;
    driver.begin();
    const auto frames = window::application().frames();
    REQUIRE(frames.size() == 1);
    window::DetailFrame& frame = *frames.front();
    CHECK(frame.session().detail() == worked_on);
    CHECK(frame.unsaved());
    CHECK(frame.GetTitle().StartsWith("*"));
    CHECK(frame.GetTitle().Contains("work.xml"));
    CHECK(frame.file() == driver.folder() / "work.xml");
    test::to_front(frame);
    test::key('S', wxMOD_CONTROL);
    CHECK_FALSE(frame.unsaved());
    CHECK(*editing::open_detail(frame.file(), frame.session().catalog()).detail == worked_on);

    driver.person.heard.clear();
    driver.begin();
    CHECK(driver.person.heard.empty());  // nothing is left to offer
}
