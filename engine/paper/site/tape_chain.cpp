#include "paper/site/tape_chain.h"

#include "drawing/lettering.h"
#include "drawing/marks/shapes.h"
#include "drawing/palette.h"
#include "paper/site/wording.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace toehold::paper::site {
namespace {

constexpr double off_line_mm = 0.9;  ///< words from their line
constexpr double clear_mm = 0.9;     ///< words from each other
constexpr double extension_mm = 1.2, tick_mm = 1.1;
constexpr double capitals_of_font = 0.729;

/// One figure of the chain. Along: the measured direction, from the drawing's origin, mm; out: away from the drawing.
struct Figure {
    std::string words;
    double wide_mm = 0.0, high_mm = 0.0;
    double middle_mm = 0.0;  ///< of what it measures
    double at_mm = 0.0;      ///< of the words
    int storey = 0;
};

class Row {
  public:
    Row(const TapeChain& chain, const ChainRow& row) : chain_(chain), row_(row) {
        for (std::size_t index = 0; index + 1 < chain.ends.size(); ++index) figures_.push_back(figure(index));
        for (std::size_t index = 0; index < figures_.size(); ++index) seek_storey(index);
        for (const Figure& one : figures_) deepest_ = std::max(deepest_, one.storey);
    }

    double add_to(drawing::Scene& scene) const {
        for (const drawing::DimensionEnd& end : chain_.ends) add_end(scene, end);
        scene.items.emplace_back(drawing::line(place_in(chain_.ends.front().at_in, line_mm()),
                                               place_in(chain_.ends.back().at_in, line_mm()), drawing::Pen::holds));
        for (const Figure& one : figures_) add_figure(scene, one);
        return deepest_ == 0 && across() ? line_mm() + tick_mm : storey_mm(deepest_) + out_size_mm(deepest_);
    }

  private:
    [[nodiscard]] bool across() const { return chain_.measure == drawing::Measure::across; }
    [[nodiscard]] double along_size_mm(const Figure& one) const { return across() ? one.wide_mm : one.high_mm; }
    [[nodiscard]] double length_mm(std::size_t index) const {
        return (chain_.ends[index + 1].at_in - chain_.ends[index].at_in) * row_.mm_per_in;
    }

    [[nodiscard]] Figure figure(std::size_t index) const {
        Figure one;
        one.words = tape_figure(chain_.ends[index + 1].at_in - chain_.ends[index].at_in, row_.system);
        one.wide_mm = drawing::text_width_mm(one.words, {drawing::TextSize::normal});
        one.high_mm = capitals_of_font * drawing::text_height_mm(drawing::TextSize::normal);
        one.middle_mm = 0.5 * (chain_.ends[index].at_in + chain_.ends[index + 1].at_in) * row_.mm_per_in;
        one.at_mm = one.middle_mm;
        return one;
    }

    /// Whether words of `size` fit at `at` in a storey, and their leader between the words of those before it.
    [[nodiscard]] bool finds_room(std::size_t index, int storey, double at_mm) const {
        const Figure& one = figures_[index];
        const double half_mm = 0.5 * along_size_mm(one);
        for (std::size_t before = 0; before < index; ++before) {
            const Figure& other = figures_[before];
            if (other.storey == 0) continue;
            const double other_half_mm = 0.5 * along_size_mm(other);
            const bool same = other.storey == storey;
            if (same && std::abs(other.at_mm - at_mm) < half_mm + other_half_mm + clear_mm) return false;
            if (other.storey < storey && std::abs(other.at_mm - one.middle_mm) < other_half_mm + 0.5 * clear_mm)
                return false;
            if (other.storey > storey && std::abs(other.middle_mm - at_mm) < half_mm + 0.5 * clear_mm) return false;
        }
        return true;
    }

    void seek_storey(std::size_t index) {
        Figure& one = figures_[index];
        const double size_mm = along_size_mm(one);
        const double around_mm = across() ? clear_mm : 0.5 * clear_mm;
        if (size_mm + 2.0 * around_mm <= length_mm(index)) return;
        const std::array<double, 5> shifts = {0.0, -0.45, 0.45, -0.25, 0.25};
        for (int storey = 1;; ++storey) {
            for (const double shift : shifts) {
                if (!finds_room(index, storey, one.middle_mm + shift * size_mm)) continue;
                one.storey = storey;
                one.at_mm = one.middle_mm + shift * size_mm;
                return;
            }
        }
    }

    /// Level words of a storey that stands across stand between drawing and line; of one upright, beyond the line.
    [[nodiscard]] double line_mm() const {
        return across() ? row_.offset_mm + figures_.front().high_mm + 2.0 * off_line_mm : row_.offset_mm + extension_mm;
    }
    [[nodiscard]] double out_size_mm(int storey) const {
        double size_mm = 0.0;
        for (const Figure& one : figures_) {
            if (one.storey == storey) size_mm = std::max(size_mm, across() ? one.high_mm : one.wide_mm);
        }
        return size_mm;
    }
    /// From the drawing's edge to the near side of a storey's words.
    [[nodiscard]] double storey_mm(int storey) const {
        if (across() && storey == 0) return row_.offset_mm;
        double out_mm = line_mm() + off_line_mm + tick_mm - (across() ? 0.0 : 0.4);
        for (int before = across() ? 1 : 0; before < storey; ++before) out_mm += out_size_mm(before) + 1.4 * clear_mm;
        return out_mm;
    }

    [[nodiscard]] drawing::Place place(double along_in, double along_mm, double out_mm) const {
        const double out = chain_.beyond_high ? out_mm : -out_mm;
        if (across()) return {{along_in, chain_.beside_in}, {along_mm, out}};
        return {{chain_.beside_in, along_in}, {out, along_mm}};
    }
    [[nodiscard]] drawing::Place place_in(double along_in, double out_mm) const { return place(along_in, 0.0, out_mm); }
    [[nodiscard]] drawing::Place place_mm(double along_mm, double out_mm) const { return place(0.0, along_mm, out_mm); }

    void add_end(drawing::Scene& scene, const drawing::DimensionEnd& end) const {
        const drawing::Place feature =
            across() ? drawing::standing({end.at_in, end.feature_in}) : drawing::standing({end.feature_in, end.at_in});
        const drawing::Place tick = place_in(end.at_in, line_mm());
        scene.items.emplace_back(
            drawing::line(feature, place_in(end.at_in, line_mm() + extension_mm), drawing::Pen::thin));
        scene.items.emplace_back(drawing::line(drawing::moved_mm(tick, -tick_mm, -tick_mm),
                                               drawing::moved_mm(tick, tick_mm, tick_mm), drawing::Pen::cut));
    }

    void add_figure(drawing::Scene& scene, const Figure& one) const {
        const double near_mm = storey_mm(one.storey);
        if (one.storey > 0)
            scene.items.emplace_back(drawing::line(place_mm(one.middle_mm, line_mm()),
                                                   place_mm(one.middle_mm, near_mm - 0.3), drawing::Pen::holds));
        drawing::Text text;
        text.words = one.words;
        text.on_paper = true;
        const bool inner = across() && one.storey == 0;
        if (across()) {
            text.across = drawing::Across::middle;
            const bool rises = chain_.beyond_high != inner;
            text.upright = rises ? drawing::Upright::bottom : drawing::Upright::top;
        } else {
            text.across = chain_.beyond_high ? drawing::Across::left : drawing::Across::right;
            text.upright = drawing::Upright::middle;
        }
        text.at = place_mm(one.at_mm, inner ? line_mm() - off_line_mm : near_mm);
        scene.items.emplace_back(std::move(text));
    }

    const TapeChain& chain_;
    const ChainRow& row_;
    std::vector<Figure> figures_;
    int deepest_ = 0;
};

}  // namespace

double add_tape_chain(drawing::Scene& scene, const TapeChain& chain, const ChainRow& row) {
    if (chain.ends.size() < 2) return row.offset_mm;
    return Row(chain, row).add_to(scene);
}

}  // namespace toehold::paper::site
