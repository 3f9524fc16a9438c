#include "drawing/marks/field_levels.h"
#include "drawing/marks/shapes.h"
#include "drawing/plan_sheet.h"
#include "format/figures.h"

namespace toehold::drawing {
namespace {

/// The edge of the bearing zone is drawn where next to nothing presses any more.
constexpr double edge_of_bearing = 0.01;

const demand::DeflectedShape* shown_field(const Subject& subject) {
    const Overlay* const overlay = subject.overlay;
    return overlay != nullptr && overlay->pressure && overlay->field ? &*overlay->field : nullptr;
}

Shading scale_strip(const Box& strip) {
    Shading shading;
    shading.nodes = {strip.low, {strip.high.x, strip.low.y}, strip.high, {strip.low.x, strip.high.y}};
    shading.level = {0.0, 0.0, 1.0, 1.0};
    shading.triangles = {{0, 1, 2}, {0, 2, 3}};
    return shading;
}

void add_scale_words(Scene& scene, const Place& at, std::string words, Across across, Upright upright) {
    Text text;
    text.at = at;
    text.words = std::move(words);
    text.size = TextSize::fine;
    text.across = across;
    text.upright = upright;
    scene.items.emplace_back(std::move(text));
}

}  // namespace

void add_pressure(Scene& scene, const PlanSheet& sheet) {
    const demand::DeflectedShape* const field = shown_field(sheet.subject);
    if (field == nullptr) return;
    const std::optional<Shading> shading = pressure_shading(*field);
    if (!shading) return;
    scene.items.emplace_back(*shading);
    if (sheet.subject.overlay->stale) scene.items.emplace_back(area(sheet.outline, Pen::none, Fill::stale));
    for (const double level : {edge_of_bearing, 1.0 / 3.0, 2.0 / 3.0})
        scene.items.emplace_back(level_line(*shading, level, Pen::thin));
}

void add_pressure_scale(Scene& scene, const PlanSheet& sheet) {
    const demand::DeflectedShape* const field = shown_field(sheet.subject);
    if (field == nullptr || !(largest_psi(*field) > 0.0)) return;
    const Box& shown = sheet.shown;
    const double strip_in = 0.025 * width(shown), off_in = 0.07 * width(shown);
    const Box strip{{shown.high.x + off_in, shown.high.y - 0.3 * height(shown)},
                    {shown.high.x + off_in + strip_in, shown.high.y}};
    scene.bounds = around(scene.bounds, strip);
    scene.items.emplace_back(scale_strip(strip));
    scene.items.emplace_back(rectangle(strip, Pen::thin, Fill::none));
    for (const double level : {1.0 / 3.0, 2.0 / 3.0}) {
        const double y = strip.low.y + level * height(strip);
        scene.items.emplace_back(line(Point{strip.low.x, y}, {strip.high.x, y}, Pen::thin));
    }
    const units::System system = sheet.subject.overlay->system;
    add_scale_words(scene, standing(strip.high, {1.0, 0.0}), format::figure_text(largest_psi(*field), "psi", system),
                    Across::left, Upright::top);
    add_scale_words(scene, standing({strip.high.x, strip.low.y}, {1.0, 0.0}), "0", Across::left, Upright::bottom);
    add_scale_words(scene, standing(strip.high, {0.0, 1.2}), sheet.subject.overlay->stale ? "(bearing)" : "bearing",
                    Across::right, Upright::bottom);
}

}  // namespace toehold::drawing
