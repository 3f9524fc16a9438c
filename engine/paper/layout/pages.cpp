#include "paper/layout/pages.h"

#include "paper/layout/on_paper.h"

#include <utility>

namespace toehold::paper::layout {
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
    add_words(scene(), {line.foot_mm.x, line.foot_mm.y}, line.words,
              {line.size, line.bold, line.across, drawing::Pen::outline, line.math});
}

void Pages::rule(drawing::Point from_mm, drawing::Point to_mm, drawing::Pen pen) {
    add_rule(scene(), {from_mm.x, from_mm.y}, {to_mm.x, to_mm.y}, pen);
}

void Pages::box(const Frame& frame, drawing::Pen pen, drawing::Fill fill) { add_frame(scene(), frame, pen, fill); }

void Pages::slight_box(const Frame& frame, drawing::Pen pen, double weight) {
    drawing::Scene alone;
    add_frame(alone, {frame.left / weight, frame.top / weight, frame.width / weight, frame.height / weight}, pen);
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
