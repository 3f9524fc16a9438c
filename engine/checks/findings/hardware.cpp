// What the codes ask of the anchors themselves, whatever their load.
#include "catalog/resolve.h"
#include "checks/anchor/seating.h"
#include "checks/basis/result_parts.h"
#include "checks/registry.h"

#include <utility>

namespace toehold::checks {
namespace {

using format::Citation;
using format::phrase;

// A nut drawn straight against the wood. That the standard asks for a washer was read in a public summary of it; the
// clause's number is from memory.

std::vector<Finding> bolt_without_washer(const catalog::Resolved& resolved) {
    std::vector<Finding> findings;
    for (const catalog::Anchor& anchor : resolved.anchors) {
        if (!bears_on_wood(anchor)) continue;
        findings.push_back(finding_on(part_of(anchor), Severity::fails,
                                      phrase("Anchor {}: the nut bears on the wood. The standard requires at least a "
                                             "standard cut washer, a metal plate "
                                             "or a strap. Add a washer or a backing plate under the nut.",
                                             anchor.id)));
    }
    return findings;
}

// Preservatives corrode plain steel: fasteners in treated lumber must be hot-dip galvanized, stainless or the like.

/// Clause numbers read in a trade journal's summary of the 2021 codes; R507.2.3 from memory.
const char* clause(model::BuildingCode code) {
    return code == model::BuildingCode::irc_2021 ? "IRC 2021 R317.3; R507.2.3 (from memory, to be confirmed)"
                                                 : "IBC 2021 2304.10.6";
}

bool needs_statement(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    const bool screw =
        anchor.kind == catalog::FastenerKind::lag_screw || anchor.kind == catalog::FastenerKind::wood_screw;
    if (screw && anchor.metal.kind == catalog::MetalKind::stainless_steel) return false;
    return anchor_groups(resolved.detail).at(anchor.group).corrosion_protection.empty();
}

std::vector<Finding> corrosion_not_stated(const catalog::Resolved& resolved) {
    if (!resolved.detail.framing.preservative_treated) return {};
    format::Listed unstated;
    for (const catalog::Anchor& anchor : resolved.anchors) {
        if (needs_statement(resolved, anchor)) unstated.items.push_back(format::verbatim(anchor.id));
    }
    if (unstated.items.empty()) return {};
    return {finding_on(
        {model::PartKind::anchor}, Severity::missing,
        phrase(
            "The lumber is treated and the corrosion protection of anchors {} is not specified. Use hot-dip galvanized "
            "({}) or stainless steel fasteners, washers and nuts, and say so in the file.",
            std::move(unstated), Citation{"ASTM A153"}),
        clause(model::building_code(resolved.detail.basis)))};
}

const RegisterFinding washer_rule{
    {"bolt-without-washer", phrase("Bolt without a washer"), "NDS 2018 12.1.3.3", bolt_without_washer}};
const RegisterFinding corrosion_rule{{"corrosion-not-stated", phrase("Corrosion protection of the anchors"),
                                      "IBC 2021 2304.10.6", corrosion_not_stated}};

}  // namespace
}  // namespace toehold::checks
