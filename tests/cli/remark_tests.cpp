// A reviewer's remarks, kept in the file, through the program.
#include "process.h"
#include "support/contains.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <filesystem>

using toehold::test::bytes_of;
using toehold::test::contains;
using toehold::test::Ran;
using toehold::test::run_toehold;
using Json = nlohmann::json;

namespace {

namespace fs = std::filesystem;

const std::string demo = std::string(TOEHOLD_DATA_FOLDER) + "/demo/";

/// A copy of a demo detail that a test may write to.
class Copy {
  public:
    explicit Copy(const std::string& name = "heron-landing-decking-only.xml") : name_(name) {
        for (const std::string& one : {name, std::string("heron-landing-plates.xml")}) {
            fs::copy_file(demo + one, folder_.path() / one);
        }
    }
    [[nodiscard]] std::string path() const { return (folder_.path() / name_).string(); }
    [[nodiscard]] std::string text() const { return bytes_of(path()); }
    [[nodiscard]] std::string original() const { return bytes_of(demo + name_); }

  private:
    toehold::test::TemporaryFolder folder_;
    std::string name_;
};

void check_refused(const Copy& copy, std::vector<std::string> arguments, const std::string& words) {
    const std::string before = copy.text();
    arguments.insert(arguments.begin(), {"remark", copy.path()});
    const Ran ran = run_toehold(arguments);
    INFO(ran.err);
    CHECK(ran.status == 2);
    CHECK(ran.out.empty());
    CHECK(contains(ran.err, words));
    CHECK(copy.text() == before);
}

}  // namespace

TEST_CASE("a remark is added, the rest of the file stays as it was, and the review does not change", "[process]") {
    const Copy copy;
    const Ran none = run_toehold({"remark", copy.path()});
    CHECK(none.status == 0);
    CHECK(none.out == "no remarks\n");
    const Ran ran = run_toehold({"remark", copy.path(), "--about", "anchor-seat", "--subject", "anchor A", "--by",
                                 "A. Reviewer", "--date", "2026-11-25", "Show <blocks> under \"A\" & B."});
    INFO(ran.err);
    CHECK(ran.status == 0);
    CHECK(ran.out == "1. open [anchor-seat] anchor A, by A. Reviewer, 2026-11-25\n   Show <blocks> under \"A\" & B.\n");
    CHECK(run_toehold({"remark", copy.path()}).out == ran.out);
    const std::string text = copy.text();
    const std::string original = copy.original();
    const std::string end = "</base-detail>\n";
    REQUIRE(original.ends_with(end));
    CHECK(text.rfind(original.substr(0, original.size() - end.size()) + "  <remarks>\n", 0) == 0);
    CHECK(text.ends_with("  </remarks>\n" + end));
    const Json compared =
        Json::parse(run_toehold({"compare", "--json", demo + "heron-landing-decking-only.xml", copy.path()}).out);
    CHECK(compared["first"]["input_sha256"] != compared["second"]["input_sha256"]);
    for (const char* part : {"input", "checks", "findings"}) CHECK(compared[part].empty());
    CHECK(compared["same_checks"] > 5);
}

TEST_CASE("a remark is settled by its number, and others stay", "[process]") {
    const Copy copy;
    REQUIRE(run_toehold({"remark", copy.path(), "one"}).status == 0);
    REQUIRE(run_toehold({"remark", copy.path(), "--about", "corrosion-not-stated", "two"}).status == 0);
    const Ran ran = run_toehold({"remark", copy.path(), "--settle", "2"});
    CHECK(ran.status == 0);
    CHECK(ran.out == "2. settled [corrosion-not-stated]\n   two\n");
    CHECK(run_toehold({"remark", copy.path()}).out == "1. open\n   one\n" + ran.out);
    check_refused(copy, {"--settle", "3"}, "there is no remark 3; there are 2");
}

TEST_CASE("an unknown check or subject is refused with those there are", "[process][bad-input]") {
    const Copy copy;
    check_refused(
        copy, {"--about", "anchor-witdrawal", "x"},
        "there is no check or finding \"anchor-witdrawal\"; there are: aluminum-on-treated-wood, anchor-combined, ");
    check_refused(copy, {"--about", "anchor-seat", "--subject", "anchor Z", "x"},
                  "anchor-seat has no result for \"anchor Z\"; there are: anchor A, anchor B, anchor C, anchor D");
    check_refused(copy, {"--about", "washer-bearing", "--subject", "anchor A", "x"},
                  "washer-bearing has no result for this detail");
    const Json finding = Json::parse(run_toehold({"check", "--json", copy.path()}).out)["findings"][0];
    const Ran known = run_toehold({"remark", copy.path(), "--about", finding["id"].get<std::string>(), "--subject",
                                   finding["subject"].get<std::string>(), "x"});
    CHECK(known.status == 0);
}

TEST_CASE("a remark that no file may hold, and a file that cannot be used, change nothing", "[process][bad-input]") {
    const Copy copy;
    check_refused(copy, {""}, "the remark is empty");
    check_refused(copy, {std::string(4001, 'x')}, "the remark is too long");
    check_refused(copy, {"--date", "25.11.2026", "x"}, "invalid date; use YYYY-MM-DD");
    check_refused(copy, {"bell \x07"}, "not valid in a file");
    check_refused(copy, {"--by", "\xFF", "x"}, "not valid in a file");
    CHECK(run_toehold({"remark", "/nonexistent.xml", "x"}).status == 2);
    CHECK(run_toehold({"remark", demo + "heron-landing-plates.xml", "x"}).status == 2);
    CHECK(run_toehold({"remark", "-", "x"}).status == 2);
}
