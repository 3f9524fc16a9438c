#pragma once
// What a test asks of a scene: its words, its items of a part, the numbers in it.
#include "drawing/scene/scene.h"

#include <set>
#include <string>
#include <vector>

namespace toehold::test {

/// In the order painted.
[[nodiscard]] std::vector<std::string> words(const drawing::Scene& scene);
[[nodiscard]] bool says(const drawing::Scene& scene, const std::string& words);
[[nodiscard]] int times_said(const drawing::Scene& scene, const std::string& words);
/// Every part that an item belongs to; items of no part left out.
[[nodiscard]] std::set<model::PartId> parts_drawn(const drawing::Scene& scene);
[[nodiscard]] std::vector<drawing::Circle> circles(const drawing::Scene& scene, const model::PartId& part);
[[nodiscard]] std::vector<drawing::Path> paths(const drawing::Scene& scene, const model::PartId& part);
/// All places of a path's contours, in inches.
[[nodiscard]] std::vector<drawing::Point> points(const drawing::Path& path);
[[nodiscard]] drawing::Box box(const drawing::Path& path);
/// Every coordinate, size and level finite, every index of a triangle a node.
[[nodiscard]] bool sound(const drawing::Scene& scene);

}  // namespace toehold::test
