#include "paper/shop/callouts.h"

#include "drawing/annotation/labels.h"
#include "drawing/plan/sheet.h"
#include "drawing/scene/shapes.h"
#include "model/capsule.h"
#include "paper/cutting/plate_contours.h"
#include "paper/shop/hole_schedule.h"
#include "paper/shop/leader.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <numbers>

namespace toehold::paper::shop {
namespace {

using drawing::Point;

struct SameSize {
    int count = 0;
    const model::Hole* shown = nullptr;  ///< the one the leader goes to: outermost to the right, then the lower
};

bool shows_better(const model::Hole& one, const model::Hole& other) {
    constexpr double same_in = 1e-3;
    if (std::abs(one.center.x_in - other.center.x_in) > same_in) return one.center.x_in > other.center.x_in;
    return one.center.y_in > other.center.y_in;
}

/// Where a leader that comes from the right and from above at 30 degrees meets the hole.
Callout hole_callout(const SameSize& same, const format::Locale& locale) {
    const Point direction{std::cos(std::numbers::pi / 6.0), -std::sin(std::numbers::pi / 6.0)};
    const model::Hole& hole = *same.shown;
    const auto* const slot = std::get_if<model::Slot>(&hole.shape);
    const double radius = 0.5 * (slot != nullptr ? slot->width_in : std::get<model::RoundHole>(hole.shape).diameter_in);
    Point tip{hole.center.x_in + radius * direction.x, hole.center.y_in + radius * direction.y};
    if (slot != nullptr) {
        // The end of the slot that is farther to the right.
        const double angle = slot->angle_deg * std::numbers::pi / 180.0;
        const double half = 0.5 * (slot->length_in - slot->width_in) * (std::cos(angle) < 0.0 ? -1.0 : 1.0);
        tip = {tip.x + half * std::cos(angle), tip.y + half * std::sin(angle)};
    }
    format::Phrase words = size_words(hole, locale.system);
    if (slot != nullptr) words = format::phrase("slot {}", std::move(words));
    if (same.count > 1) words = format::phrase("{} x {}", same.count, std::move(words));
    return {format::text(words, locale), tip, direction};
}

/// Whether the leader leaves the plate without running over another hole; what has none is in the schedule alone.
bool has_free_way(const model::Plate& plate, const model::Hole& from, const Callout& callout) {
    constexpr double far_in = 1000.0, clear_in = 0.3;
    const drawing::Box box = outline_box_in(plate.outline);
    if (from.center.x_in < 0.5 * (box.low.x + box.high.x) - clear_in) return false;
    const Point tip = callout.tip_in, along = callout.direction;
    const model::Segment way{{tip.x, tip.y}, {tip.x + far_in * along.x, tip.y + far_in * along.y}};
    return std::all_of(plate.holes.begin(), plate.holes.end(), [&](const model::Hole& hole) {
        const double radius = 0.5 * drawing::across_in(hole);
        return &hole == &from || model::distance_in(model::capsule(hole).axis, way) > radius + clear_in;
    });
}

std::vector<Callout> hole_callouts(const model::Plate& plate, const format::Locale& locale) {
    std::map<std::string, SameSize> by_size;
    for (const model::Hole& hole : plate.holes) {
        SameSize& same = by_size[format::text(size_words(hole, locale.system), locale)];
        ++same.count;
        if (same.shown == nullptr || shows_better(hole, *same.shown)) same.shown = &hole;
    }
    std::vector<Callout> all;
    for (const auto& [size, same] : by_size) {
        Callout callout = hole_callout(same, locale);
        if (has_free_way(plate, *same.shown, callout)) all.push_back(std::move(callout));
    }
    return all;
}

/// Height at which a leader along the callout's direction arrives at x.
double level_at(const Callout& callout, double x_in) {
    return callout.tip_in.y + (x_in - callout.tip_in.x) * callout.direction.y / callout.direction.x;
}

/// So that no leader crosses another.
std::vector<Callout> from_above(std::vector<Callout> all, double x_in) {
    std::stable_sort(all.begin(), all.end(), [x_in](const Callout& one, const Callout& other) {
        return level_at(one, x_in) > level_at(other, x_in);
    });
    return all;
}

}  // namespace

std::vector<Callout> callouts(const model::Plate& plate, const format::Locale& locale) {
    std::vector<Callout> all = hole_callouts(plate, locale);
    const auto* const rectangle = std::get_if<model::RectangleOutline>(&plate.outline);
    if (rectangle != nullptr && rectangle->corner_radius_in > 0.0) {
        const drawing::Box box = outline_box_in(plate.outline);
        const double radius = rectangle->corner_radius_in, in = radius * (1.0 - std::numbers::sqrt2 / 2.0);
        const Point slope{std::numbers::sqrt2 / 2.0, std::numbers::sqrt2 / 2.0};
        all.push_back(
            {"4 x R " + drawing::length_figure(radius, locale.system), {box.high.x - in, box.high.y - in}, slope});
    }
    return all;
}

void add_callouts(drawing::Scene& scene, const std::vector<Callout>& all, double right_in, double off_mm,
                  double mm_per_in) {
    constexpr double step_mm = 4.8, shelf_mm = 3.0, words_gap_mm = 0.8;
    double free_below_mm = std::numeric_limits<double>::infinity();
    for (const Callout& callout : from_above(all, right_in + (off_mm - shelf_mm) / mm_per_in)) {
        // The shelf stands where a leader along its direction arrives, or lower.
        const double tip_mm = callout.tip_in.y * mm_per_in;
        const double wished_mm = level_at(callout, right_in + (off_mm - shelf_mm) / mm_per_in) * mm_per_in;
        const double level_mm = std::min(wished_mm, free_below_mm - step_mm);
        free_below_mm = level_mm;
        const drawing::Place bend =
            drawing::standing({right_in, callout.tip_in.y}, {off_mm - shelf_mm, level_mm - tip_mm});
        const drawing::Place end = drawing::moved_mm(bend, shelf_mm, 0.0);
        add_leader(scene, bend, drawing::standing(callout.tip_in), mm_per_in);
        scene.items.emplace_back(drawing::line(bend, end, drawing::Pen::dimension));
        drawing::Text text;
        text.at = drawing::moved_mm(end, words_gap_mm, 0.0);
        text.words = callout.words;
        text.size = drawing::TextSize::small;
        text.upright = drawing::Upright::middle;
        scene.items.emplace_back(std::move(text));
    }
}

}  // namespace toehold::paper::shop
