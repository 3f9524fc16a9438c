#include "export/text/project_text.h"

#include "export/text/columns.h"
#include "export/text/table.h"
#include "format/figures.h"
#include "review/assumptions.h"
#include "wording/status.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

namespace toehold::exporting {
namespace {

std::string place(const model::PlacedPost& post, units::System system) {
    return fmt::format("{}, {}", format::figure_text(post.at.x_in, "in", system),
                       format::figure_text(post.at.y_in, "in", system));
}

Row row_of(const review::PostReview& one, units::System system) {
    const review::Governing& governing = one.review.governing;
    const bool governed = !governing.check.empty();
    return {{showable(one.post.id), place(one.post, system), showable(one.post.mount),
             std::string(wording::word(one.review.verdict)),
             governed ? format::ratio_text(governing.ratio) : std::string("-")},
            {showable(one.review.reason)}};
}

std::string shared_lines(const review::ProjectReview& review) {
    if (review.shared.empty()) return {};
    std::string text = "\nFraming shared by posts\n";
    for (const review::SharedMember& one : review.shared) {
        text += paragraph(
            fmt::format("{}: posts {}", format::english(model::part_name(one.part)), fmt::join(one.posts, ", ")), "  ");
    }
    return text;
}

long count(const review::ProjectReview& review, review::Verdict verdict) {
    return std::count_if(review.posts.begin(), review.posts.end(),
                         [verdict](const review::PostReview& one) { return one.review.verdict == verdict; });
}

}  // namespace

std::string project_text(const review::ProjectReview& review, const TextOptions& options, bool full) {
    using review::Verdict;
    std::string text = paragraph(review.project.empty() ? std::string("Project") : review.project);
    text += paragraph(fmt::format("{}: {} posts; {} adequate, {} inadequate, {} incomplete",
                                  wording::word(review.verdict), review.posts.size(), count(review, Verdict::adequate),
                                  count(review, Verdict::inadequate), count(review, Verdict::incomplete)));
    text += "\n";
    std::vector<Row> rows;
    for (const review::PostReview& one : review.posts) rows.push_back(row_of(one, options.system));
    text += table({{"post"}, {"place"}, {"mount"}, {"verdict"}, {"D/C", Align::right}}, rows);
    text += shared_lines(review);
    if (!review.assumptions.empty()) text += "\nLoads on shared framing\n";
    for (const format::Phrase& one : review.assumptions) text += paragraph(format::english(one), "  - ");
    if (!full) {
        text += "\nCautions\n";
        for (const std::string& one : review::cautions()) text += paragraph(one, "  - ");
        return text;
    }
    const std::string rule = "\n" + std::string(page_columns, '=') + "\n\n";
    for (const review::PostReview& one : review.posts) text += rule + review_text(one.review, options);
    return text;
}

}  // namespace toehold::exporting
