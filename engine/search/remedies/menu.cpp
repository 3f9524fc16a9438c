#include "search/remedies/menu.h"

#include "search/remedies/side_changes.h"

#include <array>

namespace toehold::search {

std::vector<Change> menu(const catalog::Resolved& resolved, const catalog::Catalog& catalog) {
    using Part = std::vector<Change> (*)(const catalog::Resolved&, const catalog::Catalog&);
    constexpr std::array<Part, 3> on_plate{plate_changes, anchor_changes, framing_changes};
    constexpr std::array<Part, 3> on_side{side_framing_changes, side_post_changes, side_hardware_changes};
    const bool side = kind(resolved.detail.mount) == model::MountKind::side_fastened;
    std::vector<Change> all;
    for (const Part part : side ? on_side : on_plate) {
        for (Change& change : part(resolved, catalog)) all.push_back(std::move(change));
    }
    return all;
}

}  // namespace toehold::search
