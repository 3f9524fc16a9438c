// Where a post on a member's side is fastened: places of its anchors, and ties by their report.
#include "editing/fields/choices.h"
#include "editing/fields/groups.h"
#include "editing/parts/anchor_places.h"
#include "editing/parts/holes.h"
#include "model/member.h"

#include <fmt/format.h>

#include <algorithm>

namespace toehold::editing {
namespace {

constexpr double place_spacing_in = 2.0;
constexpr int most_ties = 100;

/// Of places and ties, which results name alike.
std::vector<std::string> fastening_ids(const model::SideFastened& mount, const std::string& except) {
    std::vector<std::string> ids;
    for (const model::SidePlace& place : mount.places) ids.push_back(place.id);
    for (const model::TensionTie& tie : mount.ties) ids.push_back(tie.id);
    ids.erase(std::find(ids.begin(), ids.end(), except));
    return ids;
}

/// As far below the last as that is below the one before.
void add_place(model::BaseDetail& detail) {
    const std::vector<model::SidePlace>& places = on_side(detail).places;
    const model::SidePlace last = places.empty() ? model::SidePlace{} : places.back();
    double spacing_in = place_spacing_in;
    if (places.size() > 1) {
        const double before_in = last.below_top_in - places[places.size() - 2].below_top_in;
        if (before_in > 0.0) spacing_in = before_in;
    }
    copy_anchor(detail, last.id, {last.x_in, -last.below_top_in - spacing_in});
}

void place_count(Form& form, model::BaseDetail& detail) {
    form.at({"side", {}, phrase("Fasteners")});
    form.list(
        {"place-count", phrase("Number of places"),
         phrase("Where fasteners stand up the face. A new one stands below the last, as far as that below the one "
                "before; a smaller number takes the last, and its fastener.")},
        on_side(detail).places.size(), {0, static_cast<int>(most_anchors)},
        [&detail] {
            add_place(detail);
            return Phrase{};
        },
        [&detail] { erase_anchors(detail, {on_side(detail).places.back().id}); });
}

void one_place(Form& form, model::BaseDetail& detail, model::SidePlace& place) {
    form.at({fmt::format("side/place[{}]", place.id), model::anchor_part(place.id), phrase("Place {}", place.id)});
    form.id({"id", phrase("Id"), phrase("A short name; the fastener in the place carries it too.")}, place.id,
            fastening_ids(on_side(detail), place.id), [&detail, &place](const std::string& old) {
                for (model::AnchorGroup& group : model::anchor_groups(detail))
                    std::replace(group.holes.begin(), group.holes.end(), old, place.id);
                for (model::TensionTie& tie : on_side(detail).ties) {
                    if (tie.bolt == old) tie.bolt = place.id;
                }
            });
    form.place({"x", phrase("Along the rail"), phrase("From the post's axis.")}, place.x_in);
    form.length({"below-top", phrase("Below the top edge"), phrase("Down from the member's top edge.")},
                place.below_top_in);
}

std::vector<Choice> members_behind(const model::BaseDetail& detail) {
    std::vector<Choice> choices;
    for (const model::Member& member : model::members(detail.framing)) {
        const bool along_the_rail = member.along == model::PlanAxis::x && member.kind != model::MemberKind::block;
        if (!along_the_rail) choices.push_back({member.id, model::part_name(model::part_of(member))});
    }
    return choices;
}

std::string free_tie_id(const model::SideFastened& mount) {
    const auto taken = [&](const std::string& id) {
        const auto is_it = [&](const auto& one) { return one.id == id; };
        return std::any_of(mount.ties.begin(), mount.ties.end(), is_it) ||
               std::any_of(mount.places.begin(), mount.places.end(), is_it);
    };
    for (int number = 1;; ++number) {
        if (std::string id = fmt::format("T{}", number); !taken(id)) return id;
    }
}

void add_tie(model::BaseDetail& detail) {
    constexpr double start_below_in = 2.0;
    model::TensionTie tie;
    tie.id = free_tie_id(on_side(detail));
    tie.name = "Tie of a report";
    tie.chosen = false;
    tie.below_top_in = start_below_in;
    const std::vector<Choice> behind = members_behind(detail);
    if (!behind.empty()) tie.into = behind.front().value;
    on_side(detail).ties.push_back(tie);
}

void tie_count(Form& form, model::BaseDetail& detail) {
    form.at({"side", {}, phrase("Ties")});
    form.list(
        {"tie-count", phrase("Number of ties"),
         phrase("Tension ties or hold-downs by their report, from the post back to a joist or block. A new one is "
                "not chosen and has no values yet; a smaller number takes the last.")},
        on_side(detail).ties.size(), {0, most_ties},
        [&detail] {
            add_tie(detail);
            return Phrase{};
        },
        [&detail] { on_side(detail).ties.pop_back(); });
}

/// At the bolt that hangs it, or at a place of its own.
void tie_place_fields(Form& form, const model::BaseDetail& detail, model::TensionTie& tie) {
    std::vector<Choice> bolts;
    for (const model::SidePlace& place : on_side(detail).places)
        bolts.push_back({place.id, phrase("Place {}", place.id)});
    form.pick_or_none(
        {"bolt", phrase("Hung by"),
         phrase("The place of the through-bolt that hangs it on the post and then draws on it alone. Empty: "
                "it has fasteners of its own.")},
        tie.bolt, bolts);
    if (!tie.bolt.empty()) return;
    form.place({"x", phrase("Along the rail"), phrase("Of its line of force, from the post's axis.")}, tie.x_in);
    form.place({"below-top", phrase("Below the top edge"),
                phrase("Of its line of force, down from the member's top edge; negative is above it.")},
               tie.below_top_in);
}

void one_tie(Form& form, const model::BaseDetail& detail, model::TensionTie& tie) {
    form.at({fmt::format("side/tie[{}]", tie.id), {model::PartKind::tie, tie.id}, phrase("Tie {}", tie.id)});
    form.id({"id", phrase("Id"), phrase("A short name, unlike that of any place or other tie.")}, tie.id,
            fastening_ids(on_side(detail), tie.id));
    form.required_text({"name", phrase("Name"), phrase("Your own name for the hardware.")}, tie.name);
    form.text(
        {"report", phrase("Report"),
         phrase("Report, edition and table the values are from. Empty: not specified, which is allowed while no tie "
                "is chosen.")},
        tie.report);
    tie_place_fields(form, detail, tie);
    form.given({"tension", phrase("Allowable tension"),
                phrase("ASD, square to the member, as the report adjusts it. The review needs it.")},
               tie.tension_lb, units::Kind::force);
    form.given(
        {"deflection", phrase("Deflection"), phrase("At that tension, as the report gives it. The review needs it.")},
        tie.deflection_in, units::Kind::length);
    form.pick({"into", phrase("Fastened to"), phrase("The joist or block behind the member that takes the force.")},
              tie.into, members_behind(detail));
    form.zero_if_empty(
        {"eccentricity", phrase("Eccentricity"),
         phrase("From its line of force to the side of the joist or block it is fastened to. Empty: 0.")},
        tie.eccentricity_in, units::Kind::length, Range::not_negative);
    form.yes_no({"chosen", phrase("Chosen"),
                 phrase("Whether these are the values of a tie that is chosen; else the least tension and the most "
                        "deflection its report must give.")},
                tie.chosen);
}

}  // namespace

void place_fields(Form& form, model::BaseDetail& detail) {
    place_count(form, detail);
    for (model::SidePlace& place : on_side(detail).places) one_place(form, detail, place);
}

void tie_fields(Form& form, model::BaseDetail& detail) {
    tie_count(form, detail);
    for (model::TensionTie& tie : on_side(detail).ties) one_tie(form, detail, tie);
}

}  // namespace toehold::editing
