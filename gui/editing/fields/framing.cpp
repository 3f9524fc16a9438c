// The framing as a whole, and what its members have in common.
#include "editing/fields/pieces.h"

#include "editing/fields/choices.h"
#include "editing/fields/groups.h"
#include "editing/parts/members.h"
#include "model/member.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace toehold::editing {
namespace {

using SupportKind = model::JoistSupport::Kind;

const std::array<Word<SupportKind>, 2> support_kinds{
    {{SupportKind::ledger, "ledger", phrase("Ledger: joists hang from its face")},
     {SupportKind::beam, "beam", phrase("Beam or wall: joists lie on it")}}};
constexpr double start_bearing_in = 3.0;
constexpr int most = 50;

/// The line across which a row of joists ends; what a rim or a ledger begins at.
double joists_end(const model::Joists& joists, bool upper) {
    constexpr double unknown_in = 12.0;
    return upper ? joists.to_in.value_or(unknown_in) : joists.from_in.value_or(-unknown_in);
}

Phrase add_rim(model::Framing& framing, const catalog::Catalog& catalog) {
    if (!framing.joists) return phrase("Number of rims can grow only where joists are described.");
    const Timber timber = start_timber(framing, catalog);
    const bool upper = framing.rims.empty();
    model::Rim rim;
    rim.id = free_member_id(framing, "R");
    rim.at_in = joists_end(*framing.joists, upper) + (upper ? 0.5 : -0.5) * timber.width_in;
    for (const model::Joist& joist : framing.joists->members) {
        const double half_in = 0.5 * joist.plies * framing.joists->width_in;
        rim.from_in = std::min(rim.from_in, joist.offset_in - half_in);
        rim.to_in = std::max(rim.to_in, joist.offset_in + half_in);
    }
    rim.width_in = timber.width_in;
    rim.depth_in = timber.depth_in;
    rim.species = timber.species;
    rim.grade = timber.grade;
    framing.rims.push_back(rim);
    return {};
}

Phrase add_support(model::Framing& framing) {
    if (!framing.joists) return phrase("Number of supports can grow only where joists are described.");
    model::JoistSupport support;
    support.id = free_member_id(framing, "S");
    if (framing.supports.empty()) {
        support.kind = SupportKind::ledger;
        support.at_in = joists_end(*framing.joists, false);
    } else {
        support.bearing_in = start_bearing_in;
        support.at_in = joists_end(*framing.joists, true) - 0.5 * start_bearing_in;
    }
    framing.supports.push_back(support);
    return {};
}

double joist_depth(const model::Framing& framing) {
    constexpr double unknown_in = 9.25;
    return framing.joists ? framing.joists->depth_in : unknown_in;
}

void one_rim(Form& form, model::Framing& framing, model::Rim& rim) {
    form.at({fmt::format("framing/rim[{}]", rim.id), {model::PartKind::rim, rim.id}, phrase("Rim {}", rim.id)});
    member_id(form, framing, rim.id);
    form.place({"at", phrase("Place"), phrase("Of its center line, along the joists.")}, rim.at_in);
    form.place({"from", phrase("Lower end"), phrase("Across the joists.")}, rim.from_in);
    form.place({"to", phrase("Upper end"), phrase("Across the joists.")}, rim.to_in);
    piece_fields(form, piece_of(rim, framing));
    plies_field(form, rim.plies);
    connection_fields(form, rim.connection, joist_depth(framing));
}

void support_kind(Form& form, model::JoistSupport& support) {
    const std::size_t before = form.entries().size();
    form.word({"kind", phrase("Kind"), phrase("A beam begins with 3 in of bearing; a ledger has none.")}, support.kind,
              support_kinds);
    form.after(before, [&support] {
        const bool ledger = support.kind == SupportKind::ledger;
        if (ledger) support.bearing_in = 0.0;
        if (!ledger && support.bearing_in == 0.0) support.bearing_in = start_bearing_in;
    });
}

void one_support(Form& form, model::Framing& framing, model::JoistSupport& support) {
    form.at(
        {fmt::format("framing/support[{}]", support.id), model::part_of(support), phrase("Support {}", support.id)});
    form.id({"id", phrase("Id"), phrase("A short name, unlike that of any other joist, rim, support or block.")},
            support.id, framing_ids(framing, support.id));
    support_kind(form, support);
    form.place({"at", phrase("Place"), phrase("Along the joists.")}, support.at_in);
    if (support.kind == SupportKind::beam) {
        form.length({"bearing", phrase("Bearing"), phrase("Length of joist that lies on it.")}, support.bearing_in);
    }
    connection_fields(form, support.connection, joist_depth(framing));
}

void counts(Form& form, model::Framing& framing) {
    form.list(
        {"rim-count", phrase("Number of rims"),
         phrase("The first begins at the upper end of the joists, more at the lower end, of the joists' "
                "section; a smaller number takes the last.")},
        framing.rims.size(), {0, most}, [&framing, &catalog = form.catalog()] { return add_rim(framing, catalog); },
        [&framing] {
            follow_id(framing, framing.rims.back().id, {});
            framing.rims.pop_back();
        });
    form.list(
        {"support-count", phrase("Number of supports"),
         phrase("The first begins as a ledger at the lower end of the joists, more as beams with 3 in of "
                "bearing at the upper; a smaller number takes the last.")},
        framing.supports.size(), {0, most}, [&framing] { return add_support(framing); },
        [&framing] { framing.supports.pop_back(); });
}

void deck_fields(Form& form, model::DeckLoad& deck) {
    form.at({"framing/deck", {}, phrase("Deck load")});
    form.optional_quantity({"dead", phrase("Dead load"), phrase("Of the deck, on its joists. Empty: 10 psf.")},
                           deck.dead_psf, units::Kind::pressure, Range::not_negative);
    form.optional_quantity(
        {"live", phrase("Live load"), phrase("Of the deck, on its joists. Empty: what the code asks for.")},
        deck.live_psf, units::Kind::pressure, Range::not_negative);
}

}  // namespace

std::vector<std::string> framing_ids(const model::Framing& framing, const std::string& except) {
    std::vector<std::string> ids;
    for (const model::Member& member : model::members(framing)) ids.push_back(member.id);
    for (const model::JoistSupport& support : framing.supports) ids.push_back(support.id);
    std::erase(ids, except);
    return ids;
}

void follow_id(model::Framing& framing, const std::string& old, const std::string& fresh) {
    for (model::Block& block : framing.blocks) {
        if (block.from_end.joist == old) block.from_end.joist = fresh;
        if (block.to_end.joist == old) block.to_end.joist = fresh;
    }
}

void member_id(Form& form, model::Framing& framing, std::string& id) {
    form.id({"id", phrase("Id"), phrase("A short name, unlike that of any other joist, rim, support or block.")}, id,
            framing_ids(framing, id), [&framing, &id](const std::string& old) { follow_id(framing, old, id); });
}

Timber start_timber(const model::Framing& framing, const catalog::Catalog& catalog) {
    if (framing.joists) {
        return {framing.joists->width_in, framing.joists->depth_in, framing.joists->species, framing.joists->grade};
    }
    if (!framing.blocks.empty()) return {1.5, 9.25, framing.blocks.front().species, framing.blocks.front().grade};
    Timber timber;
    timber.species = id_or_first(catalog.species, "southern-pine");
    const std::vector<Choice> grades = grade_choices(catalog, timber.species);
    timber.grade = grades.empty() ? "no-2" : grades.front().value;
    return timber;
}

void framing_fields(Form& form, model::Framing& framing) {
    form.at({"framing", {}, phrase("Framing")});
    form.yes_no({"treated", phrase("Preservative treated"),
                 phrase("Treated lumber asks for corrosion protection of what is driven into it.")},
                framing.preservative_treated);
    joist_presence(form, framing);
    counts(form, framing);
    block_count(form, framing);
    joist_fields(form, framing);
    for (model::Rim& rim : framing.rims) one_rim(form, framing, rim);
    for (model::JoistSupport& support : framing.supports) one_support(form, framing, support);
    block_fields(form, framing);
    deck_fields(form, framing.deck);
}

}  // namespace toehold::editing
