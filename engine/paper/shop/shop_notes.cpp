#include "paper/shop/shop_notes.h"

#include "drawing/annotation/labels.h"
#include "paper/shop/side/bracket.h"
#include "paper/weld_words.h"

namespace toehold::paper::shop {
namespace {

using catalog::MetalKind;
using drawing::length_figure;
using format::Phrase;
using format::phrase;

/// Of the post, or of the shoe a wood post stands in.
bool welded(const catalog::Resolved& resolved) {
    if (const auto* const side = std::get_if<model::SideFastened>(&resolved.detail.mount))
        return side->bracket && side->bracket->weld_leg_in > 0.0;
    const std::optional<model::Weld>& weld = on_deck(resolved.detail).weld;
    return weld && (weld->leg_in > 0.0 || weld->kind != model::WeldKind::fillet);
}

bool shoe_is_bolted(const model::Post& post) {
    const auto* const wood = std::get_if<model::WoodPost>(&post);
    return wood != nullptr && wood->shoe.attachment == model::ShoeAttachment::bolted;
}

Phrase welding_code(MetalKind kind) {
    switch (kind) {
        case MetalKind::carbon_steel:
            return phrase("AWS D1.1 (steel)");
        case MetalKind::stainless_steel:
            return phrase("AWS D1.6 (stainless steel)");
        case MetalKind::aluminum:
            return phrase("AWS D1.2 (aluminum)");
    }
    return {};
}

Phrase post_size(const model::Post& post, units::System system) {
    const auto figure = [&](double length_in) { return length_figure(length_in, system); };
    if (const auto* const tube = std::get_if<model::RectangularTube>(&post))
        return phrase("Tube {} x {} x {} wall", figure(tube->width_in), figure(tube->depth_in), figure(tube->wall_in));
    if (const auto* const tube = std::get_if<model::RoundTube>(&post))
        return phrase("Round tube ⌀ {} x {} wall", figure(tube->diameter_in), figure(tube->wall_in));
    if (const auto* const bar = std::get_if<model::SolidBar>(&post)) {
        return bar->round ? phrase("Round bar ⌀ {}", figure(bar->width_in))
                          : phrase("Bar {} x {}", figure(bar->width_in), figure(bar->depth_in));
    }
    if (const auto* const bars = std::get_if<model::TwinBars>(&post))
        return phrase("Two bars {} x {}, {} clear between them", figure(bars->width_in), figure(bars->depth_in),
                      figure(bars->gap_in));
    const auto& wood = std::get<model::WoodPost>(post);
    if (!model::is_described(wood.shoe)) return phrase("Wood {} x {}", figure(wood.width_in), figure(wood.depth_in));
    return phrase("Shoe {} x {} x {} wall, {} high above the underside of the plate, for a {} x {} wood post",
                  figure(wood.shoe.width_in), figure(wood.shoe.depth_in), figure(wood.shoe.wall_in),
                  figure(wood.shoe.height_in), figure(wood.width_in), figure(wood.depth_in));
}

/// The pieces the shop cuts for under the plate; empty without packing.
Phrase packing_note(const catalog::Resolved& resolved, units::System system) {
    if (kind(resolved.detail.mount) != model::MountKind::plate_on_deck) return {};
    const model::Layers& layers = on_deck(resolved.detail).layers;
    if (!layers.packing || !layers.decking) return {};
    const std::size_t count = model::packing_places(resolved.detail).size();
    const std::string name = on_deck(resolved).packing ? on_deck(resolved).packing->name : layers.packing->material;
    const std::string high = length_figure(layers.decking->thickness_in, system);
    const std::string wide = length_figure(layers.packing->width_in, system);
    if (layers.packing->shape == model::PackingShape::round)
        return phrase("Packing: {} of {}, ⌀ {} x {} high.", count, name, wide, high);
    return phrase("Packing: {} of {}, {} x {} x {} high.", count, name, wide,
                  length_figure(layers.packing->depth_in, system), high);
}

}  // namespace

Schedule tolerances(const format::Locale& locale) {
    const bool si = locale.system == units::System::si;
    const auto say = [&locale](const Phrase& words) { return format::text(words, locale); };
    const char* const fine = si ? "± 0.8 mm" : "± 1/32 in";
    const char* const coarse = si ? "± 1.5 mm" : "± 1/16 in";
    return {say(phrase("TOLERANCES")),
            {{say(phrase("Of")), 2.2}, {say(phrase("Common practice")), 1.6}},
            {{say(phrase("Hole and slot, place")), fine},
             {say(phrase("Hole and slot, size")), si ? "+ 0.8 mm, − 0" : "+ 1/32 in, − 0"},
             {say(phrase("Outline, corners")), coarse},
             {say(phrase("Post, place on the plate")), coarse},
             {say(phrase("Post, square to the plate")), "± 1/2°"},
             {say(phrase("Plate flat after welding")), si ? "1.5 mm" : "1/16 in"},
             {say(phrase("Thickness")), say(phrase("as the mill's standard"))}},
            {say(phrase("The order or the project's specification governs where it says otherwise."))}};
}

std::vector<std::string> shop_notes(const catalog::Resolved& resolved, const format::Locale& locale) {
    const MetalKind kind = made_plate(resolved).metal.kind;
    std::vector<Phrase> notes = {
        phrase("Figures govern; do not scale drawings."), phrase("Deburr; break all sharp edges."),
        phrase("Holes and slots are drilled, punched or machine-cut to the size shown. Do not enlarge them."),
        phrase("The cutting file has the net size: kerf by the shop.")};
    if (welded(resolved)) {
        notes.push_back(
            phrase("Weld to {}, as applicable. Post square and centered as shown; keep welds clear of holes.",
                   welding_code(kind)));
        if (kind == MetalKind::carbon_steel) {
            notes.push_back(
                phrase("Where galvanizing is ordered: after welding (ASTM A123); vent and drain closed tubes as the "
                       "galvanizer requires; clear holes of zinc."));
        }
    }
    if (Phrase packing = packing_note(resolved, locale.system); !packing.empty()) notes.push_back(std::move(packing));
    notes.push_back(phrase("This drawing says what to make, and nothing of its strength."));
    std::vector<std::string> words;
    words.reserve(notes.size());
    for (const Phrase& note : notes) words.push_back(format::text(note, locale));
    return words;
}

Phrase post_words(const catalog::Resolved& resolved, units::System system) {
    Phrase post = phrase("{}, {}", post_size(resolved.detail.post, system), resolved.post_metal.name);
    const model::Stub* const stub = model::stub_of(resolved.detail.post);
    if (stub == nullptr) return post;
    const auto figure = [&](double length_in) { return length_figure(length_in, system); };
    const bool solid = !(stub->wall_in > 0.0);
    const std::string height = figure(stub->height_in);
    const std::string metal = foot_metal(resolved).name;
    if (model::footprint(resolved.detail.post).round) {
        return solid ? phrase("Stub: solid ⌀ {}, {} high above the underside of the plate, {}; over it: {}",
                              figure(stub->width_in), height, metal, post)
                     : phrase("Stub: tube ⌀ {} x {} wall, {} high above the underside of the plate, {}; over it: {}",
                              figure(stub->width_in), figure(stub->wall_in), height, metal, post);
    }
    return solid ? phrase("Stub: solid {} x {}, {} high above the underside of the plate, {}; over it: {}",
                          figure(stub->width_in), figure(stub->depth_in), height, metal, post)
                 : phrase("Stub: tube {} x {} x {} wall, {} high above the underside of the plate, {}; over it: {}",
                          figure(stub->width_in), figure(stub->depth_in), figure(stub->wall_in), height, metal, post);
}

Phrase weld_words(const catalog::Resolved& resolved, units::System system) {
    if (!welded(resolved)) {
        return shoe_is_bolted(resolved.detail.post) ? phrase("none; shoe bolted, its bolts not specified: by order")
                                                    : phrase("none specified");
    }
    if (kind(resolved.detail.mount) == model::MountKind::side_fastened) return bracket_weld_words(resolved, system);
    const model::Weld& weld = *on_deck(resolved.detail).weld;
    Phrase words = words_of_weld(weld, format::verbatim(length_figure(weld.leg_in, system)),
                                 format::verbatim(length_figure(weld.throat_in, system)));
    const auto& filler = on_deck(resolved).filler;
    if (filler) words = phrase("{}, {}", std::move(words), filler->name);
    const Phrase gussets = words_of_gussets(weld);
    return gussets.empty() ? words : phrase("{}; {}", std::move(words), gussets);
}

}  // namespace toehold::paper::shop
