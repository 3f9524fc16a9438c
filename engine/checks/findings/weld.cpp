// What the standards ask of the weld at the post's foot, whatever its load: a leg or a throat that is not too small,
// and a filler of the metal it joins.
#include "resistance/steel/weld.h"
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/findings/weld_rules.h"
#include "checks/post/filler.h"
#include "checks/post/foot.h"
#include "checks/registry.h"

#include <algorithm>
#include <utility>

namespace toehold::checks {
namespace {

using catalog::MetalKind;
using format::Dimension;
using format::phrase;
using model::PartKind;

/// A weld that is described, at a foot that is welded.
bool is_welded(const catalog::Resolved& resolved) {
    return post_foot(resolved.detail.post).welded && on_deck(resolved.detail).weld && weld_filler(resolved) != nullptr;
}

// A small weld on a thick part cools too fast. The tables are of steel; aluminum has none.

void add_too_small(std::vector<Finding>& findings, double leg_in, double thinner_in) {
    if (auto found = fillet_too_small(leg_in, thinner_in)) findings.push_back(std::move(*found));
}

void add_too_shallow(std::vector<Finding>& findings, double throat_in, double thinner_in) {
    if (resistance::steel::is_minimum_throat(throat_in, thinner_in)) return;
    const Dimension least{resistance::steel::minimum_throat_in(thinner_in)};
    findings.push_back(finding_on(
        {PartKind::weld}, Severity::fails,
        phrase("The groove's effective throat of {} is below the minimum of {} where the thinner part joined "
               "is {} thick. Use a throat of {} or more.",
               Dimension{throat_in}, least, Dimension{thinner_in}, least),
        "AISC 360-16 J2.1b, Table J2.3"));
}

std::vector<Finding> weld_too_small(const catalog::Resolved& resolved) {
    if (!is_welded(resolved) || weld_filler(resolved)->kind == MetalKind::aluminum) return {};
    const model::Weld& weld = *on_deck(resolved.detail).weld;
    const double thinner_in =
        std::min(post_foot(resolved.detail.post).thickness_in, on_deck(resolved.detail).plate.thickness_in);
    std::vector<Finding> findings;
    if (weld.kind == model::WeldKind::fillet) add_too_small(findings, weld.leg_in, thinner_in);
    if (weld.kind == model::WeldKind::partial_penetration) add_too_shallow(findings, weld.throat_in, thinner_in);
    if (weld.gussets) add_too_small(findings, weld.gussets->leg_in, std::min(thinner_in, weld.gussets->thickness_in));
    return findings;
}

// A filler of another metal does not make a sound weld, whatever the strengths say.

std::vector<Finding> filler_does_not_match(const catalog::Resolved& resolved) {
    if (!is_welded(resolved)) return {};
    const catalog::Filler& filler = *weld_filler(resolved);
    const catalog::Metal& post = foot_metal(resolved);
    const catalog::Metal& plate = on_deck(resolved).plate_metal;
    if (auto found = filler_mismatch(filler, post, plate)) return {std::move(*found)};
    return {};
}

const RegisterFinding size_rule{
    {"weld-too-small", phrase("Minimum size of the weld"), "AISC 360-16 J2.2b, Table J2.4", weld_too_small},
    {model::MountKind::plate_on_deck}};
const RegisterFinding filler_rule{
    {"filler-does-not-match", phrase("Filler and base metal"),
     "AISC 360-16 J2.6; Aluminum Design Manual 2020 J.2 (from memory, to be confirmed)", filler_does_not_match},
    {model::MountKind::plate_on_deck}};

}  // namespace
}  // namespace toehold::checks
