#include "search/nearest/bears_on.h"

#include <algorithm>
#include <string_view>

namespace toehold::search {
namespace {

using Axes = std::vector<std::string_view>;

struct Rule {
    std::string_view begins;  ///< of the id of a check or finding
    Axes axes;
};

/// The first whose beginning fits decides, so the longer stand before the shorter.
const std::vector<Rule>& rules() {
    static const std::vector<Rule> all{
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

std::vector<std::string_view> axes_on(std::string_view limit) {
    const auto rule =
        std::find_if(rules().begin(), rules().end(), [&](const Rule& one) { return limit.starts_with(one.begins); });
    return rule == rules().end() ? Axes{} : rule->axes;
}

}  // namespace toehold::search
