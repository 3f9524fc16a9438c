#include "checks/post/filler.h"

#include "catalog/resolve.h"

namespace toehold::checks {

using catalog::MetalKind;

const catalog::Filler* weld_filler(const catalog::Resolved& resolved) {
    const auto* mount = std::get_if<catalog::PlateOnDeck>(&resolved.mount);
    return mount != nullptr && mount->filler ? &*mount->filler : nullptr;
}

format::Phrase gussets_not_counted(const catalog::Resolved& resolved) {
    const std::optional<model::Weld>& weld = on_deck(resolved.detail).weld;
    if (!weld || !weld->gussets) return {};
    return format::phrase(
        "Gussets are not counted, which is on the safe side: the plate would bend past their tips, on a shorter "
        "arm than from the post's face, and metal added to a joint never lessens what it carries.");
}

FillerMatch match(MetalKind filler, MetalKind post, MetalKind plate) {
    const bool post_aluminum = post == MetalKind::aluminum;
    const bool plate_aluminum = plate == MetalKind::aluminum;
    if (post_aluminum != plate_aluminum) return FillerMatch::never_weldable;
    if (post_aluminum || filler == MetalKind::aluminum)
        return post_aluminum && filler == MetalKind::aluminum ? FillerMatch::matches : FillerMatch::of_other_metal;
    const bool any_stainless = post == MetalKind::stainless_steel || plate == MetalKind::stainless_steel;
    return !any_stainless || filler == MetalKind::stainless_steel ? FillerMatch::matches : FillerMatch::of_other_metal;
}

}  // namespace toehold::checks
