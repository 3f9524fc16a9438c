#include "search/changes/side_hardware.h"

#include "model/follow_joint.h"
#include "search/changes/anchors.h"
#include "search/changes/ends.h"
#include "search/changes/side_rows.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace toehold::search {
namespace {

using format::phrase;
using model::AnchorGroup;
using model::BaseDetail;
using model::Member;
using model::PlanAxis;

/// A joist or block square to the member, and its face towards the post along the rail.
struct Beside {
    Member member;
    double face_in = 0.0;
    double towards = 1.0;  ///< of the rail: which way the joist is from the post
};

/// Those that run up to the member's far face; the one whose face is nearest to the post's axis.
std::optional<Beside> beside_post(const BaseDetail& detail) {
    const std::optional<Member> fastened_to = model::side_member(detail);
    if (!fastened_to) return std::nullopt;
    std::optional<Beside> nearest;
    for (const Member& one : model::members(detail.framing)) {
        if (one.along != PlanAxis::y || !one.length_stated) continue;
        const bool meets =
            model::meets(one, one.to_in, true, *fastened_to) || model::meets(one, one.from_in, false, *fastened_to);
        if (!meets) continue;
        const double towards = one.across_in < 0.0 ? -1.0 : 1.0;
        const double face_in = one.across_in - towards * 0.5 * one.width_in;
        if (!nearest || towards * face_in < nearest->towards * nearest->face_in)
            nearest = Beside{one, face_in, towards};
    }
    return nearest;
}

/// Along that joist's side, within the post's width; else the post moves until they are on its axis.
double tie_line_in(BaseDetail& detail, const Beside& beside) {
    const double line_in = beside.face_in - beside.towards * tie_off_joist_in;
    if (std::abs(line_in) <= model::half_width_in(detail)) return line_in;
    model::move_framing(detail.framing, {-line_in, 0.0});
    return 0.0;
}

/// The through-bolt in the tie's line at its row, which hangs it; nullptr: the tie hangs by its own fasteners.
const model::SidePlace* bolt_at(const BaseDetail& detail, double x_in, double row_in) {
    constexpr double one_line_in = 0.0625, one_row_in = 0.25;
    for (const model::SidePlace& place : on_side(detail).places) {
        const AnchorGroup* const group = model::anchor_group(detail, place.id);
        const bool bolt =
            group != nullptr && group->into.empty() && std::holds_alternative<model::ThroughBolt>(group->fastener);
        if (bolt && std::abs(place.x_in - x_in) <= one_line_in && std::abs(place.below_top_in - row_in) < one_row_in)
            return &place;
    }
    return nullptr;
}

std::string free_tie_id(const model::SideFastened& mount) {
    for (std::size_t number = 1;; ++number) {
        std::string id = "T" + std::to_string(number);
        const bool taken =
            std::any_of(mount.places.begin(), mount.places.end(), [&](const auto& one) { return one.id == id; }) ||
            std::any_of(mount.ties.begin(), mount.ties.end(), [&](const auto& one) { return one.id == id; });
        if (!taken) return id;
    }
}

}  // namespace

Applied set_head_plate(BaseDetail& detail, const model::BackingPlate& plate) {
    if (!is_on_side(detail)) return not_on_side();
    if (!std::holds_alternative<model::WoodPost>(detail.post))
        return refused(phrase("the heads bear on metal and need no plate"));
    for (AnchorGroup& group : anchor_groups(detail)) {
        group.washer.reset();
        group.head_plate = plate;
    }
    return {};
}

Applied set_head_washer(BaseDetail& detail, const std::optional<model::Washer>& washer) {
    if (!is_on_side(detail)) return not_on_side();
    for (AnchorGroup& group : anchor_groups(detail)) {
        group.head_plate.reset();
        group.washer = washer;
    }
    return {};
}

Applied set_nut(BaseDetail& detail, const decltype(model::ThroughBolt::below)& below) {
    if (!is_on_side(detail)) return not_on_side();
    if (!all_bolts(detail)) return meaningless(phrase("only bolts have a nut behind the member"));
    for (AnchorGroup& group : anchor_groups(detail)) std::get<model::ThroughBolt>(group.fastener).below = below;
    return {};
}

Applied set_bracket_thickness(BaseDetail& detail, double thickness_in) {
    if (!is_on_side(detail)) return not_on_side();
    if (!on_side(detail).bracket) return refused(phrase("the post has no bracket"));
    const model::SideJoint before = model::side_joint(detail);
    on_side(detail).bracket->thickness_in = thickness_in;
    model::framing_follows(detail, before);
    bolts_to_suit(detail);
    return {};
}

Applied add_ties(BaseDetail& detail, double tension_lb) {
    if (!is_on_side(detail)) return not_on_side();
    if (on_side(detail).face == model::MemberFace::inside)
        return refused(phrase("no tie draws a post inside the deck against its member"));
    std::erase_if(on_side(detail).ties, [](const model::TensionTie& tie) { return !tie.chosen; });
    if (!on_side(detail).ties.empty()) return refused(phrase("ties hold the post already"));
    const std::optional<Beside> beside = beside_post(detail);
    if (!beside) return refused(phrase("no joist or block runs up to the member for a tie"));
    model::TensionTie tie;
    tie.name = "tension tie";
    tie.chosen = false;
    tie.x_in = tie_line_in(detail, *beside);
    tie.tension_lb = tension_lb;
    tie.deflection_in = tie_gives_in;
    tie.into = beside->member.id;
    tie.eccentricity_in = tie_off_joist_in;
    for (const double row_in : side_rows(detail)) {
        model::TensionTie one = tie;
        one.id = free_tie_id(on_side(detail));
        one.below_top_in = row_in;
        if (const model::SidePlace* const bolt = bolt_at(detail, tie.x_in, row_in)) {
            one.bolt = bolt->id;
            one.x_in = bolt->x_in;
            one.below_top_in = bolt->below_top_in;
        }
        on_side(detail).ties.push_back(one);
    }
    if (on_side(detail).ties.empty()) return refused(phrase("no fastener is there for a tie to hang at"));
    return {};
}

Applied rim_hardware(BaseDetail& detail, double vertical_lb) {
    if (!is_on_side(detail)) return not_on_side();
    for (model::Rim& rim : detail.framing.rims) {
        if (rim.id != on_side(detail).member) continue;
        const double joist_in = detail.framing.joists ? detail.framing.joists->depth_in : rim.depth_in;
        const LeastValues least = least_values(vertical_lb, std::min(rim.depth_in, joist_in));
        model::ReportedConnector hardware;
        hardware.name = "hardware on both sides of the joist";
        hardware.chosen = false;
        hardware.uplift_lb = hardware.down_lb = least.vertical_lb;
        hardware.lateral_lb = least.lateral_lb;
        hardware.couple_arm_in = detail.framing.joists ? detail.framing.joists->width_in : 0.0;
        hardware.pull_lb = least.pull_lb;
        hardware.height_in = least.height_in;
        hardware.from_top_in = hardware.from_bottom_in = least.to_edges_in;
        rim.connection = hardware;
        return {};
    }
    return refused(phrase("the post is not fastened to a rim"));
}

}  // namespace toehold::search
