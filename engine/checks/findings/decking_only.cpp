// Anchors that reach no framing hold in decking alone.
#include "checks/anchor/anchor_seating.h"
#include "checks/registry.h"

#include <algorithm>

namespace toehold::checks {
namespace {

constexpr const char* mend =
    " Put blocking between the joists under every anchor, and anchors long enough to reach well into it.";

std::string missed(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    const std::string name = "Anchor " + anchor.id;
    if (!anchor.seat) return name + " has no block, joist or rim under it." + mend;
    const std::string member = model::subject(member_of(resolved, anchor));
    if (!within_one_piece(anchor))
        return name + " stands in a seam, a face or an end of " + member + ", where it holds nothing." +
               " Move it, or the framing, so that the whole hole is in one piece of wood.";
    return name + " is too short to reach " + member + " under it." + mend;
}

std::vector<Finding> decking_only(const catalog::Resolved& resolved) {
    const auto& anchors = resolved.anchors;
    if (anchors.empty() || std::all_of(anchors.begin(), anchors.end(), lands)) return {};
    const auto passes_by = [](const catalog::Anchor& anchor) { return !anchor.seat || !(anchor.embedment_in > 0.0); };
    if (std::all_of(anchors.begin(), anchors.end(), passes_by)) {
        return {
            {"", Severity::fails, "base", "",
             std::string("No anchor reaches a block, a joist or a rim: the base is fastened to the decking only, which "
                         "can neither hold the anchors nor pass the push to the joists.") +
                 mend}};
    }
    std::vector<Finding> findings;
    for (const catalog::Anchor& anchor : anchors) {
        if (!lands(anchor)) findings.push_back({"", Severity::fails, subject(anchor), "", missed(resolved, anchor)});
    }
    return findings;
}

const RegisterFinding registered{
    {"decking-only", "Anchors that reach no framing", "IRC 2021 R507.10.1.2", decking_only}};

}  // namespace
}  // namespace toehold::checks
