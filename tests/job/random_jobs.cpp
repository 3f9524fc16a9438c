// Jobs nobody would think of, within what is accepted: each is refused with a sentence or gives a whole detail.
#include "catalog/resolve.h"
#include "job/file.h"
#include "job/questions.h"
#include "jobs.h"
#include "support/shipped.h"
#include "xml/detail/detail_file.h"

#include <fmt/format.h>
#include <catch2/catch.hpp>

#include <random>

using namespace toehold;
using test::shipped_catalog;

namespace {

/// Draws answers; one seed, the same everywhere.
class Dice {
  public:
    explicit Dice(unsigned seed) : engine_(seed) {}
    [[nodiscard]] double between(double least, double most) {
        return std::uniform_real_distribution<double>(least, most)(engine_);
    }
    [[nodiscard]] std::size_t below(std::size_t count) {
        return std::uniform_int_distribution<std::size_t>(0, count - 1)(engine_);
    }
    [[nodiscard]] bool coin() { return below(2) == 0; }

  private:
    std::mt19937 engine_;
};

job::PostOrder post(Dice& dice) {
    switch (dice.below(4)) {
        case 0:
            return {fmt::format("{:.2f}x{:.2f}x{:.3f}", dice.between(1.0, 8.0), dice.between(1.0, 8.0),
                                dice.between(0.06, 0.49)),
                    dice.coin() ? "steel" : "aluminum"};
        case 1:
            return {fmt::format("round {:.2f}x{:.3f}", dice.between(1.0, 8.0), dice.between(0.06, 0.49)), "stainless"};
        case 2:
            return {fmt::format("{:.2f}x{:.2f}", dice.between(0.5, 8.0), dice.between(0.5, 8.0)), "steel"};
        default:
            return {fmt::format("{}x{}", 4 + 2 * dice.below(3), 4 + 2 * dice.below(3)), "wood"};
    }
}

job::Job drawn(Dice& dice) {
    job::Job job;
    job.guard_height_in = dice.between(12.0, 120.0);
    job.occupancy = dice.coin() ? model::Occupancy::other : model::Occupancy::one_and_two_family;
    job.post = post(dice);
    job.decking = dice.coin() ? "wood-redwood" : "pvc-generic";
    job.joist_size = fmt::format("{}x{}", 2 + dice.below(3), 8 + 2 * dice.below(5));
    job.joist_spacing_in = dice.between(12.0, 32.0);
    job.place = static_cast<job::Place>(dice.below(5));
    job.tributary_length_in = dice.between(12.0, 240.0);
    if (dice.coin()) job.joist_span_in = dice.between(48.0, 240.0);
    if (dice.coin()) job.access_below = dice.coin();
    if (dice.coin()) job.decking_thickness = fmt::format("{:.2f} in", dice.between(0.5, 4.0));
    if (dice.coin()) job.species = shipped_catalog().species.at(dice.below(shipped_catalog().species.size())).id;
    if (dice.coin()) job.treated = dice.coin();
    return job;
}

}  // namespace

TEST_CASE("any job is refused with what would do, or starts a sound detail", "[property]") {
    Dice dice(20261130);
    std::size_t started = 0;
    constexpr int jobs = 300;
    for (int number = 0; number < jobs; ++number) {
        const job::Job job = drawn(dice);
        INFO(test::words(job) << ", species " << job.species.value_or("-"));
        const model::Problems wrong = job::problems(job, shipped_catalog());
        for (const model::Problem& problem : wrong) {
            CHECK_NOTHROW(job::question(problem.element, shipped_catalog()));
            CHECK_FALSE(problem.accepted.empty());
        }
        if (!wrong.empty()) continue;
        ++started;
        const xml::DetailRead read =
            xml::read_detail_text(job::as_file(job::start(job, shipped_catalog())), "started.xml");
        for (const model::Problem& problem : read.problems) CHECK(model::sentence(problem).empty());
        REQUIRE(read.detail);
        CHECK(catalog::resolve(*read.detail, shipped_catalog()).problems.empty());
    }
    CHECK(started > jobs / 3);
}
