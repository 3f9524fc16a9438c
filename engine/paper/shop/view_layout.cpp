#include "paper/shop/view_layout.h"

#include "drawing/scene/view.h"
#include "paper/cutting/plate_contours.h"
#include "paper/layout/on_paper.h"

#include <algorithm>

namespace toehold::paper::shop {
namespace {

using drawing::Box;
using layout::Spot;
using layout::Style;
using model::PlanAxis;

constexpr double mm_per_in = 25.4, least_gap_mm = 12.0, right_mm = 2.0;

/// What the views take in mm of lettering.
struct Need {
    double width_mm = 0.0, height_mm = 0.0;
    double gap_mm = 0.0;    ///< between front and right side
    double below_mm = 0.0;  ///< between the plan's plate and the top of the front's stub
};

Need need_of(const ViewSubject& subject) {
    constexpr double beside_sign_mm = 6.0;
    const model::Plate& plate = on_deck(subject.resolved.detail).plate;
    const Box box = outline_box_in(plate.outline);
    const double scale = subject.drafting.mm_per_in;
    const double width = (box.high.x - box.low.x) * scale, depth = (box.high.y - box.low.y) * scale;
    Need need;
    need.gap_mm = std::max(least_gap_mm, weld_symbol_reach_mm(subject) + beside_sign_mm - box.high.x * scale);
    need.below_mm = title_reach_mm + above_stub_mm + (has_inner_corners(plate.outline) ? corners_reach_mm : 0.0);
    const double beside_mm = std::max(callouts_reach_mm(subject), need.gap_mm + depth + right_mm);
    need.width_mm = rows_reach_mm + width + beside_mm;
    need.height_mm = rows_reach_mm + depth + need.below_mm + stub_mm + plate.thickness_in * scale + below_edge_mm;
    return need;
}

/// The largest customary scale at which all has room.
double fitting_scale(ViewSubject subject, const drawing::Area& frame, double lettering) {
    constexpr double largest = 2.0, smaller = 0.999, smallest = 1.0 / 200.0;
    double scale = largest;
    while (scale > smallest) {
        subject.drafting.mm_per_in = scale * mm_per_in / lettering;
        const Need need = need_of(subject);
        if (need.width_mm <= frame.width && need.height_mm <= frame.height) return scale;
        const double next = drawing::customary_scale(scale * smaller);
        if (!(next > 0.0)) break;
        scale = next;
    }
    return smallest;
}

void add_title(drawing::Scene& scene, Spot foot, const format::Phrase& title, double scale,
               const format::Locale& locale) {
    const Style style{drawing::TextSize::small, true, drawing::Across::middle};
    layout::add_words(scene, foot, format::text(title, locale) + "  " + format::text(scale_words(scale), locale),
                      style);
}

}  // namespace

Views laid_out_views(const catalog::Resolved& resolved, const format::Locale& locale, const drawing::Area& frame,
                     double lettering) {
    const double scale = fitting_scale({resolved, {locale, 1.0}}, frame, lettering);
    const ViewSubject subject{resolved, {locale, scale * mm_per_in / lettering}};
    const double per_in = subject.drafting.mm_per_in;
    const Need need = need_of(subject);
    const Box box = outline_box_in(on_deck(resolved.detail).plate.outline);
    // Where the plate's lower left corner in plan, and the underside in the edge views, stand.
    const double left = frame.left + std::max(0.0, 0.5 * (frame.width - need.width_mm)) + rows_reach_mm;
    const double plan_bottom = frame.top + std::max(0.0, 0.5 * (frame.height - need.height_mm)) + rows_reach_mm +
                               (box.high.y - box.low.y) * per_in;
    const double underside =
        plan_bottom + need.below_mm + stub_mm + on_deck(resolved.detail).plate.thickness_in * per_in;
    const double side_left = left + (box.high.x - box.low.x) * per_in + need.gap_mm;
    const auto placed = [&](drawing::Scene scene, drawing::Point at_in, Spot spot) {
        return Placed{std::move(scene), at_in, {lettering * spot.x_mm, lettering * spot.y_mm}, scale, lettering};
    };
    Views views;
    views.scale = scale;
    views.corners_dimensioned = corners_are_dimensioned(subject);
    views.placed.push_back(placed(plan_view(subject), box.low, {left, plan_bottom}));
    views.placed.push_back(placed(edge_view(subject, PlanAxis::x), {box.low.x, 0.0}, {left, underside}));
    views.placed.push_back(placed(edge_view(subject, PlanAxis::y), {box.low.y, 0.0}, {side_left, underside}));
    drawing::Scene titles;
    titles.name = "Titles of the views";
    constexpr double under_plan_mm = 6.0, under_edge_mm = 15.5;
    const double plan_middle = left + 0.5 * (box.high.x - box.low.x) * per_in;
    const double corners_mm = has_inner_corners(on_deck(resolved.detail).plate.outline) ? corners_reach_mm : 0.0;
    add_title(titles, {plan_middle, plan_bottom + corners_mm + under_plan_mm}, format::phrase("PLAN"), scale, locale);
    add_title(titles, {plan_middle, underside + under_edge_mm}, format::phrase("FRONT"), scale, locale);
    add_title(titles, {side_left + 0.5 * (box.high.y - box.low.y) * per_in, underside + under_edge_mm},
              format::phrase("RIGHT SIDE"), scale, locale);
    views.placed.push_back(placed_on_paper(std::move(titles), {}, lettering));
    return views;
}

}  // namespace toehold::paper::shop
