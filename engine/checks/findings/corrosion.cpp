// Corrosion of what is driven into treated lumber, and of aluminum beside treated lumber and steel.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/registry.h"
#include "model/protection.h"

#include <functional>
#include <utility>

namespace toehold::checks {
namespace {

using catalog::FastenerKind;
using catalog::MetalKind;
using format::Citation;
using format::phrase;
using model::PartKind;
using model::Protection;

bool is_screw(const catalog::Anchor& anchor) {
    return anchor.kind == FastenerKind::lag_screw || anchor.kind == FastenerKind::wood_screw;
}

/// By its metal, where the catalog knows it.
bool is_stainless(const catalog::Anchor& anchor) {
    if (is_screw(anchor)) return anchor.metal.kind == MetalKind::stainless_steel;
    return anchor.bolt_grade && anchor.bolt_grade->kind == MetalKind::stainless_steel;
}

Protection stated(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    return model::protection(anchor_groups(resolved.detail).at(anchor.group).corrosion_protection);
}

/// The ids of the anchors of which this is so.
format::Listed anchors_where(const catalog::Resolved& resolved,
                             const std::function<bool(const catalog::Anchor&, Protection)>& is_so) {
    format::Listed found;
    for (const catalog::Anchor& anchor : resolved.anchors) {
        if (is_so(anchor, stated(resolved, anchor))) found.items.push_back(format::verbatim(anchor.id));
    }
    return found;
}

// Preservatives corrode plain steel: fasteners in treated lumber must be hot-dip galvanized, stainless or the like.

/// A stainless screw speaks for itself; a stainless bolt does not speak for its nut and washers.
bool needs_words(const catalog::Anchor& anchor) { return !is_screw(anchor) || !is_stainless(anchor); }

std::vector<Finding> corrosion_not_stated(const catalog::Resolved& resolved) {
    if (!resolved.detail.framing.preservative_treated) return {};
    std::vector<Finding> findings;
    const auto add = [&](format::Phrase message) {
        findings.push_back(finding_on({PartKind::anchor}, Severity::missing, std::move(message)));
    };
    const auto with = [&](Protection wanted) {
        return anchors_where(resolved, [wanted](const catalog::Anchor& anchor, Protection protection) {
            return needs_words(anchor) && protection == wanted;
        });
    };
    format::Listed silent = with(Protection::not_stated);
    if (!silent.items.empty())
        add(
            phrase("The lumber is treated and the corrosion protection of anchors {} is not specified. Use hot-dip "
                   "galvanized ({}) or stainless steel fasteners, washers and nuts, and say so in the file.",
                   std::move(silent), Citation{"ASTM A153"}));
    format::Listed unclear = with(Protection::unknown);
    if (!unclear.items.empty())
        add(
            phrase("The lumber is treated and the words for the corrosion protection of anchors {} name none that is "
                   "known. Say hot-dip galvanized ({}), stainless steel, or the evaluation report of the coating.",
                   std::move(unclear), Citation{"ASTM A153"}));
    return findings;
}

/// Of bolts and nuts the building code also takes ASTM B695, class 55, but not of lag and wood screws (read in the text
/// of its 2012 edition); the residential code takes it of all (from memory, to be confirmed).
bool too_little(const catalog::Anchor& anchor, Protection protection, model::BuildingCode code) {
    if (is_stainless(anchor)) return false;
    if (protection == Protection::mechanically_galvanized) return is_screw(anchor) && !model::residential(code);
    return protection == Protection::none || protection == Protection::plated;
}

std::vector<Finding> corrosion_too_little(const catalog::Resolved& resolved) {
    if (!resolved.detail.framing.preservative_treated) return {};
    const model::BuildingCode code = model::building_code(resolved.detail.basis);
    format::Listed lacking = anchors_where(resolved, [code](const catalog::Anchor& anchor, Protection protection) {
        return too_little(anchor, protection, code);
    });
    if (lacking.items.empty()) return {};
    return {finding_on({PartKind::anchor}, Severity::fails,
                       phrase("The lumber is treated and the corrosion protection of anchors {} is none or too thin: "
                              "the preservative corrodes plain and zinc-plated steel. Use hot-dip galvanized ({}) or "
                              "stainless steel fasteners, washers and nuts.",
                              std::move(lacking), Citation{"ASTM A153"}))};
}

// Copper in the usual preservatives attacks aluminum that touches the wood.

/// Whether the plate lies on wood: the uppermost layer's, or the framing itself.
bool plate_on_wood(const catalog::Resolved& resolved) {
    const catalog::PlateOnDeck& mount = on_deck(resolved);
    if (mount.packing) return mount.packing->kind == catalog::DeckingKind::wood;
    if (mount.decking) return mount.decking->kind == catalog::DeckingKind::wood;
    return mount.shims.empty() || mount.shims.front().kind == catalog::DeckingKind::wood;
}

std::vector<Finding> aluminum_on_treated_wood(const catalog::Resolved& resolved) {
    if (!resolved.detail.framing.preservative_treated) return {};
    std::vector<Finding> findings;
    if (on_deck(resolved).plate_metal.kind == MetalKind::aluminum && plate_on_wood(resolved))
        findings.push_back(finding_on({PartKind::plate}, Severity::caution,
                                      phrase("The aluminum plate lies on treated wood: copper in the preservative "
                                             "attacks aluminum. Put a barrier between them that does not hold water, a "
                                             "plastic shim or a coating.")));
    for (const catalog::Anchor& anchor : resolved.anchors) {
        const bool below = (anchor.backing || anchor.lower) && anchor.backing_metal;
        if (!below || anchor.backing_metal->kind != MetalKind::aluminum) continue;
        findings.push_back(
            finding_on(model::anchor_part(anchor.id), Severity::caution,
                       phrase("The aluminum plate below anchor {} lies on treated wood: copper in the "
                              "preservative attacks aluminum. Use hot-dip galvanized or stainless steel.",
                              anchor.id)));
    }
    if (std::holds_alternative<model::WoodPost>(resolved.detail.post) &&
        resolved.post_metal.kind == MetalKind::aluminum)
        findings.push_back(finding_on({PartKind::shoe}, Severity::caution,
                                      phrase("The aluminum shoe holds a wood post: copper in the preservative of a "
                                             "treated post attacks aluminum. Put a barrier between them that does not "
                                             "hold water, or use a post without copper in it.")));
    return findings;
}

// Aluminum wastes away beside bare steel that gets wet.

bool is_bare(const catalog::Anchor& anchor, Protection protection) {
    if (is_stainless(anchor)) return false;
    return protection == Protection::none || protection == Protection::plated || protection == Protection::not_stated ||
           protection == Protection::unknown;
}

std::vector<Finding> dissimilar_metals(const catalog::Resolved& resolved) {
    if (on_deck(resolved).plate_metal.kind != MetalKind::aluminum) return {};
    format::Listed bare = anchors_where(resolved, is_bare);
    if (bare.items.empty()) return {};
    return {finding_on({PartKind::plate}, Severity::caution,
                       phrase("The aluminum plate is held by anchors {} of carbon steel without hot-dip galvanizing: "
                              "outdoors the two metals corrode each other. Use stainless steel or hot-dip galvanized "
                              "anchors, washers and nuts.",
                              std::move(bare)))};
}

const RegisterFinding silent_rule{{"corrosion-not-stated",
                                   phrase("Corrosion protection of the anchors"),
                                   "",
                                   corrosion_not_stated,
                                   {},
                                   {},
                                   model::Provision::treated_wood_fasteners}};
const RegisterFinding little_rule{{"corrosion-too-little",
                                   phrase("Too little corrosion protection of the anchors"),
                                   "",
                                   corrosion_too_little,
                                   {},
                                   {},
                                   model::Provision::treated_wood_fasteners}};
const RegisterFinding wood_rule{
    {"aluminum-on-treated-wood", phrase("Aluminum on treated wood"), "common practice", aluminum_on_treated_wood},
    {model::MountKind::plate_on_deck}};
const RegisterFinding metals_rule{
    {"dissimilar-metals", phrase("Dissimilar metals"), "common practice", dissimilar_metals},
    {model::MountKind::plate_on_deck}};

}  // namespace
}  // namespace toehold::checks
