#include "editing/fields/choices.h"
#include "editing/fields/groups.h"

#include <fmt/format.h>

#include <algorithm>

namespace toehold::editing {
namespace {

bool up_a_side(const model::BaseDetail& detail) { return model::kind(detail.mount) == model::MountKind::side_fastened; }

/// The holes or places the group gives an anchor, named or not.
std::vector<std::string> holes_of(const model::BaseDetail& detail, const model::AnchorGroup& group) {
    std::vector<std::string> ids = model::anchor_place_ids(detail);
    std::erase_if(ids, [&](const std::string& id) { return model::anchor_group(detail, id) != &group; });
    return ids;
}

/// A group like the last, for the last of that one's holes.
Phrase add_group(model::BaseDetail& detail) {
    std::vector<model::AnchorGroup>& groups = model::anchor_groups(detail);
    if (groups.empty()) {
        groups.emplace_back();
        return {};
    }
    const std::vector<std::string> holes = holes_of(detail, groups.back());
    if (holes.size() < 2) {
        return up_a_side(detail) ? phrase("Number of anchor groups cannot grow: the last group has no place to spare.")
                                 : phrase("Number of anchor groups cannot grow: the last group has no hole to spare.");
    }
    std::erase(groups.back().holes, holes.back());
    model::AnchorGroup group = groups.back();
    group.holes = {holes.back()};
    groups.push_back(std::move(group));
    return {};
}

/// Its holes go to the group before it.
void remove_group(model::BaseDetail& detail) {
    std::vector<model::AnchorGroup>& groups = model::anchor_groups(detail);
    const std::vector<std::string> holes = holes_of(detail, groups.back());
    groups.pop_back();
    const auto takes_the_rest = [](const model::AnchorGroup& group) { return group.holes.empty(); };
    if (groups.empty() || std::any_of(groups.begin(), groups.end(), takes_the_rest)) return;
    std::vector<std::string>& named = groups.back().holes;
    named.insert(named.end(), holes.begin(), holes.end());
}

Phrase no_such_hole(bool up, const std::string& id) {
    return up ? phrase("Places takes ids of the post's places with blanks between; {} is none.", id)
              : phrase("Holes takes ids of the plate's holes with blanks between; {} is none.", id);
}

Reading<std::vector<std::string>> read_holes(const std::string& text, const model::BaseDetail& detail) {
    const std::vector<std::string> places = model::anchor_place_ids(detail);
    std::vector<std::string> ids;
    std::string rest = trimmed(text);
    while (!rest.empty()) {
        const std::size_t end = std::min(rest.size(), rest.find_first_of(" \t,;"));
        const std::string id = rest.substr(0, end);
        rest.erase(0, std::min(rest.size(), rest.find_first_not_of(" \t,;", end)));
        if (id.empty()) continue;
        if (std::find(places.begin(), places.end(), id) == places.end())
            return {std::nullopt, no_such_hole(up_a_side(detail), id)};
        if (std::find(ids.begin(), ids.end(), id) == ids.end()) ids.push_back(id);
    }
    return {ids, {}};
}

Named holes_name(bool up) {
    if (up) {
        return {"holes", phrase("Places"),
                phrase("Ids of the places with this fastener, blanks between. Empty: every place that no other group "
                       "names.")};
    }
    return {"holes", phrase("Holes"),
            phrase("Ids of the holes with this fastener, blanks between. Empty: every hole that no "
                   "other group names.")};
}

void holes_field(Form& form, const model::BaseDetail& detail, model::AnchorGroup& group) {
    const bool up = up_a_side(detail);
    Field field = form.fresh(holes_name(up), FieldKind::text);
    field.value = fmt::format("{}", fmt::join(group.holes, " "));
    field.may_be_empty = true;
    for (const std::string& id : model::anchor_place_ids(detail))
        field.choices.push_back({id, up ? phrase("Place {}", id) : phrase("Hole {}", id)});
    form.add(std::move(field), [&detail, &group](const std::string& text) -> Outcome {
        const Reading<std::vector<std::string>> read = read_holes(text, detail);
        if (!read.value) return {read.refusal};
        group.holes = *read.value;
        return {};
    });
}

void washer_field(Form& form, model::AnchorGroup& group, const Phrase& help) {
    const std::string now = group.washer ? group.washer->size : std::string();
    form.optional_pick({"washer", phrase("Washer"), help}, now, row_choices(form.catalog().washers),
                       [&group](const std::string& chosen) {
                           group.washer.reset();
                           if (!chosen.empty()) group.washer = model::Washer{chosen};
                       });
}

void preload_field(Form& form, model::AnchorGroup& group) {
    form.optional_quantity({"preload", phrase("Preload"),
                            phrase("Pull each anchor is set to and keeps. Empty: none is counted, since wood "
                                   "lets go of it in time.")},
                           group.preload_lb, units::Kind::force);
}

Heading group_heading(const model::BaseDetail& detail, std::size_t index) {
    const std::vector<std::string> holes = holes_of(detail, model::anchor_groups(detail)[index]);
    Heading heading{fmt::format("anchors[{}]", index + 1), {}, {}};
    heading.group = holes.empty() ? phrase("Anchor group {}", index + 1)
                                  : phrase("Anchors {}", fmt::format("{}", fmt::join(holes, " ")));
    for (const std::string& id : holes) heading.also.push_back(model::anchor_part(id));
    if (heading.also.empty()) return heading;
    heading.part = heading.also.front();
    heading.also.erase(heading.also.begin());
    return heading;
}

}  // namespace

void anchor_fields(Form& form, model::BaseDetail& detail) {
    const bool up = up_a_side(detail);
    std::vector<model::AnchorGroup>& groups = model::anchor_groups(detail);
    form.at({"", {}, phrase("Anchors")});
    form.list(
        {"anchor-group-count", phrase("Number of anchor groups"),
         up ? phrase("One fastener each. A new group is like the last and takes the last of its places; one that is "
                     "removed gives its places to the group before.")
            : phrase("One fastener each. A new group is like the last and takes the last of its holes; one that "
                     "is removed gives its holes to the group before.")},
        groups.size(), {up ? 0 : 1, static_cast<int>(std::max<std::size_t>(1, model::anchor_place_ids(detail).size()))},
        [&detail] { return add_group(detail); }, [&detail] { remove_group(detail); });
    for (std::size_t index = 0; index < groups.size(); ++index) {
        model::AnchorGroup& group = groups[index];
        form.at(group_heading(detail, index));
        holes_field(form, detail, group);
        if (up) into_field(form, detail, group);
        fastener_fields(form, group, up);
        if (up) {
            washer_field(form, group, phrase("Between the head and the post. Empty: none."));
            head_plate_fields(form, group);
        } else {
            washer_field(form, group, phrase("Between the head and the plate. Empty: none."));
            preload_field(form, group);
        }
        form.text({"corrosion-protection", phrase("Corrosion protection"),
                   phrase("For instance hot-dip galvanized, ASTM A153. Empty: not specified, and a finding asks for "
                          "it in treated wood.")},
                  group.corrosion_protection);
    }
}

}  // namespace toehold::editing
