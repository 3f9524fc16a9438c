#pragma once
// A small ruled table with a title over it and notes under it.
#include "paper/layout/on_paper.h"

#include <vector>

namespace toehold::paper::shop {

struct Schedule {
    struct Column {
        std::string title;
        double share = 1.0;  ///< of the width
        drawing::Across across = drawing::Across::left;
    };
    std::string title;
    std::vector<Column> columns;
    std::vector<std::vector<std::string>> rows;  ///< as many cells as columns
    std::vector<std::string> notes;              ///< under it
};

[[nodiscard]] double height_mm(const Schedule& schedule, double width_mm);
void add_schedule(drawing::Scene& scene, const Schedule& schedule, layout::Spot top_left, double width_mm);

}  // namespace toehold::paper::shop
