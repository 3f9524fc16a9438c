// A load test foretold through the program: text, JSON, the sheet, readings, and what is refused.
#include "process.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <algorithm>

using toehold::test::bytes_of;
using toehold::test::contains;
using toehold::test::Ran;
using toehold::test::run_toehold;

namespace {

std::string demo(const std::string& name) {
    return std::string(TOEHOLD_DATA_FOLDER) + "/demo/heron-landing-" + name + ".xml";
}
const std::string holds = demo("lags-in-deep-blocks");

std::string refused(std::vector<std::string> arguments, int status = 2) {
    arguments.insert(arguments.begin(), "proof");
    const Ran ran = run_toehold(arguments);
    CHECK(ran.status == status);
    CHECK(ran.out.empty());
    CHECK(std::count(ran.err.begin(), ran.err.end(), '\n') == 1);
    return ran.err;
}

}  // namespace

TEST_CASE("proof foretells a load test, and compares what was measured", "[process]") {
    const Ran ran = run_toehold({"proof", holds, "--samples", "2000", "--tests", "--measured", "100 lb=0.5 in"});
    CHECK(ran.status == 0);
    CHECK(ran.err.empty());
    for (const char* const words :
         {"Chance to carry 500 lb, wet in service: at most 9", "UPPER BOUND: Block end connection", "wet in service",
          "dry in service", "lag screw withdrawal", "Left out", "no published", "2000 samples, seed 1",
          "covers the drawing", "Built guard beside the computed one", "None of these posts"})
        CHECK(contains(ran.out, words));
}

TEST_CASE("proof gives the same as JSON, settled by its seed", "[process]") {
    const auto json = [](const std::string& seed) {
        return nlohmann::json::parse(run_toehold({"proof", holds, "--json", "--samples", "2000", "--seed", seed}).out);
    };
    const nlohmann::json one = json("5");
    CHECK(one["schema"] == "toehold.proof/1");
    CHECK(one["test_push_lb"] == 500.0);
    CHECK(one["seed"] == 5);
    CHECK(one["in_service"]["moisture"] == "wet");
    CHECK(one["other_moisture"]["moisture"] == "dry");
    CHECK(one["measured"].is_null());
    CHECK_FALSE(one["in_service"]["links"].empty());
    CHECK_FALSE(one["in_service"]["left_out"].empty());
    CHECK(one == json("5"));
    CHECK(one["in_service"]["mean_push_lb"] != json("6")["in_service"]["mean_push_lb"]);
}

TEST_CASE("proof writes the sheet for the test", "[process]") {
    const toehold::test::TemporaryFolder folder;
    const std::string file = folder.path() / "sheet.pdf";
    const Ran ran = run_toehold({"proof", holds, "--sheet", "-o", file, "--date", "none"});
    CHECK(ran.status == 0);
    CHECK(contains(ran.out, "Written to " + file));
    CHECK(bytes_of(file).rfind("%PDF", 0) == 0);
}

TEST_CASE("proof refuses in one sentence what it cannot do", "[bad-input]") {
    CHECK(contains(refused({holds, "--samples", "0"}), "from 1 to 10000000, not \"0\""));
    CHECK(contains(refused({holds, "--samples", "-5"}), "--samples takes a whole number"));
    CHECK(contains(refused({holds, "--samples", "1e9"}), "not \"1e9\""));
    CHECK(contains(refused({holds, "--seed", "many"}), "--seed takes a whole number"));
    CHECK(contains(refused({holds, "--seed", "99999999999999999999999"}), "--seed takes a whole number"));
    CHECK(contains(refused({holds, "--measured", "50=0.2"}), "accepted: PUSH=MOVEMENT"));
    CHECK(contains(refused({holds, "-o", "x.pdf"}), "add --sheet"));
    CHECK(contains(refused({holds, "--sheet", "-o", "x.doc"}), "written as .pdf, not as \"x.doc\""));
    CHECK(contains(refused({holds, "--sheet", "--json"}), "excludes"));
    CHECK(contains(refused({"nothing.xml"}), "nothing.xml"));
    CHECK(contains(refused({demo("decking-only")}, 1), "decking-only.xml"));
    CHECK(contains(refused({demo("end-nailed-blocks")}, 1),
                   "times its design value. It must be expected to break first"));
    CHECK(contains(refused({demo("heel-block-only")}, 1), "overturns the base"));
}
