// Nothing that holds is lost: every candidate of small spaces, by the stages and by the whole engine alone.
#include "search/judge/judge.h"

#include "small_space.h"
#include "support/shipped.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <random>
#include <set>

using namespace toehold;
using search::Candidate;
using search::Judgement;
using search::Space;
using search::Stage;

namespace {

/// Judged once for all cases.
const std::vector<Judgement>& rigid_judgements() {
    static const std::vector<Judgement> all = test::judge_all(test::rigid_space());
    return all;
}

void check_against_the_whole_engine(const Space& space, const std::vector<Judgement>& judgements) {
    REQUIRE(judgements.size() == search::size(space));
    for (Candidate candidate = 0; candidate < judgements.size(); ++candidate) {
        const Judgement& judgement = judgements[candidate];
        INFO("candidate " << candidate << ", " << search::word(judgement.stage) << ", " << judgement.limit << " "
                          << judgement.ratio);
        CHECK(judgement.candidate == candidate);
        CHECK(judgement.holds == test::is_adequate(space, candidate));
        CHECK((!judgement.holds || judgement.stage == Stage::whole));
        CHECK((judgement.stage == Stage::choice) == judgement.limit.empty());
    }
}

}  // namespace

TEST_CASE("what the whole engine calls adequate is found, and nothing else: rigid plates", "[property]") {
    check_against_the_whole_engine(test::rigid_space(), rigid_judgements());
    std::set<Stage> stages;
    for (const Judgement& judgement : rigid_judgements()) stages.insert(judgement.stage);
    CHECK(stages.size() == 4);  // the space tries them all
    const auto found = std::count_if(rigid_judgements().begin(), rigid_judgements().end(),
                                     [](const Judgement& judgement) { return judgement.holds; });
    CHECK(found > 0);
    CHECK(found < 24);
}

TEST_CASE("what the whole engine calls adequate is found, and nothing else: plates that bend", "[property]") {
    const Space space = test::flexible_space();
    const std::vector<Judgement> judgements = test::judge_all(space);
    check_against_the_whole_engine(space, judgements);
    CHECK(std::any_of(judgements.begin(), judgements.end(), [](const Judgement& one) { return one.holds; }));
    CHECK(std::any_of(judgements.begin(), judgements.end(),
                      [](const Judgement& one) { return one.stage == Stage::probe; }));
}

// A candidate is its detail: in a space of fewer options it has another number and the same judgement.
TEST_CASE("a judgement does not depend on what else there is to choose", "[property]") {
    const Space space = test::rigid_space();
    std::mt19937 chance(20261125);
    for (int trial = 0; trial < 4; ++trial) {
        Space part = space;
        std::vector<std::vector<std::size_t>> kept(space.axes.size());
        for (std::size_t axis = 0; axis < space.axes.size(); ++axis) {
            part.axes[axis].options.clear();
            for (std::size_t option = 0; option < space.axes[axis].options.size(); ++option) {
                if (chance() % 2 == 0 && !(option == 0 && kept[axis].empty())) continue;
                kept[axis].push_back(option);
                part.axes[axis].options.push_back(space.axes[axis].options[option]);
            }
        }
        const Candidate one = chance() % search::size(part);
        std::vector<std::size_t> chosen = search::choices(part, one);
        for (std::size_t axis = 0; axis < chosen.size(); ++axis) chosen[axis] = kept[axis][chosen[axis]];
        const Candidate same = search::number_of(space, chosen);
        Judgement judgement = search::judge(part, test::shipped_catalog(), one);
        judgement.candidate = same;
        CHECK(judgement == rigid_judgements()[same]);
    }
}

TEST_CASE("a judgement does not depend on what was judged before", "[property]") {
    const Space space = test::flexible_space();
    search::Judge judge(space, test::shipped_catalog());
    for (const Candidate candidate : {Candidate{4}, Candidate{0}, Candidate{5}})
        CHECK(judge.judge(candidate) == search::judge(space, test::shipped_catalog(), candidate));
}

TEST_CASE("a number beyond the space is refused", "[bad-input]") {
    const Space space = test::hopeless_space();
    CHECK_THROWS_AS(search::judge(space, test::shipped_catalog(), search::size(space)), std::out_of_range);
}
