#include "xml/samples.h"

#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <csignal>

using namespace toehold;
using test::bytes_of;
using test::TemporaryFolder;

namespace {

std::size_t entries(const std::filesystem::path& folder) {
    return static_cast<std::size_t>(
        std::distance(std::filesystem::directory_iterator(folder), std::filesystem::directory_iterator()));
}

/// No file of this process may grow beyond the limit while this lives: writing on is an error, as on a full disk.
class FileSizeLimit {
  public:
    explicit FileSizeLimit(rlim_t bytes) : handler_(std::signal(SIGXFSZ, SIG_IGN)) {
        REQUIRE(::getrlimit(RLIMIT_FSIZE, &before_) == 0);
        const rlimit now{bytes, before_.rlim_max};
        REQUIRE(::setrlimit(RLIMIT_FSIZE, &now) == 0);
    }
    FileSizeLimit(const FileSizeLimit&) = delete;
    FileSizeLimit& operator=(const FileSizeLimit&) = delete;
    ~FileSizeLimit() {
        ::setrlimit(RLIMIT_FSIZE, &before_);
        std::signal(SIGXFSZ, handler_);
    }

  private:
    rlimit before_{};
    void (*handler_)(int);
};

}  // namespace

TEST_CASE("saving makes or replaces the file and leaves nothing beside it", "[unit]") {
    const TemporaryFolder folder;
    const std::filesystem::path file = folder.path() / "detail.xml";
    REQUIRE_FALSE(xml::save_atomically(file, "first"));
    CHECK(bytes_of(file) == "first");
    REQUIRE_FALSE(xml::save_atomically(file, "second, longer"));
    CHECK(bytes_of(file) == "second, longer");
    REQUIRE_FALSE(xml::save_atomically(file, ""));
    CHECK(bytes_of(file).empty());
    CHECK(entries(folder.path()) == 1);
}

TEST_CASE("a replaced file keeps its rights, and a link stays a link", "[unit]") {
    const TemporaryFolder folder;
    const std::filesystem::path file = folder.path() / "detail.xml";
    test::put_bytes(file, "old");
    REQUIRE(::chmod(file.c_str(), 0640) == 0);
    std::filesystem::create_symlink(file, folder.path() / "link.xml");
    REQUIRE_FALSE(xml::save_atomically(folder.path() / "link.xml", "new"));
    CHECK(std::filesystem::is_symlink(folder.path() / "link.xml"));
    CHECK(bytes_of(file) == "new");
    struct stat status {};
    REQUIRE(::stat(file.c_str(), &status) == 0);
    CHECK((status.st_mode & 07777U) == 0640U);
}

TEST_CASE("a disk that takes only a part loses neither the old file nor the truth", "[bad-input]") {
    const TemporaryFolder folder;
    const std::filesystem::path file = folder.path() / "detail.xml";
    test::put_bytes(file, "the good old file");
    std::optional<model::Problem> problem;
    {
        const FileSizeLimit limit(1000);
        problem = xml::save_atomically(file, std::string(5000, 'x'));
    }
    REQUIRE(problem);
    INFO(model::sentence(*problem));
    CHECK(model::sentence(*problem).find("cannot be written") != std::string::npos);
    CHECK(problem->file == file.string());
    CHECK(bytes_of(file) == "the good old file");
    CHECK(entries(folder.path()) == 1);
}

TEST_CASE("a full device, a folder and a missing folder are refused in words", "[bad-input]") {
    const TemporaryFolder folder;
    CHECK(xml::save_atomically("/dev/full", "x"));
    CHECK(std::filesystem::is_character_file("/dev/full"));
    CHECK(xml::save_atomically(folder.path(), "x"));
    const auto problem = xml::save_atomically(folder.path() / "none" / "detail.xml", "x");
    REQUIRE(problem);
    CHECK(model::sentence(*problem).find("cannot be saved in its folder") != std::string::npos);
    CHECK(entries(folder.path()) == 0);
}
