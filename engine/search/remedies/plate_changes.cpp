// Larger and thicker plates, and more holes in them.
#include "model/placement.h"
#include "search/changes/blocks.h"
#include "search/changes/plate.h"
#include "search/changes/rows.h"
#include "search/remedies/menu.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <memory>

namespace toehold::search {
namespace {

using format::Dimension;
using format::Phrase;
using format::phrase;
using model::BaseDetail;
using model::PlanAxis;

// Thicknesses plate is stocked in (common practice), in.
constexpr std::array stocked_in{0.25, 0.3125, 0.375, 0.5, 0.625, 0.75, 1.0};

/// The plate with its sizes and metal.
Phrase plate_words(const BaseDetail& detail) {
    const model::Plate& plate = on_deck(detail).plate;
    return phrase("{} x {} x {} of {}", Dimension{extent_in(plate.outline, PlanAxis::x)},
                  Dimension{extent_in(plate.outline, PlanAxis::y)}, Dimension{plate.thickness_in}, plate.metal);
}

std::vector<Change> thicker(const BaseDetail& base) {
    constexpr std::size_t most = 2;
    std::vector<Change> changes;
    for (const double thickness_in : stocked_in) {
        if (thickness_in <= on_deck(base).plate.thickness_in || changes.size() == most) continue;
        changes.push_back({changes.empty() ? "thicker-plate" : "much-thicker-plate", "thickness",
                           [thickness_in](BaseDetail& detail) { return set_plate_thickness(detail, thickness_in); },
                           [](const BaseDetail& changed) {
                               return phrase("Replace the plate by one {} thick, otherwise the same.",
                                             Dimension{on_deck(changed).plate.thickness_in});
                           },
                           "thickness"});
    }
    return changes;
}

Phrase larger_words(const BaseDetail& changed, bool had_blocks) {
    if (!had_blocks)
        return phrase("Replace the plate by one of {}, its holes as far from the edges as before.",
                      plate_words(changed));
    return phrase(
        "Replace the plate by one of {}, its holes as far from the edges as before, and move the blocks with "
        "its rows of anchors.",
        plate_words(changed));
}

/// To the next whole inch and `steps_in` beyond in each direction.
Change larger(const std::shared_ptr<const BaseDetail>& base, std::string id, double steps_in) {
    return {std::move(id), "plate",
            [base, steps_in](BaseDetail& detail) {
                const model::Outline& outline = on_deck(detail).plate.outline;
                const double width_in = std::floor(extent_in(outline, PlanAxis::x)) + steps_in;
                const double depth_in = std::floor(extent_in(outline, PlanAxis::y)) + steps_in;
                if (Applied sized = resize_plate(detail, width_in, depth_in, Holes::keep_edges); !sized) return sized;
                return blocks_follow(detail, *base);
            },
            [had_blocks = !base->framing.blocks.empty()](const BaseDetail& changed) {
                return larger_words(changed, had_blocks);
            },
            "size"};
}

/// A third hole in every row that runs outward, where a rectangle of four is filled.
std::vector<Change> more_anchors(const std::shared_ptr<const BaseDetail>& base) {
    const std::vector<model::Position> places = anchor_places(*base);
    constexpr std::size_t corners = 4;
    if (places.size() != corners || rows_of(places, PlanAxis::x).size() != 2 ||
        rows_of(places, PlanAxis::y).size() != 2)
        return {};
    const double half_in = 0.5 * extent_in(on_deck(*base).plate.outline, PlanAxis::y);
    const double half_x_in = 0.5 * extent_in(on_deck(*base).plate.outline, PlanAxis::x);
    Pattern pattern;
    pattern.deep = 3;
    pattern.spacing_y_in = std::abs(rows_of(places, PlanAxis::x).back() - rows_of(places, PlanAxis::x).front()) / 2.0;
    pattern.spacing_x_in = std::abs(rows_of(places, PlanAxis::y).back() - rows_of(places, PlanAxis::y).front());
    pattern.edge_in = std::min(half_in, half_x_in);
    return {{"six-anchors", "pattern", [pattern](BaseDetail& detail) { return lay_out_holes(detail, pattern); },
             [](const BaseDetail& changed) {
                 return phrase(
                     "Drill a third hole midway in each side row of the plate ({} anchors in all) and set an "
                     "anchor like the others in it.",
                     anchor_places(changed).size());
             }}};
}

}  // namespace

std::vector<Change> plate_changes(const catalog::Resolved& resolved, const catalog::Catalog& /*none is looked up*/) {
    const auto base = std::make_shared<const BaseDetail>(resolved.detail);
    std::vector<Change> changes = thicker(*base);
    constexpr double step_in = 1.0, two_steps_in = 2.0, four_steps_in = 4.0;
    changes.push_back(larger(base, "larger-plate", step_in));
    changes.push_back(larger(base, "much-larger-plate", two_steps_in));
    changes.push_back(larger(base, "twice-larger-plate", four_steps_in));
    for (Change& change : more_anchors(base)) changes.push_back(std::move(change));
    return changes;
}

}  // namespace toehold::search
