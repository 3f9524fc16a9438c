#include "export/text/project_text.h"

#include "export/text/columns.h"
#include "export/text/table.h"
#include "format/figures.h"
#include "review/assumptions.h"
#include "wording/status.h"
#include "wording/verdict.h"

#include <algorithm>

namespace toehold::exporting {
namespace {

using format::Locale;
using format::Phrase;
using format::phrase;

std::string place(const model::PlacedPost& post, units::System system) {
    return format::figure_text(post.at.x_in, "in", system) + ", " + format::figure_text(post.at.y_in, "in", system);
}

Row row_of(const review::PostReview& one, const Locale& locale) {
    const review::Governing& governing = one.review.governing;
    const bool governed = !governing.check.empty();
    return {{showable(one.post.id), place(one.post, locale.system), showable(one.post.mount),
             format::text(wording::word(one.review.verdict), locale),
             governed ? format::ratio_text(governing.ratio) : std::string("-")},
            {showable(format::text(wording::verdict_reason(one.review), locale))}};
}

std::string shared_lines(const review::ProjectReview& review, const Locale& locale) {
    if (review.shared.empty()) return {};
    std::string text = "\n" + format::text(phrase("FRAMING SHARED BY POSTS"), locale) + "\n";
    for (const review::SharedMember& one : review.shared) {
        std::string posts;
        for (const std::string& post : one.posts) posts += (posts.empty() ? "" : ", ") + post;
        text += paragraph(format::text(phrase("{}: posts {}", model::part_name(one.part), posts), locale), "  ");
    }
    return text;
}

std::string bullets(const Phrase& heading, const std::vector<Phrase>& sentences, const Locale& locale) {
    if (sentences.empty()) return {};
    std::string text = "\n" + format::text(heading, locale) + "\n";
    for (const Phrase& sentence : sentences) text += paragraph(format::text(sentence, locale), "  - ");
    return text;
}

long count(const review::ProjectReview& review, review::Verdict verdict) {
    return std::count_if(review.posts.begin(), review.posts.end(),
                         [verdict](const review::PostReview& one) { return one.review.verdict == verdict; });
}

}  // namespace

std::string project_text(const review::ProjectReview& review, const TextOptions& options, bool full) {
    using review::Verdict;
    const Locale& locale = options.locale;
    std::string text = paragraph(review.project.empty() ? format::text(phrase("Project"), locale) : review.project);
    text += paragraph(
        format::text(phrase("{}: {} posts; {} adequate, {} inadequate, {} incomplete", wording::word(review.verdict),
                            review.posts.size(), count(review, Verdict::adequate), count(review, Verdict::inadequate),
                            count(review, Verdict::incomplete)),
                     locale));
    std::vector<Row> rows;
    for (const review::PostReview& one : review.posts) rows.push_back(row_of(one, locale));
    text += "\n" + table({{format::text(phrase("post"), locale)},
                          {format::text(phrase("place"), locale)},
                          {format::text(phrase("mount"), locale)},
                          {format::text(phrase("verdict"), locale)},
                          {format::text(phrase("D/C"), locale), Align::right}},
                         rows);
    text += shared_lines(review, locale);
    text += bullets(phrase("LOADS ON SHARED FRAMING"), review.assumptions, locale);
    if (!full) return text + bullets(phrase("CAUTIONS"), review::cautions(), locale);
    const std::string rule = "\n" + std::string(page_columns, '=') + "\n\n";
    for (const review::PostReview& one : review.posts) text += rule + review_text(one.review, options);
    return text;
}

}  // namespace toehold::exporting
