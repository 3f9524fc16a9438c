// Heads on a wood post's side without a washer or a plate: the standard asks one of bolts; a lag or wood screw's head
// is small for what a guard's couple pulls, and the wood under it crushes and is drawn through as it gets wet and
// dries.
#include "catalog/fastened.h"
#include "checks/anchor/seating.h"
#include "checks/basis/result_parts.h"
#include "checks/registry.h"

namespace toehold::checks {
namespace {

using catalog::FastenerKind;
using format::phrase;

std::vector<Finding> heads_on_wood(const catalog::Resolved& resolved) {
    std::vector<Finding> findings;
    format::Listed small;
    for (const catalog::Anchor& anchor : resolved.anchors) {
        if (!catalog::fastened_by(resolved, anchor).side.wood || anchor.washer || anchor.head_plate) continue;
        if (anchor.kind == FastenerKind::through_bolt) {
            findings.push_back(
                finding_on(part_of(anchor), Severity::fails,
                           phrase("Anchor {}: the bolt's head bears on the post's wood. The standard requires at least "
                                  "a standard cut washer, a metal plate or a strap. Add a washer or a plate under the "
                                  "head.",
                                  anchor.id)));
        } else if (anchor.kind != FastenerKind::reported) {
            small.items.push_back(format::verbatim(anchor.id));
        }
    }
    if (!small.items.empty())
        findings.push_back(finding_on({model::PartKind::anchor}, Severity::caution,
                                      phrase("The heads of anchors {} bear on the post's wood. Add washers or plates: "
                                             "small heads are drawn into wood that gets wet and dries.",
                                             std::move(small)),
                                      "common practice"));
    return findings;
}

const RegisterFinding rule{
    {"side-heads-on-wood", phrase("Heads on the post's wood"), "NDS 2018 12.1.3.3", heads_on_wood},
    {model::MountKind::side_fastened}};

}  // namespace
}  // namespace toehold::checks
