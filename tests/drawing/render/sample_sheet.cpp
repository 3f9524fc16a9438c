#include "drawing/render/sample_sheet.h"

#include <string>
#include <utility>

namespace toehold::test {
namespace {

using namespace drawing;

void add_text(Scene& scene, double x, double y, std::string words, TextSize size = TextSize::fine) {
    Text text;
    text.at = {{x, y}, {}};
    text.words = std::move(words);
    text.size = size;
    scene.items.emplace_back(text);
}

void add_pens(Scene& scene) {
    const std::pair<Pen, const char*> pens[] = {
        {Pen::outline, "outline"},     {Pen::cut, "cut"},       {Pen::thin, "thin"},
        {Pen::hidden, "hidden"},       {Pen::center, "center"}, {Pen::grid, "grid"},
        {Pen::dimension, "dimension"}, {Pen::demand, "demand"}, {Pen::capacity, "capacity"},
        {Pen::handle, "handle"},       {Pen::snap, "snap"},     {Pen::selection, "selection"}};
    double y = 7.0;
    for (const auto& [pen, name] : pens) {
        scene.items.emplace_back(Path{{{{{0.0, y}, {}}, {{2.0, y}, {}}}}, false, pen, Fill::none, {}});
        add_text(scene, 2.1, y, name);
        y -= 0.3;
    }
}

void add_frames(Scene& scene) {
    const std::pair<Pen, const char*> frames[] = {
        {Pen::holds, "holds"}, {Pen::fails, "FAILS"}, {Pen::no_path, "NO PATH"}, {Pen::missing, "MISSING"}};
    double x = 0.0;
    for (const auto& [pen, name] : frames) {
        scene.items.emplace_back(rectangle(x, 2.6, x + 0.8, 2.95, pen, Fill::paper));
        scene.items.emplace_back(Circle{{{x + 0.4, 2.2}, {}}, 0.15, 0.0, pen, Fill::none, {}});
        Text text;
        text.at = {{x + 0.4, 2.775}, {}};
        text.words = name;
        text.across = Across::middle;
        text.upright = Upright::middle;
        text.size = TextSize::fine;
        scene.items.emplace_back(text);
        x += 1.0;
    }
}

void add_fills(Scene& scene) {
    const std::pair<Fill, const char*> fills[] = {
        {Fill::plate, "plate"},       {Fill::metal_cut, "metal_cut"}, {Fill::wood_side, "wood_side"},
        {Fill::wood_end, "wood_end"}, {Fill::wood_cut, "wood_cut"},   {Fill::decking, "decking"},
        {Fill::demand, "demand"},     {Fill::demand_pale, "pale"},    {Fill::capacity, "capacity"}};
    int i = 0;
    for (const auto& [fill, name] : fills) {
        const double x = 4.3 + 1.7 * (i % 3), y = 6.0 - 1.5 * (i / 3);
        scene.items.emplace_back(rectangle(x, y, x + 1.5, y + 1.0, i < 6 ? Pen::cut : Pen::none, fill, {}));
        add_text(scene, x, y - 0.2, name);
        ++i;
    }
}

void add_words(Scene& scene) {
    add_text(scene, 0.0, 1.6, "Title: ledger & <beam>", TextSize::title);
    add_text(scene, 0.0, 1.3, "large 3 3/8 in", TextSize::large);
    add_text(scene, 0.0, 1.05, "normal 1907 lb", TextSize::normal);
    add_text(scene, 0.0, 0.85, "small 45\u00b0", TextSize::small);
    add_text(scene, 0.0, 0.68, "fine 2 x 6, No. 2", TextSize::fine);
    Text math;
    math.at = {{0.0, 0.4}, {}};
    math.words = "F_c,perp' = F_c,perp C_M C_{t} C_b";
    math.math = true;
    scene.items.emplace_back(math);
    Text slanted = math;
    slanted.at = {{2.6, 0.5}, {}};
    slanted.words = "aslant, on paper";
    slanted.on_paper = true;
    slanted.angle_deg = 30.0;
    scene.items.emplace_back(slanted);
}

}  // namespace

Path rectangle(double left, double bottom, double right, double top, Pen pen, Fill fill, model::PartId part) {
    return {{{{{left, bottom}, {}}, {{right, bottom}, {}}, {{right, top}, {}}, {{left, top}, {}}}},
            true,
            pen,
            fill,
            std::move(part)};
}

Shading sloping(double left, double bottom, double size, int sides) {
    Shading shading;
    for (int row = 0; row <= sides; ++row) {
        for (int column = 0; column <= sides; ++column) {
            shading.nodes.push_back({left + size * column / sides, bottom + size * row / sides});
            shading.level.push_back(0.5 * (row + column) / sides);
        }
    }
    for (int row = 0; row < sides; ++row) {
        for (int column = 0; column < sides; ++column) {
            const int a = row * (sides + 1) + column, b = a + sides + 1;
            shading.triangles.push_back({a, a + 1, b});
            shading.triangles.push_back({a + 1, b + 1, b});
        }
    }
    return shading;
}

Scene sample_sheet() {
    Scene scene{"Samples", {}, {{0.0, 0.0}, {9.4, 7.2}}, 8.0};
    add_pens(scene);
    add_frames(scene);
    add_fills(scene);
    add_words(scene);
    scene.items.emplace_back(rectangle(4.3, 0.2, 6.5, 2.4, Pen::none, Fill::plate));
    scene.items.emplace_back(sloping(4.3, 0.2, 2.2, 27));
    scene.items.emplace_back(rectangle(4.3, 0.2, 6.5, 2.4, Pen::outline, Fill::none, {model::PartKind::plate}));
    scene.items.emplace_back(Circle{{{4.8, 1.9}, {}}, 0.22, 0.0, Pen::outline, Fill::paper, model::anchor_part("A")});
    scene.items.emplace_back(Circle{{{6.0, 1.9}, {}}, 0.22, 0.0, Pen::outline, Fill::paper, model::anchor_part("B")});
    return scene;
}

}  // namespace toehold::test
