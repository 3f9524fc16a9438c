#pragma once
// An input deck of the general-purpose finite element program CalculiX (ccx) for a solid plate on one-way springs.
// Keywords and their lines after its manual, "CalculiX CrunchiX USER'S MANUAL version 2.20": *SOLID SECTION, *EQUATION,
// *RIGID BODY, *SPRING (NONLINEAR), *CONTROLS, *NODE PRINT.
#include "mechanics/rigid_plate/rigid_plate.h"
#include "oracle/ccx/solid_plate.h"

#include <string>
#include <vector>

namespace toehold::test {

/// Force: stiffness max(0, sign w + gap), against the motion, with w the lift that `row` reads.
struct SolidSpring {
    SolidRow row;
    double stiffness_lb_per_in = 0.0;
    double sign = 1.0;  ///< +1 pulls the plate down, -1 presses it up
    double gap_in = 0.0;
    /// The node of the spring moves this many times the lift, and `stiffness_lb_per_in` is of that node: so springs
    /// over different areas of one bed share one table of force.
    double scale = 1.0;
};

struct NodeForce {
    std::size_t node = 0;
    double fz_lb = 0.0;
};

struct Deck {
    SolidPlate plate;
    double modulus_psi = 0.0;
    double poisson = 0.3;
    /// On the moduli of shear across the thickness, E / (2 (1 + nu)): a large one leaves a plate that bends but does
    /// not shear, which is the thin-plate theory.
    double shear_factor = 1.0;
    bool ring_is_rigid = true;       ///< the plate's ring is one rigid body, without motion in the plane
    mechanics::PlateLoad load;       ///< on that body
    std::vector<std::size_t> fixed;  ///< nodes that do not move
    std::vector<NodeForce> forces;   ///< on single nodes
    std::vector<SolidSpring> springs;
};

/// Loads and gaps go in a thousand times smaller: ccx keeps to a table of force only where it follows large motions,
/// and these small ones leave the geometry as it was.
constexpr double load_in_deck = 1e-3;

[[nodiscard]] std::string text_of(const Deck& deck);

/// Places of the values that the deck has printed, in ccx's node numbers.
[[nodiscard]] std::size_t number_of_node(std::size_t node);
[[nodiscard]] std::size_t number_of_body(const Deck& deck);      ///< its lift
[[nodiscard]] std::size_t number_of_rotation(const Deck& deck);  ///< its rotations
[[nodiscard]] std::size_t number_of_spring(const Deck& deck, std::size_t spring);

}  // namespace toehold::test
