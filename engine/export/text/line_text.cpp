#include "export/text/line_text.h"

#include "export/text/columns.h"
#include "export/text/sections.h"
#include "export/text/table.h"
#include "format/figures.h"
#include "review/line/line_review.h"
#include "wording/line.h"
#include "wording/status.h"

#include <cmath>
#include <set>
#include <utility>

namespace toehold::exporting {
namespace {

using format::Locale;
using format::Phrase;
using format::phrase;
using review::LineReview;
using review::PostShare;

class LineText {
  public:
    LineText(const LineReview& line, const Locale& locale) : line_(line), locale_(locale) {}

    [[nodiscard]] std::string whole() const {
        std::string text = "\n" + paragraph(said(wording::line_title(line_)));
        if (const Phrase roles = wording::role_counts(review::roles_of(line_)); !roles.empty())
            text += paragraph(said(phrase("{}.", roles)), "  ");
        if (const Phrase reason = wording::line_reason(line_); !reason.empty()) text += paragraph(said(reason), "  ");
        text += shares();
        if (!line_.unsolved.empty()) text += paragraph(said(line_.unsolved), "  ");
        text += checks() + movements();
        text += bullets(line_.sharing ? phrase("Sharing rests on:") : phrase("Counting on sharing would rest on:"),
                        line_.rests_on);
        text += bullets(phrase("Assumed of the rail:"), line_.assumptions);
        if (const Phrase proof = wording::line_proof(line_); !proof.empty())
            text += "\n" + paragraph(said(proof), "  ");
        return text;
    }

  private:
    [[nodiscard]] std::string said(const Phrase& words) const { return showable(format::text(words, locale_)); }

    /// To a tenth of an inch.
    [[nodiscard]] std::string length(double inches) const {
        return inches > 0.0 ? rounded(inches, 10.0) : std::string("-");
    }
    /// No finer than what is known of the stiffness behind it.
    [[nodiscard]] std::string rounded(double inches, double parts) const {
        return format::figure_text(std::round(parts * inches) / parts, "in", locale_.system);
    }

    [[nodiscard]] bool solved() const { return line_.rail && line_.unsolved.empty(); }

    [[nodiscard]] Row share_row(const PostShare& post) const {
        std::vector<std::string> cells{showable(post.post), said(wording::role(post.role))};
        if (line_.sharing) {
            cells.push_back(post.lone ? format::ratio_text(post.lone->ratio) : std::string("-"));
            cells.push_back(post.lone ? said(post.lone->title) : std::string("-"));
        } else {
            cells.push_back(format::ratio_text(post.counted));
        }
        cells.push_back(solved() ? format::ratio_text(post.share) : std::string("-"));
        cells.push_back(solved() ? said(wording::push_place(post.stood)) : std::string("-"));
        if (line_.load_along) {
            cells.push_back(solved() ? length(post.line_length_in) : std::string("-"));
            cells.push_back(length(post.half_spans_in));
        }
        return {std::move(cells), {}};
    }

    [[nodiscard]] std::string shares() const {
        std::vector<Column> columns{{said(phrase("post"))}, {said(phrase("role"))}};
        if (line_.sharing) {
            columns.push_back({said(phrase("lone D/C")), Align::right});
            columns.push_back({said(phrase("lone, first"))});
            columns.push_back({said(phrase("share counted")), Align::right});
        } else {
            columns.push_back({said(phrase("lone")), Align::right});
            columns.push_back({said(phrase("share if counted")), Align::right});
        }
        columns.push_back({said(phrase("push stood"))});
        if (line_.load_along) {
            columns.push_back({said(phrase("rail taken")), Align::right});
            columns.push_back({said(phrase("half spans")), Align::right});
        }
        std::vector<Row> rows;
        for (const PostShare& post : line_.posts) rows.push_back(share_row(post));
        return table(columns, rows);
    }

    /// The worst of each check and aspect.
    [[nodiscard]] std::string checks() const {
        std::vector<Row> rows;
        std::set<std::pair<std::string, std::string>> shown;
        for (const checks::CheckResult& result : line_.checks) {
            if (!shown.insert({result.id, result.aspect}).second) continue;
            Row row{{said(result.title), said(model::part_name(result.part))}, {}};
            for (std::string& cell :
                 result_cells(result.demand, result.capacity, result.unit, result.ratio, result.status, locale_))
                row.cells.push_back(std::move(cell));
            if (!result.note.empty()) row.below.push_back(said(result.note));
            rows.push_back(std::move(row));
        }
        if (rows.empty()) return {};
        return "\n" + paragraph(said(phrase("Rail, the worst of each check")), "  ") +
               table({{said(phrase("check"))},
                      {said(phrase("part"))},
                      {said(phrase("demand")), Align::right},
                      {said(phrase("capacity")), Align::right},
                      {said(phrase("unit"))},
                      {said(phrase("D/C")), Align::right},
                      {said(phrase("status"))}},
                     rows);
    }

    [[nodiscard]] Row movement_row(const review::LineMovementAt& at) const {
        const auto cell = [this](double inches) { return rounded(inches, 100.0); };
        return {{said(model::part_name(at.part)), cell(at.movement.rail_in), cell(at.movement.connection_in),
                 cell(at.movement.posts_in), cell(at.movement.bases_in), cell(at.movement.total_in()),
                 at.limit_in ? cell(*at.limit_in) : std::string("-")},
                {}};
    }

    [[nodiscard]] std::string movements() const {
        if (line_.movements.empty()) return {};
        std::vector<Row> rows;
        for (const review::LineMovementAt& at : line_.movements) rows.push_back(movement_row(at));
        const bool limited = line_.movements.front().limit_in.has_value();
        const std::string push = format::figure_text(line_.push_lb, "lb", locale_.system);
        return "\n" +
               paragraph(said(phrase("Movement at the top of the guard and at mid-rail under {} level at that place, "
                                     "everything at its softest, in the direction that moves it most",
                                     push)),
                         "  ") +
               table({{said(phrase("place"))},
                      {said(phrase("rail")), Align::right},
                      {said(phrase("connection")), Align::right},
                      {said(phrase("posts")), Align::right},
                      {said(phrase("bases and framing")), Align::right},
                      {said(phrase("total")), Align::right},
                      {said(phrase("limit")), Align::right}},
                     rows) +
               paragraph(said(limited ? phrase("Limits by {}: h/12 at a post, h/24 + L/96 at mid-rail. That "
                                               "specification was withdrawn in 2015; IBC and IRC set no limit.",
                                               format::Citation{"ASTM E985"})
                                      : phrase("No limit is invoked; IBC and IRC set none.")),
                         "  ");
    }

    [[nodiscard]] std::string bullets(const Phrase& heading, const std::vector<Phrase>& sentences) const {
        if (sentences.empty()) return {};
        std::string text = "\n" + paragraph(said(heading), "  ");
        for (const Phrase& sentence : sentences) text += paragraph(said(sentence), "  - ");
        return text;
    }

    const LineReview& line_;
    const Locale& locale_;
};

}  // namespace

std::string line_text(const review::LineReview& line, const format::Locale& locale) {
    return LineText(line, locale).whole();
}

}  // namespace toehold::exporting
