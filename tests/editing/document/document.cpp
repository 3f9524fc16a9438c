// The file behind a window: nothing that was there is lost, nothing is said that is not so, and unsaved work outlives
// its process.
#include "editing/document.h"

#include "editing/document/process.h"
#include "editing/samples.h"
#include "model/validate.h"
#include "support/compare.h"
#include "support/file_bytes.h"
#include "support/temporary_folder.h"
#include "xml/detail/detail_file.h"
#include "xml/detail/plates_file.h"

#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <limits>

using namespace toehold;
namespace fs = std::filesystem;
using test::bytes_of;
using test::put_bytes;
using test::shipped_catalog;
using test::TemporaryFolder;

namespace {

const fs::path demo_folder = fs::path(TOEHOLD_DATA_FOLDER) / "demo";
const fs::path files_folder = fs::path(TOEHOLD_TEST_FOLDER) / "files";

/// A detail that can be written and not built: two holes in one place. A reviewer has been at it.
model::BaseDetail unsound_detail() {
    model::BaseDetail detail = test::square_base();
    detail.project = "Heron Landing";
    detail.remarks = {{"anchor-withdrawal", "anchor A", "Which species?", "A. Reviewer", "2026-11-25",
                       model::Remark::State::settled}};
    on_deck(detail).plate.holes[1].center = on_deck(detail).plate.holes[0].center;
    return detail;
}

/// Runs `work` in a process of its own, which is gone when this returns.
template <class Work>
long in_a_process_that_ends(const Work& work) {
    const pid_t child = ::fork();
    if (child == 0) {
        work();
        ::_exit(0);
    }
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    REQUIRE(WIFEXITED(status));
    return child;
}

}  // namespace

TEST_CASE("A detail is opened, saved and opened again as it was", "[unit]") {
    const TemporaryFolder folder;
    const fs::path file = folder.path() / "detail.xml";
    const model::BaseDetail detail = test::square_base();
    const editing::Saved saved = editing::save_detail(file, detail);
    REQUIRE(saved.stamp);
    CHECK(saved.refusal.empty());
    const editing::Opened opened = editing::open_detail(file, shipped_catalog());
    REQUIRE(opened.detail);
    CHECK(*opened.detail == detail);
    CHECK(opened.problems.empty());
    CHECK(opened.stamp == *saved.stamp);
    CHECK_FALSE(opened.is_new);
    CHECK_FALSE(editing::changed_outside(file, opened.stamp));
}

TEST_CASE("A file that cannot be built is opened for mending, with every sentence", "[unit][bad-input]") {
    const fs::path file = files_folder / "bad" / "overlapping-holes.xml";
    const editing::Opened opened = editing::open_detail(file, shipped_catalog());
    REQUIRE(opened.detail);
    CHECK(opened.problems.size() == xml::read_detail(file).problems.size());
    REQUIRE_FALSE(opened.problems.empty());
    CHECK(model::sentence(opened.problems.front()).find("overlaps") != std::string::npos);

    const TemporaryFolder folder;
    const fs::path saved = folder.path() / "unsound.xml";
    REQUIRE(editing::save_detail(saved, unsound_detail()).stamp);
    CHECK(editing::open_detail(saved, shipped_catalog()).detail == unsound_detail());
}

TEST_CASE("A file that cannot be built is opened with its project and its remarks", "[unit]") {
    const TemporaryFolder folder;
    const fs::path file = folder.path() / "unsound.xml";
    REQUIRE(editing::save_detail(file, unsound_detail()).stamp);
    const editing::Opened opened = editing::open_detail(file, shipped_catalog());
    REQUIRE(opened.detail);
    CHECK(opened.detail->project == "Heron Landing");
    CHECK(opened.detail->remarks == unsound_detail().remarks);
}

TEST_CASE("A file whose form is in doubt gives no detail and says why", "[unit][bad-input]") {
    std::size_t count = 0;
    for (const auto& entry : fs::directory_iterator(files_folder / "bad")) {
        const xml::DetailRead read = xml::read_detail(entry.path());
        const editing::Opened opened = editing::open_detail(entry.path(), shipped_catalog());
        INFO(entry.path());
        CHECK_FALSE(opened.problems.empty());
        CHECK(opened.problems == read.problems);
        ++count;
    }
    CHECK(count > 10);
    for (const char* const name :
         {"truncated.xml", "length-without-unit.xml", "unknown-element.xml", "two-roots.xml"}) {
        INFO(name);
        CHECK_FALSE(editing::open_detail(files_folder / "bad" / name, shipped_catalog()).detail);
    }
    const editing::Opened none = editing::open_detail("/no/such/file.xml", shipped_catalog());
    CHECK_FALSE(none.detail);
    CHECK(none.problems.size() == 1);
    CHECK(none.stamp == editing::FileStamp{});
}

TEST_CASE("A detail of more blocks than a review takes is refused by the same limit and in the same words",
          "[unit][bad-input]") {
    const TemporaryFolder folder;
    const fs::path file = folder.path() / "many.xml";
    model::BaseDetail detail = test::square_base();
    model::Block block = detail.framing.blocks.front();
    const auto put = [&](std::size_t count) {
        detail.framing.blocks.clear();
        for (std::size_t number = 1; number <= count; ++number) {
            block.id = "B" + std::to_string(number);
            detail.framing.blocks.push_back(block);
        }
        put_bytes(file, xml::write_detail(detail));
        return editing::open_detail(file, shipped_catalog());
    };
    CHECK(put(model::most_members).detail);
    for (const std::size_t count : {model::most_members + 1, std::size_t{3000}}) {
        const editing::Opened opened = put(count);
        CHECK_FALSE(opened.detail);
        REQUIRE(opened.problems.size() == 1);
        CHECK(opened.problems == xml::read_detail(file).problems);  // what the command line says
        const std::string sentence = model::sentence(opened.problems.front());
        CHECK(sentence.find("too many blocks") != std::string::npos);
        CHECK(sentence.find("at most 50") != std::string::npos);
        CHECK(sentence.find(std::to_string(count)) != std::string::npos);
    }
}

TEST_CASE("A plate document becomes a new detail without a file", "[unit]") {
    const fs::path file = fs::path(TOEHOLD_DATA_FOLDER) / "plates" / "steel.xml";
    const editing::Opened opened = editing::open_detail(file, shipped_catalog());
    REQUIRE(opened.detail);
    CHECK(opened.is_new);
    CHECK(opened.problems.empty());
    CHECK(opened.stamp == editing::FileStamp{});
    CHECK(on_deck(*opened.detail).plate == xml::read_plates(file).plates.front());
}

TEST_CASE("A reference is kept only where it gives the plate as drawn", "[unit]") {
    const TemporaryFolder folder;
    const std::string name = "heron-landing-bolted-angles.xml";
    const fs::path file = folder.path() / name;
    model::BaseDetail detail = *xml::read_detail(demo_folder / name).detail;
    REQUIRE(on_deck(detail).plate_reference);
    SECTION("its document is not beside the file") {
        CHECK_FALSE(on_deck(editing::as_saved(file, detail)).plate_reference);
    }
    fs::copy_file(demo_folder / "heron-landing-plates.xml", folder.path() / "heron-landing-plates.xml");
    SECTION("it is, and gives the plate") { CHECK(editing::as_saved(file, detail) == detail); }
    SECTION("it is, and the plate was changed") {
        on_deck(detail).plate.thickness_in = 1.0;
        CHECK_FALSE(on_deck(editing::as_saved(file, detail)).plate_reference);
        REQUIRE(editing::save_detail(file, detail).stamp);
        CHECK(on_deck(*editing::open_detail(file, shipped_catalog()).detail).plate.thickness_in == 1.0);
    }
}

TEST_CASE("What cannot be saved is refused with a sentence, and the file is as it was", "[unit][bad-input]") {
    const TemporaryFolder folder;
    const model::BaseDetail detail = test::square_base();
    const auto refused = [&](const fs::path& file) {
        const editing::Saved saved = editing::save_detail(file, detail);
        CHECK_FALSE(saved.stamp);
        return saved.refusal;
    };
    CHECK(refused("/proc/detail.xml").find("cannot be saved in its folder") != std::string::npos);
    CHECK(refused(folder.path() / "no" / "such" / "folder.xml").find("cannot be saved") != std::string::npos);
    CHECK(refused("/dev/full").find("not a regular file") != std::string::npos);
    CHECK(refused(folder.path()).find("not a regular file") != std::string::npos);
    put_bytes(folder.path() / "file", "kept");
    CHECK_FALSE(refused(folder.path() / "file" / "detail.xml").empty());
    CHECK(bytes_of(folder.path() / "file") == "kept");

    const fs::path file = folder.path() / "detail.xml";
    REQUIRE(editing::save_detail(file, detail).stamp);
    const std::string before = bytes_of(file);
    model::BaseDetail no_number = detail;
    on_deck(no_number).plate.thickness_in = std::numeric_limits<double>::quiet_NaN();
    CHECK_FALSE(editing::save_detail(file, no_number).stamp);
    CHECK_FALSE(editing::save_detail(file, no_number).refusal.empty());
    CHECK(bytes_of(file) == before);
}

TEST_CASE("A file that somebody else wrote, took away or put there has changed", "[unit]") {
    const TemporaryFolder folder;
    const fs::path file = folder.path() / "detail.xml";
    CHECK_FALSE(editing::changed_outside(file, {}));
    put_bytes(file, "somebody's");
    CHECK(editing::changed_outside(file, {}));
    const editing::FileStamp stamp = *editing::save_detail(file, test::square_base()).stamp;
    CHECK_FALSE(editing::changed_outside(file, stamp));
    put_bytes(file, bytes_of(file) + "\n");
    CHECK(editing::changed_outside(file, stamp));
    fs::remove(file);
    CHECK(editing::changed_outside(file, stamp));
    REQUIRE(editing::save_detail(file, test::square_base()).stamp == stamp);
    CHECK_FALSE(editing::changed_outside(file, stamp));
}

TEST_CASE("A copy is left alone while its process runs, and found when that is gone", "[process]") {
    const TemporaryFolder folder;
    const fs::path copies = folder.path() / "state" / "recovery";
    const fs::path of = folder.path() / "a -- b%.xml";
    const model::BaseDetail detail = test::square_base();
    REQUIRE(editing::keep_copy(copies, 1, of, detail));
    CHECK(editing::left_copies(copies).empty());
    CHECK((fs::status(copies).permissions() & (fs::perms::group_all | fs::perms::others_all)) == fs::perms::none);
    editing::drop_copy(copies, 1);
    CHECK(fs::is_empty(copies));

    in_a_process_that_ends([&] {
        editing::keep_copy(copies, 1, of, detail);
        editing::keep_copy(copies, 2, {}, unsound_detail());
    });
    std::vector<editing::RecoveryCopy> left = editing::left_copies(copies);
    REQUIRE(left.size() == 2);
    if (left[0].of.empty()) std::swap(left[0], left[1]);
    CHECK(left[0].of == of);
    CHECK(left[0].name == detail.name);
    CHECK(left[0].written.size() == std::string("2026-01-31 12:00").size());
    CHECK(left[1].of.empty());
    // The copy is a base detail file itself.
    CHECK(xml::read_detail(left[0].copy).detail == detail);

    const editing::Opened opened = editing::open_copy(left[0], shipped_catalog());
    CHECK(opened.detail == detail);
    CHECK(opened.problems.empty());
    CHECK(opened.stamp == editing::FileStamp{});
    const editing::Opened unsound = editing::open_copy(left[1], shipped_catalog());
    CHECK(unsound.detail == unsound_detail());
    CHECK_FALSE(unsound.problems.empty());
    editing::drop_copy(left[0]);
    CHECK(editing::left_copies(copies).size() == 1);
}

TEST_CASE("A number given to another process since does not hide a copy", "[process]") {
    const editing::ProcessMark self = editing::this_process();
    CHECK(self.began > 0);
    CHECK(editing::still_runs(self));
    CHECK_FALSE(editing::still_runs({self.pid, self.began + 1}));
    CHECK(editing::process_of(editing::copy_name(self, 3)) == self);
    for (const char* const name : {"detail.xml", "1-2.xml", "1-2-3.xml.9-1.part", "-1-2-3.xml", "1-2-x.xml", ""}) {
        INFO(name);
        CHECK_FALSE(editing::process_of(name));
    }
    const TemporaryFolder folder;
    REQUIRE(editing::keep_copy(folder.path(), 1, {}, test::square_base()));
    fs::rename(folder.path() / editing::copy_name(self, 1),
               folder.path() / editing::copy_name({self.pid, self.began + 1}, 1));
    CHECK(editing::left_copies(folder.path()).size() == 1);
}

TEST_CASE("A copy keeps its plate, and its reference where that still gives it", "[unit]") {
    const TemporaryFolder folder;
    const fs::path of = demo_folder / "heron-landing-bolted-angles.xml";
    const model::BaseDetail detail = *xml::read_detail(of).detail;
    REQUIRE(editing::keep_copy(folder.path(), 1, of, detail));
    const fs::path copy = folder.path() / editing::copy_name(editing::this_process(), 1);
    const editing::Opened opened = editing::open_copy({copy, of, {}, {}}, shipped_catalog());
    REQUIRE(opened.detail);
    CHECK(*opened.detail == detail);
    CHECK_FALSE(editing::changed_outside(of, opened.stamp));
    const editing::Opened elsewhere =
        editing::open_copy({copy, folder.path() / "moved.xml", {}, {}}, shipped_catalog());
    REQUIRE(elsewhere.detail);
    CHECK_FALSE(on_deck(*elsewhere.detail).plate_reference);
    CHECK(on_deck(*elsewhere.detail).plate == on_deck(detail).plate);
}

TEST_CASE("A damaged copy gives what it can and says what it could not", "[unit][bad-input]") {
    const TemporaryFolder folder;
    const fs::path copy = folder.path() / "1-1-1.xml";
    REQUIRE(editing::save_detail(copy, test::square_base()).stamp);
    std::string text = bytes_of(copy);
    text.replace(text.find("height=\"42 in\""), 14, "height=\"tall\"");
    put_bytes(copy, text);
    const editing::Opened partly = editing::open_copy({copy, {}, {}, {}}, shipped_catalog());
    REQUIRE(partly.detail);
    CHECK(on_deck(*partly.detail).plate == on_deck(test::square_base()).plate);
    CHECK_FALSE(partly.problems.empty());
    put_bytes(copy, text.substr(0, text.size() / 2));
    const editing::Opened broken = editing::open_copy({copy, {}, {}, {}}, shipped_catalog());
    CHECK_FALSE(broken.detail);
    CHECK_FALSE(broken.problems.empty());
}

TEST_CASE("A copy that cannot be kept is said not to be", "[unit][bad-input]") {
    CHECK_FALSE(editing::keep_copy("/proc/no/such", 1, {}, test::square_base()));
    CHECK_FALSE(editing::keep_copy({}, 1, {}, test::square_base()));
    const TemporaryFolder folder;
    put_bytes(folder.path() / "file", "");
    CHECK_FALSE(editing::keep_copy(folder.path() / "file", 1, {}, test::square_base()));
    model::BaseDetail no_number = test::square_base();
    no_number.guard.height_in = std::numeric_limits<double>::infinity();
    CHECK_FALSE(editing::keep_copy(folder.path(), 1, {}, no_number));
    CHECK(editing::left_copies("/no/such/folder").empty());
}

TEST_CASE("Copies stand in the user's folder of state", "[unit]") {
    const char* const state = std::getenv("XDG_STATE_HOME");
    const char* const home = std::getenv("HOME");
    const std::string state_before = state == nullptr ? "" : state;
    const std::string home_before = home == nullptr ? "" : home;
    ::setenv("HOME", "/home/somebody", 1);
    ::setenv("XDG_STATE_HOME", "/state", 1);
    CHECK(editing::recovery_folder() == "/state/toehold/recovery");
    ::setenv("XDG_STATE_HOME", "relative", 1);
    CHECK(editing::recovery_folder() == "/home/somebody/.local/state/toehold/recovery");
    ::unsetenv("XDG_STATE_HOME");
    ::unsetenv("HOME");
    CHECK(editing::recovery_folder().empty());
    if (state != nullptr) ::setenv("XDG_STATE_HOME", state_before.c_str(), 1);
    if (home != nullptr) ::setenv("HOME", home_before.c_str(), 1);
}
