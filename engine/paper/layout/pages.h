#pragma once
// Pages being filled from the top down. Measures in mm from a page's top left corner, y down.
#include "paper/document.h"

#include <map>
#include <string>
#include <vector>

namespace toehold::paper::layout {

struct Margins {
    double left = 19.0, right = 16.0, top = 20.0, bottom = 18.0;
};

/// Words on one line; their foot (of capitals) stands at the place.
struct Line {
    drawing::Point foot_mm;
    std::string words;
    drawing::TextSize size = drawing::TextSize::small;
    drawing::Across across = drawing::Across::left;
    bool bold = false;
    bool math = false;
};

class Pages {
  public:
    Pages(Size size, format::Locale locale);

    // --- where we are ---
    [[nodiscard]] double left() const { return margins_.left; }
    [[nodiscard]] double width() const { return size_.width_mm - margins_.left - margins_.right; }
    [[nodiscard]] double y() const { return y_; }
    [[nodiscard]] double room() const { return size_.height_mm - margins_.bottom - y_; }
    /// Of a page with nothing on it.
    [[nodiscard]] double whole_room() const { return size_.height_mm - margins_.bottom - margins_.top; }
    [[nodiscard]] int page() const { return static_cast<int>(sheets_.size()); }  ///< number of the page, from 1
    [[nodiscard]] const format::Locale& locale() const { return locale_; }
    void advance(double mm) { y_ += mm; }
    void turn_page();
    /// A new page unless so much room is left, or nothing stands on this one yet.
    void need(double room_mm);

    // --- what stands there ---
    void write(const Line& line);
    void rule(drawing::Point from_mm, drawing::Point to_mm, drawing::Pen pen);
    void box(const Frame& frame, drawing::Pen pen, drawing::Fill fill = drawing::Fill::none);
    /// A frame whose lines are thinner than elsewhere by this factor: for small words.
    void slight_box(const Frame& frame, drawing::Pen pen, double weight);
    void place(Placed placed);
    void link(const Frame& area, const std::string& to);
    /// At the cursor.
    void destination(const std::string& name);

    [[nodiscard]] std::vector<Sheet> take();

  private:
    [[nodiscard]] drawing::Scene& scene();

    Size size_;
    format::Locale locale_;
    Margins margins_;
    double y_ = 0.0;
    std::vector<Sheet> sheets_;
    std::vector<drawing::Scene> scenes_;  ///< words and rules of each page, one scene a page
};

}  // namespace toehold::paper::layout
