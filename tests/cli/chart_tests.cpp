// Charts through the program: the inputs of a detail, tables, files, and what is refused. Few values: each is a review.
#include "process.h"
#include "support/contains.h"

#include <catch2/catch.hpp>

#include <algorithm>

using toehold::test::bytes_of;
using toehold::test::contains;
using toehold::test::Ran;
using toehold::test::run_toehold;

namespace {

const std::string holds = std::string(TOEHOLD_DATA_FOLDER) + "/demo/heron-landing-lags-in-deep-blocks.xml";

std::string refused(std::vector<std::string> arguments) {
    arguments.insert(arguments.begin(), "chart");
    const Ran ran = run_toehold(arguments);
    CHECK(ran.status == 2);
    CHECK(ran.out.empty());
    CHECK(std::count(ran.err.begin(), ran.err.end(), '\n') == 1);
    return ran.err;
}

}  // namespace

TEST_CASE("chart with a file alone lists the inputs of the detail", "[process]") {
    const Ran ran = run_toehold({"chart", holds});
    CHECK(ran.status == 0);
    CHECK(ran.err.empty());
    for (const char* const field :
         {"height", "tributary", "plate-width", "anchor-size", "block-depth", "joist-spacing"})
        CHECK(contains(ran.out, std::string("\n  ") + field));
    CHECK(contains(ran.out, "42 in"));
    CHECK(contains(run_toehold({"chart", "--si", holds}).out, "1067 mm"));
}

TEST_CASE("chart prints a table, and writes the same numbers and a sheet to files", "[process]") {
    const Ran table = run_toehold({"chart", holds, "--field", "height=42,60"});
    CHECK(table.status == 0);
    CHECK(contains(table.out, "42 in  0.84  ADEQUATE"));
    CHECK(contains(table.out, "INADEQUATE"));
    CHECK(contains(table.out, "ADEQUATE at the values computed: 42 in."));
    const toehold::test::TemporaryFolder folder;
    for (const char* const ending : {"csv", "svg", "pdf", "png"}) {
        const std::string file = folder.path() / (std::string("chart.") + ending);
        const Ran ran = run_toehold({"chart", holds, "--field", "height=42,60", "-o", file, "--date", "none"});
        CHECK(ran.status == 0);
        CHECK(contains(ran.out, "Written to " + file));
        CHECK_FALSE(bytes_of(file).empty());
    }
    const std::string csv = bytes_of(folder.path() / "chart.csv");
    CHECK(csv.rfind("height (in),verdict,governing demand over capacity,", 0) == 0);
    CHECK(contains(csv, "\n42,adequate,0.83"));
    CHECK(contains(csv, "\n60,inadequate,"));
}

TEST_CASE("chart refuses what it cannot draw in one sentence with what it accepts", "[bad-input]") {
    CHECK(contains(refused({holds, "--field", "hight=30..48"}), "no field \"hight\"; it has: height, tributary"));
    CHECK(contains(refused({holds, "--field", "height=48..30"}), "accepted: FROM..TO or FROM..TO/STEP"));
    CHECK(contains(refused({holds, "--field", "height", "--field", "tributary"}), "over two with --map"));
    CHECK(contains(refused({holds, "--tornado", "--field", "height"}), "leave out --field"));
    CHECK(contains(refused({holds, "--map", "--field", "height"}), "--map takes no --field, or two"));
    CHECK(contains(refused({holds, "--map", "--field", "height", "--field", "height"}), "two different fields"));
    CHECK(contains(refused({holds, "--map", "--tornado"}), "excludes"));
    CHECK(contains(refused({holds, "-o", "x.svg"}), "say what to chart"));
    CHECK(contains(refused({holds, "--tornado", "-o", "x.doc"}), ".svg, .pdf, .png or .csv, not as \"x.doc\""));
    CHECK(contains(refused({"nothing.xml", "--tornado"}), "nothing.xml"));
}
