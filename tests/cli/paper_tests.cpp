// Papers written by the program, and what it says where it cannot.
#include "process.h"
#include "support/contains.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>

using toehold::test::bytes_of;
using toehold::test::contains;
using toehold::test::Ran;
using toehold::test::run_toehold;
using toehold::test::TemporaryFolder;

namespace {

const std::string demo = std::string(TOEHOLD_DATA_FOLDER) + "/demo/heron-landing-";
const std::string holds = demo + "lags-in-deep-blocks.xml";
const std::string fails = demo + "short-lags-in-flat-block.xml";

}  // namespace

TEST_CASE("every drawing is written as its ending says", "[process]") {
    const TemporaryFolder folder;
    struct Paper {
        std::vector<std::string> words;
        const char* name;
        const char* begins;
    };
    const std::vector<Paper> papers = {{{"draw"}, "shop.pdf", "%PDF"},
                                       {{"draw"}, "shop.SVG", "<?xml"},
                                       {{"draw"}, "shop.png", "\x89PNG"},
                                       {{"draw"}, "plate.dxf", "999"},
                                       {{"draw", "--view", "plan", "--si"}, "plan.svg", "<?xml"},
                                       {{"draw", "--view", "section", "--paper", "a4"}, "section.pdf", "%PDF"},
                                       {{"draw", "--view", "elevation"}, "elevation.png", "\x89PNG"}};
    for (const Paper& paper : papers) {
        const std::string file = (folder.path() / paper.name).string();
        std::vector<std::string> words = paper.words;
        words.insert(words.end(), {fails, "-o", file});
        const Ran ran = run_toehold(words);
        INFO(paper.name << " " << ran.err);
        CHECK(ran.status == 0);
        CHECK(ran.out == "Written to " + file + "\n");
        CHECK(bytes_of(file).rfind(paper.begins, 0) == 0);
    }
}

TEST_CASE("the same input and date give the same bytes, by option or by SOURCE_DATE_EPOCH", "[process]") {
    const TemporaryFolder folder;
    const auto site = [&](const char* name, const std::vector<std::string>& more, const std::string& epoch) {
        std::vector<std::string> words = {"site", holds, "-o", (folder.path() / name).string()};
        words.insert(words.end(), more.begin(), more.end());
        toehold::test::Surroundings surroundings;
        if (!epoch.empty()) surroundings.environment = {"SOURCE_DATE_EPOCH=" + epoch};
        CHECK(run_toehold(words, surroundings).status == 0);
        return bytes_of((folder.path() / name).string());
    };
    const std::string dated = site("one.pdf", {"--date", "2026-11-25"}, "");
    CHECK(dated == site("two.pdf", {"--date", "2026-11-25"}, ""));
    // 1795564800 is 2026-11-25 00:00 UTC: date -u -d @1795564800
    CHECK(dated == site("three.pdf", {}, "1795564800"));
    CHECK(dated != site("four.pdf", {"--date", "none"}, ""));
}

TEST_CASE("what cannot be written is said in one sentence", "[bad-input][process]") {
    const TemporaryFolder folder;
    const auto refused = [](const std::vector<std::string>& words, int status, const std::string& part) {
        const Ran ran = run_toehold(words);
        INFO(ran.err);
        CHECK(ran.status == status);
        CHECK(ran.out.empty());
        CHECK(contains(ran.err, part));
        CHECK(std::count(ran.err.begin(), ran.err.end(), '\n') == 1);
    };
    const std::string there = (folder.path() / "x").string();
    refused({"report", holds, "-o", there + ".svg"}, 2, "accepted endings: .pdf");
    refused({"draw", holds, "-o", there + ".docx"}, 2, ".pdf, .svg, .png, .dxf");
    refused({"draw", holds, "--view", "plan", "-o", there + ".dxf"}, 2, ".svg, .pdf, .png");
    refused({"compare", holds, fails, "-o", there + ".txt"}, 2, "written as .pdf");
    refused({"draw", holds, "-o", (folder.path() / "no" / "such.pdf").string()}, 3, "such.pdf");
    refused({"report", there + ".xml"}, 2, "there is no such file");
    refused({"site", holds, "--date", "yesterday"}, 2, "use YYYY-MM-DD");
    refused({"site", holds, "--paper", "a7"}, 2, "a7");
    CHECK(std::filesystem::is_empty(folder.path()));
}

TEST_CASE("a comparison as PDF keeps the status of its words", "[process]") {
    const TemporaryFolder folder;
    const std::string file = (folder.path() / "c.pdf").string();
    const Ran ran = run_toehold({"compare", fails, holds, "-o", file});
    CHECK(ran.status == 1);
    CHECK(bytes_of(file).rfind("%PDF", 0) == 0);
}

TEST_CASE("a paper without a name is written beside no other, named after its detail", "[process]") {
    const TemporaryFolder folder;
    const std::filesystem::path before = std::filesystem::current_path();
    std::filesystem::current_path(folder.path());
    const Ran ran = run_toehold({"letter", holds});
    std::filesystem::current_path(before);
    CHECK(ran.out == "Written to heron-landing-lags-in-deep-blocks-comments.pdf\n");
    CHECK(std::filesystem::exists(folder.path() / "heron-landing-lags-in-deep-blocks-comments.pdf"));
}

TEST_CASE("a post without a plate has nothing for the shop, and all else", "[process]") {
    const TemporaryFolder folder;
    const std::string post = std::string(TOEHOLD_DATA_FOLDER) + "/situations/side/ties-at-both-bolts.xml";
    const Ran ran = run_toehold({"draw", post, "-o", (folder.path() / "shop.pdf").string()});
    CHECK(ran.status == 2);
    CHECK(contains(ran.err, "there is nothing to cut in metal"));
    CHECK(std::filesystem::is_empty(folder.path()));
    for (const char* const view : {"plan", "section", "elevation"})
        CHECK(run_toehold({"draw", post, "--view", view, "-o", (folder.path() / "view.svg").string()}).status == 0);
}
