// What pushes, and the stiffness it meets.
#include "demand/loads/code_loads.h"
#include "format/figures.h"
#include "paper/report/sections.h"
#include "review/review.h"
#include "wording/stiffness.h"

#include <algorithm>
#include <numbers>

namespace toehold::paper::report {
namespace {

using drawing::Across;
using format::Phrase;
using format::phrase;

Table cases_table(const Source& source) {
    const units::System system = source.locale().system;
    Table table;
    table.columns = {{source.text(phrase("load")), 0.24},
                     {source.text(phrase("push, {}", unit_of("lb", system))), 0.08, Across::right},
                     {source.text(phrase("down, {}", unit_of("lb", system))), 0.08, Across::right},
                     {source.text(phrase("height, {}", unit_of("in", system))), 0.09, Across::right},
                     {source.text(phrase("load factor")), 0.09, Across::right},
                     {source.text(phrase("clause")), 0.4}};
    constexpr double outward_rad = 0.5 * std::numbers::pi;
    for (const demand::LoadCase& one : source.review.demand->cases) {
        const demand::ActingLoad load = demand::acting_load(one, outward_rad);  // with its wind
        const Phrase name =
            one.covered_by ? phrase("{}; not solved, a larger push at the same height covers it", one.name) : one.name;
        table.rows.push_back({words_cell(source.text(name)),
                              words_cell(format::number_text(load.push_lb, "lb", system)),
                              words_cell(format::number_text(load.down_lb, "lb", system)),
                              words_cell(format::number_text(load.height_in, "in", system)),
                              words_cell(format::number_text(one.load_factor)), words_cell(source.text(one.source))});
    }
    return table;
}

Table stiffness_table(const Source& source) {
    Table table;
    table.columns = {{source.text(phrase("stiffness of")), 0.3},
                     {source.text(phrase("center")), 0.14, Across::right},
                     {source.text(phrase("source")), 0.56}};
    for (const wording::Stiffness& one : wording::stiffnesses(source.review)) {
        format::Listed names;
        if (!one.beds.empty()) names.items.push_back(phrase("bed on {}", named_together(one.beds)));
        if (!one.parts.empty()) names.items.push_back(named_together(one.parts));
        table.rows.push_back({words_cell(source.text(phrase("{}", std::move(names)))),
                              words_cell(figure(one.value.value, one.value.unit, source.locale().system)),
                              words_cell(source.text(one.source))});
    }
    return table;
}

Phrase range_words(const demand::Demand& demand) {
    const std::size_t count = demand.scenarios.size();
    if (count == 1) return phrase("The file fixes the stiffness: one solve for each load and direction.");
    const bool flexible = std::any_of(demand.scenarios.begin(), demand.scenarios.end(),
                                      [](const demand::StiffnessScenario& one) { return one.flexible_framing; });
    return flexible
               ? phrase(
                     "Stiffness is known to a factor. Each load is solved with {} combinations: the center and the "
                     "corners that can govern of the two ranges below, on rigid framing and on flexible framing "
                     "(bending, shear, "
                     "torsion and slip of its connections). The largest force of all is used.",
                     count)
               : phrase(
                     "Stiffness is known to a factor. Each load is solved with {} combinations: the center and the "
                     "corners that can govern of the two ranges below. The largest force of all is used.",
                     count);
}

Phrase directions_words(const model::BaseDetail& detail) {
    const model::Directions directions = demand::code_directions(detail);
    if (directions == model::Directions::across)
        return phrase("The guard's loads push across the rail only, as the file specifies.");
    return directions == model::Directions::outward
               ? phrase("The guard's loads push outward and down only, as the file specifies.")
               : phrase(
                     "Each load pushes in every direction, in steps of 5 deg; for every anchor the direction of "
                     "its largest tension is then searched between the steps.");
}

}  // namespace

void add_loads(Blocks& blocks, const Source& source) {
    blocks.emplace_back(section(3, phrase("Loads and stiffness"), "loads", source.locale()));
    const model::BaseDetail& detail = source.review.resolved.detail;
    blocks.emplace_back(paragraph(source.text(
        phrase("The code's loads are applied whatever the file specifies; the file's own come beside them."))));
    if (!source.review.demand) {
        blocks.emplace_back(paragraph(source.text(phrase("No load could be followed to the anchors, see section 4."))));
        return;
    }
    blocks.emplace_back(cases_table(source));
    blocks.emplace_back(paragraph(sentences({kind(detail.mount) == model::MountKind::plate_on_deck
                                                 ? phrase("Heights are above the underside of the plate.")
                                                 : phrase("Heights are above the top edge of the member."),
                                             directions_words(detail)},
                                            source.locale())));
    blocks.emplace_back(stiffness_table(source));
    blocks.emplace_back(paragraph(source.text(range_words(*source.review.demand))));
    for (const Phrase& one : wording::range_sentences(*source.review.demand))
        blocks.emplace_back(paragraph(source.text(one)));
}

}  // namespace toehold::paper::report
