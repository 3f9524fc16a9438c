#include "demand/framing/member_compliance.h"

#include <Eigen/Dense>

#include <algorithm>
#include <array>

namespace toehold::demand {
namespace {

constexpr double still_lb_per_in = 1e10;
constexpr double still_lb_in = 1e11;

}  // namespace

double clear_of_ends_in(const model::Member& member, double wanted_in) {
    const double clear = std::min(0.5, 0.25 * model::length_in(member));
    return std::clamp(wanted_in, member.from_in + clear, member.to_in - clear);
}

Eigen::MatrixXd member_compliance(const Frame& frame, const std::vector<MemberPlace>& places) {
    std::vector<GridPlace> grid;
    grid.reserve(places.size());
    for (const MemberPlace& place : places) grid.push_back(place_on(frame, place.member, place.along_in));
    const auto size = static_cast<Eigen::Index>(3 * places.size());
    Eigen::MatrixXd result(size, size);
    for (std::size_t loaded = 0; loaded < grid.size(); ++loaded) {
        for (int kind = 0; kind < 3; ++kind) {
            const std::array<mechanics::MemberLoad, 1> load = {
                mechanics::MemberLoad{grid[loaded].beam, grid[loaded].at_in, kind == 0 ? 1.0 : 0.0,
                                      kind == 1 ? 1.0 : 0.0, kind == 2 ? 1.0 : 0.0}};
            const mechanics::GridSolution solution = frame.grillage->solve({}, load);
            const auto column = static_cast<Eigen::Index>(3 * loaded) + kind;
            for (std::size_t moved = 0; moved < grid.size(); ++moved) {
                const mechanics::GridMotion motion =
                    frame.grillage->motion_at(solution, grid[moved].beam, grid[moved].at_in, load);
                result.col(column).segment<3>(static_cast<Eigen::Index>(3 * moved)) << motion.w_in, motion.rx_rad,
                    motion.ry_rad;
            }
        }
    }
    return 0.5 * (result + result.transpose());
}

Eigen::MatrixXd member_stiffness(const Frame& frame, const std::vector<MemberPlace>& places, bool told_apart) {
    Eigen::MatrixXd give = member_compliance(frame, places);
    if (told_apart) {
        Eigen::VectorXd between = Eigen::VectorXd::Constant(give.rows(), 1.0 / still_lb_in);
        for (Eigen::Index lift = 0; lift < give.rows(); lift += 3) between[lift] = 1.0 / still_lb_per_in;
        give.diagonal() += between;
    }
    const Eigen::MatrixXd inverse = give.inverse();
    return 0.5 * (inverse + inverse.transpose());
}

}  // namespace toehold::demand
