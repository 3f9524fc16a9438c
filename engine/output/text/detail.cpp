// What was reviewed, in a few lines: enough to see that it is the right detail.
#include "output/figures.h"
#include "output/text/columns.h"
#include "output/text/sections.h"

#include <fmt/format.h>

#include <map>

namespace toehold::output {
namespace {

using units::System;

std::string length(double length_in, System system) {
    return system == System::us ? units::fraction_in(length_in) : figure_text(length_in, "in", system);
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
               ? fmt::format("ASD, C_D {}, {}", number_text(model::load_duration(basis)), code)
               : fmt::format("LRFD, lambda {}, {}", number_text(model::time_effect(basis)), code);
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

}  // namespace toehold::output
