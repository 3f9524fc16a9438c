#include "mechanics/grillage/member.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <vector>

namespace toehold::mechanics {
namespace {

/// From (w, rx, ry) to the member's own motions, at both ends. Its transpose is its inverse.
Matrix6 to_member(const MemberAxis& axis) {
    Matrix6 turn = Matrix6::Zero();
    for (const Eigen::Index end : {0, 3}) {
        turn(end, end) = 1.0;
        turn(end + 1, end + 1) = axis.cos;
        turn(end + 1, end + 2) = axis.sin;
        // A small rotation (rx, ry) tilts the plane by w,x = -ry and w,y = rx.
        turn(end + 2, end + 1) = axis.sin;
        turn(end + 2, end + 2) = -axis.cos;
    }
    return turn;
}

/// Give by shear over give by bending: 12 E I / (G A_s L^2).
double shear_part(const GridMember& member, double length) {
    return member.shear_lb > 0.0 ? 12.0 * member.bending_lb_in2 / (member.shear_lb * length * length) : 0.0;
}

/// Timoshenko beam and torsion bar over the own motions of both ends (J. S. Przemieniecki, Theory of Matrix Structural
/// Analysis, 1968, 5.6).
Matrix6 own_stiffness(const GridMember& member, double length) {
    const double shear = shear_part(member, length);
    const double k = member.bending_lb_in2 / (length * length * length * (1.0 + shear));
    const double l2 = length * length;
    Eigen::Matrix4d beam;
    beam << 12.0, 6.0 * length, -12.0, 6.0 * length,                          //
        6.0 * length, (4.0 + shear) * l2, -6.0 * length, (2.0 - shear) * l2,  //
        -12.0, -6.0 * length, 12.0, -6.0 * length,                            //
        6.0 * length, (2.0 - shear) * l2, -6.0 * length, (4.0 + shear) * l2;
    beam *= k;
    constexpr std::array<Eigen::Index, 4> bending = {0, 2, 3, 5};
    Matrix6 stiffness = Matrix6::Zero();
    for (Eigen::Index row = 0; row < 4; ++row) {
        for (Eigen::Index column = 0; column < 4; ++column) {
            stiffness(bending[static_cast<std::size_t>(row)], bending[static_cast<std::size_t>(column)]) =
                beam(row, column);
        }
    }
    const double torsion = member.torsion_lb_in2 / length;
    stiffness(1, 1) = stiffness(4, 4) = torsion;
    stiffness(1, 4) = stiffness(4, 1) = -torsion;
    return stiffness;
}

struct OwnLoad {
    double up_lb = 0.0, torque_lb_in = 0.0;
    double couple_lb_in = 0.0;  ///< turns the slope up
};

OwnLoad own_load(const MemberAxis& axis, const MemberLoad& load) {
    return {load.up_lb, axis.cos * load.about_x_lb_in + axis.sin * load.about_y_lb_in,
            axis.sin * load.about_x_lb_in - axis.cos * load.about_y_lb_in};
}

/// By Betti's theorem the nodes feel a load by the motion that a unit motion of theirs gives its place; the beam's
/// shapes with shear are exact, so this is (in any text the fixed-end actions, with the other sign).
Vector6 own_on_nodes(const PreparedMember& member, const MemberLoad& load) {
    const double length = member.axis.length, x = load.at_in / length, rest = 1.0 - x;
    const double shear = shear_part(member.of, length), all = 1.0 + shear;
    const OwnLoad own = own_load(member.axis, load);
    const double lift = own.up_lb / all, turn = own.couple_lb_in / all;
    Vector6 result;
    result << lift * (rest * rest * (1.0 + 2.0 * x) + shear * rest) - turn * 6.0 * x * rest / length,  //
        own.torque_lb_in * rest,                                                                       //
        lift * length * x * rest * (rest + 0.5 * shear) + turn * rest * (1.0 - 3.0 * x + shear),       //
        lift * (x * x * (3.0 - 2.0 * x) + shear * x) + turn * 6.0 * x * rest / length,                 //
        own.torque_lb_in * x,                                                                          //
        -lift * length * x * rest * (x + 0.5 * shear) + turn * x * (3.0 * x - 2.0 + shear);
    return result;
}

}  // namespace

MemberAxis axis_of(Point from, Point to) {
    const double length = std::hypot(to.x - from.x, to.y - from.y);
    return {(to.x - from.x) / length, (to.y - from.y) / length, length};
}

PreparedMember prepare_member(std::span<const Point> nodes, const GridMember& member) {
    const MemberAxis axis =
        axis_of(nodes[static_cast<std::size_t>(member.from)], nodes[static_cast<std::size_t>(member.to)]);
    const Matrix6 turn = to_member(axis);
    const Matrix6 own_forces = own_stiffness(member, axis.length) * turn;
    return {member, axis, own_forces, turn.transpose() * own_forces};
}

std::array<Eigen::Index, 6> freedoms(int from, int to) {
    const Eigen::Index a = 3 * static_cast<Eigen::Index>(from), b = 3 * static_cast<Eigen::Index>(to);
    return {a, a + 1, a + 2, b, b + 1, b + 2};
}

Vector6 on_nodes(const PreparedMember& member, const MemberLoad& load) {
    return to_member(member.axis).transpose() * own_on_nodes(member, load);
}

MemberForces forces_at_ends(const PreparedMember& member, int index, const Vector6& motion,
                            std::span<const MemberLoad> loads) {
    // What the nodes put on the member: (up, torque about its axis, couple that turns its slope up).
    Vector6 end = member.own_forces * motion;
    for (const MemberLoad& load : loads)
        if (load.member == index) end -= own_on_nodes(member, load);
    return {{end(0), -end(2), end(1)}, {-end(3), end(5), -end(4)}};
}

GridSection section_at(const PreparedMember& member, int index, const GridSection& at_from, double at_in, Side side,
                       std::span<const MemberLoad> loads) {
    GridSection cut = at_from;
    cut.moment_lb_in += at_from.shear_lb * at_in;
    for (const MemberLoad& load : loads) {
        if (load.member != index || load.at_in > at_in || (load.at_in == at_in && side == Side::before_load)) continue;
        const OwnLoad own = own_load(member.axis, load);
        cut.shear_lb += own.up_lb;
        cut.moment_lb_in += own.up_lb * (at_in - load.at_in) - own.couple_lb_in;
        cut.torque_lb_in += own.torque_lb_in;
    }
    return cut;
}

GridMotion motion_inside(const PreparedMember& member, int index, const GridMotion& from, const GridSection& at_from,
                         double at_in, std::span<const MemberLoad> loads) {
    const MemberAxis& axis = member.axis;
    double w = from.w_in;
    double twist = axis.cos * from.rx_rad + axis.sin * from.ry_rad;
    double slope = axis.sin * from.rx_rad - axis.cos * from.ry_rad;
    w += slope * at_in;
    // The section changes by these at a distance `past` behind `at_in`; each of them bends, shears and twists the rest.
    const auto bend = [&](const GridSection& change, double past) {
        const double bending = member.of.bending_lb_in2;
        w += past * past * (0.5 * change.moment_lb_in + past * change.shear_lb / 6.0) / bending;
        if (member.of.shear_lb > 0.0) w -= past * change.shear_lb / member.of.shear_lb;
        slope += past * (change.moment_lb_in + 0.5 * past * change.shear_lb) / bending;
        twist -= past * change.torque_lb_in / member.of.torsion_lb_in2;
    };
    bend(at_from, at_in);
    for (const MemberLoad& load : loads) {
        if (load.member != index || load.at_in >= at_in) continue;
        const OwnLoad own = own_load(axis, load);
        bend({own.up_lb, -own.couple_lb_in, own.torque_lb_in}, at_in - load.at_in);
    }
    return {w, axis.cos * twist + axis.sin * slope, axis.sin * twist - axis.cos * slope};
}

GridExtremes extremes_of(const PreparedMember& member, int index, const GridSection& at_from,
                         std::span<const MemberLoad> loads) {
    std::vector<MemberLoad> in_order;
    std::copy_if(loads.begin(), loads.end(), std::back_inserter(in_order),
                 [index](const MemberLoad& load) { return load.member == index; });
    const auto nearer = [](const MemberLoad& a, const MemberLoad& b) { return a.at_in < b.at_in; };
    if (!std::is_sorted(in_order.begin(), in_order.end(), nearer))
        std::stable_sort(in_order.begin(), in_order.end(), nearer);
    // The moment runs straight between loads, the rest is even: the largest stand beside loads and at the ends.
    // Loads this near act at one place: what passes between them is of rounding, and none of theirs alone. One at an
    // end stands on the node there: nothing of the member lies between the two.
    constexpr double same_place_in = 1e-6;
    const auto within = [&](double at_in) {
        return at_in > same_place_in && at_in < member.axis.length - same_place_in;
    };
    GridExtremes most;
    GridSection cut = at_from;
    double reached = 0.0;
    const auto look = [&] {
        most.shear_lb = std::max(most.shear_lb, std::abs(cut.shear_lb));
        most.moment_lb_in = std::max(most.moment_lb_in, std::abs(cut.moment_lb_in));
        most.torque_lb_in = std::max(most.torque_lb_in, std::abs(cut.torque_lb_in));
    };
    const auto go_to = [&](double at_in) {
        cut.moment_lb_in += cut.shear_lb * (at_in - reached);
        reached = at_in;
        if (at_in > same_place_in) look();
    };
    if (in_order.empty() || in_order.front().at_in > same_place_in) look();
    for (std::size_t i = 0; i < in_order.size(); ++i) {
        const MemberLoad& load = in_order[i];
        if (i == 0 || load.at_in > reached + same_place_in) go_to(load.at_in);
        const OwnLoad own = own_load(member.axis, load);
        cut.shear_lb += own.up_lb;
        cut.moment_lb_in -= own.couple_lb_in;
        cut.torque_lb_in += own.torque_lb_in;
        const bool last_here = i + 1 == in_order.size() || in_order[i + 1].at_in > reached + same_place_in;
        if (last_here && (within(reached) || reached <= same_place_in)) look();
    }
    if (reached < member.axis.length - same_place_in) go_to(member.axis.length);
    return most;
}

}  // namespace toehold::mechanics
