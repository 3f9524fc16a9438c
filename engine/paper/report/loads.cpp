// What pushes, and the stiffness it meets.
#include "format/figures.h"
#include "paper/report/sections.h"

#include <fmt/format.h>

#include <algorithm>

namespace toehold::paper::report {
namespace {

using drawing::Across;
using units::System;

Table cases_table(const demand::Demand& demand, System system) {
    Table table;
    table.columns = {{"load", 0.24},
                     {"push, " + unit_of("lb", system), 0.08, Across::right},
                     {"down, " + unit_of("lb", system), 0.08, Across::right},
                     {"height, " + unit_of("in", system), 0.09, Across::right},
                     {"load factor", 0.09, Across::right},
                     {"clause", 0.4}};
    for (const demand::LoadCase& load : demand.cases) {
        table.rows.push_back({words_cell(load.name), words_cell(format::number_text(load.push_lb, "lb", system)),
                              words_cell(format::number_text(load.down_lb, "lb", system)),
                              words_cell(format::number_text(load.height_in, "in", system)),
                              words_cell(format::number_text(load.load_factor)), words_cell(load.source)});
    }
    return table;
}

struct Stiffness {
    std::vector<std::string> of;
    std::string value, source;
};

void add(std::vector<Stiffness>& all, const std::string& of, const std::string& value, const std::string& source) {
    const auto same = std::find_if(
        all.begin(), all.end(), [&](const Stiffness& known) { return known.value == value && known.source == source; });
    if (same == all.end()) {
        all.push_back({{of}, value, source});
    } else {
        same->of.push_back(of);
    }
}

std::vector<Stiffness> stiffnesses(const review::Review& review, System system) {
    const demand::Demand& demand = *review.demand;
    std::vector<Stiffness> all;
    for (const demand::Support& support : demand.supports)
        add(all, "bed on " + model::symbol(support.part), figure(support.stiffness_psi_per_in, "psi/in", system),
            support.stiffness_source);
    for (std::size_t index = 0; index < demand.anchors.size(); ++index) {
        const demand::AnchorEnvelope& envelope = demand.anchors[index];
        add(all, "anchor " + review.resolved.anchors.at(index).id,
            figure(envelope.stiffness_lb_per_in, "lb/in", system), envelope.stiffness_source);
    }
    if (!demand.framing) return all;
    for (const demand::MemberSupport& hold : demand.framing->supports) {
        const std::string held = model::subject(model::member(review.resolved.detail.framing, hold.member));
        add(all, held + " at " + model::key(hold.holder_part),
            figure(hold.stiffness.vertical_lb_per_in, "lb/in", system),
            hold.stiffness.vertical_is_nominal ? "nominal: nothing described holds it" : hold.stiffness.source);
    }
    return all;
}

Table stiffness_table(const review::Review& review, System system) {
    Table table;
    table.columns = {{"stiffness of", 0.3}, {"as computed", 0.14, Across::right}, {"from", 0.56}};
    for (const Stiffness& one : stiffnesses(review, system))
        table.rows.push_back({words_cell(named_together(one.of)), words_cell(one.value), words_cell(one.source)});
    return table;
}

/// The factors in the order they are first met.
std::vector<std::string> factors(const demand::Demand& demand, double demand::StiffnessScenario::*of) {
    std::vector<std::string> all;
    for (const demand::StiffnessScenario& one : demand.scenarios) {
        const std::string factor = format::number_text(one.*of);
        if (std::find(all.begin(), all.end(), factor) == all.end()) all.push_back(factor);
    }
    return all;
}

std::string range_words(const demand::Demand& demand) {
    if (demand.scenarios.size() == 1) return "The file fixes the stiffness: one solve for each load and direction.";
    const bool gives = std::any_of(demand.scenarios.begin(), demand.scenarios.end(),
                                   [](const demand::StiffnessScenario& one) { return one.flexible_framing; });
    return fmt::format(
        "Stiffness is an estimate. Each load is solved with {} combinations: the bed times {}, the anchors times {}{}. "
        "The largest force of all is used.",
        demand.scenarios.size(), listed(factors(demand, &demand::StiffnessScenario::bed)),
        listed(factors(demand, &demand::StiffnessScenario::anchors)),
        gives ? ", and as computed on framing that bends, shears, twists and slips under the plate" : "");
}

std::string directions_words(const model::Loads& loads) {
    return loads.directions == model::Directions::outward ? "Each load pushes outward only, as the file says."
                                                          : "Each load pushes in every direction, in steps of 5 deg; "
                                                            "for every anchor the direction of its largest "
                                                            "pull is then searched between the steps.";
}

}  // namespace

void add_loads(Blocks& blocks, const Source& source) {
    blocks.emplace_back(Heading{1, "3  Loads and stiffness", "loads"});
    const model::BaseDetail& detail = source.review.resolved.detail;
    if (!detail.loads.stated) {
        blocks.emplace_back(
            paragraph("The file states no load. The concentrated load that codes ask of a guard is "
                      "taken."));
    }
    if (!source.review.demand) {
        blocks.emplace_back(paragraph("No load could be followed to the anchors, see section 4."));
        return;
    }
    const demand::Demand& demand = *source.review.demand;
    blocks.emplace_back(cases_table(demand, source.issue.system));
    blocks.emplace_back(paragraph("Heights are above the plate's underside. " + directions_words(detail.loads)));
    blocks.emplace_back(stiffness_table(source.review, source.issue.system));
    blocks.emplace_back(paragraph(range_words(demand)));
}

}  // namespace toehold::paper::report
