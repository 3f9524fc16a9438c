#include "mechanics/flexible_plate/one_way_springs.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <stdexcept>
#include <tuple>
#include <utility>

namespace toehold::mechanics {
namespace {

struct Key {
    long x, y;
    std::size_t rectangle;
    friend bool operator<(const Key& a, const Key& b) {
        return std::tie(a.x, a.y, a.rectangle) < std::tie(b.x, b.y, b.rectangle);
    }
};

Key key(Point at, std::size_t rectangle) {
    constexpr double places_in_an_inch = 1e7;
    return {std::lround(at.x * places_in_an_inch), std::lround(at.y * places_in_an_inch), rectangle};
}

bool apart(const std::array<Point, 3>& corners, const BedRectangle& r) {
    const auto all = [&](const auto& beyond) { return std::all_of(corners.begin(), corners.end(), beyond); };
    return all([&](Point p) { return p.x <= r.x_min; }) || all([&](Point p) { return p.x >= r.x_max; }) ||
           all([&](Point p) { return p.y <= r.y_min; }) || all([&](Point p) { return p.y >= r.y_max; });
}

/// Gathers points that neighbouring pieces share.
class Collector {
  public:
    Collector(const PlateAssembly& assembly, std::vector<BedPoint>& points, std::vector<LiftRow>& rows,
              std::vector<PressureProbe>& probes)
        : assembly_(assembly), points_(points), rows_(rows), probes_(probes) {}

    void add_piece(std::size_t triangle, std::size_t rectangle, const Polygon& piece) {
        for (std::size_t corner = 1; corner + 1 < piece.size(); ++corner) {
            const std::array<Point, 3> fan = {piece[0], piece[corner], piece[corner + 1]};
            constexpr double no_area_in2 = 1e-12;
            const double share = area(fan) / 3.0;
            if (share <= no_area_in2) continue;
            for (std::size_t side = 0; side < 3; ++side) {
                const Point a = fan[side], b = fan[(side + 1) % 3];
                add_point(triangle, rectangle, {0.5 * (a.x + b.x), 0.5 * (a.y + b.y)}, share);
                if (probed_.insert(key(a, rectangle)).second)
                    probes_.push_back({a, rectangle, assembly_.row(triangle, a)});
            }
        }
    }

  private:
    void add_point(std::size_t triangle, std::size_t rectangle, Point at, double share) {
        const auto [place, is_new] = index_.try_emplace(key(at, rectangle), points_.size());
        if (is_new) {
            points_.push_back({at, 0.0, rectangle});
            rows_.push_back(assembly_.row(triangle, at));
        }
        points_[place->second].area_in2 += share;
    }

    const PlateAssembly& assembly_;
    std::vector<BedPoint>& points_;
    std::vector<LiftRow>& rows_;
    std::vector<PressureProbe>& probes_;
    std::map<Key, std::size_t> index_;
    std::set<Key> probed_;
};

}  // namespace

OneWaySprings::OneWaySprings(const PlateAssembly& assembly, std::vector<FlexibleAnchor> anchors,
                             std::vector<BedRectangle> bed)
    : anchors_(std::move(anchors)), bed_(std::move(bed)) {
    Collector collector(assembly, points_, rows_, probes_);
    for (std::size_t triangle = 0; triangle < assembly.mesh().triangles.size(); ++triangle) {
        const std::array<Point, 3> corners = assembly.corners(triangle);
        const Polygon whole(corners.begin(), corners.end());
        for (std::size_t index = 0; index < bed_.size(); ++index) {
            const BedRectangle& r = bed_[index];
            if (apart(corners, r)) continue;
            collector.add_piece(triangle, index, clip_rectangle(whole, r.x_min, r.x_max, r.y_min, r.y_max));
        }
    }
    for (const FlexibleAnchor& anchor : anchors_) rows_.push_back(assembly.mean_row(anchor.footprint));
}

OneWaySprings OneWaySprings::with(std::vector<FlexibleAnchor> anchors) const {
    const auto same = [](const FlexibleAnchor& a, const FlexibleAnchor& b) { return a.footprint == b.footprint; };
    if (!std::equal(anchors.begin(), anchors.end(), anchors_.begin(), anchors_.end(), same))
        throw std::invalid_argument("anchors in other footprints");
    OneWaySprings other = *this;
    other.anchors_ = std::move(anchors);
    return other;
}

OneWaySprings OneWaySprings::above(const PlateAssembly& on_supports) const {
    OneWaySprings measured = *this;
    for (std::size_t i = 0; i < points_.size(); ++i)
        on_supports.measure_from_support(measured.rows_[i], points_[i].rectangle, points_[i].at);
    for (std::size_t i = 0; i < anchors_.size(); ++i) {
        const FlexibleAnchor& anchor = anchors_[i];
        if (!anchor.support) continue;
        on_supports.measure_from_support(measured.rows_[points_.size() + i], *anchor.support, anchor.footprint.center);
    }
    for (PressureProbe& probe : measured.probes_)
        on_supports.measure_from_support(probe.row, probe.rectangle, probe.at);
    return measured;
}

ScaledSprings OneWaySprings::scaled(const StiffnessScale& scale) const {
    const auto count = static_cast<Eigen::Index>(size());
    const auto of_bed = static_cast<Eigen::Index>(points_.size());
    ScaledSprings result{Eigen::VectorXd::Ones(count), Eigen::VectorXd(count), Eigen::VectorXd::Zero(count)};
    result.sign.head(of_bed).setConstant(-1.0);
    for (Eigen::Index i = 0; i < of_bed; ++i) {
        const BedPoint& point = points_[static_cast<std::size_t>(i)];
        result.stiffness(i) = scale.bed * bed_[point.rectangle].stiffness_psi_per_in * point.area_in2;
    }
    for (Eigen::Index i = of_bed; i < count; ++i) {
        const FlexibleAnchor& anchor = anchors_[static_cast<std::size_t>(i - of_bed)];
        result.stiffness(i) = scale.anchors * anchor.stiffness_lb_per_in;
        result.gap(i) = anchor.preload_lb / result.stiffness(i);
    }
    return result;
}

}  // namespace toehold::mechanics
