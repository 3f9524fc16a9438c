#include "model/base_detail.h"

#include <algorithm>
#include <stdexcept>
#include <utility>

namespace toehold::model {

const PlateOnDeck& on_deck(const BaseDetail& detail) {
    const auto* mount = std::get_if<PlateOnDeck>(&detail.mount);
    if (mount == nullptr) throw std::logic_error("the detail's mount is not a plate on the deck");
    return *mount;
}

PlateOnDeck& on_deck(BaseDetail& detail) { return const_cast<PlateOnDeck&>(on_deck(std::as_const(detail))); }

double lever_height_in(const BaseDetail& detail) {
    return detail.guard.height_in + on_deck(detail).plate_below_surface_in;
}

double thickness_in(const Layers& layers) {
    double total = layers.decking ? layers.decking->thickness_in : 0.0;
    for (const Shim& shim : layers.shims) total += shim.thickness_in;
    return total;
}

bool preloaded(const BaseDetail& detail) {
    return std::any_of(on_deck(detail).anchors.begin(), on_deck(detail).anchors.end(),
                       [](const AnchorGroup& group) { return group.preload_lb.has_value(); });
}

const AnchorGroup* anchor_group(const BaseDetail& detail, const std::string& hole_id) {
    const AnchorGroup* for_all_others = nullptr;
    for (const AnchorGroup& group : on_deck(detail).anchors) {
        if (group.holes.empty()) {
            for_all_others = &group;
        } else if (std::find(group.holes.begin(), group.holes.end(), hole_id) != group.holes.end()) {
            return &group;
        }
    }
    return for_all_others;
}

}  // namespace toehold::model
