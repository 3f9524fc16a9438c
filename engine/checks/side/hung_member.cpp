// The post hangs on the member by fasteners through its side: what they press down or lift splits the wood along a line
// through the farthest of them. NDS 2018 3.4.3.3: pressed down by them, d_e runs from the member's lower edge up to the
// highest; lifted, from its upper edge down to the lowest. Less than five depths from the member's end Eq. 3.4-6 holds,
// with the square of d_e/d; farther in Eq. 3.4-7. The shear is no more than all of them bring, whatever else acts in
// the member.
#include "catalog/resolve.h"
#include "checks/anchor/seating.h"
#include "checks/basis/wood_basis.h"
#include "checks/member/actions.h"
#include "model/side_geometry.h"
#include "resistance/wood/member_strength.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

using format::phrase;

struct Hanging {
    std::size_t index = 0;
    model::Member member;
    double depth_in = 0.0;  ///< that holds
    std::vector<std::size_t> anchors;
    double highest_in = 0.0, lowest_in = 0.0;  ///< of its fasteners, down from the upper edge
    bool near_end = false;
    double width_in = 0.0;  ///< of the pieces that every fastener goes through, at least one
};

Hanging hanging(const catalog::Resolved& resolved, std::size_t index) {
    const model::SideFastened& mount = on_side(resolved.detail);
    Hanging found{index, model::member(resolved.detail.framing, index), 0.0, {}};
    found.width_in = found.member.width_in;
    found.depth_in =
        found.member.id == mount.member ? model::holding_depth_in(mount, found.member) : found.member.depth_in;
    for (std::size_t anchor = 0; anchor < resolved.anchors.size(); ++anchor) {
        const catalog::Anchor& one = resolved.anchors[anchor];
        if (!one.seat || !lands(one) || catalog::shear_seat(one).member != index) continue;
        const double down_in = model::from_top_edge_in(mount, one.at.x_in, -one.at.z_in);
        found.highest_in = found.anchors.empty() ? down_in : std::min(found.highest_in, down_in);
        found.lowest_in = found.anchors.empty() ? down_in : std::max(found.lowest_in, down_in);
        found.near_end = found.near_end || catalog::shear_seat(one).end_in < resistance::near_end_in(found.depth_in);
        if (!one.crossed && one.embedment_in < found.member.width_in)
            found.width_in = model::ply_width_in(found.member);
        found.anchors.push_back(anchor);
    }
    return found;
}

/// Pressed down by its fasteners > 0, lifted < 0; no more than acts in the member.
double brought_lb(const CheckInput& input, const Hanging& of, std::size_t state) {
    double down_lb = 0.0;
    for (const std::size_t anchor : of.anchors) down_lb -= input.demand.states[state].anchors.at(anchor).shear_y_lb;
    const double acting_lb = std::abs(actions_of(input, state, of.index).vertical_shear_lb);
    return std::clamp(down_lb, -acting_lb, acting_lb);
}

double reached_by(const Hanging& of, double force_lb) {
    return std::clamp(force_lb > 0.0 ? of.depth_in - of.highest_in : of.lowest_in, 0.0, of.depth_in);
}

double strength_lb(const Hanging& of, double shear_psi, double force_lb) {
    const auto strength = of.near_end ? resistance::shear_at_fasteners_lb : resistance::shear_at_inner_fasteners_lb;
    return strength(shear_psi, of.width_in, of.depth_in, reached_by(of, force_lb));
}

CheckResult hung(const CheckInput& input, const Hanging& of) {
    const catalog::LumberGrade& grade = catalog::wood(input.resolved, of.index).grade;
    const Adjusted adjusted = adjust_shear(grade, input.resolved.detail.basis);
    const demand::GoverningState worst = demand::governing_index(input.demand, [&](std::size_t state) {
        const double force_lb = brought_lb(input, of, state);
        return ratio(std::abs(force_lb), strength_lb(of, adjusted.value, force_lb));
    });
    const double force_lb = brought_lb(input, of, worst.state);
    CheckResult result = member_result(input, of.member, worst.state, phrase("shear at the post's fasteners"));
    result.unit = "lb";
    result.demand = std::abs(force_lb);
    result.capacity = strength_lb(of, adjusted.value, force_lb);
    result.steps = {
        demanded("V",
                 force_lb > 0.0 ? phrase("shear from the post's fasteners, pressed down by them")
                                : phrase("shear from the post's fasteners, lifted by them"),
                 result.demand, "lb"),
        from_file("b", phrase("width of the pieces the fasteners stand in"), of.width_in, "in"),
        from_file("d", phrase("depth of {}", model::part_name(model::part_of(of.member))), of.depth_in, "in"),
        {"d_e",
         force_lb > 0.0 ? phrase("effective depth: lower edge up to the highest fastener")
                        : phrase("effective depth: upper edge down to the lowest fastener"),
         "from the elevation", reached_by(of, force_lb), "in", "NDS 2018 3.4.3.3"}};
    append(result.steps, allowable_shear_steps(grade, adjusted));
    result.steps.push_back({"V_r'", phrase("allowable shear there"),
                            of.near_end ? "2/3 F_v' b d_e (d_e/d)^2: a fastener less than 5 d from the end"
                                        : "2/3 F_v' b d_e: every fastener 5 d or more from the end",
                            result.capacity, "lb",
                            of.near_end ? "NDS 2018 Eq. 3.4-6" : "NDS 2018 Eq. 3.4-7 (from memory, to be confirmed)"});
    conclude(result);
    return result;
}

std::vector<CheckResult> member_hung_on(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (const std::size_t index : loaded_members(input)) {
        const Hanging of = hanging(input.resolved, index);
        if (!of.anchors.empty()) results.push_back(hung(input, of));
    }
    return results;
}

const RegisterCheck registered{
    {"member-shear-at-post", phrase("Framing shear where the post hangs"), "NDS 2018 3.4.3.3",
     phrase("The vertical shear that a post's fasteners bring into the member whose side they stand in, with the depth "
            "they take hold of."),
     member_hung_on},
    {model::MountKind::side_fastened}};

}  // namespace
}  // namespace toehold::checks
