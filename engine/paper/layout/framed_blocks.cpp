// Title block, verdict and figures: what stands in a frame and is never broken over pages.
#include "drawing/annotation/symbols.h"
#include "drawing/render/lettering.h"
#include "paper/layout/blocks.h"
#include "paper/layout/on_paper.h"

#include <algorithm>

namespace toehold::paper::layout {
namespace {

using drawing::Pen;
using drawing::TextSize;

constexpr double inside_mm = 2.0;

struct SetFact {
    std::vector<std::string> lines;
    double height = 0.0;
};

SetFact set_fact(const Facts::Fact& fact, double width) {
    SetFact result{drawing::broken_into_lines(fact.words, width - 2.0 * inside_mm, {TextSize::small, false, false}), 0};
    result.height = inside_mm + drawing::line_spacing_mm(TextSize::fine) +
                    static_cast<double>(result.lines.size()) * drawing::line_spacing_mm(TextSize::small) + 0.6;
    return result;
}

void write_fact(Pages& pages, const Facts::Fact& fact, const SetFact& cell, double left) {
    double foot = pages.y() + inside_mm + drawing::capitals_mm(TextSize::fine);
    pages.write({{left + inside_mm, foot}, fact.label, TextSize::fine, {}, true, false});
    foot += drawing::line_spacing_mm(TextSize::fine) + drawing::capitals_mm(TextSize::small) -
            drawing::capitals_mm(TextSize::fine);
    for (const std::string& line : cell.lines) {
        pages.write({{left + inside_mm, foot}, line, TextSize::small, {}, false, false});
        foot += drawing::line_spacing_mm(TextSize::small);
    }
}

/// Where a drawing keeps off its frame.
Frame inner(const Frame& frame) {
    return {frame.left + inside_mm, frame.top + inside_mm, frame.width - 2.0 * inside_mm,
            frame.height - 2.0 * inside_mm};
}

}  // namespace

void set(Pages& pages, const Facts& facts) {
    const auto columns = static_cast<std::size_t>(std::max(1, facts.columns));
    const double width = pages.width() / static_cast<double>(columns);
    for (std::size_t first = 0; first < facts.facts.size(); first += columns) {
        const std::size_t end = std::min(first + columns, facts.facts.size());
        // The last row's cells share the width.
        const bool last = end - first < columns;
        const double cell_width = last ? pages.width() / static_cast<double>(end - first) : width;
        std::vector<SetFact> cells;
        double height = 0.0;
        for (std::size_t index = first; index < end; ++index) {
            cells.push_back(set_fact(facts.facts[index], cell_width));
            height = std::max(height, cells.back().height);
        }
        pages.need(height);
        for (std::size_t index = first; index < end; ++index) {
            const double left = pages.left() + static_cast<double>(index - first) * cell_width;
            pages.box({left, pages.y(), cell_width, height}, Pen::thin);
            write_fact(pages, facts.facts[index], cells[index - first], left);
        }
        pages.advance(height);
    }
    pages.advance(3.0);
}

void set(Pages& pages, const Verdict& verdict) {
    constexpr double inside = 3.5;
    const drawing::Lettering large{TextSize::large, true, false};
    const double word = drawing::text_width_mm(verdict.word, large) + 2.0 * inside;
    const double left = pages.left() + word + 2.0 * inside, width = pages.width() - word - 3.0 * inside;
    std::vector<std::string> lines;
    for (const std::string& sentence : verdict.sentences) {
        const auto broken = drawing::broken_into_lines(sentence, width, {TextSize::small, false, false});
        lines.insert(lines.end(), broken.begin(), broken.end());
    }
    const double spacing = drawing::line_spacing_mm(TextSize::small);
    const double words_height = static_cast<double>(lines.size()) * spacing;
    const double height = std::max(words_height, 8.0) + 2.0 * inside;
    pages.need(height);
    pages.advance(0.8);
    pages.box({pages.left(), pages.y(), pages.width(), height}, Pen::outline);
    const double frame_height = 2.0 * drawing::capitals_mm(TextSize::large) + 2.0;
    const double middle = pages.y() + 0.5 * height;
    pages.box({pages.left() + inside, middle - 0.5 * frame_height, word, frame_height},
              drawing::frame_pen(verdict.frame));
    pages.write({{pages.left() + inside + 0.5 * word, middle + 0.5 * drawing::capitals_mm(TextSize::large)},
                 verdict.word,
                 TextSize::large,
                 drawing::Across::middle,
                 true,
                 false});
    double foot = middle - 0.5 * words_height + 0.5 * (spacing - drawing::capitals_mm(TextSize::small)) +
                  drawing::capitals_mm(TextSize::small);
    for (const std::string& line : lines) {
        pages.write({{left, foot}, line, TextSize::small, {}, false, false});
        foot += spacing;
    }
    pages.advance(height + 3.5);
}

void set(Pages& pages, const Figure& figure) {
    const double spacing = drawing::line_spacing_mm(TextSize::fine);
    const std::vector<double> widths = shared_widths_mm(figure.parts, pages.width());
    struct Under {
        std::vector<std::string> lines;
        Frame frame;
        Placed placed;
    };
    std::vector<Under> parts;
    double left = pages.left();
    std::size_t most_lines = 1;
    for (const Figure::Part& part : figure.parts) {
        const double width = widths[parts.size()];
        const Frame frame{left, 0.0, width - 2.0, figure.height_mm};
        const Frame inside = inner(frame);
        Placed placed = part.to_scale ? placed_to_scale(part.scene, inside, figure.lettering)
                                      : placed_to_fit(part.scene, inside, figure.lettering);
        std::string words = part.words;
        if (part.to_scale) {
            const std::string scale = format::text(scale_words(placed.scale), pages.locale());
            words += (words.empty() ? "" : ", ") + scale;
        }
        auto lines = drawing::broken_into_lines(words, frame.width, {TextSize::fine, false, false});
        most_lines = std::max(most_lines, lines.size());
        parts.push_back({std::move(lines), frame, std::move(placed)});
        left += width;
    }
    const double foot_height = 1.5 + static_cast<double>(most_lines) * spacing;
    pages.need(figure.height_mm + foot_height);
    for (Under& part : parts) {
        part.placed.at_mm.y += pages.y();
        pages.box({part.frame.left, pages.y(), part.frame.width, figure.height_mm}, Pen::grid);
        pages.place(std::move(part.placed));
        double foot = pages.y() + figure.height_mm + 1.5 + drawing::capitals_mm(TextSize::fine);
        for (const std::string& line : part.lines) {
            pages.write({{part.frame.left + 0.5 * part.frame.width, foot},
                         line,
                         TextSize::fine,
                         drawing::Across::middle,
                         false,
                         false});
            foot += spacing;
        }
    }
    pages.advance(figure.height_mm + foot_height + 2.5);
}

}  // namespace toehold::paper::layout
