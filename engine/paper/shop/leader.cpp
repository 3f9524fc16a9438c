#include "paper/shop/leader.h"

#include "drawing/annotation/symbols.h"
#include "drawing/scene/shapes.h"

namespace toehold::paper::shop {

void add_leader(drawing::Scene& scene, const drawing::Place& from, const drawing::Place& tip, double mm_per_in) {
    const drawing::Point along{(tip.at.x - from.at.x) * mm_per_in + tip.paper_mm.x - from.paper_mm.x,
                               (tip.at.y - from.at.y) * mm_per_in + tip.paper_mm.y - from.paper_mm.y};
    const drawing::ArrowStyle style{drawing::Pen::holds, drawing::Fill::capacity, 2.4, 0.9, {}};
    scene.items.emplace_back(drawing::line(from, tip, drawing::Pen::dimension));
    drawing::Path head = drawing::arrow_head(tip, along, style);
    head.pen = drawing::Pen::dimension;
    scene.items.emplace_back(std::move(head));
}

}  // namespace toehold::paper::shop
