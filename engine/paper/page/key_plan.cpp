// Where a project's posts stand, seen from above: squares with their marks, a tick toward outward, lines of guard.
#include "drawing/scene/shapes.h"
#include "model/facing.h"
#include "paper/page/html.h"
#include "paper/page/sections.h"

#include <fmt/format.h>

#include <algorithm>

namespace toehold::paper::page {
namespace {

using drawing::Box;
using drawing::Point;

// In px of a phone 360 px wide, between its margins.
constexpr double width = 328.0, highest = 420.0, margin = 26.0, half_square = 4.0, tick = 11.0, font = 13.0,
                 letter = 0.66 * font;

/// Plan to page: x to the right, y (outward) up, as large as fits.
struct PlanScale {
    Box places;
    double px_per_in = 1.0;

    [[nodiscard]] Point at(const model::Position& place) const {
        return {margin + px_per_in * (place.x_in - places.low.x), margin + px_per_in * (places.high.y - place.y_in)};
    }
    [[nodiscard]] double height() const { return 2.0 * margin + px_per_in * drawing::height(places); }
};

PlanScale scale_of(const std::vector<SitePost>& posts) {
    std::vector<Point> places;
    places.reserve(posts.size());
    for (const SitePost& post : posts) places.push_back({post.placed->at.x_in, post.placed->at.y_in});
    PlanScale scale{drawing::around(places)};
    constexpr double least_in = 1.0;
    scale.px_per_in = std::min((width - 2.0 * margin) / std::max(least_in, drawing::width(scale.places)),
                               (highest - 2.0 * margin) / std::max(least_in, drawing::height(scale.places)));
    return scale;
}

/// On the page, where y runs down.
Point toward(model::PostFacing facing) {
    const model::Position out = model::outward(facing);
    return {out.x_in, -out.y_in};
}

std::string square(const Point& at, const Point& out) {
    return fmt::format(
        "<rect x=\"{:.1f}\" y=\"{:.1f}\" width=\"{:.1f}\" height=\"{:.1f}\"/><path d=\"M{:.1f} {:.1f}L{:.1f} "
        "{:.1f}\"/>",
        at.x - half_square, at.y - half_square, 2.0 * half_square, 2.0 * half_square, at.x, at.y, at.x + tick * out.x,
        at.y + tick * out.y);
}

Box square_box(const Point& at) { return drawing::grown({at, at}, half_square); }

/// The words' box where they stand on that side of a square.
Box words_box(const Point& at, const Point& side, double wide) {
    constexpr double away = 4.0;
    const Point middle{at.x + side.x * (half_square + away + 0.5 * wide),
                       at.y + side.y * (half_square + away + 0.5 * font)};
    return {{middle.x - 0.5 * wide, middle.y - 0.5 * font}, {middle.x + 0.5 * wide, middle.y + 0.5 * font}};
}

/// Beside its post where nothing is; empty where there is no room.
std::string mark_beside(const std::string& mark, const Point& at, const Point& out, std::vector<Box>& taken,
                        double plan_height) {
    const double wide = letter * static_cast<double>(mark.size());
    const Point sides[] = {{-out.x, -out.y}, {out.y, out.x}, {-out.y, -out.x}};
    for (const Point& side : sides) {
        const Box box = words_box(at, side, wide);
        const bool inside = box.low.x >= 0.0 && box.high.x <= width && box.low.y >= 0.0 && box.high.y <= plan_height;
        const bool clear = std::none_of(taken.begin(), taken.end(), [&box](const Box& one) {
            return drawing::has_area(drawing::common(one, box));
        });
        if (!inside || !clear) continue;
        taken.push_back(box);
        constexpr double foot = 0.36;  // of the font, from the middle of capitals down to their line
        return fmt::format("<text x=\"{:.1f}\" y=\"{:.1f}\">{}</text>", 0.5 * (box.low.x + box.high.x),
                           0.5 * (box.low.y + box.high.y) + foot * font, escaped(mark));
    }
    return {};
}

std::string rails(const SiteSubject& subject, const PlanScale& scale) {
    std::string all;
    for (const std::vector<std::string>& line : subject.lines) {
        std::string points;
        for (const std::string& mark : line) {
            const auto post = std::find_if(subject.posts.begin(), subject.posts.end(),
                                           [&mark](const SitePost& one) { return one.mark == mark; });
            if (post == subject.posts.end()) continue;
            const Point at = scale.at(post->placed->at);
            points += fmt::format("{}{:.1f},{:.1f}", points.empty() ? "" : " ", at.x, at.y);
        }
        all += "<polyline points=\"" + points + "\"/>";
    }
    return all;
}

}  // namespace

std::string key_plan(const SiteSubject& subject, const format::Locale& locale) {
    const bool placed = std::all_of(subject.posts.begin(), subject.posts.end(),
                                    [](const SitePost& post) { return post.placed.has_value(); });
    if (!placed || subject.posts.size() < 2) return {};
    const PlanScale scale = scale_of(subject.posts);
    std::vector<Box> taken;
    for (const SitePost& post : subject.posts) taken.push_back(square_box(scale.at(post.placed->at)));
    std::string squares, marks;
    std::size_t left_out = 0;
    for (const SitePost& post : subject.posts) {
        const Point at = scale.at(post.placed->at), out = toward(post.placed->facing);
        squares += square(at, out);
        const std::string mark = mark_beside(post.mark, at, out, taken, scale.height());
        if (mark.empty()) ++left_out;
        marks += mark;
    }
    const format::Phrase seen = format::phrase("Where the posts stand, seen from above; the ticks point outward.");
    const format::Phrase caption = left_out == 0 ? seen : format::phrase("{} Marks without room are left out.", seen);
    return element("figure", "class=\"key\"",
                   fmt::format("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {:.0f} {:.1f}\" role=\"img\" "
                               "aria-label=\"{}\">",
                               width, scale.height(), said(seen, locale)) +
                       rails(subject, scale) + squares + marks + "</svg>" +
                       element("figcaption", said(caption, locale))) +
           "\n";
}

}  // namespace toehold::paper::page
