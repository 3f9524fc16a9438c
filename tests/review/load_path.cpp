// The chain from the guard down, as results put it together.
#include "review/load_path.h"

#include "review/verdict.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

using namespace toehold;
using checks::Status;
using review::PathLink;

namespace {

/// The part these tests mean by a name such as `block B1` or `supports of joist J1`.
model::PartId part_named(std::string name) {
    model::PartId part;
    for (const std::string prefix : {"supports of ", "ends of ", "joists at "}) {
        if (name.rfind(prefix, 0) != 0) continue;
        part.piece = model::PartPiece::supports;
        name = name.substr(prefix.size());
    }
    if (name == "joists") return {model::PartKind::joist, "", part.piece};
    const std::size_t blank = std::min(name.find(' '), name.size());
    for (int kind = 1; kind <= static_cast<int>(model::PartKind::plug_in); ++kind) {
        if (model::kind_word(static_cast<model::PartKind>(kind)) == name.substr(0, blank))
            part.kind = static_cast<model::PartKind>(kind);
    }
    if (blank < name.size()) part.id = name.substr(blank + 1);
    return part;
}

checks::CheckResult link(const char* from, const char* to, const char* by, double demand, double capacity) {
    checks::CheckResult made;
    made.id = by;
    made.demand = demand;
    made.capacity = capacity;
    made.unit = "lb";
    checks::Link& joined = made.link.emplace();
    joined.from = part_named(from);
    joined.to = part_named(to);
    joined.by = format::verbatim(by);
    checks::conclude(made);
    return made;
}

std::vector<PathLink> path_of(std::vector<checks::CheckResult> results) {
    review::sort_worst_first(results);
    return review::load_path(results);
}

std::string from(const PathLink& path) { return model::key(path.link.from); }
std::string to(const PathLink& path) { return model::key(path.link.to); }

std::vector<std::string> chain(const std::vector<PathLink>& path) {
    std::vector<std::string> words;
    for (const PathLink& one : path) words.push_back(from(one) + " > " + to(one));
    return words;
}

/// From the guard to both supports of one joist, in no order.
std::vector<checks::CheckResult> whole() {
    return {link("joist J1", "beam S2", "hanger", 500, 800),
            link("joist J1", "ledger S1", "hanger", 300, 800),
            link("joist J1", "supports of joist J1", "bending of the joist", 1, 2),
            link("block B1", "joist J1", "angles", 500, 900),
            link("block B1", "ends of block B1", "bending of the block", 1, 3),
            link("decking", "block B1", "bearing", 100, 300),
            link("anchor A", "block B1", "threads", 900, 1000),
            link("plate", "anchor A", "shank", 900, 2000),
            link("plate", "decking", "bearing", 100, 300),
            link("post", "plate", "weld", 10, 20),
            link("guard", "post", "bending", 10, 20),
            link("joists", "boards", "fasteners of the boards", 200, 400)};
}

}  // namespace

TEST_CASE("the chain runs from the guard to the supports, whatever the order of the results", "[unit]") {
    const std::vector<std::string> expected = {"guard > post",
                                               "post > plate",
                                               "plate > anchor A",
                                               "plate > decking",
                                               "anchor A > block B1",
                                               "decking > block B1",
                                               "block B1 > ends of block B1",
                                               "block B1 > joist J1",
                                               "joist J1 > supports of joist J1",
                                               "joist J1 > ledger S1",
                                               "joist J1 > beam S2",
                                               "joists > boards"};
    auto results = whole();
    CHECK(chain(path_of(results)) == expected);
    std::reverse(results.begin(), results.end());
    CHECK(chain(path_of(results)) == expected);
}

TEST_CASE("each link keeps its worst check", "[unit]") {
    auto results = whole();
    checks::CheckResult worse = link("anchor A", "block B1", "threads", 1100, 1000);
    worse.id = "the worse one";
    results.push_back(worse);
    const auto path = path_of(results);
    CHECK(path.size() == 12);
    CHECK(path[4].check == "the worse one");
    CHECK(path[4].status == Status::fails);
}

TEST_CASE("links that carry nothing are left out, those that lack a path or evidence are not", "[unit]") {
    auto results = whole();
    results.push_back(link("anchor B", "block B1", "threads", 0, 1000));
    results.push_back(link("anchor C", "block B1", "threads", 1e-9, 1000));
    CHECK(path_of(results).size() == 12);
    results.back().status = Status::missing_evidence;
    CHECK(path_of(results).size() == 13);
    results.back().status = Status::no_path;
    CHECK(path_of(results).size() == 13);
}

TEST_CASE("a member that nothing leads on from ends in nothing", "[unit]") {
    auto results = whole();
    // the block's own strength is no hold
    results.erase(results.begin() + 3);
    const auto path = path_of(results);
    CHECK(path.size() == 12);
    const auto found =
        std::find_if(path.begin(), path.end(), [](const PathLink& one) { return to(one) == "nothing described"; });
    REQUIRE(found != path.end());
    CHECK(from(*found) == "block B1");
    CHECK(found->status == Status::no_path);
    CHECK(std::isinf(found->ratio));
    CHECK(found->demand == 900.0);
    CHECK(found->capacity == 0.0);
    CHECK(to(*(found - 1)) == "ends of block B1");
}

TEST_CASE("a joist of which nothing but its place is known ends in nothing, once", "[unit]") {
    const auto path =
        path_of({link("block B1", "joist J1", "angles", 500, 900), link("block B2", "joist J1", "nails", 5, 90)});
    REQUIRE(path.size() == 3);
    CHECK(from(path[2]) == "joist J1");
    CHECK(to(path[2]) == "nothing described");
    CHECK(path[2].status == checks::Status::no_path);
}

TEST_CASE("a member that only its own strength speaks of must be held too", "[unit]") {
    const auto path = path_of({link("joist J3", "supports of joist J3", "bending of the joist", 1, 2)});
    REQUIRE(path.size() == 2);
    CHECK(from(path[1]) == "joist J3");
    CHECK(to(path[1]) == "nothing described");
}

TEST_CASE("what joins the joists to a rim holds the rim; a block hung on it does not", "[unit]") {
    std::vector<checks::CheckResult> results = {
        link("block B1", "rim R1", "angles", 400, 500), link("rim R1", "joists at rim R1", "bending of the rim", 1, 2),
        link("joist J1", "rim R1", "angles", 300, 500), link("joist J1", "beam S2", "hanger", 300, 500)};
    CHECK(path_of(results).size() == 4);
    results.erase(results.begin() + 2);
    const auto path = path_of(results);
    CHECK(path.size() == 4);
    CHECK(std::any_of(path.begin(), path.end(),
                      [](const PathLink& one) { return from(one) == "rim R1" && to(one) == "nothing described"; }));
}
