// `toehold size`: the search, its journal, its workers and what it writes.
#include "porch.h"
#include "process.h"
#include "support/contains.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>

using toehold::test::bytes_of;
using toehold::test::contains;
using toehold::test::Porch;
using toehold::test::Ran;
using toehold::test::run_toehold;
using Json = nlohmann::json;

namespace {

namespace fs = std::filesystem;

/// Without the line ends of a paragraph.
std::string one_line(std::string text) {
    std::replace(text.begin(), text.end(), '\n', ' ');
    return text;
}

std::vector<std::string> sorted_lines(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream in(text);
    for (std::string line; std::getline(in, line);) lines.push_back(line);
    std::sort(lines.begin(), lines.end());
    return lines;
}

}  // namespace

TEST_CASE("size shows the front of what holds, and writes it as details that check calls adequate", "[process]") {
    const Porch porch;
    const std::string written = porch.path("found").string();
    const Ran ran = porch.size({"-o", written, "--jobs", "2"});
    INFO(ran.out << ran.err);
    CHECK(ran.status == 0);
    CHECK(ran.err.empty());
    CHECK(contains(ran.out, "8 candidates judged, "));
    CHECK(contains(ran.out, "What stops the others, the limit met first:"));
    std::vector<std::string> check{"check"};
    for (const auto& entry : fs::directory_iterator(written)) check.push_back(entry.path().string());
    REQUIRE(check.size() > 1);
    CHECK(run_toehold(check).status == 0);
    CHECK(contains(fs::path(check[1]).filename().string(), "porch-"));
}

TEST_CASE("size says the same with one thread, with two, by a journal resumed, and by workers", "[process]") {
    const Porch porch;
    const Ran one = porch.size({"--json", "--jobs", "1"});
    INFO(one.out << one.err);
    REQUIRE(one.status == 0);
    const Json json = Json::parse(one.out);
    CHECK(json["schema"] == "toehold.search/1");
    CHECK(json["counts"]["candidates"] == 8);
    CHECK(json["counts"]["judged"] == 8);
    CHECK(json["front"].size() <= json["holding"].size());
    CHECK(json["axes"].size() == 2);
    CHECK(porch.size({"--json", "--jobs", "2"}).out == one.out);

    const std::string journal = porch.path("journal").string();
    CHECK(porch.size({"--json", "--journal", journal}).out == one.out);
    const std::string kept = bytes_of(journal);
    const std::size_t line = kept.find('\n') + 1;
    std::ofstream(journal) << kept.substr(0, line + 20);  // as a crash leaves it
    CHECK(porch.size({"--json", "--journal", journal, "--resume"}).out == one.out);
    CHECK(sorted_lines(bytes_of(journal)) == sorted_lines(kept));

    const Ran numbers = porch.size({"--list"});
    CHECK(numbers.out == "0\n1\n2\n3\n4\n5\n6\n7\n");
    const Ran first = porch.size({"--candidates", "-"}, "6\n0\n\n3\n");
    const Ran second = porch.size({"--candidates", "-"}, "1\n2\n4\n5\n7\n");
    CHECK(first.status == 0);
    CHECK(first.err.empty());
    CHECK(std::count(first.out.begin(), first.out.end(), '\n') == 3);
    CHECK(contains(first.out, "\"candidate\":6,"));
    const Ran gathered = porch.size({"--json", "--gather", "-"}, second.out + first.out);
    CHECK(gathered.out == one.out);
    const Ran part = porch.size({"--gather", "-"}, first.out);
    CHECK(contains(one_line(part.out), "5 of 8 candidates are not judged yet."));
}

TEST_CASE("where nothing holds size says what stops it and the nearest miss", "[process]") {
    const Porch porch;
    const Ran ran = run_toehold({"size", porch.file(), "--vary", "length=2,4"});
    INFO(ran.out << ran.err);
    CHECK(ran.status == 1);
    CHECK(contains(ran.out, "2 candidates judged, none holds."));
    CHECK(contains(ran.out, "Nearest miss, candidate "));
    CHECK(contains(ran.out, "What stops the others, the limit met first:"));
}

TEST_CASE("size refuses what it cannot use with a sentence", "[process][bad-input]") {
    const Porch porch;
    const auto refused = [](const Ran& ran, const std::string& part) {
        INFO(ran.out << ran.err);
        CHECK(ran.status == 2);
        CHECK(contains(ran.err, part));
    };
    refused(run_toehold({"size"}), "FILE is required");
    refused(run_toehold({"size", "/nonexistent.xml"}), "there is no such file");
    refused(porch.size({"--vary", "wings=2"}), "wings");
    refused(porch.size({"--candidates", "-"}, "3\n8\n"), "standard input:2: not the number of a candidate");
    refused(porch.size({"--candidates", "file"}), "--candidates");
    refused(porch.size({"--list", "--gather", "-"}), "excludes");
    refused(porch.size({"--resume"}), "--journal");
    refused(porch.size({"--gather", "-"}, "rubbish\n"), "standard input:1: not a line of a search's judgements");
    refused(run_toehold({"size", "-", "--gather", "-"}), "standard input holds the candidates or lines");
    const std::string journal = porch.path("journal").string();
    std::ofstream(journal) << "anything\n";
    refused(porch.size({"--journal", journal}), "the journal exists");
    refused(porch.size({"--journal", journal, "--resume"}), "journal:1: not a line");
}
