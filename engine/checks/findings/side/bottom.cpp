// A couple needs two ends: what pulls at the top, and below it wood to bear on, since a fastener does not press. A post
// that ends just below its highest fastener, or has nothing behind it there, has no lower end to its couple; fasteners
// at one height alone leave a push the other way to what little bears above them. The lengths taken are common
// practice.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/registry.h"
#include "model/side_geometry.h"

#include <algorithm>
#include <optional>

namespace toehold::checks {
namespace {

using format::Dimension;
using format::phrase;

/// Less than this between the couple's ends: no lower end.
constexpr double least_arm_in = 2.0;
/// Fasteners this near in height are one.
constexpr double one_height_in = 2.0;

struct Heights {
    double highest_in = 0.0, lowest_in = 0.0;  ///< of what pulls, below the member's top
};

std::optional<Heights> heights_of(const catalog::Resolved& resolved) {
    std::optional<Heights> heights;
    const auto add = [&](double below_in) {
        if (!heights) heights = Heights{below_in, below_in};
        heights->highest_in = std::min(heights->highest_in, below_in);
        heights->lowest_in = std::max(heights->lowest_in, below_in);
    };
    for (const catalog::Anchor& anchor : resolved.anchors) add(-anchor.at.z_in);
    for (const model::TensionTie& tie : on_side(resolved.detail).ties) add(tie.below_top_in);
    return heights;
}

/// How far below the member's top post or bracket can bear on it.
double bears_down_to_in(const model::BaseDetail& detail) {
    const model::SideFastened& mount = on_side(detail);
    double down_to_in = mount.post_bottom_below_top_in;
    if (mount.bracket) down_to_in = mount.bracket->from_top_in + mount.bracket->height_in;
    if (const std::optional<model::Member> member = model::side_member(detail))
        down_to_in = std::min(down_to_in, model::holding_depth_in(mount, *member));
    for (const model::SideLayer& layer : mount.layers) {
        if (layer.to_below_top_in) down_to_in = std::min(down_to_in, *layer.to_below_top_in);
    }
    return down_to_in;
}

std::vector<Finding> no_lower_end(const catalog::Resolved& resolved) {
    const std::optional<Heights> heights = heights_of(resolved);
    if (!heights) return {};
    const double arm_in = bears_down_to_in(resolved.detail) - heights->highest_in;
    if (arm_in < least_arm_in) {
        return {
            finding_on({model::PartKind::post}, Severity::fails,
                       phrase("No resistance at the bottom: {} below the highest fastener the post has nothing more "
                              "to bear on. Run the post down the whole depth of the member, with what lies between "
                              "them, and fasten it near the member's lower edge.",
                              Dimension{std::max(arm_in, 0.0)}))};
    }
    if (heights->lowest_in - heights->highest_in < one_height_in) {
        return {finding_on({model::PartKind::post}, Severity::caution,
                           phrase("All fasteners are at one height: a push the other way, and one along the rail, have "
                                  "only these to turn the post about. Use a second one well below."))};
    }
    return {};
}

const RegisterFinding rule{{"side-no-bottom",
                            phrase("Resistance at the bottom of the post"),
                            "common practice",
                            no_lower_end,
                            {},
                            {},
                            model::Provision::guard_beside_framing},
                           {model::MountKind::side_fastened},
                           Cause::load_path};

}  // namespace
}  // namespace toehold::checks
