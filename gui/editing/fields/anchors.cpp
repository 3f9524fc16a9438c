#include "editing/fields/choices.h"
#include "editing/fields/groups.h"

#include <fmt/format.h>

#include <algorithm>

namespace toehold::editing {
namespace {

/// The holes the group gives an anchor, named or not.
std::vector<std::string> holes_of(const model::BaseDetail& detail, const model::AnchorGroup& group) {
    std::vector<std::string> ids;
    for (const model::Hole& hole : on_deck(detail).plate.holes) {
        if (model::anchor_group(detail, hole.id) == &group) ids.push_back(hole.id);
    }
    return ids;
}

/// A group like the last, for the last of that one's holes.
Phrase add_group(model::BaseDetail& detail) {
    if (on_deck(detail).anchors.empty()) {
        on_deck(detail).anchors.emplace_back();
        return {};
    }
    const std::vector<std::string> holes = holes_of(detail, on_deck(detail).anchors.back());
    if (holes.size() < 2) return phrase("Number of anchor groups cannot grow: the last group has no hole to spare.");
    std::erase(on_deck(detail).anchors.back().holes, holes.back());
    model::AnchorGroup group = on_deck(detail).anchors.back();
    group.holes = {holes.back()};
    on_deck(detail).anchors.push_back(std::move(group));
    return {};
}

/// Its holes go to the group before it.
void remove_group(model::BaseDetail& detail) {
    const std::vector<std::string> holes = holes_of(detail, on_deck(detail).anchors.back());
    on_deck(detail).anchors.pop_back();
    const auto takes_the_rest = [](const model::AnchorGroup& group) { return group.holes.empty(); };
    if (std::any_of(on_deck(detail).anchors.begin(), on_deck(detail).anchors.end(), takes_the_rest)) return;
    std::vector<std::string>& named = on_deck(detail).anchors.back().holes;
    named.insert(named.end(), holes.begin(), holes.end());
}

Reading<std::vector<std::string>> read_holes(const std::string& text, const model::Plate& plate) {
    std::vector<std::string> ids;
    std::string rest = trimmed(text);
    while (!rest.empty()) {
        const std::size_t end = std::min(rest.size(), rest.find_first_of(" \t,;"));
        const std::string id = rest.substr(0, end);
        rest.erase(0, std::min(rest.size(), rest.find_first_not_of(" \t,;", end)));
        if (id.empty()) continue;
        const auto is_it = [&](const model::Hole& hole) { return hole.id == id; };
        if (std::none_of(plate.holes.begin(), plate.holes.end(), is_it)) {
            return {std::nullopt, phrase("Holes takes ids of the plate's holes with blanks between; {} is none.", id)};
        }
        if (std::find(ids.begin(), ids.end(), id) == ids.end()) ids.push_back(id);
    }
    return {ids, {}};
}

void holes_field(Form& form, const model::Plate& plate, model::AnchorGroup& group) {
    Field field = form.fresh({"holes", phrase("Holes"),
                              phrase("Ids of the holes with this fastener, blanks between. Empty: every hole that no "
                                     "other group names.")},
                             FieldKind::text);
    field.value = fmt::format("{}", fmt::join(group.holes, " "));
    field.may_be_empty = true;
    for (const model::Hole& hole : plate.holes) field.choices.push_back({hole.id, phrase("Hole {}", hole.id)});
    form.add(std::move(field), [&plate, &group](const std::string& text) -> Outcome {
        const Reading<std::vector<std::string>> read = read_holes(text, plate);
        if (!read.value) return {read.refusal};
        group.holes = *read.value;
        return {};
    });
}

void washer_field(Form& form, model::AnchorGroup& group) {
    const std::string now = group.washer ? group.washer->size : std::string();
    form.optional_pick({"washer", phrase("Washer"), phrase("Between the head and the plate. Empty: none.")}, now,
                       row_choices(form.catalog().washers), [&group](const std::string& chosen) {
                           group.washer.reset();
                           if (!chosen.empty()) group.washer = model::Washer{chosen};
                       });
}

Heading group_heading(const model::BaseDetail& detail, std::size_t index) {
    const std::vector<std::string> holes = holes_of(detail, on_deck(detail).anchors[index]);
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
    form.at({"", {}, phrase("Anchors")});
    form.list(
        {"anchor-group-count", phrase("Number of anchor groups"),
         phrase("One fastener each. A new group is like the last and takes the last of its holes; one that "
                "is removed gives its holes to the group before.")},
        on_deck(detail).anchors.size(),
        {1, static_cast<int>(std::max<std::size_t>(1, on_deck(detail).plate.holes.size()))},
        [&detail] { return add_group(detail); }, [&detail] { remove_group(detail); });
    for (std::size_t index = 0; index < on_deck(detail).anchors.size(); ++index) {
        model::AnchorGroup& group = on_deck(detail).anchors[index];
        form.at(group_heading(detail, index));
        holes_field(form, on_deck(detail).plate, group);
        fastener_fields(form, group);
        washer_field(form, group);
        form.optional_quantity({"preload", phrase("Preload"),
                                phrase("Pull each anchor is set to and keeps. Empty: none is counted, since wood "
                                       "lets go of it in time.")},
                               group.preload_lb, units::Kind::force);
        form.text({"corrosion-protection", phrase("Corrosion protection"),
                   phrase("For instance hot-dip galvanized, ASTM A153. Empty: not specified, and a finding asks for "
                          "it in treated wood.")},
                  group.corrosion_protection);
    }
}

}  // namespace toehold::editing
