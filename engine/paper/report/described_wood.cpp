// Layers, joists, rims, supports and blocks.
#include "model/lumber_size.h"
#include "paper/report/described.h"
#include "paper/words.h"

namespace toehold::paper::report {
namespace {

using format::Dimension;
using format::Phrase;
using format::phrase;

Phrase wood_words(const std::optional<catalog::MemberMaterial>& wood) {
    if (wood && wood->grade.engineered)
        return phrase("{}, by entered values ({})", wood->species.name, wood->grade.source.text);
    return wood ? phrase("{} {}", wood->species.name, wood->grade.name) : phrase("species not specified");
}

Phrase section_words(int plies, double width_in, double depth_in) {
    return plies > 1 ? phrase("{} pieces, each {} wide, {} deep", plies, Dimension{width_in}, Dimension{depth_in})
                     : phrase("{} wide, {} deep", Dimension{width_in}, Dimension{depth_in});
}

/// Lumber is ordered by its nominal size and reckoned by its dressed dry one.
template <class Piece>
Phrase named(Phrase section, const Piece& piece) {
    if (!model::is_size(piece.size, piece.width_in, piece.depth_in)) return section;
    return phrase("{} ({}, dressed dry)", piece.size, std::move(section));
}

std::string axis(model::PlanAxis along) { return along == model::PlanAxis::x ? "x" : "y"; }

Phrase with_fastening(Phrase words, const model::DeckingFastening& fastening) {
    words = phrase("{}; boards {} wide, {} fasteners {} x {} at each crossing of a joist", std::move(words),
                   Dimension{fastening.board_width_in}, fastening.per_crossing, Dimension{fastening.diameter_in},
                   Dimension{fastening.length_in});
    if (!(fastening.lateral_lb > 0.0)) return words;
    return phrase("{}, lateral {} each ({})", std::move(words), format::Quantity{fastening.lateral_lb, "lb"},
                  fastening.report);
}

Phrase decking(const catalog::Resolved& resolved, const model::Decking& decking) {
    const auto* const plate = std::get_if<catalog::PlateOnDeck>(&resolved.mount);
    const auto& material = plate != nullptr ? plate->decking : on_side(resolved).decking;
    const std::string& name = material ? material->name : decking.material;
    Phrase words = phrase("{}, {} thick", name, Dimension{decking.thickness_in});
    words = decking.fastening ? with_fastening(std::move(words), *decking.fastening)
                              : phrase("{}; fasteners not specified, boards assumed loose", std::move(words));
    if (!decking.evidence.empty()) words = phrase("{}; {}", std::move(words), decking.evidence);
    if (decking.bearing_psi > 0.0)
        words = phrase("{}; bearing {} allowed ({})", std::move(words), format::Quantity{decking.bearing_psi, "psi"},
                       decking.report);
    return words;
}

Phrase with_packing(Phrase words, const catalog::Resolved& resolved, const model::Packing& packing) {
    const std::string& name = on_deck(resolved).packing ? on_deck(resolved).packing->name : packing.material;
    if (packing.shape == model::PackingShape::round)
        return phrase("{}; packing through it, {}, round, {}", std::move(words), name, Dimension{packing.width_in});
    return phrase("{}; packing through it, {}, {} x {}", std::move(words), name, Dimension{packing.width_in},
                  Dimension{packing.depth_in});
}

format::Listed joist_places(const std::vector<model::Joist>& joists) {
    format::Listed places;
    for (const model::Joist& joist : joists) {
        const Dimension at{joist.offset_in};
        places.items.push_back(joist.plies > 1 ? phrase("{} at {} ({} pieces)", joist.id, at, joist.plies)
                                               : phrase("{0} at {1}", joist.id, at));
    }
    return places;
}

/// The end at what holds it; where nothing described does, which end it is.
Phrase end_name(const model::Framing& framing, const model::Block& block, bool upper) {
    const model::BlockEnd& end = upper ? block.to_end : block.from_end;
    model::PartId part{model::PartKind::block, block.id};
    if (const std::optional<std::size_t> holder = model::find_member(framing, end.joist))
        return model::part_name(model::held_at(part, model::part_of(model::member(framing, *holder))));
    part.piece = upper ? model::PartPiece::upper_end : model::PartPiece::lower_end;
    return phrase("{}, with no holder specified", model::part_name(part));
}

}  // namespace

Phrase decking_words(const catalog::Resolved& resolved) {
    if (const auto* const side = std::get_if<model::SideFastened>(&resolved.detail.mount))
        return side->decking ? decking(resolved, *side->decking) : phrase("none specified over the framing");
    const model::Layers& layers = on_deck(resolved.detail).layers;
    Phrase words =
        layers.decking ? decking(resolved, *layers.decking) : phrase("none: the plate stands on the framing");
    if (layers.packing) words = with_packing(std::move(words), resolved, *layers.packing);
    for (std::size_t index = 0; index < layers.shims.size(); ++index) {
        const auto& shims = on_deck(resolved).shims;
        words = phrase("{}; shim {}, {}", std::move(words), Dimension{layers.shims[index].thickness_in},
                       index < shims.size() ? shims[index].name : layers.shims[index].material);
    }
    return words;
}

Phrase joists_words(const catalog::Resolved& resolved) {
    const model::Joists& joists = *resolved.detail.framing.joists;
    Phrase words =
        phrase("{}, {}; along {}, center lines {}", named(section_words(1, joists.width_in, joists.depth_in), joists),
               wood_words(resolved.joists), axis(joists.along), joist_places(joists.members));
    if (!joists.from_in || !joists.to_in) return phrase("{}; length not specified", std::move(words));
    return phrase("{}; from {} to {}", std::move(words), Dimension{*joists.from_in}, Dimension{*joists.to_in});
}

Phrase rim_words(const catalog::Resolved& resolved, std::size_t rim) {
    const model::Rim& one = resolved.detail.framing.rims.at(rim);
    return phrase("{}, {}; center line at {}, from {} to {}; each joist to it: {}",
                  named(section_words(one.plies, one.width_in, one.depth_in), one), wood_words(resolved.rims.at(rim)),
                  Dimension{one.at_in}, Dimension{one.from_in}, Dimension{one.to_in}, connection_words(one.connection));
}

Phrase support_words(const model::JoistSupport& support) {
    const Phrase joined = connection_words(support.connection);
    return support.kind == model::JoistSupport::Kind::ledger
               ? phrase("ledger at {}; each joist to it: {}", Dimension{support.at_in}, joined)
               : phrase("beam at {}, bearing {}; each joist to it: {}", Dimension{support.at_in},
                        Dimension{support.bearing_in}, joined);
}

Phrase block_words(const catalog::Resolved& resolved, std::size_t block) {
    const model::Block& one = resolved.detail.framing.blocks.at(block);
    Phrase section = named(section_words(one.plies, one.width_in, one.depth_in), one);
    if (one.stack > 1)
        section = one.stack_fastened
                      ? phrase("{} one on another, fastened to each other, {}", one.stack, std::move(section))
                      : phrase("{} one on another, loose, {}", one.stack, std::move(section));
    return phrase("{}, {}; along {} from {} to {}, center line at {}", std::move(section),
                  wood_words(resolved.blocks.at(block)), axis(one.along), Dimension{one.from_in}, Dimension{one.to_in},
                  Dimension{one.across_in});
}

std::vector<Alike> block_ends_alike(const model::Framing& framing, const format::Locale& locale) {
    std::vector<Alike> all;
    for (const model::Block& block : framing.blocks) {
        for (const bool upper : {false, true}) {
            const model::EndConnection& connection = upper ? block.to_end.connection : block.from_end.connection;
            add_alike(all, written(connection_words(connection), locale),
                      written(end_name(framing, block, upper), locale));
        }
    }
    return all;
}

}  // namespace toehold::paper::report
