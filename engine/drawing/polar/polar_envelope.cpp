#include "drawing/annotation/overlay.h"
#include "drawing/drawings.h"
#include "format/figures.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <numbers>

namespace toehold::drawing {
namespace {

using format::phrase;

constexpr double whole_turn = 2.0 * std::numbers::pi;
constexpr double knob_mm = 3.5;       ///< radius of what the push is turned by
constexpr double knob_off_mm = 4.3;   ///< its middle, off the outer circle
constexpr double words_off_mm = 9.2;  ///< `OUTWARD` and its like stand clear of the knob
constexpr double margin_mm = 12.0;

Point direction(double angle_rad) { return {std::cos(angle_rad), std::sin(angle_rad)}; }
Point scaled(Point point, double by) { return {point.x * by, point.y * by}; }
Place on_dial(double angle_rad, double radius, double off_mm = 0.0) {
    return {scaled(direction(angle_rad), radius), scaled(direction(angle_rad), off_mm)};
}

double angle_of(std::size_t step, std::size_t steps) {
    return whole_turn * static_cast<double>(step) / static_cast<double>(steps);
}

double largest_of(const std::vector<PolarCurve>& curves) {
    double largest = 0.0;
    for (const PolarCurve& anchor : curves) {
        for (const double tension : anchor.tension_lb) largest = std::max(largest, tension);
    }
    return largest;
}

/// Between the sampled directions in proportion.
double tension_at(const PolarCurve& anchor, double angle_rad) {
    const std::size_t steps = anchor.tension_lb.size();
    if (steps == 0) return 0.0;
    const double turns = angle_rad / whole_turn;
    const double at = (turns - std::floor(turns)) * static_cast<double>(steps);
    const std::size_t before = static_cast<std::size_t>(at) % steps;
    const double t = at - std::floor(at);
    return anchor.tension_lb[before] * (1.0 - t) + anchor.tension_lb[(before + 1) % steps] * t;
}

/// What all the parts of the dial are drawn from.
struct Dial {
    const std::vector<PolarCurve>& curves;
    const Overlay& overlay;
    const model::PartId& selected_part;
    double largest_lb = 0.0;
};

double radius_at(const Dial& dial, const PolarCurve& anchor, double angle_rad) {
    return tension_at(anchor, angle_rad) / dial.largest_lb;
}

void add_line(Scene& scene, const Place& from, const Place& to, Pen pen) {
    scene.items.emplace_back(Path{{{from, to}}, false, pen, Fill::none, {}});
}

/// Divided like a protractor, every 15 degrees.
void add_face(Scene& scene) {
    constexpr int marks = 24, marks_between_axes = 6;
    for (int mark = 0; mark < marks; ++mark) {
        const double angle = whole_turn * mark / marks;
        const bool axis = mark % marks_between_axes == 0;
        add_line(scene, axis ? Place{} : on_dial(angle, 1.0, -1.3), on_dial(angle, 1.0), axis ? Pen::grid : Pen::thin);
    }
    scene.items.emplace_back(Circle{{}, 1.0, 0.0, Pen::dimension, Fill::none, {}});
}

/// The smallest of 1, 2, 2.5 and 5 times a power of ten that divides the largest by four at the most.
double even_step(double largest) {
    const double least = largest / 4.0;
    const double power = std::pow(10.0, std::floor(std::log10(least)));
    for (const double times : {1.0, 2.0, 2.5, 5.0}) {
        if (times * power >= least * (1.0 - 1e-9)) return times * power;
    }
    return 10.0 * power;
}

/// Even figures below `end`, in the units of the step.
std::vector<double> even_figures(double step, double end) {
    std::vector<double> figures;
    const int count = static_cast<int>(std::ceil(end / step * (1.0 - 1e-9))) - 1;
    for (int i = 1; i <= count; ++i) figures.push_back(i * step);
    return figures;
}

/// Where figures stand in nobody's way: the direction in which the curves reach least far.
double quiet_direction(const Dial& dial) {
    constexpr int candidates = 24;
    double quietest = 0.0, least = 2.0;
    for (int i = 0; i < candidates; ++i) {
        const double angle = whole_turn * (i + 0.5) / candidates;
        double reach = 0.0;
        for (const PolarCurve& anchor : dial.curves) reach = std::max(reach, radius_at(dial, anchor, angle));
        if (dial.overlay.push && std::cos(angle - dial.overlay.push->direction_rad) > 0.9) reach += 1.0;
        if (reach < least - 1e-9) {
            least = reach;
            quietest = angle;
        }
    }
    return quietest;
}

void add_figure(Scene& scene, const std::string& words, const Place& at) {
    Text text;
    text.at = at;
    text.words = words;
    text.size = TextSize::fine;
    text.across = Across::middle;
    text.upright = Upright::middle;
    text.pen = Pen::dimension;
    text.on_paper = true;
    scene.items.emplace_back(text);
}

void add_circles(Scene& scene, const Dial& dial) {
    const double largest = format::in_system(dial.largest_lb, "lb", dial.overlay.locale.system).value;
    for (const double figure : even_figures(even_step(largest), largest))
        scene.items.emplace_back(Circle{{}, figure / largest, 0.0, Pen::grid, Fill::none, {}});
}

void add_figures(Scene& scene, const Dial& dial) {
    constexpr double clear_of_outer = 0.86;
    const format::Figure largest = format::in_system(dial.largest_lb, "lb", dial.overlay.locale.system);
    const double angle = quiet_direction(dial);
    for (const double figure : even_figures(even_step(largest.value), clear_of_outer * largest.value))
        add_figure(scene, format::number_text(figure), on_dial(angle, figure / largest.value));
    add_figure(scene, format::number_text(std::round(largest.value)) + " " + largest.unit, on_dial(angle, 1.0));
}

/// Told apart by their lines, and by their letters.
Pen pen_of(std::size_t anchor) {
    constexpr std::array<Pen, 4> pens = {Pen::outline, Pen::hidden, Pen::center, Pen::thin};
    return pens.at(anchor % pens.size());
}

Path curve(const Dial& dial, const PolarCurve& anchor) {
    Path path;
    path.closed = true;
    path.part = anchor.part;
    std::vector<Place>& line = path.contours.emplace_back();
    const std::size_t steps = anchor.tension_lb.size();
    for (std::size_t i = 0; i < steps; ++i)
        line.push_back(on_dial(angle_of(i, steps), anchor.tension_lb[i] / dial.largest_lb));
    return path;
}

bool is_selected(const Dial& dial, const PolarCurve& anchor) { return anchor.part == dial.selected_part; }

/// The selected one first, since its tone is to lie under the lines of the others; its own line is heavy enough.
void add_curves(Scene& scene, const Dial& dial) {
    for (const PolarCurve& anchor : dial.curves) {
        if (!is_selected(dial, anchor)) continue;
        Path path = curve(dial, anchor);
        path.pen = Pen::demand;
        path.fill = Fill::demand_pale;
        scene.items.emplace_back(path);
    }
    for (std::size_t i = 0; i < dial.curves.size(); ++i) {
        if (is_selected(dial, dial.curves[i])) continue;
        Path path = curve(dial, dial.curves[i]);
        path.pen = pen_of(i);
        scene.items.emplace_back(path);
    }
}

/// Clear of the letters that stand already, and of the pointer.
bool is_free(const Dial& dial, Point place, const std::vector<Point>& taken) {
    constexpr double clear_of_letters = 0.13, clear_of_pointer = 0.1;
    const bool clear = std::none_of(taken.begin(), taken.end(), [place](Point other) {
        return std::hypot(place.x - other.x, place.y - other.y) < clear_of_letters;
    });
    if (!dial.overlay.push) return clear;
    const Point along = direction(dial.overlay.push->direction_rad);
    const bool beside = std::abs(place.x * along.y - place.y * along.x) > clear_of_pointer;
    return clear && (beside || place.x * along.x + place.y * along.y < 0.0);
}

/// Just within the curve at its peak, or as near to that along the curve as other marks let it.
Point letter_place(const Dial& dial, const PolarCurve& anchor, const std::vector<Point>& taken) {
    constexpr double within = 0.89;
    const auto peak = std::max_element(anchor.tension_lb.begin(), anchor.tension_lb.end());
    const double at_peak =
        angle_of(static_cast<std::size_t>(peak - anchor.tension_lb.begin()), anchor.tension_lb.size());
    const auto place = [&](double angle) { return scaled(direction(angle), within * radius_at(dial, anchor, angle)); };
    constexpr double step = whole_turn / 72.0;
    constexpr int most_steps = 18;
    for (int i = 0; i <= most_steps; ++i) {
        for (const double angle : {at_peak + i * step, at_peak - i * step}) {
            if (is_free(dial, place(angle), taken)) return place(angle);
        }
    }
    return place(at_peak);
}

void add_letters(Scene& scene, const Dial& dial) {
    std::vector<Point> taken;
    for (const PolarCurve& anchor : dial.curves) {
        if (anchor.tension_lb.empty()) continue;
        taken.push_back(letter_place(dial, anchor, taken));
        Text text;
        text.at = {taken.back(), {}};
        text.words = anchor.part.id;
        text.across = Across::middle;
        text.upright = Upright::middle;
        text.bold = true;
        text.on_paper = true;
        text.pen = is_selected(dial, anchor) ? Pen::demand : Pen::outline;
        text.part = anchor.part;
        scene.items.emplace_back(text);
    }
}

/// Where the pointer crosses the curves: what each anchor holds under the push shown.
void add_crossings(Scene& scene, const Dial& dial, double angle_rad) {
    constexpr double nothing = 0.01, at_the_arrow = 0.95;
    for (const PolarCurve& anchor : dial.curves) {
        const double radius = radius_at(dial, anchor, angle_rad);
        if (radius < nothing || radius > at_the_arrow) continue;
        scene.items.emplace_back(Circle{on_dial(angle_rad, radius), 0.0, 0.8, Pen::outline,
                                        is_selected(dial, anchor) ? Fill::demand : Fill::paper, anchor.part});
    }
}

void add_pointer(Scene& scene, const PushShown& push) {
    const double angle = push.direction_rad;
    const Point along = direction(angle), across{-along.y, along.x};
    const Place tip = on_dial(angle, 1.0);
    constexpr double head_mm = 2.8, half_head_mm = 0.85;
    const auto barb = [&](double side) {
        return Place{tip.at, {-head_mm * along.x + side * across.x, -head_mm * along.y + side * across.y}};
    };
    scene.items.emplace_back(
        Path{{{Place{}, on_dial(angle, 1.0, -head_mm)}}, false, Pen::demand, Fill::none, {model::PartKind::push}});
    scene.items.emplace_back(
        Path{{{tip, barb(half_head_mm), barb(-half_head_mm)}}, true, Pen::none, Fill::demand, {model::PartKind::push}});
    scene.items.emplace_back(Circle{{}, 0.0, 0.9, Pen::none, Fill::demand, {}});
}

void add_knob(Scene& scene, const PushShown& push) {
    const Place middle = on_dial(push.direction_rad, 1.0, knob_off_mm);
    const long whole = std::lround(format::degrees(push.direction_rad)) % 360;
    scene.items.emplace_back(Circle{middle, 0.0, knob_mm, Pen::demand, Fill::paper, {model::PartKind::push}});
    Text text;
    text.at = middle;
    text.words = std::to_string(whole < 0 ? whole + 360 : whole) + "\u00b0";
    text.size = TextSize::fine;
    text.across = Across::middle;
    text.upright = Upright::middle;
    text.bold = push.governing;
    text.pen = Pen::demand;
    text.part = {model::PartKind::push};
    scene.items.emplace_back(text);
}

void add_words(Scene& scene, const format::Locale& locale) {
    Text text;
    text.at = {{0.0, 1.0}, {0.0, words_off_mm}};
    text.words = format::text(phrase("OUTWARD"), locale);
    text.size = TextSize::fine;
    text.across = Across::middle;
    text.pen = Pen::dimension;
    scene.items.emplace_back(text);
    text.at = {{1.0, 0.0}, {words_off_mm, 0.0}};
    text.words = format::text(phrase("along the rail"), locale);
    text.upright = Upright::top;
    text.angle_deg = 90.0;
    scene.items.emplace_back(text);
}

}  // namespace

Scene polar_envelope(const std::vector<PolarCurve>& curves, const Overlay& overlay,
                     const model::PartId& selected_part) {
    Scene scene{format::text(phrase("Rose"), overlay.locale), {}, {{-1.0, -1.0}, {1.0, 1.0}}, margin_mm};
    const Dial dial{curves, overlay, selected_part, largest_of(curves)};
    const bool pulls = dial.largest_lb > 0.0;
    add_face(scene);
    if (pulls) add_circles(scene, dial);
    if (pulls) add_curves(scene, dial);
    if (overlay.push) add_pointer(scene, *overlay.push);
    if (pulls) add_figures(scene, dial);
    if (pulls && overlay.push) add_crossings(scene, dial, overlay.push->direction_rad);
    if (pulls) add_letters(scene, dial);
    if (overlay.stale) scene.items.emplace_back(Circle{{}, 1.0, 0.0, Pen::none, Fill::stale, {}});
    add_words(scene, overlay.locale);
    if (overlay.push) add_knob(scene, *overlay.push);
    return scene;
}

}  // namespace toehold::drawing
