// A nut drawn straight against the wood. That the standard asks for a washer was read in a public summary of it; the
// clause's number is from memory.
#include "checks/anchor/anchor_seating.h"
#include "checks/registry.h"

namespace toehold::checks {
namespace {

std::vector<Finding> bolt_without_washer(const catalog::Resolved& resolved) {
    std::vector<Finding> findings;
    for (const catalog::Anchor& anchor : resolved.anchors) {
        if (!bears_on_wood(anchor)) continue;
        findings.push_back({"", Severity::fails, subject(anchor), "",
                            "The nut bears on the wood itself; the standard wants at least a standard cut washer, a "
                            "metal plate or a strap between them. Put a washer or a backing plate under the nut."});
    }
    return findings;
}

const RegisterFinding registered{
    {"bolt-without-washer", "Bolt without a washer on the wood", "NDS 2018 12.1.3.3", bolt_without_washer}};

}  // namespace
}  // namespace toehold::checks
