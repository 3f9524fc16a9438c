// Grids of beams against CalculiX's general beam element (see ccx/frame_deck.h): deflections, reactions, forces in
// joints, moments and torques. Both programs have the same section constants and the same theory; what is compared is
// the solving. CalculiX has 1/4 in elements and a node at every load, ours one member from joint to joint.
#include "oracle/frame.h"
#include "support/compare.h"

#include <algorithm>
#include <cmath>

namespace {

using namespace toehold;
using mechanics::GridLoad;
using mechanics::GridMember;
using mechanics::GridMotion;
using mechanics::GridSection;
using mechanics::Grillage;
using mechanics::Point;
using test::Frame;
using test::Station;

constexpr double element_in = 0.25;
constexpr double tolerance = 1e-4;  ///< of the largest of its kind in the frame; what remains is ccx's own, see below
constexpr double moment_tolerance = 1e-4;

struct Largest {
    double lift = 0.0, turn = 0.0;
};

Largest largest(const std::vector<GridMotion>& motions) {
    Largest result;
    for (const GridMotion& m : motions) {
        result.lift = std::max(result.lift, std::abs(m.w_in));
        result.turn = std::max({result.turn, std::abs(m.rx_rad), std::abs(m.ry_rad)});
    }
    return result;
}

void check_motion(const GridMotion& ours, const GridMotion& theirs, const Largest& of) {
    CHECK_CLOSE(ours.w_in, theirs.w_in, 0.0, tolerance * of.lift);
    CHECK_CLOSE(ours.rx_rad, theirs.rx_rad, 0.0, tolerance * of.turn);
    CHECK_CLOSE(ours.ry_rad, theirs.ry_rad, 0.0, tolerance * of.turn);
}

struct Axis {
    double cos = 1.0, sin = 0.0, length = 0.0;
};

Axis axis_of(const Frame& frame, const GridMember& member) {
    const Point a = frame.nodes[static_cast<std::size_t>(member.from)];
    const Point b = frame.nodes[static_cast<std::size_t>(member.to)];
    const double length = std::hypot(b.x - a.x, b.y - a.y);
    return {(b.x - a.x) / length, (b.y - a.y) / length, length};
}

/// A length of a member without a load on it.
struct Stretch {
    int member = 0;
    double from_in = 0.0, to_in = 0.0;
};

/// From each member's ends to the nearest load on it, or half way.
std::vector<Stretch> free_stretches(const Frame& frame) {
    std::vector<Stretch> result;
    for (int index = 0; index < static_cast<int>(frame.members.size()); ++index) {
        const double length = axis_of(frame, frame.members[static_cast<std::size_t>(index)]).length;
        double first = 0.5 * length, last = 0.5 * length;
        for (const mechanics::MemberLoad& load : frame.member_loads) {
            if (load.member != index) continue;
            first = std::min(first, load.at_in);
            last = std::max(last, load.at_in);
        }
        result.push_back({index, 0.0, first});
        result.push_back({index, last, length});
    }
    return result;
}

/// The moment in the middle of a stretch and its torque, from what its ends have turned: exact where no load stands.
GridSection theirs_in(const Frame& frame, const Stretch& stretch, const GridMotion& a, const GridMotion& b) {
    const GridMember& member = frame.members[static_cast<std::size_t>(stretch.member)];
    const Axis axis = axis_of(frame, member);
    const double x = b.rx_rad - a.rx_rad, y = b.ry_rad - a.ry_rad, length = stretch.to_in - stretch.from_in;
    return {0.0, member.bending_lb_in2 * (axis.sin * x - axis.cos * y) / length,
            -member.torsion_lb_in2 * (axis.cos * x + axis.sin * y) / length};
}

GridSection ours_in(const Frame& frame, const mechanics::GridSolution& s, const Stretch& stretch) {
    const mechanics::MemberForces& ends = s.members[static_cast<std::size_t>(stretch.member)];
    const double middle = 0.5 * (stretch.from_in + stretch.to_in);
    if (stretch.from_in == 0.0) {
        return {0.0, ends.at_from.moment_lb_in + ends.at_from.shear_lb * middle, ends.at_from.torque_lb_in};
    }
    const double rest = axis_of(frame, frame.members[static_cast<std::size_t>(stretch.member)]).length - middle;
    return {0.0, ends.at_to.moment_lb_in - ends.at_to.shear_lb * rest, ends.at_to.torque_lb_in};
}

void check_moments(const Frame& frame, const Grillage& grid, const mechanics::GridSolution& s,
                   const std::vector<Stretch>& stretches, const std::vector<GridMotion>& theirs) {
    double moment = 0.0, torque = 0.0;
    for (int index = 0; index < static_cast<int>(frame.members.size()); ++index) {
        const mechanics::GridExtremes most = grid.extremes(s, index, frame.member_loads);
        moment = std::max(moment, most.moment_lb_in);
        torque = std::max(torque, most.torque_lb_in);
    }
    for (std::size_t i = 0; i < stretches.size(); ++i) {
        INFO("member " << stretches[i].member << " from " << stretches[i].from_in << " to " << stretches[i].to_in);
        const GridSection ccx = theirs_in(frame, stretches[i], theirs[2 * i], theirs[2 * i + 1]);
        const GridSection ours = ours_in(frame, s, stretches[i]);
        CHECK_CLOSE(ours.moment_lb_in, ccx.moment_lb_in, 0.0, moment_tolerance * moment);
        CHECK_CLOSE(ours.torque_lb_in, ccx.torque_lb_in, 0.0, moment_tolerance * torque);
    }
}

/// Reactions, and what joints pass on, from the springs' stretch in ccx.
void check_springs(const Frame& frame, const mechanics::GridSolution& s, const std::vector<GridMotion>& theirs) {
    double force = 0.0, moment = 0.0;
    const auto larger = [&](const std::vector<GridLoad>& loads) {
        for (const GridLoad& load : loads) {
            force = std::max(force, std::abs(load.up_lb));
            moment = std::max({moment, std::abs(load.about_x_lb_in), std::abs(load.about_y_lb_in)});
        }
    };
    larger(s.supports);
    larger(s.joints);
    const auto check = [&](const GridLoad& ours, double w, double rx, double ry) {
        CHECK_CLOSE(ours.up_lb, -w, 0.0, tolerance * force);
        CHECK_CLOSE(ours.about_x_lb_in, -rx, 0.0, tolerance * moment);
        CHECK_CLOSE(ours.about_y_lb_in, -ry, 0.0, tolerance * moment);
    };
    for (std::size_t i = 0; i < frame.supports.size(); ++i) {
        INFO("support " << i);
        const mechanics::GridSupport& k = frame.supports[i];
        const GridMotion& m = theirs[static_cast<std::size_t>(k.node)];
        check(s.supports[i], k.vertical_lb_per_in * m.w_in, k.about_x_lb_in * m.rx_rad, k.about_y_lb_in * m.ry_rad);
    }
    for (std::size_t i = 0; i < frame.joints.size(); ++i) {
        INFO("joint " << i);
        const mechanics::GridJoint& k = frame.joints[i];
        const auto lift = [&](int node) {
            const GridMotion& m = theirs[static_cast<std::size_t>(node)];
            const Point at = frame.nodes[static_cast<std::size_t>(node)], place = k.at.value_or(at);
            return m.w_in + m.rx_rad * (place.y - at.y) - m.ry_rad * (place.x - at.x);
        };
        const GridMotion &a = theirs[static_cast<std::size_t>(k.first)],
                         &b = theirs[static_cast<std::size_t>(k.second)];
        check(s.joints[i], k.vertical_lb_per_in * (lift(k.second) - lift(k.first)),
              k.about_x_lb_in * (b.rx_rad - a.rx_rad), k.about_y_lb_in * (b.ry_rad - a.ry_rad));
    }
}

Grillage grid_of(const Frame& frame) { return {frame.nodes, frame.members, frame.joints, frame.supports}; }

void check_agreement(const Frame& frame) {
    const Grillage grid = grid_of(frame);
    const mechanics::GridSolution s = grid.solve(frame.loads, frame.member_loads);
    REQUIRE(s.stable);
    CHECK(s.residual < 1e-9);

    const std::vector<Stretch> stretches = free_stretches(frame);
    std::vector<Station> stations;
    for (const Stretch& stretch : stretches) {
        stations.push_back({stretch.member, stretch.from_in});
        stations.push_back({stretch.member, stretch.to_in});
    }
    const test::FrameSolution ccx = test::solve_frame_with_ccx(frame, stations, element_in);
    const Largest most = largest(ccx.nodes);
    for (std::size_t node = 0; node < frame.nodes.size(); ++node) {
        INFO("node " << node);
        check_motion(s.motions[node], ccx.nodes[node], most);
    }
    for (std::size_t i = 0; i < stations.size(); ++i) {
        INFO("member " << stations[i].member << " at " << stations[i].at_in);
        check_motion(grid.motion_at(s, stations[i].member, stations[i].at_in, frame.member_loads), ccx.stations[i],
                     most);
    }
    check_springs(frame, s, ccx.nodes);
    check_moments(frame, grid, s, stretches, ccx.stations);
}

/// Largest difference of the nodes' lifts.
double apart_in(const Frame& frame, double element) {
    const mechanics::GridSolution s = grid_of(frame).solve(frame.loads, frame.member_loads);
    const test::FrameSolution ccx = test::solve_frame_with_ccx(frame, {}, element);
    double apart = 0.0;
    for (std::size_t i = 0; i < frame.nodes.size(); ++i)
        apart = std::max(apart, std::abs(s.motions[i].w_in - ccx.nodes[i].w_in));
    return apart;
}

/// A cantilever along a direction in plan, loaded at its tip by a force up and a torque about its axis.
Frame cantilever(double angle, double shear_lb) {
    constexpr double length_in = 24.0, still = 1e12;
    Frame frame;
    const double c = std::cos(angle), s = std::sin(angle);
    frame.nodes = {{0, 0}, {length_in * c, length_in * s}};
    frame.members = {{0, 1, 1.4e8, 8e5, shear_lb}};
    frame.supports = {{0, still, still, still}};
    frame.loads = {{1, -100.0, 50.0 * c, 50.0 * s}};
    return frame;
}

}  // namespace

TEST_CASE("the general beam of ccx sinks by P L^3/3 E I and P L/G A_s, and twists by T L/G J",
          "[oracle][closed-form]") {
    for (const double angle : {0.0, 0.7}) {
        for (const double shear_lb : {0.0, 1e6}) {
            const Frame frame = cantilever(angle, shear_lb);
            const GridMotion tip = test::solve_frame_with_ccx(frame, {}, element_in).nodes[1];
            const double sunk = 100.0 * std::pow(24.0, 3) / (3.0 * 1.4e8) + (shear_lb > 0.0 ? 2400.0 / shear_lb : 0.0);
            CHECK_CLOSE(tip.w_in, -sunk, tolerance, 0.0);
            CHECK_CLOSE(std::cos(angle) * tip.rx_rad + std::sin(angle) * tip.ry_rad, 50.0 * 24.0 / 8e5, tolerance, 0.0);
        }
    }
}

TEST_CASE("two beams that cross, loaded inside, agree with ccx", "[oracle]") { check_agreement(test::two_beams()); }

TEST_CASE("joists, rim and blocks under forces and torques agree with ccx", "[oracle]") {
    check_agreement(test::deck_corner());
}

TEST_CASE("what is left between ours and ccx is its elements' shear: half the length, a quarter of it", "[oracle]") {
    for (const Frame& frame : {test::two_beams(), test::deck_corner()}) {
        // The 0.2 is for lengths that do not divide into such elements.
        CHECK_CLOSE(apart_in(frame, 0.5) / apart_in(frame, 0.25), 4.0, 0.0, 0.2);
    }
    Frame frame = test::deck_corner();
    for (GridMember& member : frame.members) member.shear_lb = 0.0;
    CHECK(apart_in(frame, 1.0) < 5e-6 * largest(test::solve_frame_with_ccx(frame, {}, 1.0).nodes).lift);
}
