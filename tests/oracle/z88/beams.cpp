#include "oracle/z88/beams.h"

#include "oracle/ccx/writer.h"
#include "oracle/z88/run.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
#include <map>
#include <set>
#include <stdexcept>

namespace toehold::test {
namespace {

using mechanics::SpaceMember;
using mechanics::SpaceVector;

SpaceVector cross(const SpaceVector& a, const SpaceVector& b) {
    return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}

/// Members cut at every load, and what stands on the nodes then.
class Cut {
  public:
    explicit Cut(const BeamsInSpace& beams) : beams_(beams), nodes_(beams.nodes) {
        for (const mechanics::SpaceNodeLoad& load : beams.loads.nodes) add(load.node, load.force_lb, load.couple_lb_in);
        for (int member = 0; member < static_cast<int>(beams.members.size()); ++member) cut(member);
    }

    [[nodiscard]] Z88Input input() const {
        Writer structure;
        structure.line("3 {} {} {} {} 0 1 0 0", nodes_.size(), pieces_.size(), 6 * nodes_.size(), pieces_.size());
        for (std::size_t i = 0; i < nodes_.size(); ++i)
            structure.line("{} 6 {:.9e} {:.9e} {:.9e}", i + 1, nodes_[i].x, nodes_[i].y, nodes_[i].z);
        for (std::size_t i = 0; i < pieces_.size(); ++i)
            structure.line("{} 2\n{} {}", i + 1, pieces_[i].from + 1, pieces_[i].to + 1);
        for (std::size_t i = 0; i < pieces_.size(); ++i) {
            const SpaceMember& of = beams_.members[static_cast<std::size_t>(pieces_[i].member)];
            // A modulus of 1, a shear modulus of 1/2: the section's constants bring the stiffness.
            structure.line("{0} {0} 1. 0. 1 {1:.9e} {2:.9e} 1. {3:.9e} 1. {4:.9e} 1.", i + 1, of.axial_lb,
                           of.bending_y_lb_in2, of.bending_z_lb_in2, 2.0 * of.torsion_lb_in2);
        }
        return {structure.take(), bounds_of_all()};
    }

  private:
    struct Piece {
        int member = 0, from = 0, to = 0;
    };

    /// A line each motion that is held or loaded. A load on a motion that is held moves nothing, and is left out.
    [[nodiscard]] std::string bounds_of_all() const {
        std::set<HeldMotion> held(beams_.held.begin(), beams_.held.end());
        for (const int node : beams_.clamped) {
            for (int motion = 0; motion < 6; ++motion) held.insert({node, motion});
        }
        std::map<HeldMotion, double> loaded;
        for (const auto& [node, load] : loads_) {
            for (std::size_t i = 0; i < 6; ++i) {
                const HeldMotion motion{node, static_cast<int>(i)};
                if (load[i] != 0.0 && !held.contains(motion)) loaded[motion] = load[i];
            }
        }
        Writer bounds;
        bounds.line("{}", held.size() + loaded.size());
        for (const auto& [node, motion] : held) bounds.line("{} {} 2 0.", node + 1, motion + 1);
        for (const auto& [of, load] : loaded) bounds.line("{} {} 1 {:.9e}", of.node + 1, of.motion + 1, load);
        return bounds.take();
    }

    void add(int node, const SpaceVector& force, const SpaceVector& couple) {
        std::array<double, 6>& load = loads_[node];
        const std::array<double, 6> more = {force.x, force.y, force.z, couple.x, couple.y, couple.z};
        for (std::size_t i = 0; i < 6; ++i) load[i] += more[i];
    }

    void cut(int member) {
        const SpaceMember& of = beams_.members[static_cast<std::size_t>(member)];
        const SpaceVector from = nodes_[static_cast<std::size_t>(of.from)];
        const SpaceVector way = nodes_[static_cast<std::size_t>(of.to)] - from;
        const double length = std::hypot(way.x, way.y, way.z);
        std::map<double, int> stations = {{0.0, of.from}, {length, of.to}};
        const auto node_at = [&](double at) {
            const auto [found, added] = stations.try_emplace(at, static_cast<int>(nodes_.size()));
            if (added) nodes_.push_back(from + at / length * way);
            return found->second;
        };
        for (const mechanics::SpacePointLoad& load : beams_.loads.points)
            if (load.member == member) add(node_at(load.at_in), load.force_lb, load.couple_lb_in);
        for (const mechanics::SpaceLineLoad& load : beams_.loads.lines) {
            if (load.member != member) continue;
            (void)node_at(load.from_in);
            (void)node_at(load.to_in);
        }
        for (auto end = std::next(stations.begin()); end != stations.end(); ++end) {
            const auto begin = std::prev(end);
            pieces_.push_back({member, begin->second, end->second});
            for (const mechanics::SpaceLineLoad& load : beams_.loads.lines) {
                if (load.member == member && load.from_in <= begin->first && end->first <= load.to_in)
                    add_even(pieces_.back(), end->first - begin->first, 1.0 / length * way, load.force_lb_per_in);
            }
        }
    }

    /// What an even load does to a beam's ends: w l/2 and w l^2/12.
    void add_even(const Piece& piece, double length, const SpaceVector& along, const SpaceVector& even) {
        const SpaceVector couple = length * length / 12.0 * cross(along, even);
        add(piece.from, 0.5 * length * even, couple);
        add(piece.to, 0.5 * length * even, -1.0 * couple);
    }

    const BeamsInSpace& beams_;
    std::vector<SpaceVector> nodes_;
    std::vector<Piece> pieces_;
    std::map<int, std::array<double, 6>> loads_;
};

}  // namespace

std::vector<mechanics::SpaceMotion> solve_beams_with_z88(const BeamsInSpace& beams) {
    const std::vector<std::array<double, 6>> all = run_z88(Cut(beams).input());
    if (all.size() < beams.nodes.size()) throw std::runtime_error("z88f printed fewer nodes than it was given");
    std::vector<mechanics::SpaceMotion> result;
    for (std::size_t i = 0; i < beams.nodes.size(); ++i) {
        const std::array<double, 6>& of = all[i];
        result.push_back({{of[0], of[1], of[2]}, {of[3], of[4], of[5]}});
    }
    return result;
}

}  // namespace toehold::test
