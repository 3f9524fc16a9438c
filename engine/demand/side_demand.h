#pragma once
// What the demand of a post on a member's side has besides anchors and what it bears on. Heights z are up from the
// member's top edge, in; forces lb, moments lb in.
#include "format/phrase.h"

#include <cstddef>

namespace toehold::demand {

/// What passes through the post at a height: of the part above on the part below, at the post's axis.
struct PostCut {
    double z_in = 0.0;
    double bending_out_lb_in = 0.0;    ///< bends the post outward or inward (about x)
    double bending_along_lb_in = 0.0;  ///< bends it along the rail (about y)
    double twist_lb_in = 0.0;          ///< about its axis
    double shear_out_lb = 0.0;         ///< across the member's face (along y)
    double shear_along_lb = 0.0;       ///< along the rail
    double down_lb = 0.0;              ///< pressing the part below down, > 0
};

/// The couple a reviewer works out by hand: the push times its height over an arm. For comparison; no check rests on
/// it.
struct HandCouple {
    double push_lb = 0.0;
    double height_in = 0.0;   ///< of the push above the place it turns about
    double arm_in = 0.0;      ///< from that place to the fasteners that pull
    double tension_lb = 0.0;  ///< in all fasteners at that height together
    double direction_rad = 0.0;
};

/// Of the mount as a whole, for every state.
struct SideDemand {
    double from_z_in = 0.0, to_z_in = 0.0;  ///< lowest and highest place where the post can bear on the member
    double width_in = 0.0;                  ///< of that contact along the rail
    double post_bearing_psi_per_in = 0.0;   ///< bed stiffness of the face, nominal
    format::Phrase bearing_source;
    double slip_lb_per_in = 0.0;  ///< of one fastener across its axis, nominal, the first's
    format::Phrase slip_source;
    HandCouple about_bottom;  ///< outward push: about the lower end of the contact, pulling at the highest fasteners
    HandCouple about_top;     ///< inward push: about its upper end, pulling at the lowest
};

}  // namespace toehold::demand
