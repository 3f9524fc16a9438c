// `toehold size` stopped from outside while it works: nothing is lost, and it goes on to the same end.
#include "porch.h"
#include "process.h"
#include "support/contains.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <chrono>
#include <csignal>
#include <filesystem>
#include <map>
#include <thread>

using toehold::test::bytes_of;
using toehold::test::contains;
using toehold::test::Porch;
using toehold::test::Ran;
using toehold::test::run_toehold;
using toehold::test::Running;

namespace {

namespace fs = std::filesystem;

constexpr int stopped_status = 4;

/// Some hundred candidates, judged one after the other, of which one in 32 is a detail: the journal gets its first
/// lines after a quarter of them.
std::vector<std::string> search(const Porch& porch, const std::vector<std::string>& more) {
    std::string patterns = "pattern=2x2@1 1/8";
    for (int edge = 1; edge < 32; ++edge) patterns += ",2x2@0.1" + std::to_string(100 + edge);  // over the edge
    std::vector<std::string> arguments{
        "size", porch.file(), "--vary", "thickness=3/8..1 5/16/1/16", "--vary", patterns, "--jobs", "1", "--top", "1"};
    arguments.insert(arguments.end(), more.begin(), more.end());
    return arguments;
}

/// Signaled once something stands in its journal; begun again where it was done before that.
Ran signaled(const Porch& porch, const std::vector<std::string>& more, int signal, int expected_status) {
    const fs::path journal = porch.path("journal");
    constexpr int attempts = 10;
    constexpr std::chrono::milliseconds pause{2};
    std::vector<std::string> arguments = search(porch, {"--journal", journal.string()});
    arguments.insert(arguments.end(), more.begin(), more.end());
    Ran ran;
    for (int attempt = 0; attempt == 0 || (attempt < attempts && ran.status != expected_status); ++attempt) {
        fs::remove(journal);
        Running running(arguments);
        const auto begun = std::chrono::steady_clock::now();
        const auto waits = [&] {
            constexpr std::chrono::minutes at_most{2};  // some hundred times its usual time
            return std::chrono::steady_clock::now() - begun < at_most && !running.ended();
        };
        while (waits() && !(fs::exists(journal) && fs::file_size(journal) > 0)) std::this_thread::sleep_for(pause);
        running.signal(signal);
        ran = running.wait();
    }
    return ran;
}

std::map<std::string, std::string> files_in(const fs::path& folder) {
    std::map<std::string, std::string> files;
    for (const auto& entry : fs::directory_iterator(folder))
        files[entry.path().filename().string()] = bytes_of(entry.path());
    return files;
}

}  // namespace

TEST_CASE("Ctrl-C leaves what was found, and a resumed search ends as one that was not stopped", "[process]") {
    const Porch porch;
    const std::string part = porch.path("part").string(), all = porch.path("all").string();
    const std::string journal = porch.path("journal").string();
    const Ran stopped = signaled(porch, {"-o", part}, SIGINT, stopped_status);
    INFO(stopped.out << stopped.err);
    REQUIRE(stopped.status == stopped_status);
    CHECK(stopped.err == "toehold: stopped; the same command with --resume goes on where it stopped\n");
    std::string said = stopped.out;
    std::replace(said.begin(), said.end(), '\n', ' ');
    CHECK(contains(said, "of 512 candidates are not judged yet."));
    CHECK(contains(stopped.out, "Best results."));
    REQUIRE(files_in(part).size() == 1);
    CHECK(run_toehold({"check", fs::directory_iterator(part)->path().string()}).status == 0);

    const Ran resumed = run_toehold(search(porch, {"--journal", journal, "--resume", "-o", all}));
    const std::string own = porch.path("own").string();
    const Ran undisturbed = run_toehold(search(porch, {"-o", own}));
    CHECK(resumed.status == 0);
    CHECK(resumed.err.empty());
    CHECK(resumed.out == undisturbed.out);
    CHECK(files_in(all) == files_in(own));
}

TEST_CASE("a search killed in the middle of a line goes on to the same end", "[process]") {
    const Porch porch;
    const fs::path journal = porch.path("journal");
    const Ran killed = signaled(porch, {}, SIGKILL, -1);
    REQUIRE(killed.status == -1);
    CHECK(killed.out.empty());
    const std::string undisturbed = run_toehold(search(porch, {"--json"})).out;
    // As the kernel leaves a line that was being written: whatever part of it had arrived.
    const std::string kept = bytes_of(journal);
    REQUIRE(kept.size() > 30);
    for (const std::size_t less : {std::size_t{1}, std::size_t{30}}) {
        fs::resize_file(journal, kept.size() - less);
        const Ran resumed = run_toehold(search(porch, {"--json", "--journal", journal.string(), "--resume"}));
        INFO(less << " bytes less: " << resumed.err);
        CHECK(resumed.status == 0);
        CHECK(resumed.out == undisturbed);
    }
}
