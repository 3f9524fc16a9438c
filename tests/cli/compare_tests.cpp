// Two details, or one on two bases, beside each other, through the program.
#include "process.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <filesystem>
#include <set>

using toehold::test::contains;
using toehold::test::Ran;
using toehold::test::run_toehold;
using Json = nlohmann::json;

namespace {

const std::string demo = std::string(TOEHOLD_DATA_FOLDER) + "/demo/heron-landing-";
const std::string holds = demo + "lags-in-deep-blocks.xml";
const std::string fails = demo + "short-lags-in-flat-block.xml";

}  // namespace

TEST_CASE("the status says whether the verdict turns, and the first line says it in words", "[process]") {
    const Ran turns = run_toehold({"compare", fails, holds});
    CHECK(turns.status == 1);
    CHECK(turns.err.empty());
    CHECK(turns.out.rfind("VERDICT TURNS: the first is INADEQUATE, the second ADEQUATE\n", 0) == 0);
    CHECK(contains(turns.out, "framing / block B2"));
    const Ran same = run_toehold({"compare", fails, fails});
    CHECK(same.status == 0);
    CHECK(same.out.rfind("VERDICT STAYS: INADEQUATE on both sides\n", 0) == 0);
    CHECK(contains(same.out, "INPUT: the same on both sides"));
    CHECK(run_toehold({"compare", "--all", "--si", fails, holds}).out.size() > turns.out.size());
}

TEST_CASE("both sides are those that check gives", "[process]") {
    const Json comparison = Json::parse(run_toehold({"compare", "--json", "--all", fails, holds}).out);
    CHECK(comparison["schema"] == "toehold.comparison/1");
    const char* side = "first";
    for (const std::string& file : {fails, holds}) {
        const Json review = Json::parse(run_toehold({"check", "--json", file}).out);
        CHECK(comparison[side]["verdict"] == review["verdict"]);
        CHECK(comparison[side]["input_sha256"] == review["input_sha256"]);
        std::multiset<std::string> there;
        std::multiset<std::string> here;
        for (const Json& one : review["checks"]) {
            there.insert(one["id"].dump() + one["title"].dump() + one["subject"].dump() + one["demand"].dump() +
                         one["capacity"].dump() + one["status"].dump());
        }
        for (const Json& one : comparison["checks"]) {
            if (one[side].is_null()) continue;
            here.insert(one["id"].dump() + one["title"].dump() + one["subject"].dump() + one[side]["demand"].dump() +
                        one[side]["capacity"].dump() + one[side]["status"].dump());
        }
        CHECK(here == there);
        side = "second";
    }
}

TEST_CASE("one file on a second basis is the file with that basis in it", "[process]") {
    const Json basis = Json::parse(run_toehold({"compare", "--json", "--all", holds, "--second-basis", "method=LRFD",
                                                "--second-basis", "moisture=dry"})
                                       .out);
    CHECK(basis["second"]["label"] == holds + " with method LRFD, moisture dry");
    REQUIRE(basis["input"].size() == 2);
    CHECK(basis["input"][0] == Json({{"place", "basis / method"}, {"first", "ASD"}, {"second", "LRFD"}}));
    std::string text = toehold::test::bytes_of(holds);
    const std::string asd = "method=\"ASD\" moisture=\"wet\"";
    REQUIRE(contains(text, asd));
    text.replace(text.find(asd), asd.size(), "method=\"LRFD\" moisture=\"dry\"");
    const std::string plates = "file=\"heron-landing-plates.xml\"";
    REQUIRE(contains(text, plates));
    const toehold::test::TemporaryFile file("detail.xml", text);
    std::filesystem::copy_file(demo + "plates.xml",
                               std::filesystem::path(file.path()).parent_path() / "heron-landing-plates.xml");
    const Json edited = Json::parse(run_toehold({"compare", "--json", "--all", holds, file.path()}).out);
    CHECK(edited["checks"] == basis["checks"]);
    CHECK(edited["input"] == basis["input"]);
    CHECK(edited["anchors"] == basis["anchors"]);
}

TEST_CASE("a basis that cannot be read, and files that cannot be used, give status 2", "[process][bad-input]") {
    const auto refused = [](const std::string& setting, const std::string& words) {
        const Ran ran = run_toehold({"compare", holds, "--second-basis", setting});
        INFO(ran.err);
        CHECK(ran.status == 2);
        CHECK(ran.out.empty());
        CHECK(contains(ran.err, "toehold: --second-basis: basis: " + words));
    };
    refused("method=lrfd", "method is none of the accepted words (found \"lrfd\"; accepted: ASD, LRFD)");
    refused("load-duration=3", "load duration factor is out of range");
    refused("colour=red", "<basis> has no attribute of this name");
    refused("=red", "<basis> has no attribute of this name");
    const Ran both = run_toehold({"compare", "/nonexistent.xml", "/none.xml"});
    CHECK(both.status == 2);
    CHECK(contains(both.err, "/nonexistent.xml"));
    CHECK(contains(both.err, "/none.xml"));
    CHECK(run_toehold({"compare", "/nonexistent.xml", "--second-basis", "method=LRFD"}).status == 2);
}
