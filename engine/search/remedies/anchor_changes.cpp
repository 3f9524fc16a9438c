// Longer and larger screws, bolts through the framing, plates below their nuts.
#include "catalog/fastened.h"
#include "model/placement.h"
#include "search/changes/anchors.h"
#include "search/changes/rows.h"
#include "search/remedies/menu.h"
#include "units/limit.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <string>

namespace toehold::search {
namespace {

using catalog::Resolved;
using format::Dimension;
using format::Phrase;
using format::phrase;
using model::BaseDetail;

std::size_t anchor_count(const BaseDetail& detail) { return anchor_places(detail).size(); }

bool all_screws(const Resolved& resolved) {
    return std::all_of(resolved.anchors.begin(), resolved.anchors.end(), [](const catalog::Anchor& anchor) {
        return anchor.kind == catalog::FastenerKind::lag_screw || anchor.kind == catalog::FastenerKind::wood_screw;
    });
}

double screw_length_in(const BaseDetail& detail) {
    const model::Fastener& fastener = anchor_groups(detail).front().fastener;
    if (const auto* const lag = std::get_if<model::LagScrew>(&fastener)) return lag->length_in;
    return std::get<model::WoodScrew>(fastener).length_in;
}

/// The longest in whole inches whose tip stays within every member under an anchor.
double longest_in(const Resolved& resolved) {
    double longest = std::numeric_limits<double>::infinity();
    for (const catalog::Anchor& anchor : resolved.anchors) {
        if (!anchor.seat) continue;
        const double depth_in = model::member(resolved.detail.framing, anchor.seat->member).depth_in;
        longest = std::min(longest, above_member_in(resolved, anchor) + depth_in);
    }
    return std::isfinite(longest) ? std::floor(longest) : 0.0;
}

Change of_length(std::string id, double length_in, const std::string& name) {
    return {std::move(id), "length", [length_in](BaseDetail& detail) { return set_screw_length(detail, length_in); },
            [length_in, name](const BaseDetail& changed) {
                return phrase("Replace the anchors: {} x {}, {} long under the head, one in every hole.",
                              anchor_count(changed), name, Dimension{length_in});
            },
            "length"};
}

/// Two inches longer, a common long one, and as long as what is below takes: blocks may be changed for deeper ones too.
std::vector<Change> longer(const Resolved& resolved, const std::string& name) {
    constexpr double step_in = 2.0, common_in = 8.0;
    const double now_in = screw_length_in(resolved.detail);
    std::vector<Change> changes{of_length("longer-screws", now_in + step_in, name)};
    if (common_in > now_in + step_in) changes.push_back(of_length("long-screws", common_in, name));
    if (const double longest = longest_in(resolved); longest > std::max(common_in, now_in + step_in))
        changes.push_back(of_length("longest-screws", longest, name));
    return changes;
}

Phrase drilled_words(const BaseDetail& changed, const std::string& name) {
    return phrase("Replace the anchors: {} x {}, the holes drilled to {}, with wide washers of that size.",
                  anchor_count(changed), name, Dimension{hole_width_in(on_deck(changed).plate.holes.front())});
}

/// The two next sizes of lag screw that differ by 1/16 in or more, of the length there is.
std::vector<Change> larger_lags(const Resolved& resolved, const catalog::Catalog& catalog) {
    constexpr std::size_t most = 2;
    constexpr double largest_in = 0.75;
    std::vector<Change> changes;
    for (const catalog::LagScrewSize& row : catalog.lag_screws) {
        if (!(row.diameter_in > resolved.anchors.front().diameter_in + 0.01) || row.diameter_in > largest_in) continue;
        const std::optional<FastenerSize> size = fastener_size(catalog, row.id);
        if (!size || changes.size() == most) break;
        changes.push_back(
            {changes.empty() ? "larger-screws" : "much-larger-screws", "anchor",
             [size = *size](BaseDetail& detail) { return set_fastener(detail, size, std::nullopt, Holes::keep_edges); },
             [name = row.name](const BaseDetail& changed) { return drilled_words(changed, name); }, "diameter"});
    }
    return changes;
}

const model::BackingPlate& common_backing() {
    static const model::BackingPlate plate{3.0, 3.0, 0.25, "steel-a36"};
    return plate;
}

/// The largest of the common bolts that goes through every hole as it is drilled.
const catalog::BoltSize* bolt_for(const Resolved& resolved, const catalog::Catalog& catalog) {
    constexpr double least_in = 0.375, most_in = 0.625;
    double hole_in = std::numeric_limits<double>::infinity();
    for (const catalog::Anchor& anchor : resolved.anchors) hole_in = std::min(hole_in, anchor.hole_diameter_in);
    const catalog::BoltSize* largest = nullptr;
    for (const catalog::BoltSize& row : catalog.bolts) {
        const std::optional<FastenerSize> size = fastener_size(catalog, row.id, "a307");
        if (!size || row.diameter_in < least_in || row.diameter_in > most_in) continue;
        if (largest == nullptr || units::at_most(size->hole_in, hole_in)) largest = &row;
    }
    return largest;
}

Change through_bolts(const catalog::BoltSize& row, const FastenerSize& size) {
    return {"through-bolts", "anchor",
            [size](BaseDetail& detail) {
                if (all_bolts(detail)) return false;
                return set_fastener(detail, size, std::nullopt, Holes::keep_edges) &&
                       set_below(detail, common_backing());
            },
            [name = row.name](const BaseDetail& changed) {
                return phrase(
                    "Replace the anchors: {} x {} (ASTM A307) through plate, boards and framing, each with a {} x {} "
                    "x {} backing plate under its nut below the framing. Drill the plate's holes to {}.",
                    anchor_count(changed), name, Dimension{common_backing().width_in},
                    Dimension{common_backing().depth_in}, Dimension{common_backing().thickness_in},
                    Dimension{hole_width_in(on_deck(changed).plate.holes.front())});
            }};
}

bool add_backing(BaseDetail& detail) {
    for (const model::AnchorGroup& group : anchor_groups(detail)) {
        const auto* const bolt = std::get_if<model::ThroughBolt>(&group.fastener);
        if (bolt == nullptr || bolt->below.index() > 1) return false;  // there is a plate already
    }
    return set_below(detail, common_backing());
}

Change backing_plates() {
    return {"backing-plates", "backing", add_backing, [](const BaseDetail& changed) {
                return phrase(
                    "Put a {} x {} x {} steel backing plate under each bolt's nut below the framing, {} in "
                    "all.",
                    Dimension{common_backing().width_in}, Dimension{common_backing().depth_in},
                    Dimension{common_backing().thickness_in}, anchor_count(changed));
            }};
}

}  // namespace

std::vector<Change> anchor_changes(const Resolved& resolved, const catalog::Catalog& catalog) {
    std::vector<Change> changes;
    if (resolved.anchors.empty()) return changes;
    // What replaces them comes before their length, which then is of what there is.
    if (const catalog::BoltSize* const bolt = bolt_for(resolved, catalog))
        changes.push_back(through_bolts(*bolt, *fastener_size(catalog, bolt->id, "a307")));
    if (all_bolts(resolved.detail)) changes.push_back(backing_plates());
    const std::string size = common_size(resolved.detail);
    if (!all_screws(resolved) || size.empty()) return changes;
    const auto* const lag = catalog::find(catalog.lag_screws, size);
    const auto* const screw = catalog::find(catalog.wood_screws, size);
    if (lag != nullptr)
        for (Change& change : larger_lags(resolved, catalog)) changes.push_back(std::move(change));
    for (Change& change : longer(resolved, lag != nullptr ? lag->name : screw != nullptr ? screw->name : size))
        changes.push_back(std::move(change));
    return changes;
}

}  // namespace toehold::search
