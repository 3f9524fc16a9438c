// A bracket's plate and its welds, whatever the load: a fillet that is not too small and a filler of the metals it
// joins; room for every head beside the weld.
#include "catalog/resolve.h"
#include "checks/anchor/seating.h"
#include "checks/basis/result_parts.h"
#include "checks/findings/weld_rules.h"
#include "checks/post/foot.h"
#include "checks/registry.h"
#include "units/limit.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace toehold::checks {
namespace {

using catalog::MetalKind;
using format::Dimension;
using format::phrase;

/// Nullptr where the post has no bracket, or its metal or filler are not known.
const model::BracketPlate* welded_bracket(const catalog::Resolved& resolved) {
    const auto& bracket = on_side(resolved.detail).bracket;
    const catalog::SideFastened& materials = on_side(resolved);
    return bracket && materials.bracket_metal && materials.filler ? &*bracket : nullptr;
}

std::vector<Finding> bracket_weld_small(const catalog::Resolved& resolved) {
    const model::BracketPlate* const bracket = welded_bracket(resolved);
    if (bracket == nullptr || on_side(resolved).filler->kind == MetalKind::aluminum) return {};
    const double thinner_in = std::min(post_foot(resolved.detail.post).thickness_in, bracket->thickness_in);
    if (auto found = fillet_too_small(bracket->weld_leg_in, thinner_in)) return {std::move(*found)};
    return {};
}

std::vector<Finding> bracket_filler(const catalog::Resolved& resolved) {
    if (welded_bracket(resolved) == nullptr) return {};
    const catalog::SideFastened& materials = on_side(resolved);
    if (auto found = filler_mismatch(*materials.filler, resolved.post_metal, *materials.bracket_metal))
        return {std::move(*found)};
    return {};
}

/// Radius of what lies on the plate at an anchor; 0 where a report's fastener does not say.
double covers_in(const catalog::Anchor& anchor) {
    return 0.5 * (anchor.washer ? anchor.washer->outside_diameter_in : anchor.head_width_in);
}

std::vector<Finding> head_on_bracket_weld(const catalog::Resolved& resolved) {
    const auto& bracket = on_side(resolved.detail).bracket;
    if (!bracket) return {};
    const double toe_in = 0.5 * model::shaft(resolved.detail.post).width_in + bracket->weld_leg_in;
    std::vector<Finding> findings;
    for (const catalog::Anchor& anchor : resolved.anchors) {
        const double at_in = std::abs(anchor.at.x_in) - covers_in(anchor);
        if (units::at_least(at_in, toe_in)) continue;
        findings.push_back(
            finding_on(part_of(anchor), Severity::fails,
                       phrase("The head or washer of anchor {} runs {} into the weld at the post's side. "
                              "Move the anchor outward, or use a smaller washer.",
                              anchor.id, Dimension{toe_in - at_in})));
    }
    return findings;
}

const RegisterFinding size_rule{{"side-bracket-weld-small", phrase("Minimum size of the weld"),
                                 "AISC 360-16 J2.2b, Table J2.4", bracket_weld_small},
                                {model::MountKind::side_fastened}};
const RegisterFinding filler_rule{
    {"side-bracket-filler", phrase("Filler and base metal"),
     "AISC 360-16 J2.6; Aluminum Design Manual 2020 J.2 (from memory, to be confirmed)", bracket_filler},
    {model::MountKind::side_fastened}};
const RegisterFinding room_rule{
    {"side-head-on-weld", phrase("Head on the bracket's weld"), "common practice", head_on_bracket_weld},
    {model::MountKind::side_fastened},
    Cause::geometry};

}  // namespace
}  // namespace toehold::checks
