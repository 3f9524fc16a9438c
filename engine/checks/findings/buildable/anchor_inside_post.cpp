// An anchor sealed in the hollow of the post, or under a wood post in its shoe: no tool reaches its head.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/findings/buildable/fit.h"
#include "checks/registry.h"
#include "model/capsule.h"

namespace toehold::checks {
namespace {

using format::Dimension;
using format::phrase;

format::Phrase sentence(const PostFoot& foot, const catalog::Anchor& anchor, double out_in) {
    if (foot.shoe)
        return phrase(
            "Anchor {} stands under the wood post, inside the shoe, where it cannot be tightened. Move its "
            "hole out by at least {}, clear of the shoe.",
            anchor.id, Dimension{out_in});
    return phrase(
        "Anchor {} stands inside the hollow of the post, where it can be neither driven nor tightened. Move "
        "its hole out by at least {}, clear of the post.",
        anchor.id, Dimension{out_in});
}

std::vector<Finding> anchor_inside_post(const catalog::Resolved& resolved) {
    const PostFoot foot = post_foot(resolved.detail.post);
    std::vector<Finding> findings;
    for (const catalog::Anchor& anchor : resolved.anchors) {
        const model::Capsule hole = hole_shape(resolved, anchor);
        if (!in_hollow(foot, hole)) continue;
        const double out_in = hole.radius_in - outside_face_in(foot, hole.axis);
        findings.push_back(finding_on(model::anchor_part(anchor.id), Severity::fails, sentence(foot, anchor, out_in)));
    }
    return findings;
}

const RegisterFinding registered{
    {"anchor-inside-post", phrase("Anchor inside the post"), "geometry", anchor_inside_post},
    {model::MountKind::plate_on_deck},
    Cause::geometry};

}  // namespace
}  // namespace toehold::checks
