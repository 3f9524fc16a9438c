// What the codes ask of the guard and its post, whatever their load.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/registry.h"
#include "units/limit.h"

#include <algorithm>

namespace toehold::checks {
namespace {

using format::Dimension;
using format::phrase;
using model::PartKind;
using model::Provision;

// How high the guard must be. One- and two-family dwellings: 36 in; elsewhere 42 in.

constexpr double dwelling_in = 36.0;
constexpr double elsewhere_in = 42.0;

std::vector<Finding> guard_height(const catalog::Resolved& resolved) {
    const model::Guard& guard = resolved.detail.guard;
    const bool dwelling = guard.occupancy == model::Occupancy::one_and_two_family;
    const model::BuildingCode code = model::building_code(resolved.detail.basis);
    const bool irc = model::residential(code);
    const double required_in = dwelling ? dwelling_in : elsewhere_in;
    if (!units::at_least(guard.height_in, required_in)) {
        const Dimension height{guard.height_in}, required{required_in};
        return {finding_on({PartKind::guard}, Severity::fails,
                           dwelling
                               ? phrase("Guard height {} is below the minimum of {} for one- and two-family dwellings.",
                                        height, required)
                               : phrase("Guard height {} is below the minimum of {} outside one- and two-family "
                                        "dwellings.",
                                        height, required),
                           model::clause(dwelling ? code : model::ibc_of_the_year(code), Provision::guard_height))};
    }
    if (dwelling && !irc && !units::at_least(guard.height_in, elsewhere_in)) {
        return {
            finding_on({PartKind::guard}, Severity::caution,
                       phrase("Guard height {} is below {}. The building code allows that only inside small dwellings "
                              "(Group R-3, and single units of R-2, up to three stories).",
                              Dimension{guard.height_in}, Dimension{elsewhere_in}),
                       model::clause(code, Provision::guard_height) + ", exception 1 (from memory, to be confirmed)")};
    }
    return {};
}

// A post cut away where it is held loses its strength just where the moment is largest.

constexpr double largest_four_by_four_in = 4.0;

std::vector<Finding> notched_post(const catalog::Resolved& resolved) {
    const auto* post = std::get_if<model::WoodPost>(&resolved.detail.post);
    if (post == nullptr || !post->notched) return {};
    if (std::max(post->width_in, post->depth_in) <= largest_four_by_four_in) {
        return {
            finding_on({PartKind::post}, Severity::fails,
                       phrase("The 4 x 4 post is notched at its connection, which the code does not allow. Use a post "
                              "without a notch."))};
    }
    return {finding_on(
        {PartKind::post}, Severity::missing,
        phrase("The post is notched at its connection, and the section left there is not specified. The checks "
               "use the whole section. Use a post without a notch."),
        "common practice")};
}

const RegisterFinding height_rule{
    {"guard-height", phrase("Guard height"), "", guard_height, {}, {}, Provision::guard_height}};
const RegisterFinding notch_rule{
    {"notched-post", phrase("Notched wood post"), "", notched_post, {}, {}, Provision::notched_post},
    {model::MountKind::plate_on_deck},
    Cause::geometry};

}  // namespace
}  // namespace toehold::checks
