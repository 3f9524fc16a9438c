#include "drawing/charts/word_boxes.h"

#include "drawing/render/lettering.h"

#include <algorithm>

namespace toehold::test {
namespace {

double wide(const drawing::Text& text) { return drawing::text_width_mm(text.words, {text.size, text.bold, text.math}); }

}  // namespace

std::vector<WordBox> word_boxes(const drawing::Scene& scene) {
    constexpr double mm_per_in = 25.4;
    std::vector<WordBox> boxes;
    for (const drawing::Item& item : scene.items) {
        const auto* const text = std::get_if<drawing::Text>(&item);
        if (text == nullptr || text->words.empty()) continue;
        const double width = wide(*text), height = drawing::capitals_mm(text->size);
        const double left = text->across == drawing::Across::left     ? 0.0
                            : text->across == drawing::Across::middle ? -0.5 * width
                                                                      : -width;
        const double foot = text->upright == drawing::Upright::bottom   ? 0.0
                            : text->upright == drawing::Upright::middle ? -0.5 * height
                                                                        : -height;
        const double x = text->at.at.x * mm_per_in + text->at.paper_mm.x;
        const double y = text->at.at.y * mm_per_in + text->at.paper_mm.y;
        if (text->angle_deg == 90.0) {
            boxes.push_back({text->words, {{x - foot - height, y + left}, {x - foot, y + left + width}}});
        } else {
            boxes.push_back({text->words, {{x + left, y + foot}, {x + left + width, y + foot + height}}});
        }
    }
    return boxes;
}

std::vector<std::string> collisions(const drawing::Scene& scene) {
    constexpr double hair_mm = 0.05, mm_per_in = 25.4;
    const std::vector<WordBox> boxes = word_boxes(scene);
    std::vector<std::string> found;
    for (std::size_t a = 0; a < boxes.size(); ++a) {
        const drawing::Box& one = boxes[a].mm;
        if (one.low.x < 0.0 || one.low.y < 0.0 || one.high.x > scene.bounds.high.x * mm_per_in ||
            one.high.y > scene.bounds.high.y * mm_per_in)
            found.push_back(boxes[a].words + " | outside");
        for (std::size_t b = a + 1; b < boxes.size(); ++b) {
            const drawing::Box& other = boxes[b].mm;
            const double right = std::min(one.high.x, other.high.x) - std::max(one.low.x, other.low.x);
            const double up = std::min(one.high.y, other.high.y) - std::max(one.low.y, other.low.y);
            if (right > hair_mm && up > hair_mm) found.push_back(boxes[a].words + " | " + boxes[b].words);
        }
    }
    return found;
}

}  // namespace toehold::test
