// A whole search: the same however many threads, stopped and resumed or not, and spread over workers or not.
#include "search/run/run.h"

#include "search/run/journal.h"
#include "search/run/lines.h"
#include "small_space.h"
#include "support/contains.h"
#include "support/file_bytes.h"
#include "support/shipped.h"
#include "support/temporary_folder.h"
#include "xml/detail/detail_file.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <atomic>
#include <fstream>
#include <random>

using namespace toehold;
using search::Judged;
using search::Judgement;
using search::Outcome;
using search::RunOptions;
using search::Space;
using test::bytes_of;
using test::contains;

namespace {

RunOptions plain(std::size_t jobs) {
    RunOptions options;
    options.jobs = jobs;
    options.most_misplaced = 1;
    return options;
}

const Outcome& at_once() {
    static const Outcome outcome = search::run(test::rigid_space(), test::shipped_catalog(), plain(1));
    return outcome;
}

void check_alike(const std::vector<search::Result>& one, const std::vector<search::Result>& other) {
    REQUIRE(one.size() == other.size());
    for (std::size_t place = 0; place < one.size(); ++place) {
        CHECK(one[place].candidate == other[place].candidate);
        CHECK(one[place].detail == other[place].detail);
        CHECK(one[place].score == other[place].score);
    }
}

void check_alike(const Outcome& one, const Outcome& other) {
    check_alike(one.holding, other.holding);
    check_alike(one.front, other.front);
    CHECK(one.limits == other.limits);
    CHECK(one.clashes == other.clashes);
    CHECK(one.counts.judged == other.counts.judged);
    CHECK(one.counts.found == other.counts.found);
    CHECK(one.counts.by_stage == other.counts.by_stage);
    CHECK(one.stopped == other.stopped);
    CHECK(one.nearest.has_value() == other.nearest.has_value());
}

std::string why(const Space& space, const RunOptions& options) {
    try {
        static_cast<void>(search::run(space, test::shipped_catalog(), options));
    } catch (const search::JournalError& error) {
        return format::english(error.why);
    }
    return {};
}

}  // namespace

TEST_CASE("a search judges every candidate, and each result is adequate by the whole engine", "[property]") {
    const Outcome& outcome = at_once();
    const Space space = test::rigid_space();
    CHECK(outcome.counts.judged == search::size(space));
    CHECK_FALSE(outcome.stopped);
    CHECK(outcome.counts.found == outcome.holding.size());
    CHECK_FALSE(outcome.front.empty());
    CHECK_FALSE(outcome.nearest);
    for (const search::Result& result : outcome.holding) {
        CHECK(test::is_adequate(space, result.candidate));
        // Complete by itself, whatever folder it is kept in.
        const xml::DetailRead read = xml::read_detail_text(xml::write_detail(result.detail), "elsewhere/x.xml");
        REQUIRE(read.detail);
        CHECK(*read.detail == result.detail);
    }
    std::size_t stopped = 0;
    for (const auto& [limit, count] : outcome.limits) stopped += count;
    CHECK(stopped + outcome.counts.by_stage[0] + outcome.counts.found == outcome.counts.judged);
    CHECK(outcome.front.front().score.robustness_ratio.has_value());
}

TEST_CASE("two threads find what one finds", "[property]") {
    check_alike(search::run(test::rigid_space(), test::shipped_catalog(), plain(2)), at_once());
}

TEST_CASE("a search that was stopped goes on by its journal to the same end", "[property]") {
    const test::TemporaryFolder folder;
    const Space space = test::rigid_space();
    RunOptions options = plain(2);
    options.journal = (folder.path() / "journal").string();
    std::atomic<int> asked{0};
    options.stop = [&asked] { return ++asked > 20; };
    const Outcome part = search::run(space, test::shipped_catalog(), options);
    CHECK(part.stopped);
    CHECK(part.counts.judged == 20);
    CHECK(part.counts.left() == search::size(space) - 20);
    options.stop = {};
    CHECK(contains(why(space, options), "the journal exists"));
    std::ofstream(options.journal, std::ios::app) << "{\"space\":\"cut sho";  // by a crash
    options.resume = true;
    search::Candidate first_told = 0;
    options.progress = [&first_told](const search::Progress& progress) {
        if (first_told == 0) first_told = progress.counts.judged;
        CHECK(progress.counts.judged + progress.counts.left() == progress.counts.candidates);
    };
    check_alike(search::run(space, test::shipped_catalog(), options), at_once());
    CHECK(first_told >= 20);
    // Nothing is left: resumed again it judges none, and says the same.
    options.stop = [] { return true; };
    const std::string before = bytes_of(options.journal);
    const Outcome again = search::run(space, test::shipped_catalog(), options);
    CHECK(again.counts.judged == search::size(space));
    CHECK_FALSE(again.stopped);
    CHECK(bytes_of(options.journal) == before);
}

TEST_CASE("a journal that another search writes is left to it", "[bad-input]") {
    const test::TemporaryFolder folder;
    RunOptions options = plain(1);
    options.journal = (folder.path() / "journal").string();
    options.resume = true;
    options.stop = [] { return true; };
    const Space space = test::rigid_space();
    {
        Judged judged(search::size(space));
        const search::Journal other(options.journal, search::name_of(space, options.context), true, judged);
        CHECK(contains(why(space, options), "another search is writing this journal"));
    }
    CHECK(why(space, options).empty());
}

TEST_CASE("a journal of another search, a damaged one and no file are refused with a sentence", "[bad-input]") {
    const test::TemporaryFolder folder;
    RunOptions options = plain(1);
    options.journal = (folder.path() / "journal").string();
    options.resume = true;
    options.stop = [] { return true; };
    const Space space = test::rigid_space();
    const std::string name = search::name_of(space, options.context);
    std::ofstream(options.journal) << "{\"space\":\"" << name << "\",\"candidate\":0,\"to\":3,\"stage\":\"choice\","
                                   << "\"holds\":false}\n";
    CHECK(why(space, options).empty());
    CHECK(contains(why(test::hopeless_space(), options), "judged for another search"));
    options.context = "another catalog";
    CHECK(contains(why(space, options), "judged for another search"));
    options.context.clear();
    std::ofstream(options.journal, std::ios::app) << "17 holds\n";
    CHECK(contains(why(space, options), "journal:2: not a line of a search's judgements"));
    std::ofstream(options.journal) << "{\"space\":\"" << name << "\",\"candidate\":48,\"stage\":\"choice\","
                                   << "\"holds\":false}\n";
    CHECK(contains(why(space, options), "no candidate 48; the last is 47"));
    options.journal = folder.path().string();
    CHECK(contains(why(space, options), "not a file"));
    options.journal = (folder.path() / "none" / "journal").string();
    CHECK(contains(why(space, options), "cannot be written"));
}

TEST_CASE("workers' lines, in any order, come to what one run finds", "[property]") {
    const Space space = test::rigid_space();
    const std::string name = search::name_of(space, {});
    std::vector<std::string> lines;
    for (const Judgement& judgement : test::judge_all(space)) lines.push_back(search::lines_of({judgement}, name));
    std::shuffle(lines.begin(), lines.end(), std::mt19937(20261125));
    std::string text = "\n";
    for (const std::string& line : lines) text += line;
    Judged judged(search::size(space));
    search::add_lines(text + lines.front(), "lines", name, judged);  // one twice
    check_alike(search::conclude(space, test::shipped_catalog(), judged, plain(1)), at_once());
}

TEST_CASE("where nothing holds the search says what stops it, and what comes nearest", "[unit]") {
    const Space space = test::hopeless_space();
    const Outcome outcome = search::run(space, test::shipped_catalog(), plain(1));
    CHECK(outcome.holding.empty());
    CHECK(outcome.front.empty());
    CHECK_FALSE(outcome.limits.empty());
    REQUIRE(outcome.nearest);
    CHECK(outcome.nearest->candidate < search::size(space));
}
