// What was reviewed, and what pushed on it, on what stiffness, and how well the solves balance.
#include "export/text/columns.h"
#include "export/text/sections.h"
#include "export/text/table.h"
#include "format/figures.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace toehold::exporting {
namespace {

using units::System;

std::string length(double length_in, System system) {
    return system == System::us ? units::fraction_in(length_in) : format::figure_text(length_in, "in", system);
}

std::string post(const model::Post& post, System system) {
    if (const auto* tube = std::get_if<model::RectangularTube>(&post)) {
        return fmt::format("tube {} x {}, wall {}", length(tube->width_in, system), length(tube->depth_in, system),
                           length(tube->wall_in, system));
    }
    if (const auto* tube = std::get_if<model::RoundTube>(&post)) {
        return fmt::format("round tube {}, wall {}", length(tube->diameter_in, system), length(tube->wall_in, system));
    }
    const auto& wood = std::get<model::WoodPost>(post);
    return fmt::format("wood {} x {} in a shoe", length(wood.width_in, system), length(wood.depth_in, system));
}

std::string anchors(const std::vector<catalog::Anchor>& anchors) {
    std::map<std::string, std::vector<std::string>> ids;
    for (const catalog::Anchor& anchor : anchors) ids[anchor.name].push_back(anchor.id);
    std::string text;
    for (const auto& [name, holes] : ids) {
        text += text.empty() ? "" : "; ";
        for (const std::string& hole : holes) text += (&hole == &holes.front() ? "" : ", ") + hole;
        text += ": " + name;
    }
    return text.empty() ? "none" : text;
}

std::string basis(const model::Basis& basis) {
    const std::string code = model::building_code(basis) == model::BuildingCode::irc_2021 ? "IRC 2021" : "IBC 2021";
    return basis.method == model::Method::asd
               ? fmt::format("ASD, C_D {}, {}", format::number_text(model::load_duration(basis)), code)
               : fmt::format("LRFD, lambda {}, {}", format::number_text(model::time_effect(basis)), code);
}

std::string loads(const demand::Demand& demand, System system) {
    std::string text;
    for (const demand::LoadCase& load : demand.cases) {
        std::string line = fmt::format("{}: push {}, down {}, {} above the bearing plane", load.name,
                                       format::figure_text(load.push_lb, "lb", system),
                                       format::figure_text(load.down_lb, "lb", system),
                                       format::figure_text(load.height_in, "in", system));
        if (load.load_factor != 1.0)
            line += fmt::format(", load factor {} included", format::number_text(load.load_factor));
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
        add(all, support.id, format::figure_text(support.stiffness_psi_per_in, "psi/in", system),
            support.stiffness_source);
    }
    for (std::size_t index = 0; index < demand.anchors.size(); ++index) {
        const demand::AnchorEnvelope& envelope = demand.anchors[index];
        add(all, "anchor " + review.resolved.anchors.at(index).id,
            format::figure_text(envelope.stiffness_lb_per_in, "lb/in", system), envelope.stiffness_source);
    }
    if (demand.framing) {
        for (const demand::Hold& hold : demand.framing->holds) {
            const std::string held = model::subject(model::member(review.resolved.detail.framing, hold.member));
            add(all, held + " at " + hold.to, format::figure_text(hold.stiffness.vertical_lb_per_in, "lb/in", system),
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
        text += fmt::format("{}bed x {}, anchors x {}{}", text.empty() ? "" : "; ", format::number_text(scenario.bed),
                            format::number_text(scenario.anchors), scenario.framing_gives ? ", framing giving" : "");
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
                                 proof.solves, format::number_text(proof.force_residual),
                                 format::number_text(proof.moment_residual),
                                 format::number_text(proof.complementarity_residual)),
                     "  - ") +
           plate_accuracy(proof.plate);
}

}  // namespace

std::string detail_section(const review::Review& review, System system) {
    const model::BaseDetail& detail = review.resolved.detail;
    std::string text = "DETAIL\n";
    text += paragraph(length(detail.guard.height_in, system) + " above the walking surface", "  guard    ");
    text += paragraph(post(detail.post, system), "  post     ");
    text += paragraph(format::text(model::main_part_words(detail), {system, nullptr}),
                      fmt::format("  {:<9}", model::kind_word(model::main_part(detail).kind)));
    text += paragraph(anchors(review.resolved.anchors), "  anchors  ");
    text += paragraph(basis(detail.basis), "  basis    ");
    if (!detail.note.empty()) text += paragraph(detail.note, "  note     ");
    if (!review.input_sha256.empty()) text += paragraph(review.input_sha256, "  SHA-256 of the file  ");
    return text;
}

std::string loads_section(const review::Review& review, System system) {
    if (!review.demand) return {};
    return "LOADS AND STIFFNESS\n" + loads(*review.demand, system) + stiffnesses(review, system) +
           range(*review.demand) + proof(review.demand->proof);
}

}  // namespace toehold::exporting
