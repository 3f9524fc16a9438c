#include "paper/site/tape_chain.h"

#include "drawing/render/lettering.h"
#include "drawing/render/palette.h"
#include "drawing/scene/shapes.h"
#include "paper/site/wording.h"

#include <algorithm>
#include <cstddef>
#include <utility>

namespace toehold::paper::site {
namespace {

constexpr double off_line_mm = 0.9;  ///< words from their line
constexpr double clear_mm = 0.9;     ///< words from each other
constexpr double extension_mm = 1.2, tick_mm = 1.1;
constexpr double slant_mm = 1.8;  ///< for leaders to words that were pushed aside

/// One figure of the chain. Along: the measured direction, from the drawing's origin, mm; out: away from the drawing.
struct Figure {
    std::string words;
    double wide_mm = 0.0, high_mm = 0.0;
    double middle_mm = 0.0;  ///< of what it measures
    double at_mm = 0.0;      ///< of the words
    bool stepped_out = false;
};

/// Places as near to the wished ones as leaves `apart_mm[i]` between place i and the next: least squares with the order
/// kept, by pooling neighbors that violate it.
std::vector<double> spread(const std::vector<double>& wished_mm, const std::vector<double>& apart_mm) {
    struct Pool {
        double mean_mm = 0.0;
        std::size_t count = 0;
    };
    std::vector<double> shift_mm = {0.0};
    for (const double apart : apart_mm) shift_mm.push_back(shift_mm.back() + apart);
    std::vector<Pool> pools;
    for (std::size_t index = 0; index < wished_mm.size(); ++index) {
        pools.push_back({wished_mm[index] - shift_mm[index], 1});
        while (pools.size() > 1 && pools[pools.size() - 2].mean_mm > pools.back().mean_mm) {
            const Pool last = pools.back();
            pools.pop_back();
            Pool& before = pools.back();
            const auto all = static_cast<double>(before.count + last.count);
            before.mean_mm =
                (before.mean_mm * static_cast<double>(before.count) + last.mean_mm * static_cast<double>(last.count)) /
                all;
            before.count += last.count;
        }
    }
    std::vector<double> places_mm;
    for (const Pool& pool : pools) {
        for (std::size_t of = 0; of < pool.count; ++of) places_mm.push_back(pool.mean_mm + shift_mm[places_mm.size()]);
    }
    return places_mm;
}

class Row {
  public:
    Row(const TapeChain& chain, const ChainRow& row) : chain_(chain), row_(row) {
        for (std::size_t index = 0; index + 1 < chain.ends.size(); ++index) figures_.push_back(figure(index));
        step_out();
    }

    double add_to(drawing::Scene& scene) const {
        for (const drawing::DimensionEnd& end : chain_.ends) add_end(scene, end);
        scene.items.emplace_back(drawing::line(place_in(chain_.ends.front().at_in, line_mm()),
                                               place_in(chain_.ends.back().at_in, line_mm()), drawing::Pen::holds));
        for (const Figure& one : figures_) add_figure(scene, one);
        if (any_stepped_out()) return storey_mm(true) + out_size_mm(true);
        return across() ? line_mm() + tick_mm : storey_mm(false) + out_size_mm(false);
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
        one.high_mm = drawing::capitals_mm(drawing::TextSize::normal);
        one.middle_mm = 0.5 * (chain_.ends[index].at_in + chain_.ends[index + 1].at_in) * row_.mm_per_in;
        one.at_mm = one.middle_mm;
        return one;
    }

    /// Figures too large for what they measure stand farther out, side by side.
    void step_out() {
        const double around_mm = across() ? clear_mm : 0.5 * clear_mm;
        std::vector<double> wished_mm, apart_mm;
        double size_before_mm = 0.0;
        for (std::size_t index = 0; index < figures_.size(); ++index) {
            Figure& one = figures_[index];
            one.stepped_out = along_size_mm(one) + 2.0 * around_mm > length_mm(index);
            if (!one.stepped_out) continue;
            if (!wished_mm.empty()) apart_mm.push_back(0.5 * (size_before_mm + along_size_mm(one)) + apart_of(one));
            wished_mm.push_back(one.middle_mm);
            size_before_mm = along_size_mm(one);
        }
        const std::vector<double> places_mm = spread(wished_mm, apart_mm);
        std::size_t next = 0;
        for (Figure& one : figures_) {
            if (one.stepped_out) one.at_mm = places_mm[next++];
        }
    }
    /// Between words side by side, or one over the other with what hangs below their lines.
    [[nodiscard]] double apart_of(const Figure& one) const { return across() ? 1.6 * clear_mm : 0.6 * one.high_mm; }
    [[nodiscard]] bool any_stepped_out() const {
        return std::any_of(figures_.begin(), figures_.end(), [](const Figure& one) { return one.stepped_out; });
    }

    /// Words at a line across stand between drawing and line; at one upright, beyond the line.
    [[nodiscard]] double line_mm() const {
        return across() ? row_.offset_mm + figures_.front().high_mm + 2.0 * off_line_mm : row_.offset_mm + extension_mm;
    }
    [[nodiscard]] double out_size_mm(bool stepped_out) const {
        double size_mm = 0.0;
        for (const Figure& one : figures_) {
            if (one.stepped_out == stepped_out) size_mm = std::max(size_mm, across() ? one.high_mm : one.wide_mm);
        }
        return size_mm;
    }
    /// Where leaders leave the straight way out: beyond the words that stand at the line.
    [[nodiscard]] double bend_mm() const {
        if (across()) return line_mm() + tick_mm;
        return storey_mm(false) + out_size_mm(false) + 0.5 * clear_mm;
    }
    /// From the drawing's edge to the near side of the words.
    [[nodiscard]] double storey_mm(bool stepped_out) const {
        if (stepped_out) return bend_mm() + slant_mm + 0.5;
        return across() ? row_.offset_mm : line_mm() + off_line_mm + 0.7;
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
        const double near_mm = storey_mm(one.stepped_out);
        if (one.stepped_out) {
            drawing::Path leader;
            leader.contours = {{place_mm(one.middle_mm, line_mm()), place_mm(one.middle_mm, bend_mm()),
                                place_mm(one.at_mm, near_mm - 0.4)}};
            leader.pen = drawing::Pen::holds;
            scene.items.emplace_back(std::move(leader));
        }
        drawing::Text text;
        text.words = one.words;
        text.on_paper = true;
        const bool inner = across() && !one.stepped_out;
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
};

}  // namespace

double add_tape_chain(drawing::Scene& scene, const TapeChain& chain, const ChainRow& row) {
    if (chain.ends.size() < 2) return row.offset_mm;
    return Row(chain, row).add_to(scene);
}

}  // namespace toehold::paper::site
