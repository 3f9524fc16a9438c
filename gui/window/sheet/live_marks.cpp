#include "window/sheet/live_marks.h"

namespace toehold::window {

using namespace drawing;

namespace {

constexpr double handle_mm = 1.0;
constexpr double hot_mm = 1.5;
constexpr double ghost_mm = 1.8;

Path line(Point from, Point to, Pen pen) {
    Path path;
    path.contours = {{{from, {}}, {to, {}}}};
    path.pen = pen;
    return path;
}

/// Round where it moves freely, a lozenge where it moves along one line only.
void add_handle(Scene& scene, const editing::Handle& handle, bool hot) {
    const double size = hot ? hot_mm : handle_mm;
    if (!handle.along) {
        Circle circle;
        circle.center = {handle.at, {}};
        circle.radius_mm = size;
        circle.pen = Pen::handle;
        circle.fill = Fill::paper;
        scene.items.emplace_back(circle);
        return;
    }
    const double half = size * 1.25;
    Path lozenge;
    lozenge.contours = {
        {{handle.at, {half, 0}}, {handle.at, {0, half}}, {handle.at, {-half, 0}}, {handle.at, {0, -half}}}};
    lozenge.closed = true;
    lozenge.pen = Pen::handle;
    lozenge.fill = Fill::paper;
    scene.items.emplace_back(lozenge);
}

void add_caught(Scene& scene, const editing::SnapLine& snap, const format::Locale& locale) {
    scene.items.emplace_back(line(snap.from, snap.to, Pen::snap));
    Text why;
    why.at = {snap.to, {1.5, 1.5}};
    why.words = format::text(snap.why, locale);
    why.size = TextSize::small;
    why.pen = Pen::snap;
    why.on_paper = true;
    scene.items.emplace_back(why);
}

void add_band(Scene& scene, const Box& band) {
    Path path;
    path.contours = {
        {{band.low, {}}, {{band.high.x, band.low.y}, {}}, {band.high, {}}, {{band.low.x, band.high.y}, {}}}};
    path.closed = true;
    path.pen = Pen::snap;
    scene.items.emplace_back(path);
}

void add_ghost(Scene& scene, Point at) {
    Circle circle;
    circle.center = {at, {}};
    circle.radius_mm = ghost_mm;
    circle.pen = Pen::handle;
    scene.items.emplace_back(circle);
    const std::vector<std::vector<Place>> cross{{{at, {-2 * ghost_mm, 0}}, {at, {2 * ghost_mm, 0}}},
                                                {{at, {0, -2 * ghost_mm}}, {at, {0, 2 * ghost_mm}}}};
    Path path;
    path.contours = cross;
    path.pen = Pen::handle;
    scene.items.emplace_back(path);
}

}  // namespace

Scene live_scene(const LiveMarks& marks, const format::Locale& locale) {
    Scene scene;
    scene.name = "Marks under the hand";
    for (const auto& snap : marks.caught) add_caught(scene, snap, locale);
    for (const auto& handle : marks.handles) add_handle(scene, handle, handle.id == marks.hot);
    if (marks.ghost) add_ghost(scene, *marks.ghost);
    if (marks.band) add_band(scene, *marks.band);
    return scene;
}

}  // namespace toehold::window
