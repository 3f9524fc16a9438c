#pragma once
// One anchor's nut or head pressed across the grain into the wood it bears on.
//   - On a washer or a metal plate: F_c,perp' on the net area (NDS 2018 3.10.2), taken evenly about the anchor, as far
//     as the metal's bending can load it. An overhang too thin for the pressure gives, the pressure comes in toward the
//     nut, and what is left bears: a limit of the area, not a failure of its own.
//   - On the wood itself: NDS 2018 12.2.5. The clause is for round heads, so the across-flats of a nut or a hexagon
//     stands for the head's diameter: the smallest circle, and the reading taken. The wood under it must also not be
//     crushed (3.10.2), which commonly leads. A wood screw has the round head of the clause, which asks no more of it.
#include "catalog/rows.h"
#include "checks/result.h"
#include "model/anchor.h"
#include "model/basis.h"
#include "model/place.h"
#include "resistance/wood/washer_bearing.h"

#include <vector>

namespace toehold::checks {

enum class BearingEnd {
    nut,
    head,        ///< of a bolt, in a hole wider than itself
    screw_head,  ///< a hexagon of a lag screw, whose hole is as wide as its shank
    round_head,  ///< of a wood screw
};

/// What presses, and on which wood.
struct BearingOnWood {
    BearingEnd end = BearingEnd::nut;
    const catalog::LumberGrade& grade;
    double specific_gravity = 0.0;
    model::PlanAxis grain = model::PlanAxis::x;  ///< of the wood, in the anchor's plane
    resistance::Clearance clearance;             ///< of the anchor in that wood
    double thickness_in = 0.0;                   ///< of the wood along the anchor
    format::Phrase wood_name;
    double diameter_in = 0.0;  ///< of the anchor
    double head_in = 0.0;      ///< across the flats of nut or head; a round head's diameter
    const model::Basis& basis;
};

// What the wood takes, lb, with its worked lines.

[[nodiscard]] double under_washer_lb(const BearingOnWood& bearing, const catalog::WasherSize& washer,
                                     std::vector<Step>& steps);
[[nodiscard]] double under_plate_lb(const BearingOnWood& bearing, const model::BackingPlate& plate,
                                    const catalog::Metal& metal, std::vector<Step>& steps);
/// The lesser of pull-through and of bearing on the ring under the head; of a round head pull-through alone.
[[nodiscard]] double under_bare_head_lb(const BearingOnWood& bearing, std::vector<Step>& steps);

}  // namespace toehold::checks
