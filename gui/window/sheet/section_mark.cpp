#include "window/sheet/section_mark.h"

namespace toehold::window {

using namespace drawing;

namespace {

constexpr double heavy_mm = 3.5;  ///< length of the heavy end
constexpr double arrow_mm = 4.0;  ///< from the line, the way one looks
constexpr double head_mm = 1.4;

Path line(Place from, Place to, Pen pen) {
    Path path;
    path.contours = {{from, to}};
    path.pen = pen;
    return path;
}

Point sum(Point a, Point b, double times) { return {a.x + times * b.x, a.y + times * b.y}; }

/// One end of the mark: `out` leads away from the plan, `look` the way the section is seen; unit vectors of paper.
void mark_end(Scene& plan, Point at, Point out, Point look) {
    const Place end{at, sum({}, out, heavy_mm)};
    plan.items.emplace_back(line({at, {}}, end, Pen::cut));
    const Point tip = sum(end.paper_mm, look, arrow_mm);
    plan.items.emplace_back(line(end, {at, tip}, Pen::outline));
    Path head;
    const Point back = sum(tip, look, -2 * head_mm);
    head.contours = {{{at, tip}, {at, sum(back, out, head_mm * 0.6)}, {at, sum(back, out, -head_mm * 0.6)}}};
    head.closed = true;
    head.pen = Pen::outline;
    plan.items.emplace_back(head);
    Text letter;
    letter.at = {at, sum(tip, look, 2.0)};
    letter.words = "A";
    letter.bold = true;
    letter.across = Across::middle;
    letter.upright = Upright::middle;
    letter.on_paper = true;
    plan.items.emplace_back(letter);
}

}  // namespace

void mark_section(Scene& plan, const SectionPlane& plane) {
    // A section that shows y to the right is seen from +x, one that shows x to the right from -y.
    const bool along_y = plane.along == model::PlanAxis::y;
    const Point out = along_y ? Point{0, 1} : Point{1, 0};
    const Point look = along_y ? Point{-1, 0} : Point{0, 1};
    const Point low = along_y ? Point{plane.at_in, plan.bounds.low.y} : Point{plan.bounds.low.x, plane.at_in};
    const Point high = along_y ? Point{plane.at_in, plan.bounds.high.y} : Point{plan.bounds.high.x, plane.at_in};
    plan.items.emplace_back(line({low, {}}, {high, {}}, Pen::center));
    mark_end(plan, low, {-out.x, -out.y}, look);
    mark_end(plan, high, out, look);
}

}  // namespace toehold::window
