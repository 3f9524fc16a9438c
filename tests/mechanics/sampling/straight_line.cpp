// The stiffness that readings imply, against another library (scipy 1.10.1 linregress, statsmodels 0.13.5 OLS; run once
// by hand) and closed forms.
#include "mechanics/sampling/straight_line.h"

#include "support/compare.h"

#include <array>
#include <stdexcept>
#include <vector>

using namespace toehold::mechanics;

namespace {

constexpr std::array<Reading, 5> readings{{{0.5, 50.0}, {0.85, 100.0}, {1.3, 150.0}, {1.62, 200.0}, {2.1, 250.0}}};

}  // namespace

TEST_CASE("Lines through readings are those of another library", "[published]") {
    const StraightLine with_play = line_with_play(readings);
    CHECK_CLOSE(with_play.stiffness, 125.51216551165965, 1e-12, 0.0);
    CHECK_CLOSE(with_play.play, 0.078896725440806, 1e-10, 0.0);
    CHECK_CLOSE(with_play.stiffness_error, 4.253384101078132, 1e-10, 0.0);
    const StraightLine through = line_through_origin(readings);
    CHECK_CLOSE(through.stiffness, 119.00710536356982, 1e-12, 0.0);
    CHECK(through.play == 0.0);
    CHECK_CLOSE(through.stiffness_error, 2.0675039432025497, 1e-10, 0.0);
}

TEST_CASE("Readings on a line give the line, without error", "[closed-form]") {
    const std::vector<Reading> exact{{0.25, 0.0}, {1.25, 120.0}, {2.25, 240.0}};
    const StraightLine line = line_with_play(exact);
    CHECK_CLOSE(line.stiffness, 120.0, 1e-12, 0.0);
    CHECK_CLOSE(line.play, 0.25, 1e-12, 0.0);
    CHECK_CLOSE(line.stiffness_error, 0.0, 0.0, 1e-9);
}

TEST_CASE("One reading tells a stiffness without play, two one with it, neither how sure it is", "[unit]") {
    const std::vector<Reading> one{{0.8, 200.0}}, two{{0.5, 100.0}, {0.9, 200.0}};
    CHECK_CLOSE(line_through_origin(one).stiffness, 250.0, 1e-12, 0.0);
    CHECK(line_through_origin(one).stiffness_error == 0.0);
    CHECK_CLOSE(line_with_play(two).stiffness, 250.0, 1e-12, 0.0);
    CHECK_CLOSE(line_with_play(two).play, 0.1, 1e-12, 0.0);
    CHECK(line_with_play(two).stiffness_error == 0.0);
}

TEST_CASE("Small units and a reading at rest are as good", "[property]") {
    const std::vector<Reading> small{{0.0, 0.0}, {0.01, 1e-3}, {0.02, 2e-3}};
    CHECK_CLOSE(line_through_origin(small).stiffness, 0.1, 1e-12, 0.0);
    CHECK_CLOSE(line_with_play(small).stiffness, 0.1, 1e-12, 0.0);
    CHECK_CLOSE(line_with_play(small).play, 0.0, 0.0, 1e-12);
}

TEST_CASE("Readings that tell no stiffness are refused", "[bad-input]") {
    using Readings = std::vector<Reading>;
    CHECK_THROWS_AS(line_through_origin(Readings{}), std::invalid_argument);
    CHECK_THROWS_AS(line_through_origin(Readings{{0.0, 100.0}}), std::invalid_argument);
    CHECK_THROWS_AS(line_through_origin(Readings{{-0.1, 100.0}}), std::invalid_argument);
    CHECK_THROWS_AS(line_through_origin(Readings{{0.1, -100.0}}), std::invalid_argument);
    CHECK_THROWS_AS(line_with_play(Readings{{0.5, 100.0}}), std::invalid_argument);
    CHECK_THROWS_AS(line_with_play(Readings{{0.5, 100.0}, {0.5, 200.0}}), std::invalid_argument);
    CHECK_THROWS_AS(line_with_play(Readings{{0.5, 200.0}, {0.9, 100.0}}), std::invalid_argument);
}
