#include "drawing/scene_reading.h"

#include <algorithm>
#include <cmath>

namespace toehold::test {
namespace {

bool sound(const drawing::Point& point) { return std::isfinite(point.x) && std::isfinite(point.y); }
bool sound(const drawing::Place& place) { return sound(place.at) && sound(place.paper_mm); }

bool sound(const drawing::Path& path) {
    return std::all_of(path.contours.begin(), path.contours.end(), [](const auto& contour) {
        return std::all_of(contour.begin(), contour.end(), [](const drawing::Place& place) { return sound(place); });
    });
}

bool sound(const drawing::Circle& circle) {
    return sound(circle.center) && std::isfinite(circle.radius_in) && std::isfinite(circle.radius_mm) &&
           circle.radius_in >= 0.0 && circle.radius_mm >= 0.0;
}

bool sound(const drawing::Text& text) { return sound(text.at) && std::isfinite(text.angle_deg); }

bool sound(const drawing::Shading& shading) {
    const auto is_node = [&](int index) {
        return index >= 0 && static_cast<std::size_t>(index) < shading.nodes.size();
    };
    return shading.nodes.size() == shading.level.size() &&
           std::all_of(shading.nodes.begin(), shading.nodes.end(), [](const auto& node) { return sound(node); }) &&
           std::all_of(shading.level.begin(), shading.level.end(),
                       [](double level) { return level >= 0.0 && level <= 1.0; }) &&
           std::all_of(shading.triangles.begin(), shading.triangles.end(),
                       [&](const auto& triangle) { return std::all_of(triangle.begin(), triangle.end(), is_node); });
}

model::PartId part_of(const drawing::Item& item) {
    if (const auto* const path = std::get_if<drawing::Path>(&item)) return path->part;
    if (const auto* const circle = std::get_if<drawing::Circle>(&item)) return circle->part;
    if (const auto* const text = std::get_if<drawing::Text>(&item)) return text->part;
    return {};
}

template <class Kind>
std::vector<Kind> of_kind(const drawing::Scene& scene, const model::PartId& part) {
    std::vector<Kind> found;
    for (const drawing::Item& item : scene.items) {
        const auto* const one = std::get_if<Kind>(&item);
        if (one != nullptr && one->part == part) found.push_back(*one);
    }
    return found;
}

}  // namespace

std::vector<std::string> words(const drawing::Scene& scene) {
    std::vector<std::string> all;
    for (const drawing::Item& item : scene.items) {
        if (const auto* const text = std::get_if<drawing::Text>(&item)) all.push_back(text->words);
    }
    return all;
}

int times_said(const drawing::Scene& scene, const std::string& wanted) {
    const std::vector<std::string> all = words(scene);
    return static_cast<int>(std::count(all.begin(), all.end(), wanted));
}

bool says(const drawing::Scene& scene, const std::string& wanted) { return times_said(scene, wanted) > 0; }

std::set<model::PartId> parts_drawn(const drawing::Scene& scene) {
    std::set<model::PartId> parts;
    for (const drawing::Item& item : scene.items) parts.insert(part_of(item));
    parts.erase(model::PartId{});
    return parts;
}

std::vector<drawing::Circle> circles(const drawing::Scene& scene, const model::PartId& part) {
    return of_kind<drawing::Circle>(scene, part);
}

std::vector<drawing::Path> paths(const drawing::Scene& scene, const model::PartId& part) {
    return of_kind<drawing::Path>(scene, part);
}

std::vector<drawing::Point> points(const drawing::Path& path) {
    std::vector<drawing::Point> all;
    for (const auto& contour : path.contours) {
        for (const drawing::Place& place : contour) all.push_back(place.at);
    }
    return all;
}

drawing::Box box(const drawing::Path& path) {
    const std::vector<drawing::Point> all = points(path);
    drawing::Box result{all.front(), all.front()};
    for (const drawing::Point& point : all) {
        result.low = {std::min(result.low.x, point.x), std::min(result.low.y, point.y)};
        result.high = {std::max(result.high.x, point.x), std::max(result.high.y, point.y)};
    }
    return result;
}

bool sound(const drawing::Scene& scene) {
    const auto item_sound = [](const drawing::Item& item) {
        return std::visit([](const auto& one) { return sound(one); }, item);
    };
    return std::all_of(scene.items.begin(), scene.items.end(), item_sound) && sound(scene.bounds.low) &&
           sound(scene.bounds.high) && scene.bounds.low.x < scene.bounds.high.x &&
           scene.bounds.low.y < scene.bounds.high.y && std::isfinite(scene.margin_mm);
}

}  // namespace toehold::test
