#include "demand/side_fastened/side_assumptions.h"

#include "demand/framing/lateral.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace toehold::demand {
namespace {

using format::phrase;

constexpr double outward_rad = 0.5 * std::numbers::pi;
constexpr double one_row_in = 0.25;  // fasteners this near in height share a couple

/// Heights of all that pulls: fasteners that hold, and ties.
std::vector<double> pulling_heights_in(const catalog::Resolved& resolved) {
    std::vector<double> heights;
    for (const catalog::Anchor& anchor : resolved.anchors) {
        if (anchor.seat && catalog::pulls_on_member(anchor)) heights.push_back(anchor.at.z_in);
    }
    for (const model::TensionTie& tie : on_side(resolved.detail).ties) heights.push_back(-tie.below_top_in);
    return heights;
}

/// About a height, pulling at the farthest fasteners above it (up) or below it.
HandCouple couple(const std::vector<double>& heights, double about_z_in, bool up, const ActingLoad& load,
                  double direction_rad) {
    HandCouple hand;
    if (heights.empty()) return hand;
    const double pulls_z_in =
        up ? *std::max_element(heights.begin(), heights.end()) : *std::min_element(heights.begin(), heights.end());
    hand.arm_in = up ? pulls_z_in - about_z_in : about_z_in - pulls_z_in;
    hand.push_lb = load.push_lb;
    hand.height_in = load.height_in - about_z_in;
    hand.direction_rad = direction_rad;
    hand.tension_lb =
        hand.arm_in > 0.0 ? load.push_lb * hand.height_in / hand.arm_in : std::numeric_limits<double>::infinity();
    return hand;
}

/// Which way draws the post off at its top: outward where it stands outside.
double drawing_rad(const catalog::Resolved& resolved) {
    return on_side(resolved.detail).face == model::MemberFace::outside ? outward_rad : 3.0 * outward_rad;
}

const LoadCase& hardest_push(const Demand& demand) {
    return *std::max_element(demand.cases.begin(), demand.cases.end(), [](const LoadCase& a, const LoadCase& b) {
        return a.push_lb * a.height_in < b.push_lb * b.height_in;
    });
}

}  // namespace

SideDemand side_facts(const catalog::Resolved& resolved, const SideContact& contact, const std::vector<Stiffness>& slip,
                      const Demand& demand) {
    SideDemand side;
    side.width_in = contact.width_in;
    side.post_bearing_psi_per_in = contact.stiffness.value;
    side.bearing_source = contact.stiffness.source;
    if (!slip.empty()) {
        side.slip_lb_per_in = slip.front().value;
        side.slip_source = slip.front().source;
    }
    if (contact.stretches.empty()) return side;
    side.from_z_in = contact.stretches.front().from_z_in;
    side.to_z_in = contact.stretches.back().to_z_in;
    const LoadCase& hardest = hardest_push(demand);
    const double off_rad = drawing_rad(resolved), onto_rad = 2.0 * std::numbers::pi - off_rad;
    const std::vector<double> heights = pulling_heights_in(resolved);
    side.about_bottom = couple(heights, side.from_z_in, true, acting_load(hardest, off_rad), off_rad);
    side.about_top = couple(heights, side.to_z_in, false, acting_load(hardest, onto_rad), onto_rad);
    return side;
}

void add_hand_couples(Demand& demand, const catalog::Resolved& resolved) {
    if (!demand.side) return;
    const std::vector<double> heights = pulling_heights_in(resolved);
    if (heights.empty()) return;
    const double top_in = *std::max_element(heights.begin(), heights.end());
    const double bottom_in = *std::min_element(heights.begin(), heights.end());
    const auto near = [](double one_in, double other_in) { return std::abs(one_in - other_in) < one_row_in; };
    const auto share = [&](double height_in) {
        return static_cast<double>(
            std::count_if(heights.begin(), heights.end(), [&](double one) { return near(one, height_in); }));
    };
    const HandCouple &off = demand.side->about_bottom, &onto = demand.side->about_top;
    for (std::size_t i = 0; i < demand.anchors.size(); ++i) {
        if (!resolved.anchors[i].seat) continue;
        const double z_in = resolved.anchors[i].at.z_in;
        AnchorEnvelope& envelope = demand.anchors[i];
        const double between_in = top_in - bottom_in;
        if (near(z_in, top_in)) {
            envelope.hand_edge_lb = std::isfinite(off.tension_lb) ? off.tension_lb / share(top_in) : 0.0;
            if (between_in > 0.0)
                envelope.hand_anchor_lb =
                    off.push_lb * (off.height_in + demand.side->from_z_in - bottom_in) / between_in / share(top_in);
        } else if (near(z_in, bottom_in) && std::isfinite(onto.tension_lb) && onto.arm_in > 0.0) {
            envelope.hand_edge_lb = onto.tension_lb / share(bottom_in);
            envelope.hand_anchor_lb =
                onto.push_lb * (onto.height_in + demand.side->to_z_in - top_in) / between_in / share(bottom_in);
        }
    }
}

std::vector<format::Phrase> side_assumptions(const catalog::Resolved& resolved, bool framing_can_flex) {
    const model::SideFastened& mount = on_side(resolved.detail);
    std::vector<format::Phrase> all = {
        phrase("The post bends, shears and twists as an elastic beam whose section keeps its shape. It presses on the "
               "member's face and never pulls on it; fasteners only pull along their axis. Friction carries nothing."),
        phrase("Fasteners slip across their axis as linear springs without play in their holes; the shear is shared by "
               "their slip."),
        phrase("Where the post lies on it the member moves as one piece. Members behind it that are not fastened "
               "through are not pressed by it."),
        phrase("Where the member is pressed on the ends of joists or blocks behind it, that contact keeps them square "
               "as far as it can at {}.",
               format::Quantity{contact_psi, "psi"})};
    if (carried_by(resolved, side_contact(resolved)))
        all.push_back(
            phrase("The post's fasteners go through the member into the block tight behind it: what the post "
                   "presses on the member is passed on to that block, which takes the whole couple."));
    if (mount.notch)
        all.push_back(phrase("A notched post is taken with the smaller section of its notch over its whole height."));
    if (mount.bracket)
        all.push_back(
            phrase("The bracket's plate is taken as rigid for the forces on the fasteners. Prying by a plate "
                   "that bends adds to them."));
    if (mount.stringer)
        all.push_back(
            phrase("The stringer is computed as a level member of its own depth; contact is taken over the "
                   "upright rectangle that lies within its sloped edges."));
    if (!mount.ties.empty())
        all.push_back(
            phrase("Ties are set tight. Each is a spring of its allowable pull over the movement its report "
                   "gives there."));
    if (framing_can_flex)
        all.push_back(
            phrase("Each of these is solved on rigid framing and on framing that bends, shears, twists and "
                   "slips at its connections, up and down and in rolling. Sideways it is taken as still."));
    if (const auto& fixed = resolved.detail.basis.stiffness) {
        all.push_back(phrase("Bed and anchor stiffness are specified in the file: {}.", fixed->reason));
    } else {
        all.push_back(phrase(
            "Bed and anchor stiffness are known to a factor. The demand is the largest found at the center and at the "
            "corners of two ranges that can govern, each range between published ends."));
    }
    return all;
}

}  // namespace toehold::demand
