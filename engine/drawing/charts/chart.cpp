#include "drawing/charts/chart.h"

#include "drawing/charts/plot.h"

namespace toehold::drawing {

Chart chart_of(const study::AnyStudy& study, const ChartRoom& room) {
    if (const auto* const sweep = std::get_if<study::Sweep>(&study)) return ratio_chart(*sweep, room);
    if (const auto* const tornado = std::get_if<study::Tornado>(&study)) return tornado_chart(*tornado, room);
    return map_chart(std::get<study::HoldingMap>(study), room);
}

const Spot* spot_at(const Chart& chart, const View& view, Point on_surface) {
    for (const Spot& spot : chart.spots) {
        const Point low = to_surface(view, at_mm(spot.low_mm)), high = to_surface(view, at_mm(spot.high_mm));
        if (on_surface.x >= low.x && on_surface.x <= high.x && on_surface.y <= low.y && on_surface.y >= high.y)
            return &spot;
    }
    return nullptr;
}

}  // namespace toehold::drawing
