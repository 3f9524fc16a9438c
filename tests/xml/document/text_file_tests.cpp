#include "xml/detail/plates_file.h"
#include "xml/document/file.h"
#include "xml/samples.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <catch2/catch.hpp>

using namespace toehold;
using test::TemporaryFolder;

namespace {

void check_refused(const std::filesystem::path& file, const std::string& words) {
    const xml::TextRead read = xml::read_text(file);
    INFO(file << "\n" << test::sentences(read.problems));
    CHECK_FALSE(read.text);
    REQUIRE(read.problems.size() == 1);
    CHECK(test::tells(read.problems, words));
    CHECK(read.problems.front().file == file.string());
    // What reads through it says the same, and no digest of bytes never read.
    const xml::DetailRead detail = xml::read_detail(file);
    CHECK_FALSE(detail.detail);
    CHECK(detail.problems == read.problems);
    CHECK(detail.sha256.empty());
    CHECK(xml::read_plates(file).problems == read.problems);
    CHECK(xml::document_kind(file) == xml::DocumentKind::unknown);
}

}  // namespace

TEST_CASE("a regular file is read byte for byte", "[unit]") {
    const TemporaryFolder folder;
    const std::string bytes("a\0b\r\n\xFF", 6);
    test::put_bytes(folder.path() / "f", bytes);
    const xml::TextRead read = xml::read_text(folder.path() / "f");
    CHECK(read.problems.empty());
    CHECK(read.text == bytes);
}

TEST_CASE("what is no readable regular file is refused in words", "[bad-input]") {
    const TemporaryFolder folder;
    check_refused(folder.path() / "none.xml", "no such file");
    check_refused("", "no such file");
    check_refused(folder.path(), "a folder");
    check_refused("/dev/null", "not a regular file");
    check_refused("/dev/full", "not a regular file");
    const std::filesystem::path fifo = folder.path() / "pipe";
    REQUIRE(::mkfifo(fifo.c_str(), 0600) == 0);
    check_refused(fifo, "not a regular file");
    test::put_bytes(folder.path() / "f", "x");
    check_refused(folder.path() / "f" / "below", "cannot be opened");
}

TEST_CASE("a file nobody may read is refused", "[bad-input]") {
    const TemporaryFolder folder;
    const std::filesystem::path file = folder.path() / "closed.xml";
    test::put_bytes(file, "<a/>");
    REQUIRE(::chmod(file.c_str(), 0) == 0);
    if (::access(file.c_str(), R_OK) == 0) {
        WARN("not tried: this user may read every file");
        return;
    }
    check_refused(file, "cannot be opened");
}

TEST_CASE("a file of 100 MB is refused before it is read", "[bad-input]") {
    const TemporaryFolder folder;
    const std::filesystem::path file = folder.path() / "large.xml";
    test::put_bytes(file, "<a/>");
    std::filesystem::resize_file(file, 100U * 1024U * 1024U);  // a hole: takes no room
    check_refused(file, "larger than 4 MB");
    std::filesystem::resize_file(file, xml::max_document_bytes);
    CHECK(xml::read_text(file).text);
    std::filesystem::resize_file(file, xml::max_document_bytes + 1);
    check_refused(file, "larger than 4 MB");
}
