#pragma once
// How strong a plate must be to carry given loads back to its post: the static (lower bound) theorem of limit analysis.
// A field of moments in equilibrium with the loads that nowhere passes the plate's plastic moment proves that the plate
// carries them, whatever the elastic answer is.
//
// The field is of constant moments in triangles, with the normal moment the same on both sides of every edge: it
// balances forces at the corners of the mesh exactly (Morley's element in its role as an equilibrium element, as in the
// mixed method of Hellan, Herrmann and Johnson). The yield condition is von Mises', m_x^2 - m_x m_y + m_y^2 + 3 m_xy^2
// <= m^2. Many fields are tried: elastic ones, each softened where the one before was stressed most; the best of them
// counts. A coarser mesh leaves fewer fields to choose from, so it errs on the safe side alone.
//
// The post's foot holds the plate clamped all round. in, lb; a moment per inch of width is lb.
#include "mechanics/flexible_plate/plate_mesh.h"
#include "mechanics/plate_strip/section.h"

#include <memory>
#include <span>

namespace toehold::mechanics {

/// Square to the plate; one sense is positive.
struct PointLoad {
    Point at;
    double force_lb = 0.0;
};

class MomentFields {
  public:
    /// `foot`: the outline of the post's foot that the mesh was made with. `openings`: holes that no washer or head
    /// covers; triangles with their middle in one are left out.
    MomentFields(const PlateMesh& mesh, const Polygon& foot, std::span<const PlateHole> openings);
    ~MomentFields();
    MomentFields(MomentFields&&) noexcept;
    MomentFields& operator=(MomentFields&&) noexcept;
    MomentFields(const MomentFields&) = delete;
    MomentFields& operator=(const MomentFields&) = delete;

    /// The least plastic moment per inch of width found to suffice, lb, >= 0; the search ends at `enough_lb`, below
    /// which the caller has no use for it. Loads over the foot go straight into the post. Infinite where no field
    /// balances the loads. One thread at a time: the stiffness and its factor are kept and filled anew.
    [[nodiscard]] double moment_needed_lb(std::span<const PointLoad> loads, double enough_lb = 0.0) const;

  private:
    struct Prepared;
    std::unique_ptr<Prepared> prepared_;
};

}  // namespace toehold::mechanics
