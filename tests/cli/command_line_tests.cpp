// What the program answers to a command line, right or wrong.
#include "process.h"
#include "support/contains.h"

#include <catch2/catch.hpp>

using toehold::test::contains;
using toehold::test::Ran;
using toehold::test::run_toehold;

namespace {

void check_refused(const std::vector<std::string>& arguments, const std::string& part) {
    const Ran ran = run_toehold(arguments);
    INFO(ran.err);
    CHECK(ran.status == 2);
    CHECK(ran.out.empty());
    CHECK(contains(ran.err, part));
    CHECK(ran.err.rfind("toehold: ", 0) == 0);
    CHECK(ran.err.find('\n') == ran.err.size() - 1);
}

}  // namespace

TEST_CASE("help names the commands, examples and exit statuses", "[process]") {
    const Ran ran = run_toehold({"--help"});
    CHECK(ran.status == 0);
    CHECK(ran.err.empty());
    for (const char* part :
         {"check", "compare", "remark", "validate", "list", "Examples:", "Exit status:", "Of compare:"})
        CHECK(contains(ran.out, part));
    const Ran own = run_toehold({"check", "--help"});
    CHECK(own.status == 0);
    for (const char* part : {"--json", "--csv", "--explain", "--si", "--all", "--full", "--jobs", "--data"}) {
        CHECK(contains(own.out, part));
    }
}

TEST_CASE("the version is one line", "[process]") {
    const Ran ran = run_toehold({"--version"});
    CHECK(ran.status == 0);
    CHECK(ran.out == "toehold " TOEHOLD_VERSION "\n");
}

TEST_CASE("a command line that cannot be understood gives one sentence and status 2", "[process][bad-input]") {
    check_refused({}, "subcommand is required");
    check_refused({"chek", "a.xml"},
                  "\"chek\" is not a command; there are: new, size, check, compare, chart, proof, remark, report, "
                  "draw, site, bill, letter, validate, list");
    check_refused({"check"}, "FILE is required");
    check_refused({"check", "--bogus", "a.xml"}, "--bogus");
    check_refused({"check", "--json", "--explain", "weld", "a.xml"}, "excludes");
    check_refused({"check", "--explain"}, "--explain");
    check_refused({"check", "--explain", "no-such-check", "a.xml"}, "there is no check \"no-such-check\"");
    check_refused({"check", "--csv", "bolts", "a.xml"}, "--csv: bolts not in {anchors,checks,posts,files}");
    check_refused({"check", "--csv", "anchors", "--json", "a.xml"}, "excludes");
    for (const char* jobs : {"0", "-1", "many", "1e9"}) check_refused({"check", "--jobs", jobs, "a.xml"}, "--jobs");
    check_refused({"check", "--si", "a.xml", "b.xml"}, "--all and --si need whole reviews");
    check_refused({"compare", "a.xml"}, "either a SECOND file or --second-basis");
    check_refused({"compare", "a.xml", "b.xml", "--second-basis", "method=LRFD"}, "either a SECOND file or");
    check_refused({"compare", "a.xml", "--second-basis", "LRFD"}, "KEY=VALUE, such as method=LRFD, not \"LRFD\"");
    check_refused({"compare", "a.xml", "b.xml", "c.xml"}, "c.xml");
    check_refused({"remark"}, "FILE is required");
    check_refused({"remark", "a.xml", "--by", "somebody"}, "--by requires WORDS");
    check_refused({"remark", "a.xml", "--subject", "anchor A", "words"}, "--subject requires --about");
    check_refused({"remark", "a.xml", "--settle", "0"}, "--settle");
    check_refused({"remark", "a.xml", "--settle", "1", "words"}, "excludes");
    check_refused({"list"}, "WHAT is required");
    check_refused({"list", "brands"}, "there is no list \"brands\"");
    check_refused({"", "a.xml"}, "\"\" is not a command");
}

TEST_CASE("the language is asked for, or is that of the surroundings", "[process]") {
    const std::string detail = std::string(TOEHOLD_DATA_FOLDER) + "/demo/end-nailed-blocks.xml";
    const Ran english =
        run_toehold({"check", detail, "--explain", "weld", "--language", "en"}, {"", "", false, {"LANGUAGE=fr"}});
    CHECK(run_toehold({"check", detail, "--explain", "weld"}, {"", "", false, {"LANGUAGE=en_US"}}).out == english.out);
    CHECK(run_toehold({"check", detail, "--explain", "weld", "--language", "fr"}).status == english.status);
    check_refused({"check", detail, "--language", "de"}, "--language");
}

TEST_CASE("a data folder that cannot be used gives status 2", "[process][bad-input]") {
    check_refused({"list", "species", "--data", "/nonexistent"}, "is not a data folder");
    const Ran ran = run_toehold({"list", "species"}, {"", "", false, {"TOEHOLD_DATA=/nonexistent"}});
    CHECK(ran.status == 2);
    CHECK(contains(ran.err, "\"/nonexistent\" is not a data folder"));
    CHECK(
        run_toehold({"list", "species", "--data", TOEHOLD_DATA_FOLDER}, {"", "", false, {"TOEHOLD_DATA=/nonexistent"}})
            .status == 0);
}

TEST_CASE("what is from memory is one list, of the catalogs and of the program, as text and as JSON", "[process]") {
    const Ran ran = run_toehold({"list", "memory"});
    CHECK(ran.status == 0);
    for (const char* part : {"resistance/", "AWC Technical Report 12", "steel-a36"}) CHECK(contains(ran.out, part));
    CHECK_FALSE(contains(ran.out, "lag-3/8"));  // read in print
    const Ran json = run_toehold({"list", "memory", "--json"});
    CHECK(json.status == 0);
    for (const char* part : {"\"name\": \"steel-a36\"", "\"source\": \"AWC Technical Report 12\""})
        CHECK(contains(json.out, part));
}

TEST_CASE("every list has rows and fits the page", "[process]") {
    for (const char* name :
         {"checks", "findings", "fasteners", "species", "grades", "metals", "decking", "washers", "memory", "plates"}) {
        const Ran ran = run_toehold({"list", name});
        INFO(name);
        CHECK(ran.status == 0);
        CHECK(ran.err.empty());
        std::size_t lines = 0;
        std::size_t begin = 0;
        for (auto end = ran.out.find('\n'); end != std::string::npos; end = ran.out.find('\n', begin)) {
            CHECK(end - begin <= 100);
            begin = end + 1;
            ++lines;
        }
        CHECK(lines > 2);
    }
}

TEST_CASE("output that cannot be written is said, with status 3", "[process][bad-input]") {
    const Ran full = run_toehold({"list", "grades"}, {"", "/dev/full", false, {}});
    CHECK(full.status == 3);
    CHECK(contains(full.err, "the output could not be written: No space left on device"));
    const Ran closed = run_toehold({"list", "grades"}, {"", "", true, {}});
    CHECK(closed.status == 3);
    CHECK(contains(closed.err, "the output could not be written: Broken pipe"));
    CHECK(run_toehold({"--help"}, {"", "/dev/full", false, {}}).status == 3);
}

TEST_CASE("the manual page names every command and option", "[process]") {
    const std::string page = toehold::test::bytes_of(TOEHOLD_MANUAL);
    std::string help;
    for (const char* command : {"new", "size", "check", "compare", "chart", "remark", "report", "draw", "site", "bill",
                                "letter", "validate", "list", "proof"}) {
        help += run_toehold({command, "--help"}).out;
        CHECK(contains(page, std::string(".B ") + command + "\n"));
    }
    for (auto at = help.find("  --"); at != std::string::npos; at = help.find("  --", at + 1)) {
        std::string option = help.substr(at + 4, help.find_first_of(" ,\n", at + 4) - at - 4);
        for (auto hyphen = option.find('-'); hyphen != std::string::npos; hyphen = option.find('-', hyphen + 2)) {
            option.replace(hyphen, 1, "\\-");
        }
        INFO(option);
        CHECK(contains(page, "\\-\\-" + option));
    }
}
