// The file behind a project's window.
#include "editing/document/project_document.h"

#include "editing/document/process.h"
#include "support/compare.h"
#include "support/file_bytes.h"
#include "support/temporary_folder.h"
#include "support/three_posts.h"

#include <sys/wait.h>
#include <unistd.h>

#include <filesystem>

using namespace toehold;
namespace fs = std::filesystem;

namespace {

const fs::path shipped = fs::path(TOEHOLD_DATA_FOLDER) / "projects" / "heron-landing-three-posts.xml";

/// The plates' document stands beside the projects' folder.
fs::path copied_to(const fs::path& folder) {
    fs::create_directories(folder / "projects");
    fs::create_directories(folder / "demo");
    const fs::path plates = fs::path(TOEHOLD_DATA_FOLDER) / "demo" / "heron-landing-plates.xml";
    fs::copy_file(plates, folder / "demo" / plates.filename());
    const fs::path file = folder / "projects" / shipped.filename();
    fs::copy_file(shipped, file);
    return file;
}

bool refers_to_a_plate(const fs::path& file) { return test::bytes_of(file).find("plate-from") != std::string::npos; }

}  // namespace

TEST_CASE("A project is opened, saved and opened again as it was, its plates by reference", "[unit]") {
    const test::TemporaryFolder folder;
    const fs::path file = copied_to(folder.path());
    const editing::OpenedProject opened = editing::open_project(file);
    REQUIRE(opened.project);
    CHECK(opened.problems.empty());
    CHECK(*opened.project == test::three_posts());
    model::Project changed = *opened.project;
    changed.posts[2].at.x_in = 100.0;
    const editing::Saved saved = editing::save_project(file, changed);
    REQUIRE(saved.stamp);
    CHECK_FALSE(editing::changed_outside(file, *saved.stamp));
    CHECK(editing::stamp_of(file) == *saved.stamp);
    CHECK(*editing::open_project(file).project == changed);
    CHECK(refers_to_a_plate(file));
    test::put_bytes(file, test::bytes_of(file) + "\n");
    CHECK(editing::changed_outside(file, *saved.stamp));
}

TEST_CASE("A project saved where its plates' file is not in reach has the plates in it", "[unit]") {
    const test::TemporaryFolder folder;
    const fs::path elsewhere = folder.path() / "alone.xml";
    REQUIRE(editing::save_project(elsewhere, test::three_posts()).stamp);
    CHECK_FALSE(refers_to_a_plate(elsewhere));
    const editing::OpenedProject opened = editing::open_project(elsewhere);
    REQUIRE(opened.project);
    CHECK(*opened.project == editing::as_saved(elsewhere, test::three_posts()));
    CHECK_FALSE(editing::save_project(folder.path() / "no such folder" / "p.xml", *opened.project).stamp);
}

TEST_CASE("A file that is no sound project is not opened, and says why", "[bad-input]") {
    const test::TemporaryFolder folder;
    const fs::path file = folder.path() / "broken.xml";
    std::string text = test::bytes_of(shipped);
    text.replace(text.find("mount=\"line-post\""), 17, "mount=\"nowhere\"  ");
    test::put_bytes(file, text);
    const editing::OpenedProject opened = editing::open_project(file);
    CHECK_FALSE(opened.project);
    CHECK_FALSE(opened.problems.empty());
    CHECK_FALSE(editing::open_project(folder.path() / "absent.xml").project);
}

TEST_CASE("A copy of an unsaved project outlives its process and opens as it was", "[unit]") {
    const test::TemporaryFolder folder;
    const fs::path file = copied_to(folder.path());
    model::Project changed = *editing::open_project(file).project;
    changed.posts[1].at.x_in = 50.0;
    const pid_t child = ::fork();
    if (child == 0) ::_exit(editing::keep_copy(folder.path() / "recovery", 1, file, changed) ? 0 : 1);
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    REQUIRE(WEXITSTATUS(status) == 0);
    const std::vector<editing::RecoveryCopy> left = editing::left_copies(folder.path() / "recovery");
    REQUIRE(left.size() == 1);
    CHECK(left.front().project);
    CHECK(left.front().name == changed.name);
    CHECK(left.front().of == fs::absolute(file));
    const editing::OpenedProject opened = editing::open_project_copy(left.front());
    REQUIRE(opened.project);
    CHECK(*opened.project == changed);
    CHECK(opened.stamp == editing::stamp_of(file));
}
