#include "editing/fields/groups.h"
#include "editing/fields/pieces.h"
#include "editing/fields/plan_axes.h"
#include "editing/parts/members.h"

#include <fmt/format.h>

#include <array>

namespace toehold::editing {
namespace {

constexpr double start_spacing_in = 16.0;

model::Joists start_joists(const model::Framing& framing, const catalog::Catalog& catalog) {
    const Timber timber = start_timber(framing, catalog);
    model::Joists joists;
    joists.width_in = timber.width_in;
    joists.depth_in = timber.depth_in;
    joists.species = timber.species;
    joists.grade = timber.grade;
    joists.members = {{"J1", -0.5 * start_spacing_in, 1}, {"J2", 0.5 * start_spacing_in, 1}};
    return joists;
}

/// As far from the last as that is from the one before.
void add_joist(model::Framing& framing) {
    std::vector<model::Joist>& joists = framing.joists->members;
    const std::size_t count = joists.size();
    const double last_in = count > 0 ? joists.back().offset_in : -start_spacing_in;
    const double spacing_in = count > 1 ? last_in - joists[count - 2].offset_in : start_spacing_in;
    joists.push_back({free_member_id(framing, "J"), last_in + spacing_in, 1});
}

void no_more_joists(model::Framing& framing) {
    for (const model::Joist& joist : framing.joists->members) follow_id(framing, joist.id, {});
    framing.joists.reset();
}

Heading all_joists(const model::Joists& joists) {
    Heading heading{"framing/joists", {}, phrase("Joists")};
    for (const model::Joist& joist : joists.members) {
        if (heading.part.kind == model::PartKind::none) {
            heading.part = {model::PartKind::joist, joist.id};
        } else {
            heading.also.push_back({model::PartKind::joist, joist.id});
        }
    }
    return heading;
}

void common_fields(Form& form, model::Framing& framing) {
    model::Joists& joists = *framing.joists;
    form.at(all_joists(joists));
    form.list(
        {"count", phrase("Number of joists"),
         phrase("A new one stands as far from the last as that from the one before; a smaller number takes "
                "the last.")},
        joists.members.size(), {0, 50},
        [&framing] {
            add_joist(framing);
            return Phrase{};
        },
        [&framing] {
            follow_id(framing, framing.joists->members.back().id, {});
            framing.joists->members.pop_back();
        });
    form.word({"along", phrase("Run"), phrase("The way they run in plan.")}, joists.along, plan_axes);
    piece_fields(form, piece_of(joists, framing));
    const Phrase ends = phrase("Along the joists. State both ends or neither. Empty: not described.");
    form.optional_quantity({"from", phrase("Lower end"), ends}, joists.from_in, units::Kind::length, Range::any);
    form.optional_quantity({"to", phrase("Upper end"), ends}, joists.to_in, units::Kind::length, Range::any);
}

}  // namespace

void joist_presence(Form& form, model::Framing& framing) {
    form.kind({"joists-given", phrase("Joists"),
               phrase("Whether they are described; begin as two 16 in apart, 1 1/2 by 9 1/4 in, square to the rail. "
                      "Blocks that ended at a joist taken away are left with nothing to meet.")},
              framing.joists ? "yes" : "no", {{"yes", phrase("Yes")}, {"no", phrase("No")}},
              [&framing, &catalog = form.catalog()](const std::string& chosen) {
                  if (chosen == "yes") framing.joists = start_joists(framing, catalog);
                  if (chosen == "no") no_more_joists(framing);
              });
}

void joist_fields(Form& form, model::Framing& framing) {
    if (!framing.joists) return;
    common_fields(form, framing);
    for (model::Joist& joist : framing.joists->members) {
        form.at({fmt::format("framing/joist[{}]", joist.id),
                 {model::PartKind::joist, joist.id},
                 phrase("Joist {}", joist.id)});
        member_id(form, framing, joist.id);
        form.place({"offset", phrase("Place"), phrase("Of its center line, across the joists.")}, joist.offset_in);
        plies_field(form, joist.plies);
    }
}

}  // namespace toehold::editing
