// What pushes, and the stiffness it meets.
#include "demand/framing/member_supports.h"
#include "format/figures.h"
#include "paper/report/sections.h"
#include "review/review.h"

#include <algorithm>

namespace toehold::paper::report {
namespace {

using drawing::Across;
using format::Phrase;
using format::phrase;
using model::PartId;

Table cases_table(const Source& source) {
    const units::System system = source.locale().system;
    Table table;
    table.columns = {{source.text(phrase("load")), 0.24},
                     {source.text(phrase("push, {}", unit_of("lb", system))), 0.08, Across::right},
                     {source.text(phrase("down, {}", unit_of("lb", system))), 0.08, Across::right},
                     {source.text(phrase("height, {}", unit_of("in", system))), 0.09, Across::right},
                     {source.text(phrase("load factor")), 0.09, Across::right},
                     {source.text(phrase("clause")), 0.4}};
    for (const demand::LoadCase& load : source.review.demand->cases) {
        table.rows.push_back({words_cell(source.text(load.name)),
                              words_cell(format::number_text(load.push_lb, "lb", system)),
                              words_cell(format::number_text(load.down_lb, "lb", system)),
                              words_cell(format::number_text(load.height_in, "in", system)),
                              words_cell(format::number_text(load.load_factor)), words_cell(source.text(load.source))});
    }
    return table;
}

/// Beds, anchors and holds that read the same.
struct Stiffness {
    std::vector<PartId> beds;  ///< what the bed is on
    std::vector<PartId> parts;
    std::string value, source;
};

class Stiffnesses {
  public:
    explicit Stiffnesses(const format::Locale& locale) : locale_(locale) {}
    void add_bed(const PartId& support, const format::Quantity& value, std::string source) {
        alike(value, std::move(source)).beds.push_back(support);
    }
    void add(const PartId& part, const format::Quantity& value, std::string source) {
        alike(value, std::move(source)).parts.push_back(part);
    }
    [[nodiscard]] const std::vector<Stiffness>& all() const { return all_; }

  private:
    Stiffness& alike(const format::Quantity& value, std::string source) {
        std::string words = figure(value.value, value.unit, locale_.system);
        const auto known = std::find_if(
            all_.begin(), all_.end(), [&](const Stiffness& one) { return one.value == words && one.source == source; });
        if (known != all_.end()) return *known;
        all_.push_back({{}, {}, std::move(words), std::move(source)});
        return all_.back();
    }

    const format::Locale& locale_;
    std::vector<Stiffness> all_;
};

std::vector<Stiffness> stiffnesses(const Source& source) {
    const review::Review& review = source.review;
    const demand::Demand& demand = *review.demand;
    const model::Framing& framing = review.resolved.detail.framing;
    Stiffnesses all(source.locale());
    for (const demand::Support& support : demand.supports) {
        all.add_bed(support.part, {support.stiffness_psi_per_in, "psi/in"}, source.text(support.stiffness_source));
    }
    for (std::size_t index = 0; index < demand.anchors.size(); ++index) {
        const demand::AnchorEnvelope& envelope = demand.anchors[index];
        all.add(model::anchor_part(review.resolved.anchors.at(index).id), {envelope.stiffness_lb_per_in, "lb/in"},
                source.text(envelope.stiffness_source));
    }
    if (!demand.framing) return all.all();
    for (const demand::MemberSupport& support : demand.framing->supports) {
        const PartId held = demand::supported_part(support, model::part_of(model::member(framing, support.member)));
        all.add(held, {support.stiffness.vertical_lb_per_in, "lb/in"},
                support.stiffness.vertical_is_nominal ? source.text(phrase("nominal: no support is specified"))
                                                      : source.text(support.stiffness.source));
    }
    return all.all();
}

Table stiffness_table(const Source& source) {
    Table table;
    table.columns = {{source.text(phrase("stiffness of")), 0.3},
                     {source.text(phrase("as computed")), 0.14, Across::right},
                     {source.text(phrase("source")), 0.56}};
    for (const Stiffness& one : stiffnesses(source)) {
        format::Listed names;
        if (!one.beds.empty()) names.items.push_back(phrase("bed on {}", named_together(one.beds)));
        if (!one.parts.empty()) names.items.push_back(named_together(one.parts));
        table.rows.push_back(
            {words_cell(source.text(phrase("{}", std::move(names)))), words_cell(one.value), words_cell(one.source)});
    }
    return table;
}

/// The factors in the order they are first met.
format::Listed factors(const demand::Demand& demand, double demand::StiffnessScenario::*of) {
    std::vector<std::string> all;
    for (const demand::StiffnessScenario& one : demand.scenarios) {
        const std::string factor = format::number_text(one.*of);
        if (std::find(all.begin(), all.end(), factor) == all.end()) all.push_back(factor);
    }
    return listed(all);
}

Phrase range_words(const demand::Demand& demand) {
    const std::size_t count = demand.scenarios.size();
    if (count == 1) return phrase("The file fixes the stiffness: one solve for each load and direction.");
    const format::Listed bed = factors(demand, &demand::StiffnessScenario::bed),
                         anchors = factors(demand, &demand::StiffnessScenario::anchors);
    const bool flexible = std::any_of(demand.scenarios.begin(), demand.scenarios.end(),
                                      [](const demand::StiffnessScenario& one) { return one.flexible_framing; });
    return flexible ? phrase(
                          "Stiffness is an estimate. Each load is solved with {} combinations: the bed times {}, "
                          "the anchors times {}, and as computed on flexible framing (bending, shear, torsion and "
                          "slip of its connections). The largest force of all is used.",
                          count, bed, anchors)
                    : phrase(
                          "Stiffness is an estimate. Each load is solved with {} combinations: the bed times {}, "
                          "the anchors times {}. The largest force of all is used.",
                          count, bed, anchors);
}

Phrase directions_words(const model::Loads& loads) {
    return loads.directions == model::Directions::outward
               ? phrase("Each load pushes outward only, as the file specifies.")
               : phrase(
                     "Each load pushes in every direction, in steps of 5 deg; for every anchor the direction of "
                     "its largest tension is then searched between the steps.");
}

}  // namespace

void add_loads(Blocks& blocks, const Source& source) {
    blocks.emplace_back(section(3, phrase("Loads and stiffness"), "loads", source.locale()));
    const model::BaseDetail& detail = source.review.resolved.detail;
    if (!detail.loads.stated) {
        blocks.emplace_back(paragraph(source.text(
            phrase("The file specifies no load. Assumed: the concentrated load that codes require of a guard."))));
    }
    if (!source.review.demand) {
        blocks.emplace_back(paragraph(source.text(phrase("No load could be followed to the anchors, see section 4."))));
        return;
    }
    blocks.emplace_back(cases_table(source));
    blocks.emplace_back(paragraph(sentences(
        {phrase("Heights are above the underside of the plate."), directions_words(detail.loads)}, source.locale())));
    blocks.emplace_back(stiffness_table(source));
    blocks.emplace_back(paragraph(source.text(range_words(*source.review.demand))));
}

}  // namespace toehold::paper::report
