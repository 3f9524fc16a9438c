#pragma once
// What a state says of a post on a member's side besides its anchors' marks: where the face presses, and the ties.
#include "drawing/annotation/overlay.h"

namespace toehold::drawing {

/// Put into the overlay; nothing for a mount that nothing presses from its side. The pressure is drawn as a wedge from
/// its peak to where a triangle with the same center of force ends, within the contact's outline.
void show_side_forces(Overlay& overlay, const demand::Demand& demand, const demand::State& state);
/// The pressure alone, of supports and what they press with in the same order.
void show_face_forces(Overlay& overlay, const std::vector<demand::Support>& supports,
                      const std::vector<demand::SupportForce>& forces);

}  // namespace toehold::drawing
