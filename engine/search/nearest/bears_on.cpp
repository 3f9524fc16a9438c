#include "search/nearest/bears_on.h"

#include <algorithm>
#include <string_view>

namespace toehold::search {
namespace {

/// Of a plate on the deck. The first whose beginning fits decides, so the longer stand before the shorter.
const std::vector<AxisRule>& plate_rules() {
    static const std::vector<AxisRule> all{
        {"plate-hole", {"pattern", "plate", "thickness"}},
        {"plate", {"thickness", "plate", "pattern", "metal"}},
        {"bearing-framing", {"plate", "blocks"}},
        {"bearing", {"plate"}},
        {"packing", {"plate"}},
        {"anchor-steel", {"anchor", "plate", "pattern"}},
        {"anchor-spacing", {"blocks", "pattern", "anchor"}},
        {"anchor-seat", {"blocks", "pattern", "length", "anchor", "plate"}},
        {"anchor-penetration", {"length", "anchor", "blocks"}},
        {"anchor-lateral", {"anchor", "length", "pattern"}},
        {"anchor", {"length", "anchor", "plate", "pattern"}},
        {"head-pull-through", {"backing", "anchor"}},
        {"washer-bearing", {"backing", "plate", "anchor"}},
        {"lower-plate", {"backing", "plate"}},
        {"member-end", {"ends", "blocks"}},
        {"member-tension-perp", {"length", "blocks", "anchor"}},
        {"member", {"blocks", "plate"}},
        {"fastener-rows", {"ends", "blocks"}},
        {"joist-roll", {"blocks", "ends"}},
        {"deck-sideways", {"blocks", "ends"}},
        {"end-grain", {"ends"}},
        {"decking-only", {"blocks", "length"}},
        {"no-path", {"ends", "blocks"}},
        {"guard-deflection", {"blocks", "plate", "thickness", "ends"}},
        {"head-on-weld", {"pattern", "washer", "plate"}},
        {"wrench", {"pattern", "anchor", "plate"}},
        {"washer", {"washer", "pattern", "plate"}},
        {"hole", {"pattern", "anchor", "plate"}},
        {"bolt-too-short", {"length"}},
        {"bolt-without-washer", {"washer", "backing"}},
        {"no-equilibrium", {"plate", "blocks", "pattern"}},
        {"dissimilar", {"metal", "anchor"}},
    };
    return all;
}

}  // namespace

std::vector<std::string_view> axes_on(std::string_view limit, model::MountKind mount) {
    const std::vector<AxisRule>& rules = mount == model::MountKind::side_fastened ? side_rules() : plate_rules();
    const auto rule =
        std::find_if(rules.begin(), rules.end(), [&](const AxisRule& one) { return limit.starts_with(one.begins); });
    return rule == rules.end() ? std::vector<std::string_view>{} : rule->axes;
}

}  // namespace toehold::search
