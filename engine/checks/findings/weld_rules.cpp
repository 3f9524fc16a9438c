#include "checks/findings/weld_rules.h"

#include "checks/basis/result_parts.h"
#include "checks/post/filler.h"
#include "resistance/steel/weld.h"

namespace toehold::checks {

using format::Dimension;
using format::phrase;
using model::PartKind;

std::optional<Finding> fillet_too_small(double leg_in, double thinner_in) {
    if (resistance::steel::is_minimum_leg(leg_in, thinner_in)) return std::nullopt;
    return finding_on({PartKind::weld}, Severity::fails,
                      phrase("The fillet's leg of {} is below the minimum of {} where the thinner part joined is {} "
                             "thick. Use a leg of {} or more.",
                             Dimension{leg_in}, Dimension{resistance::steel::minimum_leg_in(thinner_in)},
                             Dimension{thinner_in}, Dimension{resistance::steel::minimum_leg_in(thinner_in)}));
}

std::optional<Finding> filler_mismatch(const catalog::Filler& filler, const catalog::Metal& post,
                                       const catalog::Metal& plate) {
    switch (match(filler.kind, post.kind, plate.kind)) {
        case FillerMatch::matches:
            return std::nullopt;
        case FillerMatch::never_weldable:
            return finding_on({PartKind::weld}, Severity::fails,
                              phrase("{} and {} cannot be welded to each other with any filler: aluminum does not "
                                     "fuse with steel. Make both of one metal, or bolt them.",
                                     post.name, plate.name));
        case FillerMatch::of_other_metal:
            break;
    }
    return finding_on({PartKind::weld}, Severity::fails,
                      phrase("{} is not a filler for a weld between {} and {}. Use a filler of their metal; where "
                             "stainless steel is joined, a stainless one.",
                             filler.name, post.name, plate.name));
}

}  // namespace toehold::checks
