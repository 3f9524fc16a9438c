#pragma once
// Words set on the site sheet: all measures mm of the page from its top left corner, y down.
#include "drawing/render/lettering.h"
#include "paper/layout/on_paper.h"
#include "paper/site/instructions.h"

#include <string>
#include <vector>

namespace toehold::paper::site {

/// Names and notes come as their writer wrote them; a sentence begins with a capital.
[[nodiscard]] std::string sentence(std::string words);

/// A scene of the page whose lettering is `scale` times the drawings' own.
class PageWords {
  public:
    explicit PageWords(double scale) : scale_(scale) {}

    [[nodiscard]] double scale() const { return scale_; }
    [[nodiscard]] double line_mm(drawing::TextSize size) const { return scale_ * drawing::line_spacing_mm(size); }
    [[nodiscard]] std::vector<std::string> broken(const std::string& words, double width_mm,
                                                  const drawing::Lettering& lettering) const {
        return drawing::broken_into_lines(words, width_mm / scale_, lettering);
    }
    /// One line; `top_mm` of its line spacing. Returns the top of the next.
    double add_line(double left_mm, double top_mm, const std::string& words, const drawing::Lettering& lettering);
    double add_lines(double left_mm, double top_mm, const std::vector<std::string>& lines,
                     const drawing::Lettering& lettering);
    void add_rule(double left_mm, double right_mm, double at_mm, drawing::Pen pen);
    void add_frame(double left_mm, double top_mm, double width_mm, double height_mm, drawing::Pen pen);
    /// Two strokes crossed.
    void add_cross(double left_mm, double top_mm, double size_mm);
    [[nodiscard]] const drawing::Scene& scene() const { return scene_; }

  private:
    [[nodiscard]] layout::Spot spot(double left_mm, double down_mm) const {
        return {left_mm / scale_, down_mm / scale_};
    }
    double scale_;
    drawing::Scene scene_{"Site sheet", {}, {}, 0.0};
};

enum class ItemMark { number, box, cross };

/// A heading and its items, broken into lines for one width.
struct SetList {
    struct Item {
        std::vector<std::string> lead, words;
    };
    std::vector<std::string> heading;
    ItemMark mark = ItemMark::number;
    int first_number = 1;
    std::vector<Item> items;
};

[[nodiscard]] SetList set_list(const PageWords& page, const format::Phrase& heading, ItemMark mark,
                               const Instructions& instructions, double width_mm, const format::Locale& locale);
[[nodiscard]] double height_mm(const PageWords& page, const SetList& list);
/// Returns where it ends.
double add_list(PageWords& page, const SetList& list, double left_mm, double top_mm, double width_mm);
/// Items off its end until it is no higher; a plain line then says that there is more in the report.
[[nodiscard]] SetList shortened(const PageWords& page, SetList list, double height_mm, double width_mm,
                                const format::Locale& locale);

}  // namespace toehold::paper::site
