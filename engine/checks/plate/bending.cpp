// The plate bent between its anchors and the post, between its toe and the post, and beyond its anchors. At every push
// strips on straight sections, tangent to the post or through an anchor, find the worst state (strip method, common
// practice). There the whole plate is bounded by limit analysis: a moment field in equilibrium proves what suffices,
// and the weakest yield lines what is needed. Not a point value of elastic theory: at a tube's corner it has no limit.
//
// The verdict rests on the better of strip and field, but never on less than the yield lines need at F_y Z: the field
// counts von Mises' metal, which carries up to 2/sqrt(3) as much along a line as the standard's F_y Z. Or, by the
// file's choice, on the yield lines less a tenth, for patterns not searched.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/plate/bending_steps.h"
#include "checks/plate/needs.h"
#include "checks/post/filler.h"
#include "demand/demand.h"

#include <algorithm>

namespace toehold::checks {
namespace {

using format::phrase;

using mechanics::PlateStrip;

/// The anchor with the largest moment on the section.
model::PartId leading_anchor(const CheckInput& input, const PlateStrip& strip) {
    const auto lead = std::max_element(strip.anchors.begin(), strip.anchors.end(),
                                       [](const mechanics::StripAnchor& a, const mechanics::StripAnchor& b) {
                                           return a.tension_lb * a.arm_in < b.tension_lb * b.arm_in;
                                       });
    return model::anchor_part(input.resolved.anchors.at(lead->anchor).id);
}

/// What the plate bears on where it presses most.
model::PartId leading_support(const CheckInput& input, std::size_t state_index) {
    model::PartId decking{model::PartKind::decking};
    if (on_deck(input.resolved.detail).layers.packing) return {model::PartKind::packing};
    if (on_deck(input.resolved.detail).layers.decking) return decking;
    const demand::State& state = input.demand.states.at(state_index);
    const auto lead = std::max_element(
        state.supports.begin(), state.supports.end(),
        [](const demand::SupportForce& a, const demand::SupportForce& b) { return a.force_lb < b.force_lb; });
    const demand::Support& support = input.demand.supports.at(static_cast<std::size_t>(lead - state.supports.begin()));
    if (support.kind != demand::SupportKind::member) return decking;
    return model::part_of(model::member(input.resolved.detail.framing, support.member));
}

model::PartId part_of(const GoverningStrip& worst) {
    using model::PartPiece;
    if (worst.section->anchor) return {model::PartKind::plate, {}, PartPiece::past_anchor};
    return {model::PartKind::plate, {}, worst.strip.anchors.empty() ? PartPiece::at_toe : PartPiece::at_anchors};
}

/// What lies past an anchor bends the plate there but is no link of its own: it comes back through the post's foot.
std::optional<Link> link_of(const CheckInput& input, const GoverningStrip& worst) {
    if (worst.section->anchor) return std::nullopt;
    const bool pulled = !worst.strip.anchors.empty();
    return link_between({model::PartKind::plate},
                        pulled ? leading_anchor(input, worst.strip) : leading_support(input, worst.state),
                        phrase("plate bending"));
}

/// `per_width_lb`: usable moment per unit of width.
CheckResult result_of(const CheckInput& input, const PlateNeed& need, const Welding& welding, double per_width_lb) {
    const GoverningStrip& worst = need.strip;
    const model::Basis& basis = input.resolved.detail.basis;
    const PlateStrip& strip = worst.strip;
    CheckResult result;
    result.part = part_of(worst);
    result.unit = "lb in";
    result.demand = strip.moment_lb_in;
    result.direction_deg = degrees(input.demand.states.at(worst.state).direction_rad);
    result.link = link_of(input, worst);
    // What lies past an anchor is held against its strip alone.
    const format::Phrase rests_on = worst.section->anchor ? format::Phrase{} : strength_rule(basis);
    result.note = sentences(sentences(section_rule(*worst.section), rests_on), gussets_not_counted(input.resolved));
    append(result.steps, section_steps(input, *worst.section));
    append(result.steps, strip.anchors.empty() ? bearing_steps(input, strip) : tension_steps(input, strip));
    const catalog::Metal& metal = on_deck(input.resolved).plate_metal;
    const bool known = take_capacity(result, plate_moment(metal, strip.width_in, welding, basis));
    append(result.steps, stress_steps(strip, welding.thickness_in));
    if (!known) return result;
    const double needed = moment_needed_lb(strip, need.bounds, model::plate_strength(basis));
    result.capacity = needed > 0.0 ? result.demand * per_width_lb / needed : result.capacity;
    append(result.steps, bound_steps({strip, need.bounds, per_width_lb, result.capacity}, basis));
    conclude(result);
    return result;
}

std::vector<CheckResult> plate_bending(const CheckInput& input) {
    const PostFoot foot = post_foot(input.resolved.detail.post);
    const Welding welding{foot.welded, weld_filler(input.resolved), on_deck(input.resolved.detail).plate.thickness_in};
    const double per_width_lb =
        plate_moment(on_deck(input.resolved).plate_metal, 1.0, welding, input.resolved.detail.basis).value;
    const auto needs = plate_needs(input, foot, per_width_lb);
    std::vector<CheckResult> results;
    for (const PlateNeed& need : *needs) results.push_back(result_of(input, need, welding, per_width_lb));
    return results;
}

const RegisterCheck registered{
    {"plate-bending", phrase("Plate bending"), "AISC 360-16 F11; strip method and limit analysis",
     phrase("Plate bending between the post and the anchors in tension, between the post and the toe in bearing, and "
            "past each anchor: by strips on straight sections, a moment field in equilibrium, and yield lines."),
     plate_bending},
    {model::MountKind::plate_on_deck}};

}  // namespace
}  // namespace toehold::checks
