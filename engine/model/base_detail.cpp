#include "model/base_detail.h"

#include <algorithm>

namespace toehold::model {

double lever_height_in(const Guard& guard) { return guard.height_in + guard.plate_below_surface_in; }

double thickness_in(const Layers& layers) {
    double total = layers.decking ? layers.decking->thickness_in : 0.0;
    for (const Shim& shim : layers.shims) total += shim.thickness_in;
    return total;
}

bool preloaded(const BaseDetail& detail) {
    return std::any_of(detail.anchors.begin(), detail.anchors.end(),
                       [](const AnchorGroup& group) { return group.preload_lb.has_value(); });
}

const AnchorGroup* anchor_group(const BaseDetail& detail, const std::string& hole_id) {
    const AnchorGroup* for_all_others = nullptr;
    for (const AnchorGroup& group : detail.anchors) {
        if (group.holes.empty()) {
            for_all_others = &group;
        } else if (std::find(group.holes.begin(), group.holes.end(), hole_id) != group.holes.end()) {
            return &group;
        }
    }
    return for_all_others;
}

}  // namespace toehold::model
