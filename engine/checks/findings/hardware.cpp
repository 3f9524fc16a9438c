// What the codes ask of the anchors themselves, whatever their load.
#include "catalog/resolve.h"
#include "checks/anchor/seating.h"
#include "checks/basis/result_parts.h"
#include "checks/registry.h"

namespace toehold::checks {
namespace {

using format::phrase;

// A nut drawn straight against the wood. That the standard asks for a washer was read in a public summary of it; the
// clause's number is from memory.

std::vector<Finding> bolt_without_washer(const catalog::Resolved& resolved) {
    std::vector<Finding> findings;
    for (const catalog::Anchor& anchor : resolved.anchors) {
        if (!bears_on_wood(anchor) || !catalog::pulls_on_member(anchor)) continue;
        findings.push_back(finding_on(part_of(anchor), Severity::fails,
                                      phrase("Anchor {}: the nut bears on the wood. The standard requires at least a "
                                             "standard cut washer, a metal plate "
                                             "or a strap. Add a washer or a backing plate under the nut.",
                                             anchor.id)));
    }
    return findings;
}

const RegisterFinding washer_rule{
    {"bolt-without-washer", phrase("Bolt without a washer"), "NDS 2018 12.1.3.3", bolt_without_washer}};

}  // namespace
}  // namespace toehold::checks
