// The front against every pair compared.
#include "search/pareto/pareto.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <random>

using namespace toehold;
using search::Result;

namespace {

Result result(search::Candidate candidate, double cost, double weight_lb, int pieces, int anchors, double ratio) {
    Result one;
    one.candidate = candidate;
    one.score = {weight_lb, cost, 0, pieces, anchors, ratio, std::nullopt};
    return one;
}

/// Few values of each score, so that many are equal.
std::vector<Result> drawn(std::mt19937& random, std::size_t count) {
    const auto draw = [&](int most) { return static_cast<int>(random() % static_cast<unsigned>(most)); };
    std::vector<Result> results;
    for (std::size_t index = 0; index < count; ++index)
        results.push_back(result(index, draw(6) * 10.0, draw(6) * 1.0, draw(5), 4 + draw(3), 0.5 + 0.05 * draw(8)));
    std::shuffle(results.begin(), results.end(), random);
    return results;
}

}  // namespace

TEST_CASE("the front is what no other beats, as every pair says", "[property]") {
    std::mt19937 random(7);
    for (int round = 0; round < 20; ++round) {
        const std::vector<Result> results = drawn(random, 200);
        std::vector<search::Candidate> expected;
        for (const Result& one : results) {
            const bool beaten = std::any_of(results.begin(), results.end(), [&](const Result& other) {
                const bool same = !search::beats(one.score, other.score) && one.score == other.score;
                return search::beats(other.score, one.score) || (same && other.candidate < one.candidate);
            });
            if (!beaten) expected.push_back(one.candidate);
        }
        std::vector<search::Candidate> found;
        for (const std::size_t place : search::front_of(results)) found.push_back(results[place].candidate);
        std::sort(expected.begin(), expected.end());
        std::vector<search::Candidate> sorted = found;
        std::sort(sorted.begin(), sorted.end());
        CHECK(sorted == expected);
        // The order they come in does not depend on the order they were given in.
        std::vector<Result> again = results;
        std::shuffle(again.begin(), again.end(), random);
        std::vector<search::Candidate> other;
        for (const std::size_t place : search::front_of(again)) other.push_back(again[place].candidate);
        CHECK(other == found);
    }
}

TEST_CASE("a difference nobody sees is no reason", "[unit]") {
    const Result one = result(1, 10.0, 5.0, 9, 4, 0.841), other = result(2, 10.0, 5.0, 9, 4, 0.839);
    CHECK_FALSE(search::beats(other.score, one.score));
    CHECK(search::front_of({other, one}) == std::vector<std::size_t>{1});  // the lower candidate stands for both
    CHECK(search::beats(result(3, 10.0, 5.0, 9, 4, 0.83).score, one.score));
    CHECK(search::front_of({}).empty());
}
