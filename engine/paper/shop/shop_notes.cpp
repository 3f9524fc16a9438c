#include "paper/shop/shop_notes.h"

#include "drawing/annotation/labels.h"

#include <fmt/format.h>

namespace toehold::paper::shop {
namespace {

using catalog::MetalKind;
using drawing::length_figure;

/// Of the post, or of the shoe a wood post stands in.
bool welded(const catalog::Resolved& resolved) {
    return on_deck(resolved.detail).weld && on_deck(resolved.detail).weld->leg_in > 0.0;
}

bool shoe_is_bolted(const model::Post& post) {
    const auto* const wood = std::get_if<model::WoodPost>(&post);
    return wood != nullptr && wood->shoe.attachment == model::ShoeAttachment::bolted;
}

std::string welding_code(MetalKind kind) {
    switch (kind) {
        case MetalKind::carbon_steel:
            return "AWS D1.1 (steel)";
        case MetalKind::stainless_steel:
            return "AWS D1.6 (stainless steel)";
        case MetalKind::aluminum:
            return "AWS D1.2 (aluminum)";
    }
    return {};
}

std::string post_size(const model::Post& post, units::System system) {
    const auto figure = [&](double length_in) { return length_figure(length_in, system); };
    if (const auto* const tube = std::get_if<model::RectangularTube>(&post))
        return fmt::format("Tube {} x {} x {} wall", figure(tube->width_in), figure(tube->depth_in),
                           figure(tube->wall_in));
    if (const auto* const tube = std::get_if<model::RoundTube>(&post))
        return fmt::format("Round tube \u2300 {} x {} wall", figure(tube->diameter_in), figure(tube->wall_in));
    const auto& wood = std::get<model::WoodPost>(post);
    return fmt::format("Shoe {} x {} x {} wall, {} high above the plate's underside, for a {} x {} wood post",
                       figure(wood.shoe.width_in), figure(wood.shoe.depth_in), figure(wood.shoe.wall_in),
                       figure(wood.shoe.height_in), figure(wood.width_in), figure(wood.depth_in));
}

}  // namespace

Schedule tolerances(units::System system) {
    const bool si = system == units::System::si;
    const char* const fine = si ? "\u00B1 0.8 mm" : "\u00B1 1/32 in";
    const char* const coarse = si ? "\u00B1 1.5 mm" : "\u00B1 1/16 in";
    return {"TOLERANCES",
            {{"Of", 2.2}, {"Common practice", 1.6}},
            {{"Hole and slot, place", fine},
             {"Hole and slot, size", si ? "+ 0.8 mm, \u2212 0" : "+ 1/32 in, \u2212 0"},
             {"Outline, corners", coarse},
             {"Post, place on the plate", coarse},
             {"Post, square to the plate", "\u00B1 1/2\u00B0"},
             {"Plate flat after welding", si ? "1.5 mm" : "1/16 in"},
             {"Thickness", "as the mill's standard"}},
            {"Where the order or the project's specification says otherwise, that holds."}};
}

std::vector<std::string> shop_notes(const catalog::Resolved& resolved) {
    const MetalKind kind = on_deck(resolved).plate_metal.kind;
    std::vector<std::string> notes = {
        "Figures govern; do not scale.", "Deburr; break all sharp edges.",
        "Holes and slots are drilled, punched or machine-cut to the size shown. Do not enlarge them.",
        "The cutting file has the net size: kerf by the shop."};
    if (welded(resolved)) {
        notes.push_back("Weld to " + welding_code(kind) +
                        ", as applicable. Post square and centred as shown; keep welds clear of holes.");
        if (kind == MetalKind::carbon_steel)
            notes.emplace_back(
                "Where galvanizing is ordered: after welding (ASTM A123); vent and drain closed tubes "
                "as the galvanizer asks; clear holes of zinc.");
    }
    notes.emplace_back("This drawing says what to make, and nothing of its strength.");
    return notes;
}

std::string post_words(const catalog::Resolved& resolved, units::System system) {
    return post_size(resolved.detail.post, system) + ", " + resolved.post_metal.name;
}

std::string weld_words(const catalog::Resolved& resolved, units::System system) {
    if (!welded(resolved))
        return shoe_is_bolted(resolved.detail.post) ? "none; shoe bolted, its bolts not described: by order"
                                                    : "none described";
    const std::string filler = on_deck(resolved).filler ? ", " + on_deck(resolved).filler->name : std::string();
    return length_figure(on_deck(resolved.detail).weld->leg_in, system) + " fillet all round" + filler;
}

}  // namespace toehold::paper::shop
