#include "window/theme/status_marks.h"

#include "drawing/annotation/symbols.h"
#include "drawing/render/painter.h"
#include "format/figures.h"

#include <wx/dc.h>
#include <wx/graphics.h>

#include <algorithm>
#include <cmath>
#include <memory>
#include <vector>

namespace toehold::window {
namespace {

using drawing::Fill;
using drawing::Path;
using drawing::Pen;
using drawing::Place;
using drawing::Point;

Place on_paper(double x_mm, double y_mm) { return {{}, {x_mm, y_mm}}; }

Path line(const std::vector<Point>& points_mm, Pen pen) {
    Path path;
    path.pen = pen;
    std::vector<Place> contour;
    contour.reserve(points_mm.size());
    for (const Point& point : points_mm) contour.push_back(on_paper(point.x, point.y));
    path.contours.push_back(contour);
    return path;
}

Path rectangle(const Point& low_mm, const Point& high_mm, Pen pen, Fill fill) {
    Path path = line({low_mm, {high_mm.x, low_mm.y}, high_mm, {low_mm.x, high_mm.y}}, pen);
    path.closed = true;
    path.fill = fill;
    return path;
}

/// Two short slanted strokes on a patch of paper: what runs on beyond the drawing is broken off so.
void add_break(drawing::Scene& scene, double x_mm, double half_mm) {
    Path gap =
        line({{x_mm - 0.9, -half_mm}, {x_mm + 0.1, half_mm}, {x_mm + 0.9, half_mm}, {x_mm - 0.1, -half_mm}}, Pen::none);
    gap.closed = true;
    gap.fill = Fill::paper;
    scene.items.emplace_back(gap);
    scene.items.emplace_back(line({{x_mm - 0.9, -half_mm}, {x_mm + 0.1, half_mm}}, Pen::demand));
    scene.items.emplace_back(line({{x_mm - 0.1, -half_mm}, {x_mm + 0.9, half_mm}}, Pen::demand));
}

}  // namespace

drawing::Scene framed(const std::string& words, checks::Status status, const MarkSize& size, drawing::TextSize text) {
    drawing::Scene scene;
    const double half_width = 0.5 * size.width_mm, half_height = 0.5 * size.height_mm;
    scene.items.emplace_back(
        rectangle({-half_width, -half_height}, {half_width, half_height}, drawing::frame_pen(status), Fill::none));
    if (!words.empty()) {
        drawing::Text label;
        label.words = words;
        label.size = text;
        label.across = drawing::Across::middle;
        label.upright = drawing::Upright::middle;
        label.bold = status != checks::Status::holds;
        scene.items.emplace_back(label);
    }
    return scene;
}

drawing::Scene demand_bar(double ratio, checks::Status status, const MarkSize& size) {
    drawing::Scene scene;
    const double left = -0.5 * size.width_mm, half = 0.5 * size.height_mm;
    const double limit = left + capacity_share * size.width_mm;
    const bool known = status == checks::Status::holds || status == checks::Status::fails;
    if (known) {
        scene.items.emplace_back(rectangle({left, -half}, {limit, half}, Pen::capacity, Fill::capacity));
    } else if (status == checks::Status::missing_evidence) {
        scene.items.emplace_back(rectangle({left, -half}, {limit, half}, Pen::missing, Fill::none));
        return scene;
    }
    const double full = size.width_mm - 0.3;
    const double wanted = known && std::isfinite(ratio) ? ratio * capacity_share * size.width_mm : 2.0 * full;
    const double inner = 0.55 * half;
    const double end = left + std::min(std::max(wanted, 0.0), full);
    if (end > left) scene.items.emplace_back(rectangle({left, -inner}, {end, inner}, Pen::none, Fill::demand));
    if (known) scene.items.emplace_back(line({{limit, -1.5 * half}, {limit, 1.5 * half}}, Pen::holds));
    if (wanted > full) add_break(scene, end - 1.6, 1.25 * half);
    return scene;
}

std::string frame_words(const checks::CheckResult& result) {
    if (result.status == checks::Status::missing_evidence) return "?";
    if (result.status == checks::Status::no_path || !std::isfinite(result.ratio)) return "\u2013";
    return format::ratio_text(result.ratio);
}

checks::Status status_of(review::Verdict verdict) {
    switch (verdict) {
        case review::Verdict::adequate:
            return checks::Status::holds;
        case review::Verdict::inadequate:
            return checks::Status::fails;
        case review::Verdict::incomplete:
            break;
    }
    return checks::Status::missing_evidence;
}

checks::Status status_of(checks::Severity severity) {
    switch (severity) {
        case checks::Severity::fails:
            return checks::Status::fails;
        case checks::Severity::missing:
            return checks::Status::missing_evidence;
        case checks::Severity::caution:
            break;
    }
    return checks::Status::holds;
}

void paint_mark(wxDC& dc, const drawing::Scene& mark, const wxRect& area, drawing::Ground ground) {
    const std::unique_ptr<wxGraphicsContext> graphics(wxGraphicsContext::CreateFromUnknownDC(dc));
    if (!graphics) return;
    drawing::View view;
    view.center = {area.x + 0.5 * area.width, area.y + 0.5 * area.height};
    view.units_per_mm = pixels_per_mm;
    drawing::paint(static_cast<cairo_t*>(graphics->GetNativeContext()), mark, view, ground);
}

}  // namespace toehold::window
