// What only a fastener up a post's side has: the member behind that it reaches, and a plate under its head.
#include "editing/fields/choices.h"
#include "editing/fields/groups.h"
#include "model/member.h"

namespace toehold::editing {
namespace {

/// Those that run along the rail, behind the one the post lies against.
std::vector<Choice> level_members_behind(const model::BaseDetail& detail) {
    std::vector<Choice> choices;
    for (const model::Member& member : model::members(detail.framing)) {
        if (member.along == model::PlanAxis::x && member.id != on_side(detail).member)
            choices.push_back({member.id, model::part_name(model::part_of(member))});
    }
    return choices;
}

}  // namespace

void into_field(Form& form, const model::BaseDetail& detail, model::AnchorGroup& group) {
    form.pick_or_none({"into", phrase("Held in"),
                       phrase("The member behind that the fasteners go through to, which then takes their pull. Empty: "
                              "the member the post lies against.")},
                      group.into, level_members_behind(detail));
}

void head_plate_fields(Form& form, model::AnchorGroup& group) {
    form.presence({"head-plate-given", phrase("Plate under the head"),
                   phrase("One for each fastener, in place of a washer; begins as 2 1/2 in square, 1/4 in thick.")},
                  group.head_plate,
                  model::BackingPlate{2.5, 2.5, 0.25, id_or_first(form.catalog().metals, "steel-a36")});
    if (!group.head_plate) return;
    form.length({"head-plate-width", phrase("Head plate width"), phrase("Along the rail.")},
                group.head_plate->width_in);
    form.length({"head-plate-depth", phrase("Head plate depth"), phrase("Up the post.")}, group.head_plate->depth_in);
    form.length({"head-plate-thickness", phrase("Head plate thickness"), phrase("Of the plate under the head.")},
                group.head_plate->thickness_in);
    form.pick({"head-plate-metal", phrase("Head plate metal"), phrase("Of the plate under the head.")},
              group.head_plate->metal, row_choices(form.catalog().metals));
}

}  // namespace toehold::editing
