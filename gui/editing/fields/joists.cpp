#include "editing/fields/groups.h"
#include "editing/fields/pieces.h"
#include "editing/parts/members.h"
#include "editing/words.h"

#include <fmt/format.h>

#include <array>

namespace toehold::editing {
namespace {

constexpr std::array<Word<model::PlanAxis>, 2> axes{{{model::PlanAxis::x, "x", TOEHOLD_MARK("Along the rail")},
                                                     {model::PlanAxis::y, "y", TOEHOLD_MARK("Square to the rail")}}};
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
    Heading heading{"framing/joists", {}, TOEHOLD_MARK("Joists")};
    for (const model::Joist& joist : joists.members) {
        if (heading.part.empty()) {
            heading.part = "joist " + joist.id;
        } else {
            heading.also.push_back("joist " + joist.id);
        }
    }
    return heading;
}

void common_fields(Form& form, model::Framing& framing) {
    model::Joists& joists = *framing.joists;
    form.at(all_joists(joists));
    form.list(
        {"count", TOEHOLD_MARK("Number of joists"),
         TOEHOLD_MARK("A new one stands as far from the last as that from the one before; a smaller number takes "
                      "the last.")},
        joists.members.size(), {0, 50},
        [&framing] {
            add_joist(framing);
            return std::string();
        },
        [&framing] {
            follow_id(framing, framing.joists->members.back().id, {});
            framing.joists->members.pop_back();
        });
    form.word({"along", TOEHOLD_MARK("Run"), TOEHOLD_MARK("The way they run in plan.")}, joists.along, axes);
    piece_fields(form, piece_of(joists));
    const std::string ends = TOEHOLD_MARK("Along the joists. State both ends or neither. Empty: not described.");
    form.optional_quantity({"from", TOEHOLD_MARK("Lower end"), ends}, joists.from_in, units::Kind::length, Range::any);
    form.optional_quantity({"to", TOEHOLD_MARK("Upper end"), ends}, joists.to_in, units::Kind::length, Range::any);
}

}  // namespace

void joist_presence(Form& form, model::Framing& framing) {
    form.kind(
        {"joists-given", TOEHOLD_MARK("Joists"),
         TOEHOLD_MARK("Whether they are described; begin as two 16 in apart, 1 1/2 by 9 1/4 in, square to the rail. "
                      "Blocks that ended at a joist taken away are left with nothing to meet.")},
        framing.joists ? "yes" : "no", {{"yes", TOEHOLD_MARK("Yes")}, {"no", TOEHOLD_MARK("No")}},
        [&framing, &catalog = form.catalog()](const std::string& chosen) {
            if (chosen == "yes") framing.joists = start_joists(framing, catalog);
            if (chosen == "no") no_more_joists(framing);
        });
}

void joist_fields(Form& form, model::Framing& framing) {
    if (!framing.joists) return;
    common_fields(form, framing);
    for (model::Joist& joist : framing.joists->members) {
        form.at({fmt::format("framing/joist[{}]", joist.id), "joist " + joist.id, "Joist " + joist.id});
        member_id(form, framing, joist.id);
        form.place({"offset", TOEHOLD_MARK("Place"), TOEHOLD_MARK("Of its center line, across the joists.")},
                   joist.offset_in);
        plies_field(form, joist.plies);
    }
}

}  // namespace toehold::editing
