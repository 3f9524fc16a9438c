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
#include <map>
#include <memory>
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

/// Names of screws by their ids: another change may have made them larger.
using Names = std::map<std::string, std::string>;

Names screw_names(const catalog::Catalog& catalog) {
    Names names;
    for (const catalog::LagScrewSize& row : catalog.lag_screws) names[row.id] = row.name;
    for (const catalog::WoodScrewSize& row : catalog.wood_screws) names[row.id] = row.name;
    return names;
}

Change of_length(std::string id, double length_in, const std::shared_ptr<const Names>& names) {
    return {std::move(id), "length", [length_in](BaseDetail& detail) { return set_screw_length(detail, length_in); },
            [length_in, names](const BaseDetail& changed) {
                return phrase("Replace the anchors: {} x {}, {} long under the head, one in every hole.",
                              anchor_count(changed), names->at(common_size(changed)), Dimension{length_in});
            },
            "length"};
}

/// Two inches longer, a common long one, and as long as what is below takes: blocks may be changed for deeper ones too.
std::vector<Change> longer(const Resolved& resolved, const catalog::Catalog& catalog) {
    constexpr double step_in = 2.0, common_in = 8.0;
    const double now_in = screw_length_in(resolved.detail);
    const auto names = std::make_shared<const Names>(screw_names(catalog));
    std::vector<Change> changes{of_length("longer-screws", now_in + step_in, names)};
    if (common_in > now_in + step_in) changes.push_back(of_length("long-screws", common_in, names));
    if (const double longest = longest_in(resolved); longest > std::max(common_in, now_in + step_in))
        changes.push_back(of_length("longest-screws", longest, names));
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

/// A size of screw or bolt by its catalog's name.
struct Named {
    FastenerSize size;
    std::string name;
};

/// The next size of the kind the anchors have that is smaller by 1/16 in or more; a smaller one is set nearer to an
/// edge.
template <class Row>
std::optional<Named> next_smaller(const std::vector<Row>& rows, double than_in, const std::string& grade,
                                  const catalog::Catalog& catalog) {
    constexpr double least_in = 0.25, notably_in = 0.06;
    const Row* next = nullptr;
    for (const Row& row : rows) {
        if (row.diameter_in < least_in || row.diameter_in > than_in - notably_in) continue;
        if (next == nullptr || row.diameter_in > next->diameter_in) next = &row;
    }
    if (next == nullptr) return std::nullopt;
    const std::optional<FastenerSize> size = fastener_size(catalog, next->id, grade);
    return size ? std::optional(Named{*size, next->name}) : std::nullopt;
}

std::optional<Named> smaller(const Resolved& resolved, const catalog::Catalog& catalog) {
    const std::string size = common_size(resolved.detail);
    const double now_in = resolved.anchors.front().diameter_in;
    if (catalog::find(catalog.lag_screws, size) != nullptr)
        return next_smaller(catalog.lag_screws, now_in, {}, catalog);
    const auto* const bolt = std::get_if<model::ThroughBolt>(&anchor_groups(resolved.detail).front().fastener);
    if (bolt == nullptr || !all_bolts(resolved.detail)) return std::nullopt;
    return next_smaller(catalog.bolts, now_in, bolt->grade, catalog);
}

std::vector<Change> smaller_anchors(const Resolved& resolved, const catalog::Catalog& catalog) {
    const std::optional<Named> next = smaller(resolved, catalog);
    if (!next) return {};
    return {{"smaller-anchors", "anchor",
             [size = next->size](BaseDetail& detail) {
                 return set_fastener(detail, size, std::nullopt, Holes::keep_edges);
             },
             [name = next->name](const BaseDetail& changed) {
                 return phrase(
                     "Use smaller anchors, {} x {}, as long as before, with washers of that size, in a plate whose "
                     "holes are drilled to {}.",
                     anchor_count(changed), name, Dimension{hole_width_in(on_deck(changed).plate.holes.front())});
             }}};
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
                if (all_bolts(detail)) return refused(phrase("the anchors are bolts already"));
                if (Applied set = set_fastener(detail, size, std::nullopt, Holes::keep_edges); !set) return set;
                return set_below(detail, common_backing());
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

Applied add_backing(BaseDetail& detail) {
    for (const model::AnchorGroup& group : anchor_groups(detail)) {
        const auto* const bolt = std::get_if<model::ThroughBolt>(&group.fastener);
        if (bolt == nullptr || bolt->below.index() > 1)
            return refused(phrase("a plate lies below the framing already"));
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
    for (Change& change : smaller_anchors(resolved, catalog)) changes.push_back(std::move(change));
    const std::string size = common_size(resolved.detail);
    if (!all_screws(resolved) || size.empty()) return changes;
    if (catalog::find(catalog.lag_screws, size) != nullptr)
        for (Change& change : larger_lags(resolved, catalog)) changes.push_back(std::move(change));
    for (Change& change : longer(resolved, catalog)) changes.push_back(std::move(change));
    return changes;
}

}  // namespace toehold::search
