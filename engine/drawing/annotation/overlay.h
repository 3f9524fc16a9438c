#pragma once
// What a drawing says of the forces: the push shown, each anchor's marks, the bed's pressure, the bent plate.
#include "checks/result.h"
#include "demand/demand.h"
#include "format/phrase.h"
#include "model/part.h"

#include <optional>
#include <vector>

namespace toehold::drawing {

/// How the anchors' tensions are found.
enum class Method {
    hand,      ///< lever arm to the toe edge, pushes square to the plate; a push aslant has no hand value
    rigid,     ///< rigid plate on the bed
    flexible,  ///< the plate's own bending
};

struct AnchorMark {
    model::PartId part;                         ///< the anchor; its letter is the part's id
    std::optional<double> tension_lb;           ///< under the push shown; absent: the method has no value for it
    double shear_lb = 0.0;                      ///< under the push shown
    double shear_direction_rad = 0.0;           ///< of the force on the anchor, from +x counter-clockwise
    double largest_tension_lb = 0.0;            ///< over all pushes
    std::optional<double> capacity_lb;          ///< in tension, from the check of this anchor that is worst in tension
    std::optional<double> ratio;                ///< worst of the checks of this anchor; absent: not known (yet)
    std::optional<checks::Status> status = {};  ///< of that check; absent: not checked, and the mark says no more
    format::Phrase worst_check = {};            ///< title of that check
};

struct PushShown {
    double direction_rad = 0.0;
    double push_lb = 0.0;
    double down_lb = 0.0;
    double height_in = 0.0;  ///< above the bearing plane
    bool governing = false;  ///< the one that pulls most on any anchor
};

/// What a face presses on a post's side with, under the push shown. Places in the face's plane, x and z.
struct FaceBearing {
    model::PartId part;  ///< the member
    double force_lb = 0.0, peak_psi = 0.0;
    double half_width_in = 0.0;              ///< of the contact along the rail, about x = 0
    double peak_z_in = 0.0, end_z_in = 0.0;  ///< where it presses most, and where it has fallen to nothing
};

struct Overlay {
    std::optional<PushShown> push;
    std::vector<AnchorMark> anchors;              ///< in the order of the resolved anchors
    std::optional<demand::DeflectedShape> field;  ///< under the push shown
    bool pressure = true;                         ///< draw the bed's pressure, with its scale
    bool bent = false;                            ///< draw the plate's deflection, exaggerated, in the section
    bool marks = true;                            ///< draw numbers and bars at the anchors
    bool stale = false;                           ///< the detail has changed since
    format::Locale locale = {};                   ///< whose words and units the forces are written in
    bool as_computed = true;                      ///< pulls are of the stiffness as computed, and the plan says so
    std::vector<FaceBearing> bearings = {};       ///< of a post on a member's side alone
    std::vector<double> ties_lb = {};             ///< pull of its ties, in the mount's order; empty: not known
};

/// Tension of one anchor for every sampled direction, lb at equal steps from 0 rad.
struct PolarCurve {
    model::PartId part;  ///< the anchor
    std::vector<double> tension_lb;
};

}  // namespace toehold::drawing
