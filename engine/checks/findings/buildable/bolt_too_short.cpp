// A through-bolt whose length the file gives must pass what it holds together and leave a whole nut of thread beyond:
// head washer, plate or post, layers, the member, the washer or plate under the nut (its own or its group's), and a nut
// about as high as the bolt is thick (7/8 D, ASME B18.2.2 hex nut, common practice).
#include "catalog/anchor_view.h"
#include "catalog/fastened.h"
#include "catalog/resolve.h"
#include "checks/anchor/seating.h"
#include "checks/basis/result_parts.h"
#include "checks/registry.h"
#include "units/limit.h"

namespace toehold::checks {
namespace {

using format::Dimension;
using format::phrase;

/// Under the head, with a whole nut.
double needed_in(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    constexpr double nut_heights = 0.875;
    return seating(resolved, anchor).above_member_in + member_of(resolved, anchor).depth_in +
           catalog::below_in(anchor) + nut_heights * anchor.diameter_in;
}

format::Phrase message(const catalog::Resolved& resolved, const catalog::Anchor& anchor, double least_in) {
    const Dimension length{*anchor.bolt->length_in}, needed{least_in};
    const format::Phrase member = member_name(resolved, anchor);
    if (catalog::lies_level(anchor))
        return phrase("Bolt {} is {} long; {}, layers, {} and nut need {}. Use a longer bolt.", anchor.id, length,
                      side_name(resolved, anchor), member, needed);
    return phrase("Bolt {} is {} long; plate, layers, {} and nut need {}. Use a longer bolt.", anchor.id, length,
                  member, needed);
}

std::vector<Finding> bolt_too_short(const catalog::Resolved& resolved) {
    std::vector<Finding> findings;
    for (const catalog::Anchor& anchor : resolved.anchors) {
        if (!anchor.bolt || !anchor.bolt->length_in || !lands(anchor)) continue;
        const double least_in = needed_in(resolved, anchor);
        if (units::at_least(*anchor.bolt->length_in, least_in)) continue;
        findings.push_back(finding_on(part_of(anchor), Severity::fails, message(resolved, anchor, least_in)));
    }
    return findings;
}

const RegisterFinding registered{
    {"bolt-too-short", phrase("Bolt too short for its nut"), "common practice", bolt_too_short}, {}, Cause::geometry};

}  // namespace
}  // namespace toehold::checks
