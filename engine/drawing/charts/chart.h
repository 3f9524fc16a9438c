#pragma once
// Charts of studies as scenes: made for the room they are given, so that words keep their size and are measured before
// they are placed. A scene's inch is an inch of paper at full size; x to the right, y up, from the lower left corner.
#include "drawing/scene/scene.h"
#include "drawing/scene/view.h"
#include "format/phrase.h"
#include "study/study.h"

#include <string>
#include <vector>

namespace toehold::drawing {

/// A place of the chart that stands for a detail.
struct Spot {
    Point low_mm, high_mm;  ///< a box of the chart
    std::string detail;     ///< its id, for `study::detail_of`
    std::string words;      ///< what it says there, in the reader's language: `42 in: 0.84, ADEQUATE`
};

struct Chart {
    Scene scene;
    std::vector<Spot> spots;            ///< the smaller before those that lie about them
    std::vector<format::Phrase> notes;  ///< sentences to stand below it
};

/// Room for a chart, mm of lettering; no less than `least_width_mm` by `least_height_mm` is used, whatever is given.
struct ChartRoom {
    double width_mm = 0.0, height_mm = 0.0;
    format::Locale locale = {};
};
inline constexpr double least_width_mm = 110.0, least_height_mm = 80.0;

/// Demand over capacity of each check that matters over one input, the limit at 1, the verdict of each value below.
[[nodiscard]] Chart ratio_chart(const study::Sweep& sweep, const ChartRoom& room);
/// What a small change of each input makes of the governing ratio: bars on either side of what it is now.
[[nodiscard]] Chart tornado_chart(const study::Tornado& tornado, const ChartRoom& room);
/// What holds over two inputs: the ratio at every point of the grid, the border and what makes it.
[[nodiscard]] Chart map_chart(const study::HoldingMap& map, const ChartRoom& room);

/// Whichever of these is the study's.
[[nodiscard]] Chart chart_of(const study::AnyStudy& study, const ChartRoom& room);

/// The spot under a point of the surface; nullptr: none.
[[nodiscard]] const Spot* spot_at(const Chart& chart, const View& view, Point on_surface);

}  // namespace toehold::drawing
