#include "format/figures.h"
#include "paper/project/project_sections.h"
#include "wording/line.h"

#include <cmath>

namespace toehold::paper::project {
namespace {

using drawing::Across;
using format::Phrase;
using format::phrase;
using report::words_cell;

class LineTables {
  public:
    LineTables(const ProjectSource& source, const review::LineReview& line) : source_(source), line_(line) {}

    [[nodiscard]] Table shares() const {
        Table table;
        const auto column = [&](const Phrase& words, double share, Across across = Across::right) {
            table.columns.push_back({source_.text(words), share, across});
        };
        column(phrase("post"), 0.1, Across::left);
        column(phrase("role"), 0.1, Across::left);
        if (line_.sharing) {
            column(phrase("lone D/C"), 0.08);
            column(phrase("lone, first"), 0.22, Across::left);
            column(phrase("share counted"), 0.1);
        } else {
            column(phrase("part of the push counted"), 0.16);
            column(phrase("share if counted"), 0.12);
        }
        column(phrase("push stood"), 0.24, Across::left);
        if (line_.load_along) {
            column(phrase("rail taken, {}", unit()), 0.1);
            column(phrase("half spans, {}", unit()), 0.1);
        }
        for (const review::PostShare& post : line_.posts) table.rows.push_back(share_row(post));
        return table;
    }

    [[nodiscard]] Table movements() const {
        Table table;
        table.columns = {{source_.text(phrase("place")), 0.22},
                         {source_.text(phrase("rail, {}", unit())), 0.12, Across::right},
                         {source_.text(phrase("connection, {}", unit())), 0.14, Across::right},
                         {source_.text(phrase("posts, {}", unit())), 0.12, Across::right},
                         {source_.text(phrase("bases and framing, {}", unit())), 0.16, Across::right},
                         {source_.text(phrase("total, {}", unit())), 0.12, Across::right},
                         {source_.text(phrase("limit, {}", unit())), 0.12, Across::right}};
        for (const review::LineMovementAt& at : line_.movements) {
            table.rows.push_back({words_cell(source_.text(model::part_name(at.part))), inches(at.movement.rail_in),
                                  inches(at.movement.connection_in), inches(at.movement.posts_in),
                                  inches(at.movement.bases_in), inches(at.movement.total_in()),
                                  at.limit_in ? inches(*at.limit_in) : words_cell("-")});
        }
        return table;
    }

  private:
    [[nodiscard]] std::string unit() const { return unit_of("in", source_.locale().system); }
    [[nodiscard]] bool solved() const { return line_.rail && line_.unsolved.empty(); }

    /// To a hundredth, which is more than is known of the stiffness behind it.
    [[nodiscard]] Cell inches(double value_in, double parts = 100.0) const {
        return words_cell(format::number_text(std::round(parts * value_in) / parts, "in", source_.locale().system));
    }

    [[nodiscard]] std::vector<Cell> share_row(const review::PostShare& post) const {
        std::vector<Cell> cells{{post.post, true}, words_cell(source_.text(wording::role(post.role)))};
        if (line_.sharing) {
            cells.push_back(words_cell(post.lone ? format::ratio_text(post.lone->ratio) : "-"));
            cells.push_back(words_cell(post.lone ? source_.text(post.lone->title) : "-"));
        } else {
            cells.push_back(words_cell(format::ratio_text(post.counted)));
        }
        cells.push_back(words_cell(solved() ? format::ratio_text(post.share) : "-"));
        cells.push_back(words_cell(solved() ? source_.text(wording::push_place(post.stood)) : "-"));
        if (!line_.load_along) return cells;
        constexpr double tenths = 10.0;
        cells.push_back(solved() ? inches(post.line_length_in, tenths) : words_cell("-"));
        cells.push_back(inches(post.half_spans_in, tenths));
        return cells;
    }

    const ProjectSource& source_;
    const review::LineReview& line_;
};

}  // namespace

void add_line_tables(Blocks& blocks, const ProjectSource& source, const review::LineReview& line) {
    const LineTables tables(source, line);
    blocks.emplace_back(tables.shares());
    if (line.movements.empty()) return;
    const bool limited = line.movements.front().limit_in.has_value();
    blocks.emplace_back(report::paragraph(source.text(
        phrase("Movement at the top of the guard and at mid-rail under {} level at that place, everything at its "
               "softest, in the direction that moves it most:",
               format::Quantity{line.push_lb, "lb"}))));
    blocks.emplace_back(tables.movements());
    blocks.emplace_back(report::fine_print(source.text(
        limited ? phrase("Limits by {}: h/12 at a post, h/24 + L/96 at mid-rail. That specification was withdrawn in "
                         "2015; IBC and IRC set no limit.",
                         format::Citation{"ASTM E985"})
                : phrase("No limit is invoked; IBC and IRC set none."))));
}

}  // namespace toehold::paper::project
