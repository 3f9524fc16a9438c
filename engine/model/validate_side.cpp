#include "model/validate_side.h"

#include "model/side_geometry.h"
#include "model/validate_side_parts.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <string>
#include <vector>

namespace toehold::model {
namespace {

using format::phrase;
using format::verbatim;

constexpr double furthest_tie_in = 24.0;

std::vector<std::string> ids_of(const std::vector<Member>& members) {
    std::vector<std::string> ids;
    ids.reserve(members.size());
    for (const Member& member : members) ids.push_back(member.id);
    return ids;
}

/// Those a post can lie against, or an anchor can go into.
std::vector<Member> along_the_rail(const Framing& framing) {
    std::vector<Member> all = members(framing);
    std::erase_if(all, [](const Member& one) { return one.along != PlanAxis::x || !one.length_stated; });
    return all;
}

/// A member by its id that runs along the rail; absent with a problem.
std::optional<Member> level_member(ProblemList& problems, const Framing& framing, const std::string& id) {
    const std::optional<std::size_t> index = find_member(framing, id);
    const format::Phrase accepted =
        these_or(ids_of(along_the_rail(framing)), phrase("the id of a rim, joist or block that runs along the rail"));
    if (!index) {
        problems.add(phrase("no joist, rim or block has this id"), accepted, verbatim(id));
        return std::nullopt;
    }
    const Member found = member(framing, *index);
    if (found.along != PlanAxis::x) {
        problems.add(phrase("{} does not run along the rail", part_name(part_of(found))), accepted, verbatim(id));
        return std::nullopt;
    }
    if (!found.length_stated) {
        problems.add(phrase("where {} ends is not described", part_name(part_of(found))),
                     phrase("from and to of framing/joists"));
        return std::nullopt;
    }
    return found;
}

/// The member lies against the post: its near face where the post's, with bracket and layers, is.
void check_fit(ProblemList& problems, const BaseDetail& detail, const Member& member) {
    const SideJoint joint = side_joint(detail);
    const double center_in = member_center_in(joint, member.width_in);
    const format::Phrase name = part_name(part_of(member));
    if (std::abs(member.across_in - center_in) > side_fit_in) {
        problems.add(
            phrase("{} does not lie against the post", name),
            phrase("its center {} in from the post's axis: {} in to where bracket and layers end, and half its "
                   "width",
                   brief(center_in), brief(joint.to_member_face_in)),
            phrase("{} in", brief(member.across_in)));
    }
    if (member.from_in > 0.0 || member.to_in < 0.0) {
        problems.add(phrase("the post stands beyond the end of {}", name), phrase("a member that runs past the post"),
                     phrase("from {} in to {} in", brief(member.from_in), brief(member.to_in)));
    }
}

/// The lowest that something on the post, or on its bracket, may stand below the member's top.
double lowest_in(const SideFastened& mount) {
    return mount.bracket ? mount.bracket->from_top_in + mount.bracket->height_in : mount.post_bottom_below_top_in;
}

void check_on_post(ProblemList& problems, const BaseDetail& detail, const SideFastened& mount, const SidePlace& place) {
    const double half_in = half_width_in(detail);
    const double half_post_in = 0.5 * shaft(detail.post).width_in;
    problems.between(phrase("x (in)"), place.x_in, -half_in, half_in);
    if (mount.bracket && std::abs(place.x_in) < half_post_in) {
        problems.add(phrase("the place is behind the post, which covers it"),
                     phrase("more than {} in to either side of the post's axis", brief(half_post_in)),
                     phrase("{} in", brief(place.x_in)));
    }
    problems.positive(phrase("height (in) below the member's top"), place.below_top_in, largest_length_in);
    if (place.below_top_in >= lowest_in(mount)) {
        problems.add(mount.bracket ? phrase("the place is below the bracket's lower edge")
                                   : phrase("the place is below the post's bottom"),
                     phrase("less than {} in below the member's top", brief(lowest_in(mount))),
                     phrase("{} in", brief(place.below_top_in)));
    }
    if (mount.bracket && place.below_top_in <= mount.bracket->from_top_in) {
        problems.add(phrase("the place is above the bracket's upper edge"),
                     phrase("more than {} in below the member's top", brief(mount.bracket->from_top_in)),
                     phrase("{} in", brief(place.below_top_in)));
    }
}

/// An anchor here finds wood.
void check_in_member(ProblemList& problems, const SideFastened& mount, const SidePlace& place, const Member& member,
                     double depth_in) {
    const double from_edge_in = from_top_edge_in(mount, place.x_in, place.below_top_in);
    const format::Phrase name = part_name(part_of(member));
    if (place.below_top_in > 0.0 && (from_edge_in <= 0.0 || from_edge_in >= depth_in)) {
        problems.add(phrase("the place is not in {}: an anchor here holds nothing", name),
                     phrase("more than 0, less than {} in from its top edge", brief(depth_in)),
                     phrase("{} in", brief(from_edge_in)));
    }
    if (place.x_in < member.from_in || place.x_in > member.to_in) {
        problems.add(phrase("the place is beyond the end of {}: an anchor here holds nothing", name),
                     phrase("{} to {} in", brief(member.from_in), brief(member.to_in)),
                     phrase("{} in", brief(place.x_in)));
    }
}

/// The ids of places and ties, which results name.
void check_id(ProblemList& problems, std::set<std::string>& taken, const std::string& id) {
    if (id.empty()) problems.add(phrase("the id is empty"), phrase("a name"));
    if (taken.insert(id).second) return;
    problems.add(phrase("the id is used twice"), phrase("ids that differ among places and ties"), verbatim(id));
}

void check_into(ProblemList& problems, const BaseDetail& detail, const TensionTie& tie) {
    const std::optional<std::size_t> index = find_member(detail.framing, tie.into);
    if (!index) {
        problems.add(phrase("no joist, rim or block has this id"),
                     phrase("the id of the joist or block the tie is fastened to"), verbatim(tie.into));
        return;
    }
    const Member held_by = member(detail.framing, *index);
    if (held_by.kind == MemberKind::block || held_by.along == PlanAxis::y) return;
    problems.add(phrase("{} runs along the rail and gives way to the tie sideways", part_name(part_of(held_by))),
                 phrase("a joist that runs outward, or a block"), verbatim(tie.into));
}

/// A bolt that hangs a tie stands at a place of its own and shares its line.
void check_bolt_of_tie(ProblemList& problems, const BaseDetail& detail, const SideFastened& mount,
                       const TensionTie& tie) {
    if (tie.bolt.empty()) return;
    const auto place = std::find_if(mount.places.begin(), mount.places.end(),
                                    [&](const SidePlace& one) { return one.id == tie.bolt; });
    const AnchorGroup* const group = place == mount.places.end() ? nullptr : anchor_group(detail, place->id);
    if (group == nullptr || !std::holds_alternative<ThroughBolt>(group->fastener) || !group->into.empty()) {
        problems.add(phrase("no bolt of the mount hangs the tie"),
                     phrase("the id of a place with a through-bolt that goes into nothing else"), verbatim(tie.bolt));
        return;
    }
    if (tie.x_in != place->x_in || tie.below_top_in != place->below_top_in)
        problems.add(phrase("the tie is not at its bolt"), phrase("the place of {}", tie.bolt));
    const auto first =
        std::find_if(mount.ties.begin(), mount.ties.end(), [&](const TensionTie& one) { return one.bolt == tie.bolt; });
    if (first->id != tie.id)
        problems.add(phrase("the bolt hangs two ties"), phrase("one tie a bolt"), verbatim(tie.bolt));
}

void check_tie(ProblemList& problems, const BaseDetail& detail, const SideFastened& mount, const TensionTie& tie) {
    if (tie.name.empty()) problems.add(phrase("the tie has no name"), phrase("your own name for it"));
    if (tie.report.empty() && tie.chosen)
        problems.add(phrase("the tie's values need their source"), phrase("its evaluation report, edition and table"));
    problems.between(phrase("x (in)"), tie.x_in, -furthest_tie_in, furthest_tie_in);
    problems.between(phrase("height (in) below the member's top"), tie.below_top_in, -largest_length_in,
                     largest_length_in);
    if (tie.below_top_in >= mount.post_bottom_below_top_in) {
        problems.add(phrase("the tie is below the post's bottom"),
                     phrase("less than {} in below the member's top", brief(mount.post_bottom_below_top_in)),
                     phrase("{} in", brief(tie.below_top_in)));
    }
    check_bolt_of_tie(problems, detail, mount, tie);
    problems.positive(phrase("tension (lb)"), tie.tension_lb, 1e6);
    problems.positive(phrase("deflection (in)"), tie.deflection_in, 2.0);
    problems.between(phrase("eccentricity (in)"), tie.eccentricity_in, 0.0, furthest_tie_in);
    check_into(problems, detail, tie);
}

void check_stringer(ProblemList& problems, const StringerSlope& stringer, const Member& member) {
    problems.at("side-fastened/stringer").positive(phrase("angle (deg)"), stringer.angle_deg, 60.0);
    problems.positive(phrase("effective depth (in)"), stringer.effective_depth_in, member.depth_in);
}

void check_places_and_ties(ProblemList& problems, const BaseDetail& detail, const SideFastened& mount,
                           const std::optional<Member>& member) {
    std::set<std::string> taken;
    for (const SidePlace& place : mount.places) {
        problems.at("side-fastened/place[" + place.id + "]");
        check_id(problems, taken, place.id);
        check_on_post(problems, detail, mount, place);
        if (member) check_in_member(problems, mount, place, *member, holding_depth_in(mount, *member));
    }
    for (const TensionTie& tie : mount.ties) {
        problems.at("side-fastened/tie[" + tie.id + "]");
        check_id(problems, taken, tie.id);
        check_tie(problems, detail, mount, tie);
    }
    if (mount.places.empty() && mount.ties.empty()) {
        problems.at("side-fastened")
            .add(phrase("nothing fastens the post to the member"), phrase("one or more places with anchors, or a tie"));
    }
}

/// A member behind the one the post lies against, which the group's anchors go through to.
void check_member_behind(ProblemList& problems, const BaseDetail& detail, const AnchorGroup& group) {
    const SideFastened& mount = on_side(detail);
    if (group.into == mount.member) {
        problems.add(phrase("the post lies against this member itself"),
                     phrase("into left out, or a member behind this one"), verbatim(group.into));
        return;
    }
    const std::optional<Member> behind = level_member(problems, detail.framing, group.into);
    const std::optional<Member> member = side_member(detail);
    if (!behind || !member) return;
    const SideJoint joint = side_joint(detail);
    const double from_in = to_far_face_in(joint, *member);
    if (to_near_face_in(joint, *behind) < from_in - side_fit_in) {
        problems.add(phrase("{} is not behind {}", part_name(part_of(*behind)), part_name(part_of(*member))),
                     phrase("a member that begins at least {} in from the post's axis", brief(from_in)),
                     phrase("{} in", brief(to_near_face_in(joint, *behind))));
        return;
    }
    for (const SidePlace& place : mount.places) {
        if (anchor_group(detail, place.id) == &group)
            check_in_member(problems, mount, place, *behind, behind->depth_in);
    }
}

void check_head_plate(ProblemList& problems, const AnchorGroup& group) {
    problems.positive(phrase("head plate width (in)"), group.head_plate->width_in, 48.0);
    problems.positive(phrase("head plate depth (in)"), group.head_plate->depth_in, 48.0);
    problems.positive(phrase("head plate thickness (in)"), group.head_plate->thickness_in, 12.0);
    if (group.washer)
        problems.add(phrase("a head has a plate or a washer under it, not both"),
                     phrase("one of head-plate and washer"));
}

}  // namespace

void check_side(ProblemList& problems, const BaseDetail& detail, const SideFastened& mount) {
    check_side_parts(problems, detail, mount);
    const std::optional<Member> member = level_member(problems.at("side-fastened"), detail.framing, mount.member);
    if (member) check_fit(problems.at("side-fastened"), detail, *member);
    if (member && mount.stringer) check_stringer(problems, *mount.stringer, *member);
    check_places_and_ties(problems, detail, mount, member);
}

void check_anchors_on_side(ProblemList& problems, const BaseDetail& detail, const AnchorGroup& group) {
    if (group.preload_lb) {
        problems.add(phrase("no preload is counted on a post's side: wood across the grain lets go of it in time"),
                     phrase("preload left out"));
    }
    if (lower_plate(group) != nullptr) {
        problems.add(phrase("a lower plate lies under the framing; these bolts end behind a member"),
                     phrase("washer-below or backing-plate"));
    }
    if (group.head_plate) check_head_plate(problems, group);
    if (!group.into.empty()) check_member_behind(problems, detail, group);
}

}  // namespace toehold::model
