// What a second pair of eyes looks for before the boards hide it. `*`: customary practice.
#include "paper/site/instructions.h"

#include "paper/site/side/side_instructions.h"
#include "paper/site/wording.h"

#include <algorithm>

namespace toehold::paper::site {
namespace {

using catalog::FastenerKind;
using format::phrase;

bool any_anchor(const Reader& reader, FastenerKind kind) {
    const auto& anchors = reader.resolved.anchors;
    return std::any_of(anchors.begin(), anchors.end(), [&](const catalog::Anchor& one) { return one.kind == kind; });
}

bool any_screw(const Reader& reader) {
    return any_anchor(reader, FastenerKind::lag_screw) || any_anchor(reader, FastenerKind::wood_screw) ||
           any_anchor(reader, FastenerKind::reported);
}

bool any_washer(const Reader& reader) {
    const auto& anchors = reader.resolved.anchors;
    return std::any_of(anchors.begin(), anchors.end(), [](const catalog::Anchor& one) {
        return one.washer.has_value() || one.washer_below.has_value() || one.backing.has_value() ||
               one.lower.has_value() || one.head_plate.has_value();
    });
}

template <class Connection>
bool any_end(const model::Framing& framing) {
    return std::any_of(framing.blocks.begin(), framing.blocks.end(), [](const model::Block& block) {
        return std::holds_alternative<Connection>(block.from_end.connection) ||
               std::holds_alternative<Connection>(block.to_end.connection);
    });
}

bool hardware(const model::Framing& framing) {
    return any_end<model::ReportedConnector>(framing) || any_end<model::SideAngles>(framing);
}

bool nailed(const model::Framing& framing) {
    return any_end<model::EndGrainFasteners>(framing) || any_end<model::ToeNails>(framing);
}

format::Phrase packing_words(const Reader& reader) {
    const model::Packing& packing = on_deck(reader.resolved.detail).layers.packing.value();
    const auto& material = on_deck(reader.resolved).packing;
    const std::string& name = material ? material->name : packing.material;
    if (packing.shape == model::PackingShape::round) {
        return phrase("Packing through the boards: {}, {} across, tight under the plate, down on the wood.*", name,
                      tape_words(packing.width_in, reader.system));
    }
    return phrase("Packing through the boards: {}, {} x {}, tight under the plate, down on the wood.*", name,
                  tape_figure(packing.width_in, reader.system), tape_words(packing.depth_in, reader.system));
}

void look_at_blocks(Instructions& list, const Reader& reader) {
    const model::Framing& framing = reader.resolved.detail.framing;
    if (framing.blocks.empty()) return;
    const auto* const plate = std::get_if<model::PlateOnDeck>(&reader.resolved.detail.mount);
    if (plate == nullptr) {
        list.push_back({{}, phrase("Blocks tight at both ends and behind the member.*")});
    } else {
        list.push_back({{},
                        plate->layers.shims.empty() ? phrase("Blocks tight at ends and boards.*")
                                                    : phrase("Blocks tight at ends and shims.*")});
        if (plate->layers.packing) list.push_back({{}, packing_words(reader)});
    }
    list.push_back({{}, phrase("Grain along each block, no split.*")});
    if (hardware(framing)) list.push_back({{}, phrase("Every hole of the hardware filled.")});
    if (nailed(framing)) list.push_back({{}, phrase("Every nail there, no head sunk in.*")});
}

void look_at_protection(Instructions& list, const Reader& reader) {
    if (!reader.resolved.detail.framing.preservative_treated) return;
    const std::string clause =
        model::clause(model::building_code(reader.resolved.detail.basis), model::Provision::treated_wood_fasteners);
    list.push_back({{},
                    phrase("All metal hot-dip galvanized or stainless ({}).",
                           format::Citation{clause.substr(0, clause.find(" ("))})});
    list.push_back({{}, phrase("Cut ends coated with preservative.*")});
}

void look_at_anchors(Instructions& list, const Reader& reader) {
    if (any_screw(reader)) list.push_back({{}, phrase("Screws snug, none spinning.*")});
    if (any_anchor(reader, FastenerKind::through_bolt))
        list.push_back({{}, phrase("Nuts snug, and again once the wood has dried.*")});
    if (any_washer(reader)) list.push_back({{}, phrase("Washers all there, flat, not sunk in.*")});
    const bool seated = std::any_of(reader.resolved.anchors.begin(), reader.resolved.anchors.end(),
                                    [](const catalog::Anchor& one) { return one.seat.has_value(); });
    if (seated) list.push_back({{}, phrase("Holes where drawn, in their wood.*")});
}

bool is_on_a_side(const Reader& reader) {
    return kind(reader.resolved.detail.mount) == model::MountKind::side_fastened;
}

void do_not_under_plate(Instructions& list, const model::Layers& layers) {
    if (layers.decking) list.push_back({{}, phrase("fasten the plate to boards alone.")});
    list.push_back(
        {{}, layers.shims.empty() ? phrase("shim: no shim is drawn.*") : phrase("add shims that are not drawn.*")});
}

}  // namespace

Instructions look_for(const Reader& reader) {
    Instructions list;
    if (is_on_a_side(reader)) list = look_at_joint(reader);
    look_at_blocks(list, reader);
    look_at_protection(list, reader);
    look_at_anchors(list, reader);
    return list;
}

// That a lag screw's thread is turned in and not driven: NDS 2018 12.1.4 (from memory).
Instructions do_not(const Reader& reader) {
    const model::BaseDetail& detail = reader.resolved.detail;
    Instructions list;
    if (is_on_a_side(reader)) {
        list = do_not_at_joint(reader);
    } else {
        do_not_under_plate(list, on_deck(detail).layers);
    }
    list.push_back(
        {{}, any_screw(reader) ? phrase("bore wider or deeper than said.") : phrase("bore wider than said.")});
    if (any_anchor(reader, FastenerKind::lag_screw))
        list.push_back({{}, phrase("hammer in a lag screw (NDS 2018 12.1.4).")});
    list.push_back({{}, phrase("swap fasteners, sizes or wood.*")});
    if (!detail.framing.blocks.empty()) list.push_back({{}, phrase("notch or bore a block elsewhere.*")});
    if (hardware(detail.framing)) list.push_back({{}, phrase("use nails in place of the hardware.")});
    list.push_back({{}, phrase("close up before this is signed.*")});
    return list;
}

}  // namespace toehold::paper::site
