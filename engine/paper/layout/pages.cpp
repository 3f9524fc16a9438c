#include "paper/layout/pages.h"

#include <utility>

namespace toehold::paper::layout {
namespace {

/// A page's own scene has its origin at the page's top left corner, and y up.
drawing::Place on_page(drawing::Point mm) { return {{}, {mm.x, -mm.y}}; }

drawing::Path framed(const Frame& frame, drawing::Pen pen, drawing::Fill fill) {
    const double right = frame.left + frame.width, foot = frame.top + frame.height;
    drawing::Path path;
    path.contours = {{on_page({frame.left, foot}), on_page({right, foot}), on_page({right, frame.top}),
                      on_page({frame.left, frame.top})}};
    path.closed = true;
    path.pen = pen;
    path.fill = fill;
    return path;
}

}  // namespace

Pages::Pages(Size size, format::Locale locale) : size_(size), locale_(std::move(locale)) { turn_page(); }

void Pages::turn_page() {
    sheets_.push_back({size_, {}, {}, {}});
    scenes_.emplace_back();
    y_ = margins_.top;
}

void Pages::need(double room_mm) {
    if (room() < room_mm && y_ > margins_.top) turn_page();
}

drawing::Scene& Pages::scene() { return scenes_.back(); }

void Pages::write(const Line& line) {
    drawing::Text text;
    text.at = on_page(line.foot_mm);
    text.words = line.words;
    text.size = line.size;
    text.across = line.across;
    text.bold = line.bold;
    text.math = line.math;
    scene().items.emplace_back(std::move(text));
}

void Pages::rule(drawing::Point from_mm, drawing::Point to_mm, drawing::Pen pen) {
    drawing::Path path;
    path.contours = {{on_page(from_mm), on_page(to_mm)}};
    path.pen = pen;
    scene().items.emplace_back(std::move(path));
}

void Pages::box(const Frame& frame, drawing::Pen pen, drawing::Fill fill) {
    scene().items.emplace_back(framed(frame, pen, fill));
}

void Pages::slight_box(const Frame& frame, drawing::Pen pen, double weight) {
    drawing::Scene alone;
    alone.items.emplace_back(
        framed({frame.left / weight, frame.top / weight, frame.width / weight, frame.height / weight}, pen, {}));
    place(placed_on_paper(std::move(alone), {}, weight));
}

void Pages::place(Placed placed) { sheets_.back().placed.push_back(std::move(placed)); }

void Pages::link(const Frame& area, const std::string& to) {
    if (!to.empty()) sheets_.back().links.push_back({area, to});
}

void Pages::destination(const std::string& name) {
    if (!name.empty()) sheets_.back().destinations.push_back({name, y_});
}

std::vector<Sheet> Pages::take() {
    for (std::size_t page = 0; page < sheets_.size(); ++page) {
        std::vector<Placed>& placed = sheets_[page].placed;
        placed.insert(placed.begin(), placed_on_paper(std::move(scenes_[page]), {}));
    }
    scenes_.clear();
    return std::move(sheets_);
}

}  // namespace toehold::paper::layout
