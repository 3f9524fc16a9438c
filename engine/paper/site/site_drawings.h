#pragma once
// The two drawings of the site sheet. All their words are level and of the size `normal`, none overlaps another.
#include "catalog/resolve.h"
#include "drawing/scene/scene.h"
#include "format/phrase.h"

namespace toehold::paper::site {

struct SiteSubject {
    const catalog::Resolved& resolved;
    format::Locale locale = {};
};

/// What is under the boards, seen from above with the boards off: blocks and what holds them in solid lines, the plate
/// dashed, the places of the anchors; dimensions from faces a tape can be hooked to. Of a post on a member's side its
/// face, as one stands before it: holes, post, what lies behind.
[[nodiscard]] drawing::Scene framing_plan(const SiteSubject& subject, double mm_per_in);
[[nodiscard]] format::Phrase framing_plan_caption(const SiteSubject& subject);

/// Upright cut through the first row of anchors: layers, blocks, anchors with their reach into the wood.
[[nodiscard]] drawing::Scene site_section(const SiteSubject& subject, double mm_per_in);
[[nodiscard]] format::Phrase site_section_caption(const SiteSubject& subject);

}  // namespace toehold::paper::site
