#include "demand/framing.h"

#include "mechanics/framing/grillage.h"
#include "resistance/wood/member_strength.h"

#include <Eigen/Dense>

#include <algorithm>
#include <array>
#include <cmath>

namespace toehold::demand {
namespace {

// Shear over bending modulus of sawn lumber: one sixteenth, common practice.
constexpr double shear_over_modulus = 1.0 / 16.0;
constexpr double shear_area_part = 5.0 / 6.0;  // rectangle
constexpr double still_lb_per_in = 1e10;
constexpr double still_lb_in = 1e11;

/// Distance of the post from the block's lower end, kept clear of both ends.
double place_along_in(const model::Block& block) {
    const double length = block.to_in - block.from_in;
    const double clear = std::min(0.5, 0.25 * length);
    return std::clamp(-block.from_in, clear, length - clear);
}

mechanics::Point plan_point(const model::Block& block, double along_in) {
    return block.along == model::PlanAxis::x ? mechanics::Point{along_in, block.across_in}
                                             : mechanics::Point{block.across_in, along_in};
}

mechanics::GridMember member(const model::Block& block, double modulus_psi) {
    const double shear_modulus = shear_over_modulus * modulus_psi;
    const double area = block.width_in * block.depth_in;
    return {0, 1, modulus_psi * area * block.depth_in * block.depth_in / 12.0,
            shear_modulus * resistance::torsion_constant_in4(block.width_in, block.depth_in),
            shear_area_part * shear_modulus * area};
}

mechanics::GridSupport end_support(const model::Block& block, int node) {
    const bool along_x = block.along == model::PlanAxis::x;
    return {node, still_lb_per_in, along_x ? still_lb_in : 0.0, along_x ? 0.0 : still_lb_in};
}

/// Motions (lift, tilt_x, tilt_y) at the place from a unit force and unit couples there.
Eigen::Matrix3d compliance(const model::Block& block, double modulus_psi) {
    const double at = place_along_in(block);
    const std::array<mechanics::Point, 3> nodes = {
        plan_point(block, block.from_in), plan_point(block, block.from_in + at), plan_point(block, block.to_in)};
    mechanics::GridMember first = member(block, modulus_psi), second = first;
    second.from = 1;
    second.to = 2;
    const std::array<mechanics::GridMember, 2> members = {first, second};
    const std::array<mechanics::GridSupport, 2> supports = {end_support(block, 0), end_support(block, 2)};
    Eigen::Matrix3d result;
    for (Eigen::Index i = 0; i < 3; ++i) {
        const std::array<mechanics::GridLoad, 1> load = {
            mechanics::GridLoad{1, i == 0 ? 1.0 : 0.0, i == 1 ? 1.0 : 0.0, i == 2 ? 1.0 : 0.0}};
        const mechanics::GridSolution solution = mechanics::solve_grillage(nodes, members, {}, supports, load);
        const mechanics::GridMotion& motion = solution.motions.at(1);
        result.col(i) << motion.w_in, motion.rx_rad, motion.ry_rad;
    }
    return 0.5 * (result + result.transpose());
}

}  // namespace

std::optional<mechanics::GivingFraming> giving_framing(const catalog::Resolved& resolved, const Bed& bed) {
    const auto size = static_cast<Eigen::Index>(3 * bed.supports.size());
    Eigen::MatrixXd stiffness = Eigen::MatrixXd::Zero(size, size);
    mechanics::GivingFraming framing;
    bool gives = false;
    for (const Support& support : bed.supports) {
        const auto first = static_cast<Eigen::Index>(3 * framing.places.size());
        if (support.kind != SupportKind::member || support.member >= resolved.blocks.size()) {
            framing.places.emplace_back();
            stiffness.diagonal().segment<3>(first) << still_lb_per_in, still_lb_in, still_lb_in;
            continue;
        }
        gives = true;
        const model::Block& block = resolved.detail.framing.blocks.at(support.member);
        framing.places.push_back(plan_point(block, block.from_in + place_along_in(block)));
        const Eigen::Matrix3d inverse =
            compliance(block, resolved.blocks.at(support.member).grade.modulus_psi).inverse();
        stiffness.block<3, 3>(first, first) = 0.5 * (inverse + inverse.transpose());
    }
    if (!gives) return std::nullopt;
    framing.stiffness.assign(stiffness.data(), stiffness.data() + stiffness.size());
    return framing;
}

}  // namespace toehold::demand
