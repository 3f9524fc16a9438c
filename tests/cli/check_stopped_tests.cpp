// `toehold check` stopped by Ctrl-C while it works on many files: what was reviewed is printed, and the rest is
// counted.
#include "process.h"
#include "support/contains.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <chrono>
#include <csignal>
#include <filesystem>
#include <thread>

using toehold::test::contains;
using toehold::test::Ran;
using toehold::test::Running;
using Json = nlohmann::json;

namespace {

namespace fs = std::filesystem;

constexpr int stopped_status = 4;
constexpr int copies = 60;  // more than any machine reviews before the signal arrives

/// A folder with so many copies of one detail.
class ManyDetails {
  public:
    ManyDetails() {
        const fs::path demo = fs::path(TOEHOLD_DATA_FOLDER) / "demo";
        fs::copy_file(demo / "heron-landing-plates.xml", folder_.path() / "heron-landing-plates.xml");
        for (int copy = 0; copy < copies; ++copy) {
            fs::copy_file(demo / "heron-landing-corner.xml",
                          folder_.path() / ("d" + std::to_string(100 + copy) + ".xml"));
        }
    }
    [[nodiscard]] std::string path() const { return folder_.path().string(); }

  private:
    toehold::test::TemporaryFolder folder_;
};

/// Ctrl-C a second and a half after the start, whatever stands in the output by then.
Ran stopped(const std::vector<std::string>& form) {
    const ManyDetails details;
    std::vector<std::string> words{"check", "--jobs", "1", details.path()};
    words.insert(words.end(), form.begin(), form.end());
    Running running(words);
    constexpr std::chrono::milliseconds pause{1500};
    std::this_thread::sleep_for(pause);
    running.signal(SIGINT);
    return running.wait();
}

}  // namespace

TEST_CASE("Ctrl-C leaves the summary of what was reviewed, and says how many were not", "[process]") {
    const Ran ran = stopped({});
    INFO(ran.out << ran.err);
    REQUIRE(ran.status == stopped_status);
    CHECK(ran.out.rfind("60 details: ", 0) == 0);
    CHECK(contains(ran.out, " not reviewed (stopped)\n"));
    CHECK(contains(ran.err, "toehold: stopped: "));
    CHECK(contains(ran.err, " of 60 reviewed, "));
}

TEST_CASE("Ctrl-C leaves JSON that is one whole value and names the files left out", "[process]") {
    const Ran ran = stopped({"--json"});
    REQUIRE(ran.status == stopped_status);
    const Json json = Json::parse(ran.out);
    REQUIRE_FALSE(json.empty());
    CHECK(json.back()["schema"] == "toehold.stopped/1");
    const std::size_t done = json.back()["done"], left = json.back()["not_reviewed"].size();
    CHECK(done + left == copies);
    CHECK(json.size() == done + 1);
}

TEST_CASE("Ctrl-C leaves a table of files with those not reviewed at its end", "[process]") {
    const Ran ran = stopped({"--csv", "files"});
    REQUIRE(ran.status == stopped_status);
    CHECK(contains(ran.out, ",,not_reviewed,"));
    CHECK(std::count(ran.out.begin(), ran.out.end(), '\n') == copies + 1);
}
