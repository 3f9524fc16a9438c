// What passes through the cuts of a member, and the extremes of it.
#include "mechanics/space_frame/beam.h"

#include <Eigen/Geometry>

#include <algorithm>
#include <vector>

namespace toehold::mechanics::space_frame {
namespace {

bool passed(const AlongLoad& load, double at_in, BesideLoad side) {
    return load.from_in < at_in || (load.from_in == at_in && side == BesideLoad::after);
}

/// Every load's stations and the ends, in order.
std::vector<double> stations_of(int index, double length, std::span<const AlongLoad> loads) {
    std::vector<double> stations = {0.0, length};
    for (const AlongLoad& load : loads) {
        if (load.member != index) continue;
        stations.push_back(load.from_in);
        if (load.line) stations.push_back(load.to_in);
    }
    std::sort(stations.begin(), stations.end());
    stations.erase(std::unique(stations.begin(), stations.end()), stations.end());
    return stations;
}

class Extremes {
  public:
    void look(const Vector6& section) {
        least_ = seen_ ? least_.cwiseMin(section).eval() : section;
        most_ = seen_ ? most_.cwiseMax(section).eval() : section;
        seen_ = true;
    }
    [[nodiscard]] SpaceExtremes result() const { return {as_force(least_), as_force(most_)}; }

  private:
    Vector6 least_ = Vector6::Zero(), most_ = Vector6::Zero();
    bool seen_ = false;
};

}  // namespace

Vector6 section_inside(int index, const Vector6& at_from, double at_in, BesideLoad side,
                       std::span<const AlongLoad> loads) {
    Vector6 cut = at_from;
    cut.tail<3>() -= Vector3(at_in, 0.0, 0.0).cross(at_from.head<3>());
    for (const AlongLoad& load : loads) {
        if (load.member != index || !passed(load, at_in, side)) continue;
        const double span = load.line ? std::min(at_in, load.to_in) - load.from_in : 1.0;
        const double middle = load.line ? load.from_in + 0.5 * span : load.from_in;
        cut.head<3>() -= span * load.force;
        cut.tail<3>() += Vector3(at_in - middle, 0.0, 0.0).cross(span * load.force) - load.couple;
    }
    return cut;
}

SpaceExtremes extremes_inside(const PreparedBeam& beam, int index, const Vector6& at_from,
                              std::span<const AlongLoad> loads) {
    const std::vector<double> stations = stations_of(index, beam.length, loads);
    const auto cut = [&](double at_in, BesideLoad side) { return section_inside(index, at_from, at_in, side, loads); };
    Extremes extremes;
    extremes.look(at_from);
    for (std::size_t i = 0; i + 1 < stations.size(); ++i) {
        const double from = stations[i], to = stations[i + 1];
        const Vector6 first = cut(from, BesideLoad::after), last = cut(to, BesideLoad::before);
        extremes.look(first);
        extremes.look(last);
        // Under an even load the shear runs straight, and the moment turns where it passes zero.
        for (const Eigen::Index shear : {1, 2}) {
            const double a = first(shear), b = last(shear);
            if (a * b < 0.0) extremes.look(cut(from + (to - from) * a / (a - b), BesideLoad::before));
        }
    }
    extremes.look(cut(beam.length, BesideLoad::after));
    return extremes.result();
}

}  // namespace toehold::mechanics::space_frame
