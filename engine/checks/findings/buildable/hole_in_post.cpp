// A hole that cuts the wall of the post, or of a wood post's shoe, where it stands on the plate.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/findings/buildable/fit.h"
#include "checks/registry.h"
#include "model/capsule.h"

namespace toehold::checks {
namespace {

using format::Dimension;
using format::phrase;

std::vector<Finding> hole_in_post(const catalog::Resolved& resolved) {
    const PostFoot foot = post_foot(resolved.detail.post);
    std::vector<Finding> findings;
    for (const model::Hole& hole : on_deck(resolved.detail).plate.holes) {
        const model::Capsule shape = model::capsule(hole);
        if (clear_of_post(foot, shape) || in_hollow(foot, shape)) continue;
        const double reach_in = shape.radius_in - outside_face_in(foot, shape.axis);
        findings.push_back(finding_on(model::hole_part(hole.id), Severity::fails,
                                      phrase("Hole {0} reaches {2} under the {1} and cuts its wall. Move the hole out "
                                             "by at least {2}, or use a smaller {1}.",
                                             hole.id, foot_name(foot), Dimension{reach_in})));
    }
    return findings;
}

const RegisterFinding registered{{"hole-in-post", phrase("Hole in the post's wall"), "geometry", hole_in_post},
                                 {model::MountKind::plate_on_deck},
                                 Cause::geometry};

}  // namespace
}  // namespace toehold::checks
