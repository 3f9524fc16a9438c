// Reviews of the demo details and of files that cannot be used, through the program.
#include "process.h"
#include "support/contains.h"
#include "support/program.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <map>
#include <sstream>

using toehold::test::bytes_of;
using toehold::test::contains;
using toehold::test::Ran;
using toehold::test::run_toehold;
using toehold::test::TemporaryFile;
using Json = nlohmann::json;

namespace {

namespace fs = std::filesystem;

const std::string demo = std::string(TOEHOLD_DATA_FOLDER) + "/demo/";
const std::string plates_file = demo + "heron-landing-plates.xml";

std::vector<std::string> demo_details() {
    std::vector<std::string> all;
    for (const auto& entry : fs::directory_iterator(demo)) {
        const bool detail = bytes_of(entry.path().string()).find("<base-detail") != std::string::npos;
        if (detail) all.push_back(entry.path().string());
    }
    std::sort(all.begin(), all.end());
    return all;
}

/// Every third detail, from this one on: a review with its remedies takes seconds under the sanitizers.
void review_part(std::size_t first) {
    const std::map<std::string, int> statuses = {{"adequate", 0}, {"inadequate", 1}, {"incomplete", 1}};
    const std::vector<std::string> files = demo_details();
    REQUIRE(files.size() >= 3);
    for (std::size_t index = first; index < files.size(); index += 3) {
        INFO(files[index]);
        const Ran json = run_toehold({"check", "--json", files[index]});
        CHECK(json.err.empty());
        REQUIRE((json.status == 0 || json.status == 1));
        const Json review = Json::parse(json.out);
        CHECK(review["schema"] == "toehold.review/1");
        CHECK(statuses.at(review["verdict"].get<std::string>()) == json.status);
    }
}

std::string one_detail() { return demo + "heron-landing-decking-only.xml"; }

}  // namespace

TEST_CASE("demo details are reviewed, and the status is that of the verdict: first third", "[process]") {
    review_part(0);
}
TEST_CASE("demo details are reviewed, and the status is that of the verdict: second third", "[process]") {
    review_part(1);
}
TEST_CASE("demo details are reviewed, and the status is that of the verdict: last third", "[process]") {
    review_part(2);
}

TEST_CASE("the text opens with the verdict, and has the status of the JSON", "[process]") {
    const Ran text = run_toehold({"check", one_detail()});
    CHECK(text.status == 1);
    CHECK(text.out.rfind("INADEQUATE: ", 0) == 0);
}

TEST_CASE("the review carries the SHA-256 that sha256sum prints", "[process]") {
    const Json review = Json::parse(run_toehold({"check", "--json", one_detail()}).out);
    std::string digest;
    CHECK(toehold::test::run("sha256sum '" + one_detail() + "'", &digest) == 0);
    CHECK(review["input_sha256"] == digest.substr(0, 64));
}

TEST_CASE("several details give each text in turn, or one array, and the worst status", "[process]") {
    const Ran text = run_toehold({"check", "--full", one_detail(), one_detail()});
    const auto first = text.out.find("screwed to the boards only");
    CHECK(text.out.find("screwed to the boards only", first + 1) != std::string::npos);
    CHECK(contains(text.out, std::string(100, '=')));
    const Json both = Json::parse(run_toehold({"check", "--json", one_detail(), one_detail()}).out);
    CHECK(both.size() == 2);
    const Ran mixed = run_toehold({"check", "--json", "/nonexistent.xml", one_detail()});
    CHECK(mixed.status == 2);
    CHECK(contains(mixed.err, "/nonexistent.xml"));
    const Json listed = Json::parse(mixed.out);
    REQUIRE(listed.size() == 2);
    CHECK(listed[0].at("schema") == "toehold.unusable/1");
    CHECK(listed[0].at("file") == "/nonexistent.xml");
    CHECK(listed[1].at("schema") == "toehold.review/1");
    for (const Json& one : Json::parse(run_toehold({"check", "--json", "/nonexistent.xml", "/nonexistent.xml"}).out))
        CHECK(one.at("schema") == "toehold.unusable/1");
}

TEST_CASE("SI, every row and the steps of a check are shown on request", "[process]") {
    CHECK(contains(run_toehold({"check", "--si", one_detail()}).out, "Forces in N, places in mm"));
    const std::string short_text = run_toehold({"check", one_detail()}).out;
    const std::string long_text = run_toehold({"check", "--all", one_detail()}).out;
    CHECK(long_text.size() > short_text.size());
    CHECK(contains(short_text, "(worst of "));
    CHECK_FALSE(contains(long_text, "(worst of "));
    const Ran explained = run_toehold({"check", one_detail(), "--explain", "post-bending"});
    CHECK(explained.status == 1);
    CHECK(contains(explained.out, "[post-bending]"));
    CHECK(contains(explained.out, "result:"));
    const Ran all = run_toehold({"check", one_detail(), "--explain", "all"});
    CHECK(contains(all.out, explained.out));
}

TEST_CASE("a detail is read from standard input, its plates beside the reader", "[process]") {
    const std::string text = bytes_of(one_detail());
    const Ran ran = run_toehold({"check", "-"}, {text, "", false, {}});
    INFO(ran.err);
    const bool needs_plates = contains(text, "<plate-from");
    CHECK(ran.status == (needs_plates ? 2 : 1));
    if (needs_plates) CHECK(contains(ran.err, "standard input:"));
    const Ran empty = run_toehold({"check", "-"}, {"", "", false, {}});
    CHECK(empty.status == 2);
    CHECK(contains(empty.err, "standard input"));
    CHECK(run_toehold({"check", "-"}, {std::string(5'000'000, ' '), "", false, {}}).status == 2);
}

TEST_CASE("a file that cannot be used gives its problems, one a line with its place, and status 2",
          "[process][bad-input]") {
    struct Row {
        const char* text;
        const char* said;
    };
    const Row rows[] = {
        {"", "detail.xml"},
        {"not xml at all", "detail.xml"},
        {"<base-detail", "detail.xml"},
        {"<!DOCTYPE x []><base-detail/>", "detail.xml"},
        {"<other/>", "other"},
        {"<base-detail xmlns=\"urn:toehold:base-detail:1\" name=\"x\"><bogus/></base-detail>", "bogus"},
        {"<base-detail xmlns=\"urn:toehold:base-detail:1\" name=\"x\">\n<guard height=\"42\"/></base-detail>", ":2: "},
    };
    for (const Row& row : rows) {
        const TemporaryFile file("detail.xml", row.text);
        for (const char* command : {"check", "validate"}) {
            const Ran ran = run_toehold({command, file.path()});
            INFO(row.text << "\n" << ran.err);
            CHECK(ran.status == 2);
            CHECK(ran.out.empty());
            CHECK(contains(ran.err, row.said));
            std::istringstream lines(ran.err);
            for (std::string line; std::getline(lines, line);) CHECK(line.rfind("toehold: ", 0) == 0);
        }
    }
    CHECK(run_toehold({"check", "/"}).status == 2);
    CHECK(run_toehold({"check", "/dev/null"}).status == 2);
    CHECK(run_toehold({"check", plates_file}).status == 2);
}

TEST_CASE("a plug-in's checks are listed beside the built-in ones, and a bad plug-in is refused", "[process]") {
    const std::string sound = std::string(TOEHOLD_TEST_PLUGINS) + "/libtest_plugin_sound.so";
    const std::string built_in = run_toehold({"list", "checks"}).out;
    const Ran listed = run_toehold({"list", "--plugin", sound, "checks"});
    INFO(listed.err);
    CHECK(listed.status == 0);
    CHECK(std::count(listed.out.begin(), listed.out.end(), '\n') > std::count(built_in.begin(), built_in.end(), '\n'));
    CHECK(run_toehold({"check", "--plugin", sound, one_detail()}).status == 1);
    for (const std::string& bad : {std::string("/nonexistent.so"), plates_file}) {
        const Ran ran = run_toehold({"check", "--plugin", bad, one_detail()});
        CHECK(ran.status == 2);
        CHECK(ran.out.empty());
        CHECK(contains(ran.err, bad));
    }
}

TEST_CASE("a sound detail, plate document, catalog and data folder are said to be valid", "[process]") {
    const std::string data = TOEHOLD_DATA_FOLDER;
    const Ran ran = run_toehold({"validate", one_detail(), plates_file, data + "/catalog/species.xml", data});
    INFO(ran.err);
    CHECK(ran.status == 0);
    for (const char* part : {"valid base detail", "valid plate document", "valid catalog", "valid data folder"}) {
        CHECK(contains(ran.out, part));
    }
    CHECK(contains(ran.out, "  SHA-256 "));
}
