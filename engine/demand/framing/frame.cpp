#include "demand/framing/frame.h"

#include "demand/framing/member_supports.h"
#include "resistance/wood/member_strength.h"

#include <algorithm>
#include <cmath>

namespace toehold::demand {
namespace {

using mechanics::GridJoint;
using mechanics::GridMember;
using mechanics::GridSupport;
using mechanics::Point;
using model::Member;
using model::PlanAxis;

// Shear over bending modulus of sawn lumber: one sixteenth, common practice.
constexpr double shear_over_modulus = 1.0 / 16.0;
constexpr double shear_area_part = 5.0 / 6.0;  // rectangle
constexpr double one_place_in = 1e-3;          // stations nearer than this are one

Point on_axis(const Member& member, double along_in) {
    return member.along == PlanAxis::x ? Point{along_in, member.across_in} : Point{member.across_in, along_in};
}

/// All pieces bend and twist side by side, and each by itself where they lie one on another.
GridMember beam(const Member& member, double modulus_psi) {
    const double shear_modulus = shear_over_modulus * modulus_psi;
    const double area = member.width_in * member.depth_in;
    const double piece_in = model::piece_depth_in(member);
    const double torsion_in4 =
        member.plies * member.stack * resistance::torsion_constant_in4(model::ply_width_in(member), piece_in);
    return {0, 0, modulus_psi * area * piece_in * piece_in / 12.0, shear_modulus * torsion_in4,
            shear_area_part * shear_modulus * area};
}

/// Springs in the held member's own axes as springs about the plan's.
template <class Springs>
void set_springs(Springs& springs, const Member& held, const SupportStiffness& stiffness) {
    const bool along_x = held.along == PlanAxis::x;
    springs.vertical_lb_per_in = stiffness.vertical_lb_per_in;
    springs.about_x_lb_in = along_x ? stiffness.torque_lb_in : stiffness.moment_lb_in;
    springs.about_y_lb_in = along_x ? stiffness.moment_lb_in : stiffness.torque_lb_in;
}

double end_in(const Member& member, bool upper) { return upper ? member.to_in : member.from_in; }

class FrameBuilder {
  public:
    explicit FrameBuilder(const catalog::Resolved& resolved) : resolved_(resolved) {
        frame_.members = model::members(resolved.detail.framing);
        frame_.supports = find_member_supports(resolved);
        frame_.beams.resize(frame_.members.size());
        frame_.stations_in.resize(frame_.members.size());
        nodes_of_.resize(frame_.members.size());
        const bool described = joists_described(resolved.detail.framing);
        for (const Member& member : frame_.members)
            included_.push_back(member.kind == model::MemberKind::block || (described && member.length_stated));
    }

    Frame build() {
        find_stations();
        for (std::size_t member = 0; member < frame_.members.size(); ++member) add_beams(member);
        for (const MemberSupport& support : frame_.supports) add_support(support);
        frame_.grillage.emplace(nodes_, beams_, joints_, supports_);
        return std::move(frame_);
    }

  private:
    /// Where the support meets the held member, and where its holder.
    [[nodiscard]] double held_station_in(const MemberSupport& support) const {
        if (support.kind == MemberSupportKind::joist_support)
            return resolved_.detail.framing.supports[*support.joist_support].at_in;
        return end_in(frame_.members[support.member], support.upper);
    }
    [[nodiscard]] double holder_station_in(const MemberSupport& support) const {
        return frame_.members[support.member].across_in;
    }
    [[nodiscard]] bool joins(const MemberSupport& support) const {
        return support.holder && included_[*support.holder];
    }

    void find_stations() {
        for (std::size_t index = 0; index < frame_.members.size(); ++index) {
            if (!included_[index]) continue;
            const Member& member = frame_.members[index];
            std::vector<double>& stations = frame_.stations_in[index];
            stations = {member.from_in, member.to_in};
            for (const MemberSupport& support : frame_.supports) {
                if (support.member == index) stations.push_back(held_station_in(support));
                if (support.holder == index) stations.push_back(holder_station_in(support));
            }
            for (double& station : stations) station = std::clamp(station, member.from_in, member.to_in);
            std::sort(stations.begin(), stations.end());
            stations.erase(
                std::unique(stations.begin(), stations.end(), [](double a, double b) { return b - a < one_place_in; }),
                stations.end());
            stations.back() = member.to_in;
        }
    }

    void add_beams(std::size_t index) {
        const Member& member = frame_.members[index];
        GridMember properties;
        if (included_[index]) properties = beam(member, catalog::wood(resolved_, index).grade.modulus_psi);
        for (const double station : frame_.stations_in[index]) {
            const int node = static_cast<int>(nodes_.size());
            nodes_.push_back(on_axis(member, station));
            if (!nodes_of_[index].empty()) {
                properties.from = node - 1;
                properties.to = node;
                frame_.beams[index].push_back(static_cast<int>(beams_.size()));
                beams_.push_back(properties);
            }
            nodes_of_[index].push_back(node);
        }
    }

    [[nodiscard]] int node_at(std::size_t member, double station_in) const {
        const std::vector<double>& stations = frame_.stations_in[member];
        const auto nearest = std::min_element(stations.begin(), stations.end(), [&](double a, double b) {
            return std::abs(a - station_in) < std::abs(b - station_in);
        });
        return nodes_of_[member][static_cast<std::size_t>(nearest - stations.begin())];
    }

    void add_support(const MemberSupport& support) {
        const Member& held = frame_.members[support.member];
        const int node = node_at(support.member, held_station_in(support));
        frame_.held_at_in.push_back(held_station_in(support));
        frame_.grid_joint_of.emplace_back();
        frame_.grid_support_of.emplace_back();
        if (joins(support)) {
            GridJoint joint;
            joint.first = node_at(*support.holder, holder_station_in(support));
            joint.second = node;
            joint.at = nodes_[static_cast<std::size_t>(node)];
            set_springs(joint, held, support.stiffness);
            frame_.grid_joint_of.back() = static_cast<int>(joints_.size());
            joints_.push_back(joint);
            return;
        }
        GridSupport grid_support;
        grid_support.node = node;
        set_springs(grid_support, held, support.stiffness);
        frame_.grid_support_of.back() = static_cast<int>(supports_.size());
        supports_.push_back(grid_support);
    }

    const catalog::Resolved& resolved_;
    Frame frame_;
    std::vector<bool> included_;
    std::vector<std::vector<int>> nodes_of_;
    std::vector<Point> nodes_;
    std::vector<GridMember> beams_;
    std::vector<GridJoint> joints_;
    std::vector<GridSupport> supports_;
};

}  // namespace

Frame make_frame(const catalog::Resolved& resolved) { return FrameBuilder(resolved).build(); }

double along(const Member& member, double x, double y) { return member.along == PlanAxis::x ? x : y; }
double across(const Member& member, double x, double y) { return member.along == PlanAxis::x ? y : x; }

GridPlace place_on(const Frame& frame, std::size_t member, double along_in) {
    const std::vector<double>& stations = frame.stations_in[member];
    const double at = std::clamp(along_in, stations.front(), stations.back());
    const auto above = std::upper_bound(stations.begin() + 1, stations.end() - 1, at);
    const auto piece = static_cast<std::size_t>(above - stations.begin()) - 1;
    return {frame.beams[member][piece], at - stations[piece]};
}

mechanics::MemberLoad load_at(const Frame& frame, std::size_t member, model::Position at, double up_lb) {
    const Member& shape = frame.members[member];
    const GridPlace place = place_on(frame, member, along(shape, at.x_in, at.y_in));
    const double off_in = across(shape, at.x_in, at.y_in) - shape.across_in;
    const bool along_x = shape.along == PlanAxis::x;
    return {place.beam, place.at_in, up_lb, along_x ? off_in * up_lb : 0.0, along_x ? 0.0 : -off_in * up_lb};
}

}  // namespace toehold::demand
