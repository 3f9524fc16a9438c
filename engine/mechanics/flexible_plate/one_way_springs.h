#pragma once
// The springs under and over a plate that work one way only: points of the bed press, anchors pull.
// Force of spring i: stiffness max(0, sign w + gap), where w is the plate's lift there.
#include "mechanics/flexible_plate/flexible_plate.h"
#include "mechanics/flexible_plate/plate_assembly.h"

#include <Eigen/Core>

#include <span>
#include <vector>

namespace toehold::mechanics {

/// One point of the bed.
struct BedPoint {
    Point at;
    double area_in2 = 0.0;
    std::size_t rectangle = 0;  ///< of the bed
};

/// A place where pressure is only read: the corners of the bed's pieces, where it peaks.
struct PressureProbe {
    Point at;
    std::size_t rectangle = 0;
    LiftRow row;
};

/// The numbers of every spring for one stiffness scale, bed points first, then anchors.
struct ScaledSprings {
    Eigen::VectorXd sign;       ///< -1 for the bed, +1 for an anchor
    Eigen::VectorXd stiffness;  ///< lb/in
    Eigen::VectorXd gap;        ///< in; an anchor's stretch from its preload with the plate flat, 0 for the bed
    [[nodiscard]] Eigen::VectorXd stretch(const Eigen::VectorXd& lift) const { return sign.cwiseProduct(lift) + gap; }
};

class OneWaySprings {
  public:
    /// Every triangle is cut to every rectangle; the bed's points are the middles of the pieces' sides, each with a
    /// third of its pieces' areas.
    OneWaySprings(const PlateAssembly& assembly, std::vector<FlexibleAnchor> anchors, std::vector<BedRectangle> bed);
    /// The same springs with other anchors in the same footprints. Throws std::invalid_argument for other footprints.
    [[nodiscard]] OneWaySprings with(std::vector<FlexibleAnchor> anchors) const;
    /// The same springs measured from supports that give, which the assembly has.
    [[nodiscard]] OneWaySprings above(const PlateAssembly& on_supports) const;

    [[nodiscard]] std::size_t size() const { return rows_.size(); }
    [[nodiscard]] const std::vector<LiftRow>& rows() const { return rows_; }
    [[nodiscard]] const std::vector<BedPoint>& points() const { return points_; }
    [[nodiscard]] const std::vector<PressureProbe>& probes() const { return probes_; }
    [[nodiscard]] const std::vector<FlexibleAnchor>& anchors() const { return anchors_; }
    [[nodiscard]] const std::vector<BedRectangle>& bed() const { return bed_; }
    [[nodiscard]] ScaledSprings scaled(const StiffnessScale& scale) const;

  private:
    std::vector<FlexibleAnchor> anchors_;
    std::vector<BedRectangle> bed_;
    std::vector<BedPoint> points_;
    std::vector<LiftRow> rows_;
    std::vector<PressureProbe> probes_;
};

}  // namespace toehold::mechanics
