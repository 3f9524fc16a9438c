// Anchors that reach no blocking hold in decking alone, which is not framing.
#include "checks/registry.h"

#include <algorithm>

namespace toehold::checks {
namespace {

bool reaches_block(const catalog::Anchor& anchor) { return anchor.seat.has_value() && anchor.embedment_in > 0.0; }

std::vector<Finding> decking_only(const catalog::Resolved& resolved) {
    const auto& anchors = resolved.anchors;
    if (anchors.empty() || std::all_of(anchors.begin(), anchors.end(), reaches_block)) return {};
    const std::string mend =
        " Put blocking between the joists under every anchor, and anchors long enough to reach well into it.";
    if (std::none_of(anchors.begin(), anchors.end(), reaches_block)) {
        return {
            {"", Severity::fails, "base", "",
             "No anchor reaches a block: the base is fastened to the decking only, which can neither hold the anchors "
             "nor pass the push to the joists." +
                 mend}};
    }
    std::vector<Finding> findings;
    for (const catalog::Anchor& anchor : anchors) {
        if (reaches_block(anchor)) continue;
        findings.push_back(
            {"", Severity::fails, "anchor " + anchor.id, "",
             "Anchor " + anchor.id +
                 (anchor.seat ? " is too short to reach the block under it." : " has no block under it.") + mend});
    }
    return findings;
}

const RegisterFinding registered{
    {"decking-only", "Anchors that reach no blocking", "IRC 2021 R507.10.1.2", decking_only}};

}  // namespace
}  // namespace toehold::checks
