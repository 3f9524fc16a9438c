// A thousandth of an inch turns no verdict by itself: every ratio of every demo detail moves on by little when a block
// or a hole is moved by so much. What may turn is a limit met to the thousandth, which its ratio of 1 shows.
#include "support/shipped.h"

#include "model/part.h"
#include "review/review.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>

using namespace toehold;

namespace {

constexpr double nudge_in = 0.001;

/// One stiffness, a rigid plate and one direction: the rules on places are looked at here, and hundreds of reviews are
/// made.
model::BaseDetail quick(const std::string& name) {
    model::BaseDetail detail = test::demo_detail(name);
    detail.basis.stiffness = model::FixedStiffness{8500.0, 100000.0, "test"};
    detail.basis.plate = model::PlateBehaviour::rigid;
    detail.loads.directions = model::Directions::outward;
    return detail;
}

using Results = std::map<std::string, checks::CheckResult>;

Results results_of(const model::BaseDetail& detail) {
    Results results;
    const review::Review review = review::evaluate(test::resolved_by_shipped(detail), "");
    for (const checks::CheckResult& result : review.checks) {
        std::string key = result.id + "|" + model::key(result.part) + "|" + format::english(result.title);
        while (results.count(key) != 0) key += "'";
        results.emplace(key, result);
    }
    return results;
}

struct Move {
    std::string what;
    std::function<void(model::BaseDetail&, double)> by;
};

std::vector<Move> moves(const model::BaseDetail& detail) {
    std::vector<Move> all;
    for (std::size_t block = 0; block < detail.framing.blocks.size(); ++block) {
        const std::string name = detail.framing.blocks[block].id;
        all.push_back({name + " across",
                       [block](model::BaseDetail& moved, double in) { moved.framing.blocks[block].across_in += in; }});
        all.push_back({name + " from",
                       [block](model::BaseDetail& moved, double in) { moved.framing.blocks[block].from_in += in; }});
        all.push_back(
            {name + " to", [block](model::BaseDetail& moved, double in) { moved.framing.blocks[block].to_in += in; }});
    }
    for (std::size_t hole = 0; hole < on_deck(detail).plate.holes.size(); ++hole) {
        const std::string name = on_deck(detail).plate.holes[hole].id;
        all.push_back({"hole " + name + " x", [hole](model::BaseDetail& moved, double in) {
                           on_deck(moved).plate.holes[hole].center.x_in += in;
                       }});
        all.push_back({"hole " + name + " y", [hole](model::BaseDetail& moved, double in) {
                           on_deck(moved).plate.holes[hole].center.y_in += in;
                       }});
    }
    return all;
}

// The lines a plate may fail along are searched in steps, which is worth some percent of its ratio. Past its anchors
// its yield lines are those of the state whose strip is worst: of equal strips, as of a symmetric base, either may
// lead.
constexpr double small_share = 0.03, share_of_yield_lines = 0.4;

double allowed_share(const checks::CheckResult& result) {
    const bool past_anchors = result.part.piece == model::PartPiece::past_anchor;
    return result.id == "plate-bending" && past_anchors ? share_of_yield_lines : small_share;
}

bool at_its_limit(const checks::CheckResult& result) { return std::abs(result.ratio - 1.0) < small_share; }

/// A ratio moved on by little; or a stated limit lies between the two.
bool near(const checks::CheckResult& before, const checks::CheckResult& after) {
    if (!std::isfinite(before.ratio) || !std::isfinite(after.ratio))
        return std::isfinite(before.ratio) == std::isfinite(after.ratio);
    constexpr double least = 0.005;
    if (std::abs(before.ratio - after.ratio) > std::max(least, allowed_share(before) * before.ratio)) return false;
    return before.status == after.status || (at_its_limit(before) && at_its_limit(after));
}

/// What turned although no limit was near; empty: nothing did.
std::string turned(const Results& before, const Results& after) {
    for (const auto& [key, result] : before) {
        const auto found = after.find(key);
        if (found == after.end()) return key + " is gone";
        if (!near(result, found->second))
            return key + ": " + std::to_string(result.ratio) + " became " + std::to_string(found->second.ratio);
    }
    for (const auto& [key, result] : after) {
        if (before.count(key) == 0) return key + " is new";
    }
    return {};
}

void check_nudges(const std::string& name) {
    const model::BaseDetail detail = quick(name);
    const Results before = results_of(detail);
    for (const Move& move : moves(detail)) {
        for (const double in : {nudge_in, -nudge_in}) {
            model::BaseDetail moved = detail;
            move.by(moved, in);
            const std::string what = turned(before, results_of(moved));
            INFO(name << ": " << move.what << " by " << in << ": " << what);
            CHECK(what.empty());
        }
    }
}

}  // namespace

TEST_CASE("no ratio jumps when a block or a hole moves by 0.001 in: details that hold", "[property][A18]") {
    for (const char* name : {"lags-in-deep-blocks", "through-bolts", "over-a-joist", "two-flat-blocks"})
        check_nudges(std::string("heron-landing-") + name);
}

TEST_CASE("no ratio jumps when a block or a hole moves by 0.001 in: details that do not", "[property]") {
    for (const char* name : {"short-lags-in-flat-block", "heel-block-only", "doubled-rim", "decking-only"})
        check_nudges(std::string("heron-landing-") + name);
}
