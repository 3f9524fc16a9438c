// A washer or head that lies on the fillet weld around the post, or runs into the post itself: it cannot bear on the
// plate. Where the hole already reaches under the post, `hole-in-post` and `anchor-inside-post` speak.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/findings/buildable/fit.h"
#include "checks/registry.h"
#include "model/capsule.h"
#include "units/limit.h"

namespace toehold::checks {
namespace {

using format::Dimension;
using format::phrase;

/// `face_in`: from the anchor's center to the face of the post; `needed_in`: what it would have to be.
format::Phrase sentence(const PostFoot& foot, const TopPart& top, double face_in, double needed_in) {
    if (!units::at_least(face_in, top.covers_in))
        return phrase(
            "{} runs into the {}: its center is {} from the face and needs {}. Move the anchor out, or use a "
            "smaller washer or anchor.",
            top.name, foot_name(foot), Dimension{face_in}, Dimension{needed_in});
    return phrase(
        "{} lies on the weld: its center is {} from the face of the {} and needs {}. Move the anchor out, or "
        "use a smaller washer or anchor.",
        top.name, Dimension{face_in}, foot_name(foot), Dimension{needed_in});
}

std::vector<Finding> head_on_weld(const catalog::Resolved& resolved) {
    const PostFoot foot = post_foot(resolved.detail.post);
    std::vector<Finding> findings;
    for (const catalog::Anchor& anchor : resolved.anchors) {
        const std::optional<TopPart> top = top_part(anchor);
        const model::Capsule hole = hole_shape(resolved, anchor);
        if (!top || !clear_of_post(foot, hole)) continue;
        const double face_in = outside_face_in(foot, hole.axis);
        const double needed_in = top->covers_in + weld_leg_in(resolved);
        if (units::at_least(face_in, needed_in)) continue;
        findings.push_back(
            finding_on(model::anchor_part(anchor.id), Severity::fails, sentence(foot, *top, face_in, needed_in)));
    }
    return findings;
}

const RegisterFinding registered{{"head-on-weld", phrase("Washer or head on the weld"), "geometry", head_on_weld},
                                 {model::MountKind::plate_on_deck},
                                 Cause::geometry};

}  // namespace
}  // namespace toehold::checks
