// How high the guard must be. One- and two-family dwellings: 36 in; elsewhere 42 in.
#include "checks/registry.h"

#include <fmt/format.h>

namespace toehold::checks {
namespace {

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

const RegisterFinding registered{{"guard-height", "Height of the guard", "IBC 2021 1015.3", guard_height}};

}  // namespace
}  // namespace toehold::checks
