#include "mechanics/space_frame/beam.h"

#include <Eigen/Geometry>

namespace toehold::mechanics::space_frame {
namespace {

/// Length, square and cube that a force at a distance acts by: p, p^2/2, p^3/6; a line load's are one integral further.
struct Reach {
    double first = 0.0, second = 0.0, third = 0.0;
};
Reach of_point(double past) { return {past, past * past / 2.0, past * past * past / 6.0}; }
Reach of_line(double past) {
    const double square = past * past;
    return {square / 2.0, square * past / 6.0, square * square / 24.0};
}

/// Moves the beam's end by what a force that enters the section does over its reach: it stretches, shears, and bends by
/// the moments M_y' = V_z and M_z' = -V_y. Signs: E I_z theta_z' = M_z, v' = theta_z, w' = -theta_y.
void add_force(const SpaceMember& of, const Vector3& force, const Reach& reach, Vector6& motion) {
    motion(0) += force.x() * reach.first / of.axial_lb;
    motion(1) -= force.y() * reach.third / of.bending_z_lb_in2;
    motion(2) -= force.z() * reach.third / of.bending_y_lb_in2;
    motion(4) += force.z() * reach.second / of.bending_y_lb_in2;
    motion(5) -= force.y() * reach.second / of.bending_z_lb_in2;
    if (of.shear_y_lb > 0.0) motion(1) += force.y() * reach.first / of.shear_y_lb;
    if (of.shear_z_lb > 0.0) motion(2) += force.z() * reach.first / of.shear_z_lb;
}

void add_couple(const SpaceMember& of, const Vector3& couple, double past, Vector6& motion) {
    motion(3) += couple.x() * past / of.torsion_lb_in2;
    motion(4) += couple.y() * past / of.bending_y_lb_in2;
    motion(5) += couple.z() * past / of.bending_z_lb_in2;
    motion(1) += couple.z() * past * past / (2.0 * of.bending_z_lb_in2);
    motion(2) -= couple.y() * past * past / (2.0 * of.bending_y_lb_in2);
}

void add_load(const SpaceMember& of, const AlongLoad& load, double at_in, Vector6& motion) {
    if (load.from_in >= at_in) return;
    if (!load.line) {
        add_force(of, -load.force, of_point(at_in - load.from_in), motion);
        add_couple(of, -load.couple, at_in - load.from_in, motion);
        return;
    }
    add_force(of, -load.force, of_line(at_in - load.from_in), motion);
    if (at_in > load.to_in) add_force(of, load.force, of_line(at_in - load.to_in), motion);
}

/// In the member's axes, from the motion at the beginning on.
Vector6 own_motion(const SpaceMember& of, int index, const Vector6& from, const Vector6& at_from, double at_in,
                   std::span<const AlongLoad> loads) {
    Vector6 motion = carried({at_in, 0.0, 0.0}) * from;
    add_force(of, at_from.head<3>(), of_point(at_in), motion);
    add_couple(of, at_from.tail<3>(), at_in, motion);
    for (const AlongLoad& load : loads)
        if (load.member == index) add_load(of, load, at_in, motion);
    return motion;
}

/// Force and moment about the beam's beginning.
Vector6 resultant(const AlongLoad& load) {
    const double span = load.line ? load.to_in - load.from_in : 1.0;
    const double middle = load.line ? 0.5 * (load.from_in + load.to_in) : load.from_in;
    Vector6 result;
    result.head<3>() = span * load.force;
    result.tail<3>() = load.couple + Vector3(middle, 0.0, 0.0).cross(span * load.force);
    return result;
}

/// Where the load would take the end of the beam held at its beginning alone.
Vector6 tip_motion(const PreparedBeam& beam, const AlongLoad& load) {
    return own_motion(beam.of, load.member, Vector6::Zero(), resultant(load), beam.length, {&load, 1});
}

/// The inverse of the tip's flexibility (J. S. Przemieniecki, Theory of Matrix Structural Analysis, 1968, 5.6).
/// `move`, `turn`: the freedoms that bend; `sense` of the motion that a positive rotation brings.
void add_bending(double bending, double shear, double length, Eigen::Index move, Eigen::Index turn, double sense,
                 Matrix6& stiffness) {
    const double give = shear > 0.0 ? 12.0 * bending / (shear * length * length) : 0.0;
    const double k = bending / (length * (1.0 + give));
    stiffness(move, move) = 12.0 * k / (length * length);
    stiffness(move, turn) = stiffness(turn, move) = -sense * 6.0 * k / length;
    stiffness(turn, turn) = (4.0 + give) * k;
}

Matrix6 tip_stiffness(const SpaceMember& of, double length) {
    Matrix6 stiffness = Matrix6::Zero();
    stiffness(0, 0) = of.axial_lb / length;
    stiffness(3, 3) = of.torsion_lb_in2 / length;
    add_bending(of.bending_z_lb_in2, of.shear_y_lb, length, 1, 5, 1.0, stiffness);
    add_bending(of.bending_y_lb_in2, of.shear_z_lb, length, 2, 4, -1.0, stiffness);
    return stiffness;
}

}  // namespace

Vector6 six(const SpaceForce& force) {
    Vector6 result;
    result << eigen(force.force_lb), eigen(force.couple_lb_in);
    return result;
}

SpaceForce as_force(const Vector6& six) { return {plain(six.head<3>()), plain(six.tail<3>())}; }

Matrix3 rows_of(const SpaceAxes& axes) {
    const Vector3 x = eigen(axes.x).normalized();
    const Vector3 z = x.cross(eigen(axes.y)).normalized();
    Matrix3 rows;
    rows << x.transpose(), z.cross(x).transpose(), z.transpose();
    return rows;
}

Matrix6 twice(const Matrix3& rows) {
    Matrix6 result = Matrix6::Zero();
    result.topLeftCorner<3, 3>() = result.bottomRightCorner<3, 3>() = rows;
    return result;
}

Matrix6 carried(const Vector3& arm) {
    Matrix6 result = Matrix6::Identity();
    // The far place moves by turn cross arm.
    result.topRightCorner<3, 3>() << 0.0, arm.z(), -arm.y(),  //
        -arm.z(), 0.0, arm.x(),                               //
        arm.y(), -arm.x(), 0.0;
    return result;
}

PreparedBeam prepare_beam(std::span<const SpaceVector> nodes, const SpaceMember& member) {
    const Vector3 along =
        eigen(nodes[static_cast<std::size_t>(member.to)] - nodes[static_cast<std::size_t>(member.from)]);
    PreparedBeam beam;
    beam.of = member;
    beam.length = along.norm();
    const Vector3 x = along / beam.length, y = eigen(member.toward_z).cross(x).normalized();
    beam.axes << x.transpose(), y.transpose(), x.cross(y).transpose();
    beam.tip_stiffness = tip_stiffness(member, beam.length);
    beam.carry = carried({beam.length, 0.0, 0.0});
    const Matrix6 to_own = twice(beam.axes), carry = beam.carry * to_own;
    beam.to_to = to_own.transpose() * beam.tip_stiffness * to_own;
    beam.from_to = -carry.transpose() * beam.tip_stiffness * to_own;
    beam.from_from = carry.transpose() * beam.tip_stiffness * carry;
    return beam;
}

OnNodes on_nodes(const PreparedBeam& beam, const AlongLoad& load) {
    const Vector6 to = beam.tip_stiffness * tip_motion(beam, load);
    const Matrix6 to_frame = twice(beam.axes).transpose();
    return {to_frame * (resultant(load) - beam.carry.transpose() * to), to_frame * to};
}

SpaceMemberForces forces_at_ends(const PreparedBeam& beam, int index, const Vector6& from, const Vector6& to,
                                 std::span<const AlongLoad> loads) {
    const Matrix6 to_own = twice(beam.axes);
    Vector6 stretch = to_own * to - beam.carry * (to_own * from), loaded = Vector6::Zero();
    for (const AlongLoad& load : loads) {
        if (load.member != index) continue;
        stretch -= tip_motion(beam, load);
        loaded += resultant(load);
    }
    const Vector6 at_to = beam.tip_stiffness * stretch;
    return {as_force(beam.carry.transpose() * at_to + loaded), as_force(at_to)};
}

Vector6 motion_inside(const PreparedBeam& beam, int index, const Vector6& from, const Vector6& at_from, double at_in,
                      std::span<const AlongLoad> loads) {
    const Matrix6 to_own = twice(beam.axes);
    return to_own.transpose() * own_motion(beam.of, index, to_own * from, at_from, at_in, loads);
}

}  // namespace toehold::mechanics::space_frame
