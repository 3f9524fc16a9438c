#include "demand/framing/compliance.h"

#include "catalog/resolve.h"
#include "demand/framing/frame.h"
#include "demand/framing/member_compliance.h"
#include "model/placement.h"

#include <Eigen/Dense>

#include <algorithm>

namespace toehold::demand {
namespace {

constexpr double still_lb_per_in = 1e10;
constexpr double still_lb_in = 1e11;

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
    return clear_of_ends_in(member, support.packing ? middle_in(member, support) : 0.0);
}

}  // namespace

std::optional<mechanics::CompliantSupports> framing_compliance(const catalog::Resolved& resolved, const Bed& bed) {
    const Frame frame = make_frame(resolved);
    mechanics::CompliantSupports framing;
    std::vector<MemberPlace> places;
    std::vector<std::size_t> support_of;
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
        places.push_back({support.member, at_in});
        support_of.push_back(index);
    }
    if (places.empty() || !frame.grillage->stable()) return std::nullopt;
    // Two pieces of packing at one station of a member move alike there.
    const bool packed =
        std::any_of(bed.supports.begin(), bed.supports.end(), [](const Support& support) { return support.packing; });
    const Eigen::MatrixXd symmetric = member_stiffness(frame, places, packed);
    for (std::size_t a = 0; a < places.size(); ++a) {
        for (std::size_t b = 0; b < places.size(); ++b) {
            stiffness.block<3, 3>(static_cast<Eigen::Index>(3 * support_of[a]),
                                  static_cast<Eigen::Index>(3 * support_of[b])) =
                symmetric.block<3, 3>(static_cast<Eigen::Index>(3 * a), static_cast<Eigen::Index>(3 * b));
        }
    }
    framing.stiffness.assign(stiffness.data(), stiffness.data() + stiffness.size());
    return framing;
}

}  // namespace toehold::demand
