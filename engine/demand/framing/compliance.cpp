#include "demand/framing/compliance.h"

#include "catalog/resolve.h"
#include "demand/framing/frame.h"
#include "model/placement.h"

#include <Eigen/Dense>

#include <algorithm>
#include <array>

namespace toehold::demand {
namespace {

constexpr double still_lb_per_in = 1e10;
constexpr double still_lb_in = 1e11;

struct Place {
    std::size_t support = 0;
    std::size_t member = 0;
    GridPlace grid;
};

mechanics::Point plan_point(const model::Member& member, double along_in) {
    return member.along == model::PlanAxis::x ? mechanics::Point{along_in, member.across_in}
                                              : mechanics::Point{member.across_in, along_in};
}

/// The middle of the support's patch along the member.
double middle_in(const model::Member& member, const Support& support) {
    double sum = 0.0;
    for (const model::Position corner : support.outline) sum += model::coordinate_in(corner, member.along);
    return sum / static_cast<double>(std::max<std::size_t>(support.outline.size(), 1));
}

/// The post's place along the member, or that of the piece of packing; kept clear of both ends.
double station_in(const model::Member& member, const Support& support) {
    const double clear = std::min(0.5, 0.25 * model::length_in(member));
    const double wanted_in = support.packing ? middle_in(member, support) : 0.0;
    return std::clamp(wanted_in, member.from_in + clear, member.to_in - clear);
}

/// Motions (lift, tilt_x, tilt_y) of every place from a unit force and unit couples at each.
Eigen::MatrixXd compliance(const Frame& frame, const std::vector<Place>& places) {
    const auto size = static_cast<Eigen::Index>(3 * places.size());
    Eigen::MatrixXd result(size, size);
    for (std::size_t loaded = 0; loaded < places.size(); ++loaded) {
        for (int kind = 0; kind < 3; ++kind) {
            const GridPlace& at = places[loaded].grid;
            const std::array<mechanics::MemberLoad, 1> load = {mechanics::MemberLoad{
                at.beam, at.at_in, kind == 0 ? 1.0 : 0.0, kind == 1 ? 1.0 : 0.0, kind == 2 ? 1.0 : 0.0}};
            const mechanics::GridSolution solution = frame.grillage->solve({}, load);
            const auto column = static_cast<Eigen::Index>(3 * loaded) + kind;
            for (std::size_t moved = 0; moved < places.size(); ++moved) {
                const mechanics::GridMotion motion =
                    frame.grillage->motion_at(solution, places[moved].grid.beam, places[moved].grid.at_in, load);
                result.col(column).segment<3>(static_cast<Eigen::Index>(3 * moved)) << motion.w_in, motion.rx_rad,
                    motion.ry_rad;
            }
        }
    }
    return 0.5 * (result + result.transpose());
}

}  // namespace

std::optional<mechanics::CompliantSupports> framing_compliance(const catalog::Resolved& resolved, const Bed& bed) {
    const Frame frame = make_frame(resolved);
    mechanics::CompliantSupports framing;
    std::vector<Place> places;
    const auto size = static_cast<Eigen::Index>(3 * bed.supports.size());
    Eigen::MatrixXd stiffness = Eigen::MatrixXd::Zero(size, size);
    for (std::size_t index = 0; index < bed.supports.size(); ++index) {
        const Support& support = bed.supports[index];
        framing.places.emplace_back();
        if (support.kind != SupportKind::member || !frame.holds_member(support.member)) {
            stiffness.diagonal().segment<3>(static_cast<Eigen::Index>(3 * index)) << still_lb_per_in, still_lb_in,
                still_lb_in;
            continue;
        }
        const model::Member& member = frame.members[support.member];
        const double at_in = station_in(member, support);
        framing.places.back() = plan_point(member, at_in);
        places.push_back({index, support.member, place_on(frame, support.member, at_in)});
    }
    if (places.empty() || !frame.grillage->stable()) return std::nullopt;
    // Two pieces of packing at one station of a member move alike there. What lies between each and the member, as
    // stiff as what does not move, tells them apart and changes nothing else.
    const auto freedoms = static_cast<Eigen::Index>(3 * places.size());
    Eigen::VectorXd between = Eigen::VectorXd::Constant(freedoms, 1.0 / still_lb_in);
    for (Eigen::Index lift = 0; lift < freedoms; lift += 3) between[lift] = 1.0 / still_lb_per_in;
    Eigen::MatrixXd give = compliance(frame, places);
    if (std::any_of(bed.supports.begin(), bed.supports.end(), [](const Support& support) { return support.packing; }))
        give.diagonal() += between;
    const Eigen::MatrixXd inverse = give.inverse();
    const Eigen::MatrixXd symmetric = 0.5 * (inverse + inverse.transpose());
    for (std::size_t a = 0; a < places.size(); ++a) {
        for (std::size_t b = 0; b < places.size(); ++b) {
            stiffness.block<3, 3>(static_cast<Eigen::Index>(3 * places[a].support),
                                  static_cast<Eigen::Index>(3 * places[b].support)) =
                symmetric.block<3, 3>(static_cast<Eigen::Index>(3 * a), static_cast<Eigen::Index>(3 * b));
        }
    }
    framing.stiffness.assign(stiffness.data(), stiffness.data() + stiffness.size());
    return framing;
}

}  // namespace toehold::demand
