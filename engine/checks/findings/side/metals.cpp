// Aluminum beside treated wood and beside bare steel, where a post is fastened to a member's side. What anchors
// themselves need is the same for every mount (findings/corrosion.cpp).
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/registry.h"
#include "model/protection.h"

#include <utility>

namespace toehold::checks {
namespace {

using catalog::MetalKind;
using format::phrase;
using model::Protection;

/// What of metal lies against the member: a bracket's plate or a metal post; nullptr for a wood post.
const catalog::Metal* metal_on_member(const catalog::Resolved& resolved) {
    if (on_side(resolved.detail).bracket) {
        const auto& metal = on_side(resolved).bracket_metal;
        return metal ? &*metal : nullptr;
    }
    return std::holds_alternative<model::WoodPost>(resolved.detail.post) ? nullptr : &resolved.post_metal;
}

/// Whether wood is next to it: the layer nearest to the post, or the member itself.
bool wood_next_to_it(const catalog::Resolved& resolved) {
    const auto& layers = on_side(resolved).layers;
    return layers.empty() || layers.back().kind == catalog::DeckingKind::wood;
}

/// Plates of aluminum under heads and nuts.
void look_at_small_plates(std::vector<Finding>& findings, const catalog::Resolved& resolved) {
    const auto is_aluminum = [](const std::optional<catalog::Metal>& metal) {
        return metal && metal->kind == MetalKind::aluminum;
    };
    for (const catalog::Anchor& anchor : resolved.anchors) {
        const bool at_nut = anchor.backing && is_aluminum(anchor.backing_metal);
        const bool at_head = anchor.head_plate && is_aluminum(anchor.head_plate_metal);
        if (!at_nut && !at_head) continue;
        findings.push_back(
            finding_on(model::anchor_part(anchor.id), Severity::caution,
                       phrase("The aluminum plate at anchor {} lies on treated wood: copper in the "
                              "preservative attacks aluminum. Use hot-dip galvanized or stainless steel.",
                              anchor.id)));
    }
}

std::vector<Finding> aluminum_on_the_member(const catalog::Resolved& resolved) {
    std::vector<Finding> findings;
    if (!resolved.detail.framing.preservative_treated) return findings;
    const catalog::Metal* const metal = metal_on_member(resolved);
    if (metal != nullptr && metal->kind == MetalKind::aluminum && wood_next_to_it(resolved))
        findings.push_back(
            finding_on(model::main_part(resolved.detail), Severity::caution,
                       phrase("Aluminum lies on treated wood: copper in the preservative attacks it. Put a barrier "
                              "between them that does not hold water, a plastic shim or a coating.")));
    look_at_small_plates(findings, resolved);
    return findings;
}

bool in_bare_steel(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    const bool stainless = anchor.kind == catalog::FastenerKind::through_bolt
                               ? anchor.bolt_grade && anchor.bolt_grade->kind == MetalKind::stainless_steel
                               : anchor.metal.kind == MetalKind::stainless_steel;
    if (stainless && anchor.kind != catalog::FastenerKind::reported) return false;
    switch (model::protection(anchor_groups(resolved.detail).at(anchor.group).corrosion_protection)) {
        case Protection::none:
        case Protection::plated:
        case Protection::not_stated:
        case Protection::unknown:
            return true;
        default:
            return false;
    }
}

std::vector<Finding> bare_steel_in_aluminum(const catalog::Resolved& resolved) {
    const catalog::Metal* const metal = metal_on_member(resolved);
    if (metal == nullptr || metal->kind != MetalKind::aluminum) return {};
    format::Listed bare;
    for (const catalog::Anchor& anchor : resolved.anchors) {
        if (in_bare_steel(resolved, anchor)) bare.items.push_back(format::verbatim(anchor.id));
    }
    if (bare.items.empty()) return {};
    return {
        finding_on(model::main_part(resolved.detail), Severity::caution,
                   phrase("Aluminum is held by anchors {} of carbon steel without hot-dip galvanizing: outdoors the "
                          "two metals corrode each other. Use stainless steel or hot-dip galvanized anchors, "
                          "washers and nuts.",
                          std::move(bare)))};
}

const RegisterFinding wood_rule{
    {"side-aluminum-on-wood", phrase("Aluminum on treated wood"), "common practice", aluminum_on_the_member},
    {model::MountKind::side_fastened}};
const RegisterFinding metals_rule{
    {"side-dissimilar-metals", phrase("Dissimilar metals"), "common practice", bare_steel_in_aluminum},
    {model::MountKind::side_fastened}};

}  // namespace
}  // namespace toehold::checks
