#pragma once
// The block at the sheet's lower right corner.
#include "paper/layout/on_paper.h"

#include <vector>

namespace toehold::paper::shop {

struct TitleBlock {
    struct Field {
        std::string label, words;
        double share = 1.0;  ///< of its row's width
        bool bold = false;
        bool projection = false;  ///< the sign of third-angle projection stands in it
    };
    std::vector<std::vector<Field>> rows;  ///< from the top
};

[[nodiscard]] double height_mm(const TitleBlock& block, double width_mm);
void add_title_block(drawing::Scene& scene, const TitleBlock& block, layout::Spot top_left, double width_mm);

}  // namespace toehold::paper::shop
