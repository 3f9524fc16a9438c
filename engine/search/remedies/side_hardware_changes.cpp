// Bolts for screws, other sizes, plates under heads and nuts, ties back to a joist.
#include "search/changes/anchors.h"
#include "search/changes/side_hardware.h"
#include "search/changes/side_rows.h"
#include "search/remedies/side_changes.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

namespace toehold::search {
namespace {

using catalog::Resolved;
using format::Dimension;
using format::Phrase;
using format::phrase;
using format::Quantity;
using model::BaseDetail;

/// What a shop keeps for this (common practice).
const model::BackingPlate& usual_plate() {
    static const model::BackingPlate plate{3.0, 3.0, 0.25, "steel-a36"};
    return plate;
}

std::size_t places_of(const BaseDetail& detail) { return on_side(detail).places.size(); }

bool all_screws(const BaseDetail& detail) {
    const auto& groups = anchor_groups(detail);
    return !groups.empty() && std::all_of(groups.begin(), groups.end(), [](const model::AnchorGroup& group) {
        return std::holds_alternative<model::LagScrew>(group.fastener) ||
               std::holds_alternative<model::WoodScrew>(group.fastener);
    });
}

/// Plates under both ends of every bolt where they bear on wood.
Applied with_plates(BaseDetail& detail) {
    if (Applied set = set_nut(detail, usual_plate()); !set) return set;
    if (std::holds_alternative<model::WoodPost>(detail.post)) return set_head_plate(detail, usual_plate());
    return {};
}

Change through_bolts(const catalog::Catalog& catalog, const FastenerSize& size) {
    const std::string name = catalog::find(catalog.bolts, size.size)->name;
    return {"through-bolts", "anchor",
            [size](BaseDetail& detail) {
                if (all_bolts(detail)) return refused(phrase("the anchors are bolts already"));
                if (Applied set = set_fastener(detail, size, std::nullopt, Holes::keep_edges); !set) return set;
                return with_plates(detail);
            },
            [name](const BaseDetail& changed) {
                return phrase(
                    "Replace the fasteners by {} x {} (ASTM A307) through post and framing, a {} x {} x {} plate under "
                    "each nut and, on wood, under each head.",
                    places_of(changed), name, Dimension{usual_plate().width_in}, Dimension{usual_plate().depth_in},
                    Dimension{usual_plate().thickness_in});
            }};
}

Change of_size(std::string id, const FastenerSize& size, const std::string& name, std::string_view steps) {
    return {std::move(id), "anchor",
            [size](BaseDetail& detail) { return set_fastener(detail, size, std::nullopt, Holes::keep_edges); },
            [name](const BaseDetail& changed) {
                return phrase("Replace the fasteners: {} x {}, with washers or plates drilled for them.",
                              places_of(changed), name);
            },
            steps};
}

/// The next sizes of the fastener's own kind that differ by 1/16 in or more: two larger, one smaller.
template <class Row>
std::vector<Change> other_sizes(const std::vector<Row>& rows, double now_in, const std::string& grade,
                                const catalog::Catalog& catalog) {
    constexpr double least_in = 0.25, most_in = 0.75, notably_in = 0.06;
    constexpr std::size_t most = 2;
    std::vector<Row> sorted = rows;
    std::sort(sorted.begin(), sorted.end(), [](const Row& a, const Row& b) { return a.diameter_in < b.diameter_in; });
    std::vector<Change> larger, smaller;
    for (const Row& row : sorted) {
        const std::optional<FastenerSize> size = fastener_size(catalog, row.id, grade);
        if (!size || row.diameter_in < least_in || row.diameter_in > most_in) continue;
        if (row.diameter_in <= now_in - notably_in) smaller = {of_size("smaller-anchors", *size, row.name, {})};
        if (row.diameter_in >= now_in + notably_in && larger.size() < most)
            larger.push_back(
                of_size(larger.empty() ? "larger-anchors" : "much-larger-anchors", *size, row.name, "diameter"));
    }
    for (Change& change : smaller) larger.push_back(std::move(change));
    return larger;
}

std::vector<Change> sizes(const Resolved& resolved, const catalog::Catalog& catalog) {
    const std::string size = common_size(resolved.detail);
    if (size.empty() || resolved.anchors.empty()) return {};
    const double now_in = resolved.anchors.front().diameter_in;
    if (catalog::find(catalog.lag_screws, size) != nullptr) return other_sizes(catalog.lag_screws, now_in, {}, catalog);
    const auto* const bolt = std::get_if<model::ThroughBolt>(&anchor_groups(resolved.detail).front().fastener);
    if (bolt == nullptr) return {};
    return other_sizes(catalog.bolts, now_in, bolt->grade, catalog);
}

/// Two inches longer, and four.
std::vector<Change> longer(const Resolved& resolved) {
    if (!all_screws(resolved.detail)) return {};
    std::vector<Change> changes;
    for (const double more_in : {2.0, 4.0}) {
        const double length_in = resolved.anchors.front().length_in + more_in;
        changes.push_back({changes.empty() ? "longer-screws" : "long-screws", "length",
                           [length_in](BaseDetail& detail) { return set_screw_length(detail, length_in); },
                           [length_in](const BaseDetail& changed) {
                               return phrase("Replace the screws: {} of the same size, {} long under the head.",
                                             places_of(changed), Dimension{length_in});
                           },
                           "length"});
    }
    return changes;
}

Change head_plates() {
    return {"head-plates", "head",
            [](BaseDetail& detail) {
                for (const model::AnchorGroup& group : anchor_groups(detail))
                    if (group.head_plate) return refused(phrase("plates lie under the heads already"));
                return set_head_plate(detail, usual_plate());
            },
            [](const BaseDetail& changed) {
                return phrase("Put a {} x {} x {} steel plate under each head on the post, {} in all.",
                              Dimension{usual_plate().width_in}, Dimension{usual_plate().depth_in},
                              Dimension{usual_plate().thickness_in}, places_of(changed));
            }};
}

Change nut_plates() {
    return {"backing-plates", "backing",
            [](BaseDetail& detail) {
                for (const model::AnchorGroup& group : anchor_groups(detail)) {
                    const auto* const bolt = std::get_if<model::ThroughBolt>(&group.fastener);
                    if (bolt == nullptr || bolt->below.index() > 1)
                        return refused(phrase("plates lie under the nuts already"));
                }
                return set_nut(detail, usual_plate());
            },
            [](const BaseDetail& changed) {
                return phrase("Put a {} x {} x {} steel plate under each nut behind the framing, {} in all.",
                              Dimension{usual_plate().width_in}, Dimension{usual_plate().depth_in},
                              Dimension{usual_plate().thickness_in}, places_of(changed));
            }};
}

/// The two next thicknesses plate is stocked in (common practice).
std::vector<Change> thicker_bracket(const BaseDetail& detail) {
    constexpr std::array stocked_in{0.25, 0.3125, 0.375, 0.5, 0.625, 0.75, 1.0};
    constexpr std::size_t most = 2;
    std::vector<Change> changes;
    if (!on_side(detail).bracket) return changes;
    for (const double thickness_in : stocked_in) {
        if (thickness_in <= on_side(detail).bracket->thickness_in || changes.size() == most) continue;
        changes.push_back({changes.empty() ? "thicker-bracket" : "much-thicker-bracket", "bracket",
                           [thickness_in](BaseDetail& changed) { return set_bracket_thickness(changed, thickness_in); },
                           [thickness_in](const BaseDetail&) {
                               return phrase("Make the bracket of plate {} thick, otherwise the same.",
                                             Dimension{thickness_in});
                           },
                           "bracket"});
    }
    return changes;
}

Phrase ties_words(const BaseDetail& changed) {
    const model::TensionTie& tie = on_side(changed).ties.back();
    const auto index = model::find_member(changed.framing, tie.into);
    const Phrase into =
        index ? model::part_name(model::part_of(model::member(changed.framing, *index))) : format::verbatim(tie.into);
    return phrase(
        "Add {} tension ties from the post back along the side of {}, one at each row of fasteners, whose report gives "
        "at least {} each at no more than {} of movement; their line stands {} from the post's axis and {} from that "
        "side.",
        on_side(changed).ties.size(), into, Quantity{tie.tension_lb, "lb"}, Dimension{tie.deflection_in},
        Dimension{std::abs(tie.x_in)}, Dimension{tie.eccentricity_in});
}

/// Allowable pulls of hold-downs in common use for guards (common practice).
std::vector<Change> ties() {
    constexpr double usual_lb = 1800.0, heavy_lb = 2700.0;
    std::vector<Change> changes;
    for (const double tension_lb : {usual_lb, heavy_lb}) {
        changes.push_back({changes.empty() ? "ties" : "heavy-ties", "ties",
                           [tension_lb](BaseDetail& detail) { return add_ties(detail, tension_lb); }, ties_words,
                           "ties"});
    }
    return changes;
}

}  // namespace

std::vector<Change> side_hardware_changes(const Resolved& resolved, const catalog::Catalog& catalog) {
    std::vector<Change> changes = thicker_bracket(resolved.detail);
    if (!resolved.anchors.empty()) {
        if (const auto half_inch = fastener_size(catalog, "bolt-1/2", "a307"); half_inch && !all_bolts(resolved.detail))
            changes.push_back(through_bolts(catalog, *half_inch));
        for (Change& change : sizes(resolved, catalog)) changes.push_back(std::move(change));
        for (Change& change : longer(resolved)) changes.push_back(std::move(change));
        if (std::holds_alternative<model::WoodPost>(resolved.detail.post)) changes.push_back(head_plates());
        if (all_bolts(resolved.detail)) changes.push_back(nut_plates());
    }
    for (Change& change : ties()) changes.push_back(std::move(change));
    return changes;
}

}  // namespace toehold::search
