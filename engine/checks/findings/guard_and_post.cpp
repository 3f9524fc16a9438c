// What the codes ask of the guard and its post, whatever their load.
#include "checks/registry.h"

#include <fmt/format.h>

#include <algorithm>

namespace toehold::checks {
namespace {

// How high the guard must be. One- and two-family dwellings: 36 in; elsewhere 42 in.

constexpr double dwelling_in = 36.0;
constexpr double elsewhere_in = 42.0;
constexpr double tolerance_in = 1e-6;

std::vector<Finding> guard_height(const catalog::Resolved& resolved) {
    const model::Guard& guard = resolved.detail.guard;
    const bool dwelling = guard.occupancy == model::Occupancy::one_and_two_family;
    const bool irc = model::building_code(resolved.detail.basis) == model::BuildingCode::irc_2021;
    const double required_in = dwelling ? dwelling_in : elsewhere_in;
    if (guard.height_in + tolerance_in < required_in) {
        return {{"", Severity::fails, "guard",
                 dwelling && irc ? "IRC 2021 R312.1.2 (from memory, to be confirmed)" : "IBC 2021 1015.3",
                 fmt::format("The guard is {:.4g} in high; {:.4g} in is the least {}.", guard.height_in, required_in,
                             dwelling ? "for one- and two-family dwellings"
                                      : "where it is not a one- or two-family dwelling")}};
    }
    if (dwelling && !irc && guard.height_in + tolerance_in < elsewhere_in) {
        return {{"", Severity::caution, "guard", "IBC 2021 1015.3, exception 1 (from memory, to be confirmed)",
                 fmt::format("The guard is {:.4g} in high: below 42 in the building code allows it only inside small "
                             "dwellings (Group R-3, and single units of R-2, up to three stories).",
                             guard.height_in)}};
    }
    return {};
}

// A post cut away where it is held loses its strength just where the moment is largest.

constexpr double largest_four_by_four_in = 4.0;

std::vector<Finding> notched_post(const catalog::Resolved& resolved) {
    const auto* post = std::get_if<model::WoodPost>(&resolved.detail.post);
    if (post == nullptr || !post->notched) return {};
    if (std::max(post->width_in, post->depth_in) <= largest_four_by_four_in) {
        return {{"", Severity::fails, "post", "",
                 "The 4 x 4 post is notched at its connection, which is not allowed. Use a whole post."}};
    }
    return {
        {"", Severity::missing, "post", "common practice",
         "The post is notched at its connection, and what is left of its section there is not described: the checks "
         "take the whole section. Use a whole post."}};
}

const RegisterFinding height_rule{{"guard-height", "Height of the guard", "IBC 2021 1015.3", guard_height}};
const RegisterFinding notch_rule{{"notched-post", "Notched wood post", "IRC 2021 R507.10.2", notched_post}};

}  // namespace
}  // namespace toehold::checks
