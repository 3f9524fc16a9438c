// Many details at once: folders, the summary, tables for a spreadsheet, several threads.
#include "process.h"
#include "support/contains.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>

using toehold::test::contains;
using toehold::test::Ran;
using toehold::test::run_toehold;
using Json = nlohmann::json;

namespace {

namespace fs = std::filesystem;

const std::string demo = std::string(TOEHOLD_DATA_FOLDER) + "/demo/";

std::size_t lines(const std::string& text) {
    return static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n'));
}

/// The detail with a guard of 30 in, which no code accepts where one is required.
std::string lowered(std::string detail) {
    const std::string height = "<guard height=\"";
    const std::size_t from = detail.find(height) + height.size();
    return detail.replace(from, detail.find('"', from) - from, "30 in");
}

/// A folder with two details, one of which holds, their plates, and what its caller puts beside them.
class Details {
  public:
    Details() {
        for (const char* name :
             {"heron-landing-corner.xml", "heron-landing-decking-only.xml", "heron-landing-plates.xml"}) {
            fs::copy_file(demo + name, folder_.path() / name);
        }
    }
    void put(const std::string& name, const std::string& text) const { std::ofstream(folder_.path() / name) << text; }
    [[nodiscard]] std::string path() const { return folder_.path().string(); }
    [[nodiscard]] std::string path(const std::string& name) const { return (folder_.path() / name).string(); }

  private:
    toehold::test::TemporaryFolder folder_;
};

}  // namespace

TEST_CASE("a folder gives a summary of the base details in it, what fails first", "[process]") {
    const Details details;
    details.put("notes.txt", "no document");
    fs::create_directory(details.path("below.xml"));
    const Ran ran = run_toehold({"check", details.path()});
    INFO(ran.out << ran.err);
    CHECK(ran.status == 1);
    CHECK(ran.out.rfind("2 details: 1 adequate, 1 inadequate, 0 incomplete\n", 0) == 0);
    const std::size_t corner = ran.out.find("heron-landing-corner.xml");
    const std::size_t decking = ran.out.find("heron-landing-decking-only.xml");
    CHECK(decking < corner);
    CHECK(corner != std::string::npos);
    CHECK(contains(ran.out, "  INADEQUATE, first cause "));
    CHECK(contains(ran.out, ": 1\n  heron-landing-decking-only.xml"));
    CHECK(contains(ran.out, "\n  ADEQUATE: 1\n  heron-landing-corner.xml"));
    for (const char* part :
         {"ADEQUATE", "INADEQUATE", "Also: No anchor reaches a block, joist or rim", "2 not specified"}) {
        CHECK(contains(ran.out, part));
    }
    CHECK(ran.err == "toehold: " + details.path("heron-landing-plates.xml") + ": skipped: a plate document\n");
    CHECK(lines(run_toehold({"check", "--full", details.path()}).out) > 10 * lines(ran.out));
    CHECK(run_toehold({"check", details.path("heron-landing-corner.xml"), details.path("heron-landing-corner.xml")})
              .status == 0);
}

TEST_CASE("one bad file does not stop the rest, and stands in the table", "[process][bad-input]") {
    const Details details;
    details.put("a-broken.xml", "<base-detail");
    details.put("other.xml", "<other/>");
    const Ran ran = run_toehold({"check", "--jobs", "2", details.path(), "/nonexistent.xml"});
    INFO(ran.out << ran.err);
    CHECK(ran.status == 2);
    CHECK(ran.out.rfind("4 details: 1 adequate, 1 inadequate, 0 incomplete, 2 unusable\n", 0) == 0);
    CHECK(contains(ran.out, "UNUSABLE"));
    CHECK(contains(ran.out, "there is no such file"));
    CHECK(contains(ran.err, "a-broken.xml:1: "));
    CHECK(contains(ran.err, "other.xml: skipped: not a base detail"));
    CHECK(contains(ran.err, "toehold: /nonexistent.xml: there is no such file"));
}

TEST_CASE("where only the guard is too low, the summary names that, and no ratio", "[process][A17]") {
    const Details details;
    details.put("a-low.xml", lowered(toehold::test::bytes_of(details.path("heron-landing-corner.xml"))));
    const Ran ran = run_toehold({"check", details.path("a-low.xml"), details.path("heron-landing-corner.xml")});
    INFO(ran.out << ran.err);
    CHECK(ran.status == 1);
    const std::size_t row = ran.out.find("a-low.xml");
    REQUIRE(row != std::string::npos);
    const std::string line = ran.out.substr(row, ran.out.find('\n', row) - row);
    CHECK(contains(line, "INADEQUATE"));
    CHECK(contains(line, " - "));
    CHECK(contains(ran.out.substr(row, 300), "Guard height 30 in"));
}

TEST_CASE("a detail in UTF-16, one with a DOCTYPE and one cut short count as unusable, not as absent",
          "[process][bad-input][A17]") {
    const Details details;
    std::string utf_16 = "\xFF\xFE";
    for (const char letter : std::string("<base-detail/>")) utf_16 += {letter, '\0'};
    details.put("a-wide.xml", utf_16);
    details.put("a-doctype.xml", "<!DOCTYPE base-detail>\n<base-detail/>");
    details.put("a-cut.xml", "<?xml version=");
    const Ran ran = run_toehold({"check", details.path()});
    INFO(ran.out << ran.err);
    CHECK(ran.status == 2);
    CHECK(contains(ran.out, "3 unusable"));
    CHECK(contains(ran.err, "UTF-16"));
    CHECK(contains(ran.err, "DOCTYPE"));
}

TEST_CASE("a folder without a base detail cannot be used", "[process][bad-input]") {
    const toehold::test::TemporaryFolder folder;
    const Ran ran = run_toehold({"check", folder.path().string()});
    CHECK(ran.status == 2);
    CHECK(ran.out.empty());
    CHECK(contains(ran.err, "no base detail or project in this folder"));
}

TEST_CASE("a folder is sorted by first cause: the larger group first, each counted", "[process]") {
    const Details details;
    const std::string decking = toehold::test::bytes_of(details.path("heron-landing-decking-only.xml"));
    details.put("a-low.xml", lowered(toehold::test::bytes_of(details.path("heron-landing-corner.xml"))));
    details.put("b.xml", decking);
    details.put("c-broken.xml", "<base-detail");
    const Ran text = run_toehold({"check", details.path()});
    INFO(text.out << text.err);
    // Two rest on boards alone, one is too low: the two come first, though its name is the last but one.
    const std::vector<std::string> order{": 2\n  b.xml", "heron-landing-decking-only.xml", ": 1\n  a-low.xml",
                                         "UNUSABLE: 1\n  c-broken.xml", "ADEQUATE: 1\n  heron-landing-corner.xml"};
    std::size_t at = 0;
    for (const std::string& part : order) {
        INFO(part);
        const std::size_t found = text.out.find(part, at);
        REQUIRE(found != std::string::npos);
        at = found;
    }
    const Ran csv = run_toehold({"check", "--csv", "files", details.path()});
    CHECK(csv.status == 2);
    CHECK(csv.out.rfind("file,detail,verdict,first cause,", 0) == 0);
    REQUIRE(lines(csv.out) == 6);
    CHECK(csv.out.find("b.xml,") < csv.out.find("a-low.xml,"));
    CHECK(contains(csv.out, "c-broken.xml,,unusable,"));
}

TEST_CASE("JSON of several files names each, also those that cannot be used", "[process][bad-input]") {
    const Details details;
    details.put("a-broken.xml", "<base-detail");
    const Ran ran = run_toehold({"check", "--json", details.path()});
    CHECK(ran.status == 2);
    const Json json = Json::parse(ran.out);
    REQUIRE(json.size() == 3);
    CHECK(json[0]["schema"] == "toehold.unusable/1");
    CHECK(json[0]["file"] == details.path("a-broken.xml"));
    CHECK(json[0]["problems"][0]["line"] == 1);
    CHECK(json[1]["file"] == details.path("heron-landing-corner.xml"));
    CHECK(json[1]["schema"] == "toehold.review/1");
}

TEST_CASE("one thread and several print the same, to the byte", "[process]") {
    const Details details;
    details.put("broken.xml", "<base-detail");
    for (const std::vector<std::string>& form : {std::vector<std::string>{}, {"--csv", "checks"}}) {
        std::vector<std::string> words{"check", "--jobs", "1", details.path(), details.path()};
        words.insert(words.end(), form.begin(), form.end());
        const Ran one = run_toehold(words);
        words[2] = "7";
        const Ran several = run_toehold(words);
        CHECK(one.out == several.out);
        CHECK(one.err == several.err);
        CHECK(one.status == several.status);
        CHECK(lines(one.out) > 8);
    }
}

TEST_CASE("a folder as JSON is an array, even of one", "[process]") {
    const Details details;
    fs::remove(details.path("heron-landing-decking-only.xml"));
    const Json json = Json::parse(run_toehold({"check", "--json", details.path()}).out);
    REQUIRE(json.size() == 1);
    CHECK(json[0]["verdict"] == "adequate");
}

TEST_CASE("tables for a spreadsheet have a heading and a row for each anchor or result of the JSON", "[process]") {
    const std::string file = demo + "heron-landing-corner.xml";
    const Json json = Json::parse(run_toehold({"check", "--json", file}).out);
    const Ran anchors = run_toehold({"check", "--csv", "anchors", file});
    CHECK(anchors.status == 0);
    CHECK(anchors.out.rfind("file,detail,anchor,x (in),", 0) == 0);
    CHECK(lines(anchors.out) == 1 + json["anchors"].size());
    CHECK(contains(anchors.out, "," + json["anchors"][0]["tension_lb"].dump() + ","));
    CHECK(lines(run_toehold({"check", "--csv", "checks", file}).out) == 1 + json["checks"].size());
    const Ran none = run_toehold({"check", "--csv", "checks", "/nonexistent.xml"});
    CHECK(none.status == 2);
    CHECK(lines(none.out) == 1);
}

TEST_CASE("what a reader of its own says of the tables for a spreadsheet", "[process]") {
    const Details details;
    for (const char* table : {"anchors", "checks", "posts", "files"}) {
        const std::string file = details.path("table.csv");
        std::ofstream(file, std::ios::binary) << run_toehold({"check", "--csv", table, details.path()}).out;
        const std::string program =
            "import csv,sys;rows=list(csv.reader(open(sys.argv[1],newline=''),strict=True));"
            "sys.exit(len(rows)<3 or len(set(map(len,rows)))!=1)";
        std::string command = "python3 -c \"";
        command.append(program).append("\" '").append(file).append("'");
        CHECK(std::system(command.c_str()) == 0);
    }
}

TEST_CASE("progress is not shown where nobody watches", "[process]") {
    const Ran ran = run_toehold({"check", demo + "heron-landing-corner.xml", demo + "heron-landing-cantilever.xml"});
    CHECK(ran.err.empty());
}
