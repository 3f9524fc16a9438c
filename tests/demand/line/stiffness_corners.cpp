// What is known between two ends only: the corners bound what lies between, one-way bases included.
#include "demand/line/lines.h"
#include "mechanics/space_frame/one_way_frame.h"
#include "support/compare.h"

#include <algorithm>
#include <random>

using namespace toehold;
using test::line_demand_of;
using test::straight_line;

namespace {

class Random {
  public:
    double between(double low, double high) { return std::uniform_real_distribution<double>(low, high)(engine_); }
    /// Even in its logarithm.
    double factor(double most) { return std::exp(between(-std::log(most), std::log(most))); }

  private:
    std::mt19937 engine_{20261130};
};

demand::BaseStiffness times(const demand::BaseStiffness& base, double factor) {
    return {base.outward * factor, base.inward * factor, base.right * factor, base.left * factor};
}

/// Bases 0.6 to 1.8 about a center that differs by the way.
demand::LineInput random_line(Random& random, std::size_t posts) {
    demand::LineInput line =
        straight_line(posts, random.between(40.0, 90.0), 9e6 * random.factor(3.0), 9e6 * random.factor(3.0));
    for (demand::LinePost& post : line.posts) {
        const double center = 3e5 * random.factor(2.0);
        const demand::BaseStiffness base{center, center * random.factor(1.5), center, center};
        post.base = {times(base, 0.6), base, times(base, 1.8), {}};
    }
    return line;
}

/// Across alone: a spring at each post, stiffer one way, under a continuous rail.
mechanics::OneWayFrame one_way(const demand::LineInput& line, const std::vector<demand::BaseStiffness>& bases) {
    std::vector<mechanics::SpaceVector> nodes;
    std::vector<mechanics::SpaceMember> members;
    std::vector<mechanics::SpaceSupport> supports;
    std::vector<mechanics::OneWaySpring> springs;
    const double rail = line.soft_rail.in_plan_lb_in2;
    for (std::size_t post = 0; post < line.posts.size(); ++post) {
        const int node = static_cast<int>(post);
        nodes.push_back({line.posts[post].at.x_in, 0.0, 0.0});
        if (post > 0) members.push_back({node - 1, node, {0, 0, 1}, 1e9, rail, rail, rail, 0, 0});
        supports.push_back({node, mechanics::uncoupled({1e3, 0, 1e6, 1e6, 1e6, 0}), {}});
        const auto top = [&](double base) {
            return 1.0 / (line.posts[post].soft_post.along_y_in_per_lb + 42.0 * 42.0 / base);
        };
        springs.push_back({node, {0, 1, 0}, {}, top(bases[post].outward), top(bases[post].inward)});
    }
    return {nodes, members, {}, supports, springs};
}

}  // namespace

TEST_CASE("one-way bases anywhere in their ranges never take more than the corners say", "[property]") {
    Random random;
    for (int trial = 0; trial < 12; ++trial) {
        const std::size_t posts = 3 + static_cast<std::size_t>(trial % 3);
        const demand::LineInput line = random_line(random, posts);
        const demand::LineDemand demand = line_demand_of(line);
        for (int sample = 0; sample < 8; ++sample) {
            std::vector<demand::BaseStiffness> bases;
            for (const demand::LinePost& post : line.posts)
                bases.push_back(times(post.base.central, random.between(0.6, 1.8)));
            const mechanics::OneWayFrame frame = one_way(line, bases);
            mechanics::SpaceLoads push;
            const double at = random.between(0.0, line.posts[1].at.x_in);
            const double way = random.between(-1.0, 1.0) < 0.0 ? -1.0 : 1.0;
            const int span = static_cast<int>(random.between(0.0, static_cast<double>(posts) - 1.001));
            push.points.push_back({span, at, {0.0, way, 0.0}, {}});
            const mechanics::OneWaySolution solution = frame.solve(push);
            REQUIRE(solution.frame.stable);
            for (std::size_t post = 0; post < posts; ++post)
                CHECK(std::abs(solution.forces[post]) <= demand.posts[post].share.value * 1.001);
        }
    }
}

TEST_CASE("the softer a post's neighbors, the more it takes", "[property]") {
    Random random;
    for (int trial = 0; trial < 10; ++trial) {
        demand::LineInput line = random_line(random, 4);
        for (demand::LinePost& post : line.posts) post.base.soft = post.base.stiff = post.base.central;
        for (demand::LinePost& post : line.posts) {  // one stiffness each, so that there is one corner
            for (demand::BaseStiffness* base : {&post.base.soft, &post.base.stiff}) base->inward = base->outward;
        }
        const auto own = static_cast<std::size_t>(random.between(0.0, 3.999));
        const double before = line_demand_of(line).posts[own].share.value;
        for (std::size_t post = 0; post < 4; ++post) {
            if (post == own) continue;
            const double softer = random.between(0.3, 0.95);
            for (demand::BaseStiffness* base : {&line.posts[post].base.soft, &line.posts[post].base.stiff})
                *base = times(*base, softer);
        }
        CHECK(line_demand_of(line).posts[own].share.value >= before * (1.0 - 1e-4));
    }
}

TEST_CASE("a range widens the share, and says which corner gave it", "[property]") {
    demand::LineInput line = straight_line(3, 60.0, 9e6, 9e6);
    for (demand::LinePost& post : line.posts) post.base.soft = post.base.stiff = {3e5, 3e5, 3e5, 3e5};
    const double fixed = line_demand_of(line).posts[1].share.value;
    for (demand::LinePost& post : line.posts) {
        post.base.soft = {2e5, 2e5, 2e5, 2e5};
        post.base.stiff = {5e5, 5e5, 5e5, 5e5};
    }
    const demand::LineDemand ranged = line_demand_of(line);
    CHECK(ranged.posts[1].share.value > fixed);
    CHECK(ranged.posts[1].share.corner.post == 1U);
    CHECK(ranged.posts[1].share.corner.post_stiff);
    CHECK_FALSE(ranged.posts[1].share.corner.others_stiff);
    CHECK(ranged.frames == 2 + 2 * 3 + 1);  // and the frame of upright loads
    // By hand: two springs in series at each top, k1 of the middle, k of the others; the rail's E I over L^3 beside
    // them.
    const auto top = [](double base) { return 1.0 / (std::pow(42.0, 3) / (3.0 * 9e6) + 42.0 * 42.0 / base); };
    const double beam = 48.0 * 9e6 / std::pow(120.0, 3), side = 1.0 / (1.0 / beam + 1.0 / (2.0 * top(2e5)));
    CHECK_CLOSE(ranged.posts[1].share.value, top(5e5) / (top(5e5) + side), 1e-5, 0.0);
}

TEST_CASE("a stated stiffness of the connections makes neighbors help less", "[property]") {
    demand::LineInput line = straight_line(3, 60.0, 9e6, 9e6);
    const double rigid = line_demand_of(line).posts[1].share.value;
    line.connection_lb_per_in = 400.0;
    CHECK(line_demand_of(line).posts[1].share.value > rigid);
}

TEST_CASE("a long line is solved corner by corner", "[property]") {
    Random random;
    const demand::LineDemand demand = line_demand_of(random_line(random, 10));
    CHECK(demand.frames == 2 + 2 * 10 + 1);
    for (const demand::PostShares& post : demand.posts) {
        CHECK(post.share.value > 0.2);
        CHECK(post.share.value <= 1.0 + 1e-6);
    }
}
