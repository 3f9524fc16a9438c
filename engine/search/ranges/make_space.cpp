#include "search/ranges/axes.h"

namespace toehold::search {

Space make_space(const catalog::Resolved& base, const Ranges& ranges, const catalog::Catalog& catalog) {
    const Asked asked{base, ranges, catalog};
    Space space{base, {}};
    if (kind(base.detail.mount) == model::MountKind::side_fastened) {
        space.axes = side_axes(asked);
        return space;
    }
    for (const auto& axes : {plate_axes(asked), anchor_axes(asked), framing_axes(asked)})
        space.axes.insert(space.axes.end(), axes.begin(), axes.end());
    return space;
}

}  // namespace toehold::search
