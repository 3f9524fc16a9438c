// A post on the side of a member, pushed square to the face, against the general-purpose program CalculiX: the post of
// quadratic solids, one-sided springs to the ground for bolts and bed. Keywords after its manual, version 2.20; what
// one must know of its springs stands in ccx/deck.cpp and ccx/deck.h.
#include "mechanics/side_post/side_post.h"
#include "oracle/ccx/deck.h"
#include "oracle/ccx/run.h"
#include "oracle/ccx/writer.h"
#include "support/compare.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace {

using namespace toehold::mechanics;
using toehold::test::load_in_deck;

// Without Poisson's effect and without motion along x the solids are a beam that shears, 5/6 of its area.
constexpr double modulus = 1.4e6, side_in = 3.5, top_in = 46.25;

struct SidePostSpring {
    std::size_t level = 0;
    double stiffness_lb_per_in = 0.0, sign = 1.0, gap_in = 0.0;  ///< sign > 0: pulls
};

/// Levels of the column: steps of 0.2 in along the overlap, of 1 in above it.
std::vector<double> levels_of(const SidePost& post) {
    std::vector<double> marks{post.bearings[0].z_min_in, post.bearings[0].z_max_in, top_in};
    for (const PostFastener& fastener : post.fasteners) marks.push_back(fastener.z_in);
    std::sort(marks.begin(), marks.end());
    std::vector<double> levels{marks.front()};
    for (std::size_t i = 1; i < marks.size(); ++i) {
        const double from = marks[i - 1], span = marks[i] - from;
        const int pieces = std::max(1, static_cast<int>(std::ceil(span / (marks[i] > 9.25 ? 1.0 : 0.2))));
        for (int k = 1; k <= pieces; ++k) levels.push_back(from + span * k / pieces);
    }
    return levels;
}

/// Bolts, then the bed as a spring at each level of the overlap.
std::vector<SidePostSpring> springs_of(const SidePost& post, const std::vector<double>& levels) {
    std::vector<SidePostSpring> springs;
    for (const PostFastener& fastener : post.fasteners) {
        const auto at = std::find_if(levels.begin(), levels.end(),
                                     [&](double level) { return std::abs(level - fastener.z_in) < 1e-9; });
        springs.push_back(
            {static_cast<std::size_t>(at - levels.begin()), fastener.tension_lb_per_in, 1.0, fastener.gap_in});
    }
    const PostBearing& bed = post.bearings[0];
    for (std::size_t i = 0; i < levels.size() && levels[i] <= bed.z_max_in + 1e-9; ++i) {
        const double below = i > 0 ? levels[i] - levels[i - 1] : 0.0;
        const double above = levels[i] < bed.z_max_in - 1e-9 ? levels[i + 1] - levels[i] : 0.0;
        springs.push_back({i, 0.5 * (below + above) * side_in * bed.stiffness_psi_per_in, -1.0, bed.gap_in});
    }
    return springs;
}

constexpr std::size_t nodes_a_level = 12;
/// At mid-depth, on the sides x = 0 and x = side: where springs and push act.
std::array<std::size_t, 2> axis_nodes(std::size_t level) {
    return {nodes_a_level * level + 8, nodes_a_level * level + 6};
}

/// Corners 1 to 4 round the section, 5 to 8 amid its sides, 9 to 12 amid the upright edges above the level.
void write_column(toehold::test::Writer& out, const std::vector<double>& levels) {
    constexpr std::array<double, 8> x{0, 1, 1, 0, 0.5, 1, 0.5, 0}, y{0, 0, 1, 1, 0, 0.5, 1, 0.5};
    out.line("*NODE,NSET=POST");
    for (std::size_t i = 0; i < levels.size(); ++i) {
        const std::size_t first = nodes_a_level * i;
        for (std::size_t k = 0; k < 8; ++k)
            out.line("{},{:.10e},{:.10e},{:.10e}", first + k + 1, side_in * x[k], side_in * y[k], levels[i]);
        if (i + 1 == levels.size()) break;
        for (std::size_t k = 0; k < 4; ++k)
            out.line("{},{:.10e},{:.10e},{:.10e}", first + k + 9, side_in * x[k], side_in * y[k],
                     0.5 * (levels[i] + levels[i + 1]));
    }
    out.line("*ELEMENT,TYPE=C3D20,ELSET=WOOD");
    for (std::size_t i = 0; i + 1 < levels.size(); ++i) {
        const std::size_t a = nodes_a_level * i, b = a + nodes_a_level;
        out.line("{},{},{},{},{},{},{},{},{},{},{},{},{},{},{},{},\n{},{},{},{},{}", i + 1, a + 1, a + 2, a + 3, a + 4,
                 b + 1, b + 2, b + 3, b + 4, a + 5, a + 6, a + 7, a + 8, b + 5, b + 6, b + 7, b + 8, a + 9, a + 10,
                 a + 11, a + 12);
    }
    out.line("*MATERIAL,NAME=WOOD\n*ELASTIC\n{:.10e},0.\n*SOLID SECTION,ELSET=WOOD,MATERIAL=WOOD", modulus);
    out.line("*BOUNDARY\nPOST,1,1\n{},3,3\n{},3,3", axis_nodes(0)[0], axis_nodes(0)[1]);
}

/// Each spring as two halves, one on each side, to ground nodes of their own.
void write_springs(toehold::test::Writer& out, const std::vector<double>& levels,
                   const std::vector<SidePostSpring>& springs) {
    constexpr double reach_in = 1.0, early_in = 1e-12;
    std::size_t ground = nodes_a_level * levels.size() + 1, element = levels.size() + 1, kind = 0;
    for (const SidePostSpring& spring : springs) {
        out.line("*NODE\n{},0.,{:.10e},{:.10e}\n{},{:.10e},{:.10e},{:.10e}\n*BOUNDARY\n{},1,3\n{},1,3", ground,
                 0.5 * side_in - 1.0, levels[spring.level], ground + 1, side_in, 0.5 * side_in - 1.0,
                 levels[spring.level], ground, ground + 1);
        out.line("*ELEMENT,TYPE=SPRINGA,ELSET=S{}", ++kind);
        for (const std::size_t node : axis_nodes(spring.level)) out.line("{},{},{}", element++, ground++, node);
        const double start = early_in - load_in_deck * spring.gap_in;
        const double most = 0.5 * spring.stiffness_lb_per_in * (reach_in + start);
        out.line("*SPRING,ELSET=S{},NONLINEAR", kind);
        if (spring.sign < 0.0) {
            out.line("{:.12e},{:.12e}\n0.,{:.12e}\n0.,{:.12e}", -most, -reach_in, start, reach_in);
        } else {
            out.line("0.,{:.12e}\n0.,{:.12e}\n{:.12e},{:.12e}", -reach_in, -start, most, reach_in);
        }
    }
}

struct SolidPost {
    std::vector<double> force_lb;  ///< of each spring
    double top_in = 0.0;
};

SolidPost solve_as_solid(const SidePost& post, double push_lb) {
    const std::vector<double> levels = levels_of(post);
    const std::vector<SidePostSpring> springs = springs_of(post, levels);
    toehold::test::Writer out;
    write_column(out, levels);
    write_springs(out, levels, springs);
    out.line("*STEP,NLGEOM,INC=100\n*STATIC\n1.,1.");
    out.line("*CONTROLS,PARAMETERS=TIME INCREMENTATION\n40,60,9,100,10,4,,40\n.25,.5,.75,.85,,,1.5");
    out.line("*CONTROLS,PARAMETERS=FIELD\n1.e-7,1.e-4,,,1.e-7");
    const std::size_t top = levels.size() - 1;
    out.line("*CLOAD\n{},2,{:.10e}\n{},2,{:.10e}", axis_nodes(top)[0], 0.5 * load_in_deck * push_lb, axis_nodes(top)[1],
             0.5 * load_in_deck * push_lb);
    out.line("*NODE PRINT,NSET=POST\nU\n*END STEP");
    const toehold::test::CcxRun run = toehold::test::run_ccx(out.take());
    const auto moved_in = [&](std::size_t level) {
        return run.displacements.at(axis_nodes(level)[0])[1] / load_in_deck;
    };
    SolidPost found;
    for (const SidePostSpring& spring : springs)
        found.force_lb.push_back(spring.stiffness_lb_per_in *
                                 std::max(0.0, spring.sign * moved_in(spring.level) - spring.gap_in));
    found.top_in = moved_in(top);
    return found;
}

/// A nominal 4x4 on a rim 9.25 in deep. One bolt alone holds it up, so that none of them turns it.
SidePost wood_post(const std::vector<double>& bolts_in) {
    SidePost post;
    post.axis_y_in = 0.5 * side_in;
    const double area = side_in * side_in, inertia = area * area / 12.0;
    post.section = {modulus * inertia, modulus * inertia, 2e6, modulus * area, 0.0, 5.0 / 6.0 * 0.5 * modulus * area};
    post.bearings = {{-0.5 * side_in, 0.5 * side_in, 0.0, 9.25, 2e4}};
    for (const double z : bolts_in) post.fasteners.push_back({0.0, z, 3e4, 0.0, 2e4, z == bolts_in[0] ? 2e4 : 0.0});
    return post;
}

void check_against_solid(const SidePost& post, double push_lb) {
    const std::vector<PostLoad> loads{{{0.0, post.axis_y_in, top_in}, {0.0, push_lb, 0.0}, {}}};
    const SidePostSolution found = solve_side_post(post, loads);
    REQUIRE(found.status == SolveStatus::solved);
    const SolidPost solid = solve_as_solid(post, push_lb);
    double bed = 0.0, largest = 0.0;
    for (std::size_t i = post.fasteners.size(); i < solid.force_lb.size(); ++i) bed += solid.force_lb[i];
    for (const PostFastenerForce& force : found.fasteners) largest = std::max(largest, force.tension_lb);
    for (std::size_t i = 0; i < post.fasteners.size(); ++i)
        CHECK_CLOSE(found.fasteners[i].tension_lb, solid.force_lb[i], 0.0, 0.01 * largest);
    CHECK_CLOSE(found.bearings[0].force_lb, bed, 0.01, 0.0);
    CHECK_CLOSE(found.at_loads[0].moved_in.y, solid.top_in, 0.01, 0.0);
}

}  // namespace

TEST_CASE("A post on the side of a rim, pushed outward, is that of solids and one-sided springs within 1 %",
          "[oracle]") {
    check_against_solid(wood_post({2.0, 7.25}), 200.0);
}

TEST_CASE("A post on the side of a rim, pushed inward, is that of solids within 1 %", "[oracle]") {
    check_against_solid(wood_post({2.0, 7.25}), -200.0);
}

TEST_CASE("A post whose upper bolt has play is that of solids within 1 %", "[oracle]") {
    SidePost post = wood_post({2.0, 7.25});
    post.fasteners[1].gap_in = 0.03;
    check_against_solid(post, 200.0);
}

TEST_CASE("A post on three bolts and a stiff bed is that of solids within 1 %", "[oracle]") {
    SidePost post = wood_post({1.5, 4.5, 7.75});
    post.bearings[0].stiffness_psi_per_in = 6e4;
    check_against_solid(post, 200.0);
}
