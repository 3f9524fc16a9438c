// The contact solved a second way: the same discrete energy given to a general-purpose program
// (flexible_interior_point.h) that knows nothing of working sets. It holds the search for the answer, not the matrices;
// those are held by closed forms and by other finite elements elsewhere.
#include "mechanics/flexible_plate/bases.h"
#include "mechanics/flexible_plate/interior_point.h"
#include "mechanics/shapes.h"
#include "support/compare.h"

using namespace toehold::mechanics;
using namespace toehold::test;

namespace {

constexpr double moment_lb_in = 8400.0;  // 200 lb at 42 in

/// Every anchor's tension and every support's force, both ways, to a millionth of the largest.
void check_both_ways(const FlexibleBase& base, const std::vector<PlateLoad>& loads, const StiffnessScale& scale = {}) {
    FlexiblePlateInput input = input_of(base, 1.0);
    const PlateAssembly assembly(input.mesh, {input.modulus_psi, input.poisson, input.thickness_in});
    const OneWaySprings springs(assembly, input.anchors, input.bed);
    const FlexiblePlate plate(std::move(input));
    const std::size_t points = springs.points().size();
    for (const PlateLoad& load : loads) {
        CAPTURE(base.name, load.fz_lb, load.mx_lb_in, load.my_lb_in);
        const FlexiblePlateSolution found = plate.solve_on_full_mesh(load, scale);
        REQUIRE(found.status == SolveStatus::solved);
        const LowestState lowest = lowest_by_interior_point(assembly, springs, springs.scaled(scale),
                                                            {load.fz_lb, load.mx_lb_in, load.my_lb_in});
        const double absolute = 1e-6 * largest_force(found);
        for (std::size_t i = 0; i < found.tension_lb.size(); ++i)
            CHECK_CLOSE(found.tension_lb[i], lowest.force(static_cast<Eigen::Index>(points + i)), 0.0, absolute);
        std::vector<double> bed(found.patches.size(), 0.0);
        for (std::size_t i = 0; i < points; ++i)
            bed[springs.points()[i].rectangle] += lowest.force(static_cast<Eigen::Index>(i));
        // Ipopt leaves every idle point of the bed a trace of force, so their sum is known less well.
        for (std::size_t i = 0; i < bed.size(); ++i)
            CHECK_CLOSE(found.patches[i].force_lb, bed[i], 0.0, 10.0 * absolute);
        CHECK_CLOSE(found.lift_in, lowest.rigid(0), 1e-6, 1e-9);
        CHECK_CLOSE(found.tilt_x_rad, lowest.rigid(1), 1e-6, 1e-9);
        CHECK_CLOSE(found.tilt_y_rad, lowest.rigid(2), 1e-6, 1e-9);
    }
}

std::vector<PlateLoad> pushes() {
    return {push(moment_lb_in, 0.0), push(moment_lb_in, 0.7, -100.0), push(moment_lb_in, 2.4),
            push(moment_lb_in, 4.0, 150.0)};
}

}  // namespace

TEST_CASE("Tensions of common bases are those of an interior-point program", "[cross-solver]") {
    for (const FlexibleBase& base : common_bases()) check_both_ways(base, pushes());
}

TEST_CASE("Soft and stiff beds and anchors give the interior-point program's tensions", "[cross-solver]") {
    check_both_ways(lopsided_base(), {push(moment_lb_in, 1.0)}, {0.5, 2.0});
    check_both_ways(round_base(), {push(moment_lb_in, 5.0)}, {2.0, 0.5});
}

TEST_CASE("A thin plate that pries gives the interior-point program's tensions", "[cross-solver]") {
    FlexibleBase base = square_base();
    base.thickness_in = 0.1875;
    for (BedRectangle& rectangle : base.bed) rectangle.stiffness_psi_per_in = 100000.0;
    check_both_ways(base, {push(moment_lb_in, 0.3), push(moment_lb_in, 1.5708)});
}

TEST_CASE("Preload alone, and preload under a push, give the interior-point program's tensions", "[cross-solver]") {
    FlexibleBase base = round_base();
    for (std::size_t i = 0; i < base.anchors.size(); ++i)
        base.anchors[i].preload_lb = 200.0 + 100.0 * static_cast<double>(i);
    check_both_ways(base, {{0.0, 0.0, 0.0}, push(moment_lb_in, 2.0)});
}
