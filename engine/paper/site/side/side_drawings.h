#pragma once
// The site sheet's drawings of a post on a member's side; of the same kind as those of site_drawings.h.
#include "paper/site/site_drawings.h"

namespace toehold::paper::site {

[[nodiscard]] bool is_on_a_side(const SiteSubject& subject);

/// The face as one stands before it who bores the holes: heights down from the member's top.
[[nodiscard]] drawing::Scene joint_face(const SiteSubject& subject, double mm_per_in);
[[nodiscard]] format::Phrase joint_face_caption(const SiteSubject& subject);

/// Cut through the post: what lies behind one another, and how far fasteners reach.
[[nodiscard]] drawing::Scene joint_section(const SiteSubject& subject, double mm_per_in);

/// What backs the member, from above: of the site page, which has room for it.
[[nodiscard]] drawing::Scene joint_from_above(const SiteSubject& subject, double mm_per_in);
[[nodiscard]] format::Phrase joint_from_above_caption(const SiteSubject& subject);

}  // namespace toehold::paper::site
