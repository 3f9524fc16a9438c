#include "drawing/marks/status_mark.h"

#include "drawing/marks/shapes.h"

#include <algorithm>

namespace toehold::drawing {

Pen frame_pen(checks::Status status) {
    switch (status) {
        case checks::Status::holds:
            return Pen::holds;
        case checks::Status::fails:
            return Pen::fails;
        case checks::Status::no_path:
            return Pen::no_path;
        case checks::Status::missing_evidence:
            break;
    }
    return Pen::missing;
}

double frame_width_mm(const std::string& words) {
    constexpr double character_mm = 2.1, around_mm = 2.4;
    return std::max(frame_height_mm, around_mm + character_mm * static_cast<double>(words.size()));
}

void add_framed(Scene& scene, const Place& low, const std::string& words, Pen frame, const std::string& part) {
    const double width_mm = frame_width_mm(words);
    scene.items.emplace_back(rectangle_mm(low, {}, {width_mm, frame_height_mm}, frame, Fill::paper, part));
    Text text;
    text.at = moved_mm(low, 0.5 * width_mm, 0.5 * frame_height_mm);
    text.words = words;
    text.across = Across::middle;
    text.upright = Upright::middle;
    text.bold = true;
    text.part = part;
    scene.items.emplace_back(std::move(text));
}

}  // namespace toehold::drawing
