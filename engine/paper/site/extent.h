#pragma once
// How much paper a scene takes at a scale, words and all. Millimeters of the scene's own lettering, y up, from where
// the origin of the thing drawn stands.
#include "drawing/scene/scene.h"
#include "drawing/scene/view.h"
#include "paper/sheet.h"

#include <functional>
#include <vector>

namespace toehold::paper::site {

/// Of level words: capitals and what hangs below their line.
[[nodiscard]] drawing::Box extent_mm(const drawing::Text& text, double mm_per_in);
/// Around every item.
[[nodiscard]] drawing::Box extent_mm(const drawing::Scene& scene, double mm_per_in);

/// A scene that depends on its scale, since words must find room beside what they speak of.
using SceneAtScale = std::function<drawing::Scene(double mm_per_in)>;
/// As large as fits in the frame, at most `largest` (1: full size), in the frame's middle.
[[nodiscard]] Placed fitted(const SceneAtScale& make, const Frame& frame, double lettering, double largest);

/// Height over width of what a scene takes at this width of paper, mm of its lettering.
[[nodiscard]] double proportion(const SceneAtScale& make, double width_mm, double largest);

/// Paper that is taken already, so that words can look for a free place.
class Taken {
  public:
    explicit Taken(double mm_per_in) : mm_per_in_(mm_per_in) {}
    void take(const drawing::Box& box_mm) { boxes_mm_.push_back(box_mm); }
    void take_texts(const drawing::Scene& scene);
    [[nodiscard]] bool free(const drawing::Box& box_mm) const;
    /// Adds the words at the first of the places where nothing is; nothing where each is taken.
    void add_where_free(drawing::Scene& scene, drawing::Text text, const std::vector<drawing::Place>& places);

  private:
    double mm_per_in_;
    std::vector<drawing::Box> boxes_mm_;
};

}  // namespace toehold::paper::site
