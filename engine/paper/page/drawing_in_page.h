#pragma once
// A drawing of the site sheet, set for a phone's width, as SVG inside the page.
#include "paper/site/extent.h"

#include <string>

namespace toehold::paper::page {

/// `number` keeps its ids apart from those of the page's other drawings; `label` is read aloud in its place.
[[nodiscard]] std::string drawing_in_page(const site::SceneAtScale& make, std::size_t number, const std::string& label);

}  // namespace toehold::paper::page
