#include "catalog/fastened.h"

#include <stdexcept>

namespace toehold::catalog {
namespace {

Fastened fastened_by(const PlateOnDeck& materials, const model::PlateOnDeck& mount) {
    using model::PlanAxis;
    Fastened fastened;
    fastened.side = {materials.plate_metal, mount.plate.thickness_in, extent_in(mount.plate.outline, PlanAxis::x),
                     extent_in(mount.plate.outline, PlanAxis::y)};
    if (mount.layers.decking) {
        const bool packed = mount.layers.packing.has_value();
        fastened.layers.push_back({(packed ? materials.packing : materials.decking).value_or(DeckingMaterial{}),
                                   mount.layers.decking->thickness_in, packed});
    }
    for (std::size_t index = 0; index < mount.layers.shims.size(); ++index) {
        fastened.layers.push_back({index < materials.shims.size() ? materials.shims[index] : DeckingMaterial{},
                                   mount.layers.shims[index].thickness_in});
    }
    return fastened;
}

}  // namespace

double Fastened::layers_in() const {
    double total = 0.0;
    for (const Interlayer& layer : layers) total += layer.thickness_in;
    return total;
}

Fastened fastened_by(const Resolved& resolved, const Anchor& /*all of one mount pass through the same*/) {
    switch (kind(resolved.detail.mount)) {
        case model::MountKind::plate_on_deck:
            return fastened_by(on_deck(resolved), on_deck(resolved.detail));
    }
    throw std::logic_error("a mount without anchors");
}

double above_member_in(const Resolved& resolved, const Anchor& anchor) {
    const Fastened fastened = fastened_by(resolved, anchor);
    return (anchor.washer ? anchor.washer->thickness_in : 0.0) + fastened.side.thickness_in + fastened.layers_in();
}

double below_in(const Anchor& anchor) {
    if (anchor.washer_below) return anchor.washer_below->thickness_in;
    if (anchor.backing) return anchor.backing->thickness_in;
    return anchor.lower ? anchor.lower->thickness_in : 0.0;
}

}  // namespace toehold::catalog
