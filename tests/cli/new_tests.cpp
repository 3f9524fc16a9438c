// A detail started from a job: by options, by answers through a pipe, and what is refused.
#include "process.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>

using toehold::test::bytes_of;
using toehold::test::contains;
using toehold::test::Ran;
using toehold::test::run_toehold;

namespace {

namespace fs = std::filesystem;

using Words = std::vector<std::string>;

const Words whole_job = {
    "new",           "--height",           "36 in",        "--occupancy", "dwelling",        "--post", "2x2x1/8 steel",
    "--decking",     "wood-southern-pine", "--joist-size", "2x10",        "--joist-spacing", "16 in",  "--place",
    "between-joists"};

Words with(Words words, const Words& more) {
    words.insert(words.end(), more.begin(), more.end());
    return words;
}

/// The words without an option and its answer.
Words without(Words words, const std::string& option) {
    const auto at = std::find(words.begin(), words.end(), option);
    words.erase(at, at + 2);
    return words;
}

std::size_t count_of(const std::string& text, const std::string& part) {
    std::size_t count = 0;
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) ++count;
    return count;
}

void check_refused(const Words& arguments, const std::string& part, const std::string& input = "") {
    const Ran ran = run_toehold(arguments, {input, "", false, {}});
    INFO(ran.err);
    CHECK(ran.status == 2);
    CHECK(ran.out.empty());
    CHECK(contains(ran.err, part));
}

}  // namespace

TEST_CASE("a detail is started by options, and said what is assumed and what comes next", "[process]") {
    const toehold::test::TemporaryFolder folder;
    const std::string file = (folder.path() / "porch.xml").string();
    const Ran ran = run_toehold(with(whole_job, {"-o", file}));
    INFO(ran.err);
    CHECK(ran.status == 0);
    CHECK(ran.err.empty());
    for (const std::string& part :
         {"Written to " + file, std::string("Assumed: "), "toehold check " + file, "toehold size " + file})
        CHECK(contains(ran.out, part));
    const Ran valid = run_toehold({"validate", file});
    INFO(valid.err);
    CHECK(valid.status == 0);
    const std::string text = bytes_of(file);
    const std::size_t marked = count_of(text, "<!-- assumed: ");
    CHECK(marked > 10);
    CHECK(contains(ran.out, "Assumed: " + std::to_string(marked) + " values"));
}

TEST_CASE("a file that is there is kept, unless it is to be replaced", "[process][bad-input]") {
    const toehold::test::TemporaryFolder folder;
    const std::string file = (folder.path() / "porch.xml").string();
    std::ofstream(file) << "precious";
    check_refused(with(whole_job, {"-o", file}), file + " is there already; give another name, or --force");
    // Before any question is asked.
    check_refused({"new", "-o", file}, "is there already");
    CHECK(bytes_of(file) == "precious");
    CHECK(run_toehold(with(whole_job, {"-o", file, "--force"})).status == 0);
    CHECK(bytes_of(file).starts_with("<?xml"));
    CHECK(run_toehold(with(whole_job, {"-o", "/nonexistent/porch.xml"})).status == 3);
}

TEST_CASE("the detail goes to standard output, alone", "[process]") {
    const Ran ran = run_toehold(with(whole_job, {"-o", "-"}));
    CHECK(ran.status == 0);
    CHECK(ran.out.starts_with("<?xml"));
    CHECK(ran.out.ends_with("</base-detail>\n"));
}

TEST_CASE("what is not answered by options is asked, and a wrong answer is asked again", "[process]") {
    // Height, then occupancy wrong and right, the post by its number, then the defaults; a public guard's rail at last.
    const std::string answers = "42 in\nhotel\npublic\n2\n\n\n\ncorner\n0 ft\n5 ft\n";
    const Ran ran = run_toehold({"new", "-o", "-"}, {answers, "", false, {}});
    INFO(ran.err);
    CHECK(ran.status == 0);
    CHECK(contains(ran.err, "Not understood. Accepted: dwelling, public, limited"));
    CHECK(contains(ran.err, "[36 in] > "));
    CHECK(contains(ran.out, "<guard height=\"42 in\" occupancy=\"other\" tributary-length=\"60 in\"/>"));
    CHECK(contains(ran.out, "width=\"2.5 in\" wall=\"0.1875 in\""));
    CHECK(contains(ran.out, "name=\"Guard post at a corner\""));
    const Ran by_options =
        run_toehold({"new", "-o", "-", "--height", "42 in", "--occupancy", "public", "--post", "2 1/2x2 1/2x3/16 steel",
                     "--decking", "wood-southern-pine", "--joist-size", "2x10", "--joist-spacing", "16 in", "--place",
                     "corner", "--tributary-length", "5 ft"});
    CHECK(by_options.err.empty());
    CHECK(by_options.out == ran.out);
}

TEST_CASE("answers that end too soon name what is open", "[process][bad-input]") {
    check_refused(without(whole_job, "--height"), "not answered: --height;");
    check_refused({"new"}, "not answered: --occupancy, --post, --decking, --joist-size, --joist-spacing, --place;",
                  "42 in\n");
    Words public_job = without(whole_job, "--occupancy");
    public_job = with(public_job, {"--occupancy", "public"});
    check_refused(public_job, "not answered: --tributary-length;");
}

TEST_CASE("wrong options are refused with what is accepted", "[process][bad-input]") {
    check_refused(with(without(whole_job, "--height"), {"--height", "36"}),
                  "--height: \"36\" is not understood; accepted: 36 in, 42 in or the like");
    check_refused(with(without(whole_job, "--place"), {"--place", "roof"}),
                  "accepted: between-joists, over-a-joist, beside-the-rim, corner, cantilever, deck-side");
    check_refused(with(without(whole_job, "--post"), {"--post", "steel"}), "accepted: ");
    check_refused(with(without(whole_job, "--joist-size"), {"--joist-size", "2x4"}), "accepted: 2x8, 2x10, 2x12");
    check_refused(with(whole_job, {"--species", "oak"}), "--species: \"oak\" is not understood");
    check_refused(with(whole_job, {"--color", "blue"}), "--color");
    check_refused(with(whole_job, {"--data", "/nonexistent"}), "is not a data folder");
}

TEST_CASE("help names every question's option", "[process]") {
    const Ran ran = run_toehold({"new", "--help"});
    CHECK(ran.status == 0);
    for (const char* option :
         {"--height", "--occupancy", "--post", "--decking", "--joist-size", "--joist-spacing", "--place",
          "--tributary-length", "--access-below", "--code", "--handrail", "--decking-thickness", "--species", "--grade",
          "--treated", "--joist-span", "--output", "--force", "--data"})
        CHECK(contains(ran.out, option));
}
