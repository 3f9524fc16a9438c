// What pushed, on what stiffness, and how well the solves balance.
#include "output/figures.h"
#include "output/text/columns.h"
#include "output/text/sections.h"
#include "output/text/table.h"

#include <fmt/format.h>

#include <algorithm>

namespace toehold::output {
namespace {

using units::System;

std::string loads(const demand::Demand& demand, System system) {
    std::string text;
    for (const demand::LoadCase& load : demand.cases) {
        std::string line = fmt::format("{}: push {}, down {}, {} above the bearing plane", load.name,
                                       figure_text(load.push_lb, "lb", system), figure_text(load.down_lb, "lb", system),
                                       figure_text(load.height_in, "in", system));
        if (load.load_factor != 1.0) line += fmt::format(", load factor {} included", number_text(load.load_factor));
        if (!load.source.empty()) line += " [" + load.source + "]";
        text += paragraph(line, "  - ");
    }
    return text;
}

struct Stiffness {
    std::string of, value, source;
};

/// Things of the same stiffness from the same source, named together.
void add(std::vector<Stiffness>& all, const std::string& of, std::string value, const std::string& source) {
    const auto same = std::find_if(
        all.begin(), all.end(), [&](const Stiffness& known) { return known.value == value && known.source == source; });
    if (same == all.end()) {
        all.push_back({of, std::move(value), source});
    } else {
        same->of += ", " + of;
    }
}

std::string stiffnesses(const review::Review& review, System system) {
    const demand::Demand& demand = *review.demand;
    std::vector<Stiffness> all;
    for (const demand::Support& support : demand.supports) {
        add(all, support.id, figure_text(support.stiffness_psi_per_in, "psi/in", system), support.stiffness_source);
    }
    for (std::size_t index = 0; index < demand.anchors.size(); ++index) {
        const demand::AnchorEnvelope& envelope = demand.anchors[index];
        add(all, "anchor " + review.resolved.anchors.at(index).id,
            figure_text(envelope.stiffness_lb_per_in, "lb/in", system), envelope.stiffness_source);
    }
    if (demand.framing) {
        for (const demand::Hold& hold : demand.framing->holds) {
            const std::string held = model::subject(model::member(review.resolved.detail.framing, hold.member));
            add(all, held + " at " + hold.to, figure_text(hold.stiffness.vertical_lb_per_in, "lb/in", system),
                hold.stiffness.vertical_is_nominal ? "nominal: nothing described holds it" : hold.stiffness.source);
        }
    }
    std::string text;
    for (const Stiffness& stiffness : all) {
        const std::string source = stiffness.source.empty() ? "" : " [" + stiffness.source + "]";
        text += paragraph("stiffness of " + stiffness.of + ": " + stiffness.value + source, "  - ");
    }
    return text;
}

std::string range(const demand::Demand& demand) {
    std::string text;
    for (const demand::StiffnessScenario& scenario : demand.scenarios) {
        text += fmt::format("{}bed x {}, anchors x {}{}", text.empty() ? "" : "; ", number_text(scenario.bed),
                            number_text(scenario.anchors), scenario.framing_gives ? ", framing giving" : "");
    }
    return text.empty() ? text : paragraph("range of stiffness solved: " + text, "  - ");
}

std::string plate_accuracy(const std::optional<demand::MeshAccuracy>& plate) {
    if (!plate) return {};
    constexpr double in_percent = 100.0;
    return paragraph(
        fmt::format("bending plate of {} unknowns, envelope in a space of {}: the largest pull is within {:.2g} % of a "
                    "finer mesh's and within {:.2g} % of the full mesh's",
                    plate->unknowns, plate->reduced_unknowns, in_percent * plate->mesh_error,
                    in_percent * plate->reduction_error),
        "  - ");
}

std::string proof(const demand::Proof& proof) {
    return paragraph(fmt::format("equilibrium of {} solves: relative residual of force {}, of moment {}, of contact {}",
                                 proof.solves, number_text(proof.force_residual), number_text(proof.moment_residual),
                                 number_text(proof.complementarity_residual)),
                     "  - ") +
           plate_accuracy(proof.plate);
}

}  // namespace

std::string loads_section(const review::Review& review, System system) {
    if (!review.demand) return {};
    return "LOADS AND STIFFNESS\n" + loads(*review.demand, system) + stiffnesses(review, system) +
           range(*review.demand) + proof(review.demand->proof);
}

}  // namespace toehold::output
