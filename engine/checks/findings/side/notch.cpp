// A wood post cut away where it is fastened loses its strength just where the moment is largest, and splits from the
// notch's corner. The code does not allow it of a 4 x 4; of a larger post the checks take what the notch leaves.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/registry.h"

#include <algorithm>

namespace toehold::checks {
namespace {

using format::Dimension;
using format::phrase;

constexpr double largest_four_by_four_in = 4.0;

std::vector<Finding> notched_side_post(const catalog::Resolved& resolved) {
    const auto* const post = std::get_if<model::WoodPost>(&resolved.detail.post);
    const auto& notch = on_side(resolved.detail).notch;
    if (post == nullptr || (!notch && !post->notched)) return {};
    if (std::max(post->width_in, post->depth_in) <= largest_four_by_four_in) {
        return {finding_on({model::PartKind::post}, Severity::fails,
                           phrase("The 4 x 4 post is notched at its connection, which the code does not allow. Use a "
                                  "post without a notch."))};
    }
    if (!notch) {
        return {finding_on({model::PartKind::post}, Severity::missing,
                           phrase("The post is notched at its connection, and the notch is not described. Describe it, "
                                  "or use a post without a notch."))};
    }
    return {finding_on({model::PartKind::post}, Severity::caution,
                       phrase("The post is notched {} deep where its moment is largest; the checks take what is left. "
                              "Splitting from the notch's corner is not computed. A post without a notch is better.",
                              Dimension{notch->depth_in}),
                       "common practice")};
}

const RegisterFinding rule{
    {"side-notched-post", phrase("Notched wood post"), "", notched_side_post, {}, {}, model::Provision::notched_post},
    {model::MountKind::side_fastened},
    Cause::geometry};

}  // namespace
}  // namespace toehold::checks
