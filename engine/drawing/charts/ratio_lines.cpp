#include "drawing/charts/ratio_lines.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing {
namespace {

constexpr std::size_t most_lines = 7;

/// The value nearest to what the detail has; the first where that is not specified.
std::size_t point_of_now(const study::Sweep& sweep) {
    std::size_t nearest = 0;
    if (!sweep.field.now) return nearest;
    const auto off = [&sweep](std::size_t i) { return std::abs(sweep.points[i].value - *sweep.field.now); };
    for (std::size_t i = 1; i < sweep.points.size(); ++i) {
        if (off(i) < off(nearest)) nearest = i;
    }
    return nearest;
}

/// The line that is highest at the value of now becomes the first.
void bring_forward(std::vector<study::Line>& lines, const study::Sweep& sweep) {
    if (lines.empty()) return;
    const std::size_t now = point_of_now(sweep);
    const auto highest =
        std::max_element(lines.begin(), lines.end(), [now](const study::Line& one, const study::Line& other) {
            return one.ratios[now].value_or(0.0) < other.ratios[now].value_or(0.0);
        });
    std::rotate(lines.begin(), highest, std::next(highest));
}

}  // namespace

std::vector<study::Line> ratio_lines(const study::Sweep& sweep) {
    std::vector<study::Line> lines = study::lines(sweep);
    std::erase_if(lines, [](const study::Line& line) {
        return line.largest <= 0.0 || (line.dimension && line.largest <= 1.0 + 1e-6);
    });
    if (lines.size() > most_lines) lines.resize(most_lines);
    bring_forward(lines, sweep);
    return lines;
}

double top_ratio(const std::vector<study::Line>& lines) {
    constexpr double least = 1.25, modest = 3.0, beyond = 1.25;
    double top = least;
    std::vector<double> sorted;
    sorted.reserve(lines.size());
    for (const study::Line& line : lines) sorted.push_back(line.largest);
    std::sort(sorted.begin(), sorted.end());
    const double middle = sorted.empty() ? 0.0 : sorted[(sorted.size() - 1) / 2];
    for (const study::Line& line : lines) top = std::max(top, 1.06 * line.largest);
    return std::min(top, std::max(modest, beyond * middle));
}

}  // namespace toehold::drawing
