#pragma once
// A base solved by the general-purpose program: solid elements, and the bed's pressure gathered by the test's own rule.
#include "oracle/base.h"
#include "oracle/ccx/deck.h"
#include "oracle/ccx/run.h"

namespace toehold::test {

struct SolidSolution {
    double lift_in = 0.0, tilt_x_rad = 0.0, tilt_y_rad = 0.0;
    std::vector<double> tension_lb;
    std::vector<double> bearing_lb;  ///< one for every rectangle of the bed
    /// What is left of the applied load (force, moments about x and y) by the springs' forces.
    mechanics::PlateLoad left;
    std::size_t freedoms = 0;
    int iterations = 0;
    double seconds = 0.0;
};

[[nodiscard]] Deck deck_of(const Base& base, const mechanics::PlateMesh& mesh, const mechanics::PlateLoad& load);
/// `shear_factor`: see Deck.
[[nodiscard]] SolidSolution solve_with_ccx(const Base& base, const mechanics::PlateMesh& mesh,
                                           const mechanics::PlateLoad& load, double shear_factor = 1.0);

}  // namespace toehold::test
