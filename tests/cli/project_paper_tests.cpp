// Papers of a project from the command line: drawings and cutting files by plate, the site page, the bill.
#include "process.h"
#include "support/contains.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <filesystem>

using toehold::test::bytes_of;
using toehold::test::contains;
using toehold::test::Ran;
using toehold::test::run_toehold;
using toehold::test::TemporaryFolder;
using Json = nlohmann::json;

namespace {

const std::string project = std::string(TOEHOLD_DATA_FOLDER) + "/projects/heron-landing-three-posts.xml";
const std::string detail = std::string(TOEHOLD_DATA_FOLDER) + "/demo/heron-landing-lags-in-deep-blocks.xml";

}  // namespace

TEST_CASE("a project's plates are drawn and cut by kind, with the revision in their names", "[process]") {
    const TemporaryFolder folder;
    const auto file = [&folder](const char* name) { return (folder.path() / name).string(); };
    const Ran drawn = run_toehold({"draw", project, "--revision", "A", "-o", file("p.pdf")});
    INFO(drawn.err);
    CHECK(drawn.status == 0);
    CHECK(drawn.out == "Written to " + file("p-line-post-revA.pdf") + "\n");
    CHECK(run_toehold({"draw", project, "-o", file("p.dxf")}).out == "Written to " + file("p-HL-95.dxf") + "\n");
    CHECK(contains(bytes_of(file("p-HL-95.dxf")), "MARK P1 to P3, QUANTITY 3"));
    CHECK(run_toehold({"draw", detail, "--revision", "B", "-o", file("one.pdf")}).status == 0);
    CHECK(run_toehold({"draw", project, "--revision", "A/B", "-o", file("q.pdf")}).status == 2);
}

TEST_CASE("a project's site page has every post, a detail's one", "[process]") {
    const TemporaryFolder folder;
    const std::string page = (folder.path() / "site.html").string();
    const Ran ran = run_toehold({"site", project, "--link", "https://example.org/site.html", "-o", page});
    INFO(ran.err);
    REQUIRE(ran.status == 0);
    CHECK(contains(bytes_of(page), "<legend>P3</legend>"));
    CHECK(contains(bytes_of(page), "https://example.org/site.html"));
    CHECK(run_toehold({"site", detail, "-o", page}).status == 0);
    CHECK(contains(bytes_of(page), "<legend>Post</legend>"));
    CHECK(run_toehold({"site", project, "-o", (folder.path() / "site.png").string()}).status == 2);
    const Ran bad = run_toehold({"site", detail, "--link", "javascript:alert(1)", "-o", page});
    CHECK(bad.status == 2);
    CHECK(contains(bad.err, "invalid link"));
}

TEST_CASE("a project has a letter of all posts, and no section, which is said", "[process]") {
    const TemporaryFolder folder;
    const std::string letter = (folder.path() / "letter.pdf").string();
    const Ran ran = run_toehold({"letter", project, "-o", letter});
    INFO(ran.err);
    REQUIRE(ran.status == 0);
    CHECK(bytes_of(letter).starts_with("%PDF"));
    const Ran section = run_toehold({"draw", "--view", "section", project});
    CHECK(section.status == 2);
    CHECK(contains(section.err, "of a project there are: toehold check, report, letter, bill, site"));
}

TEST_CASE("a project's check gives a schedule by post, as text, JSON and a table", "[process]") {
    const Ran text = run_toehold({"check", project});
    CHECK(contains(text.out, "P1 to P3"));
    const Json json = Json::parse(run_toehold({"check", "--json", project}).out);
    CHECK(json["file"] == project);
    REQUIRE(json["schedule"].size() == 1);
    CHECK(json["schedule"][0]["marks"] == "P1 to P3");
    CHECK(json["schedule"][0]["quantity"] == 3);
    CHECK(json["schedule"][0]["largest_tension_lb"] > 0.0);
    const Ran csv = run_toehold({"check", "--csv", "posts", project});
    CHECK(csv.out.rfind("file,project,mark,", 0) == 0);
    CHECK(std::count(csv.out.begin(), csv.out.end(), '\n') == 4);
}

TEST_CASE("the bill of a project and of a detail", "[process]") {
    const Ran bill = run_toehold({"bill", project});
    CHECK(bill.status == 0);
    CHECK(contains(bill.out, "BASE PLATES"));
    CHECK(run_toehold({"bill", "--csv", detail}).out.rfind("project,kind,quantity,", 0) == 0);
    CHECK(run_toehold({"bill", "/nonexistent.xml"}).status == 2);
}
