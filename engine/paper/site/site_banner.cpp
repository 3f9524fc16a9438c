#include "paper/issue.h"
#include "paper/site/site_page.h"
#include "paper/words.h"
#include "wording/status.h"
#include "wording/verdict.h"

#include <algorithm>

namespace toehold::paper::site {
namespace {

using drawing::Lettering;
using drawing::Pen;
using drawing::TextSize;
using format::Phrase;
using format::phrase;

constexpr Lettering words_lettering{TextSize::normal};
constexpr Lettering name_lettering{TextSize::large, true};
constexpr Lettering banner_lettering{TextSize::title, true};

std::string subtitle(const review::Review& review, const Issue& issue) {
    const std::string project = project_of(issue, review.resolved.detail);
    std::vector<Phrase> words{phrase("Site sheet: what goes under the boards.")};
    if (!project.empty()) words.push_back(phrase("Project: {}.", project));
    if (!review.resolved.detail.note.empty())
        words.push_back(format::verbatim(first_sentence(review.resolved.detail.note)));
    return sentences(words, issue.locale);
}

/// What the sheet was made from.
Phrase origin(const review::Review& review, const Issue& issue) {
    constexpr std::size_t short_hash = 12;
    std::string from = "SHA-256 " + review.input_sha256.substr(0, short_hash);
    for (const std::string& more : {issue.program, issue.date}) from += more.empty() ? "" : ", " + more;
    return issue.file.empty() ? phrase("Made from a detail, {}.", from) : phrase("Made from {}, {}.", issue.file, from);
}

bool adequate(const review::Review& review) { return review.verdict == review::Verdict::adequate; }

/// No more than so many lines; what is cut off is in the report.
std::vector<std::string> at_most(std::vector<std::string> lines, std::size_t most, const std::string& more) {
    if (lines.size() <= most) return lines;
    lines.resize(most);
    lines.back() += " ...";
    if (!more.empty()) lines.push_back(more);
    return lines;
}

/// The largest letters of the page that the width lets stand, or for good news a size above the headings.
double banner_scale(const PageWords& page, const PagePlan& plan, const review::Review& review,
                    const std::string& words) {
    constexpr double inside = 0.93, calm = 1.25;
    const double fits = inside * plan.width_mm / drawing::text_width_mm(words, banner_lettering);
    return adequate(review) ? std::min(calm * page.scale(), fits) : fits;
}

}  // namespace

std::string first_sentence(const std::string& note) {
    const std::size_t stop = note.find(". ");
    return stop == std::string::npos ? note : note.substr(0, stop + 1);
}

Phrase banner_words(review::Verdict verdict) {
    return verdict == review::Verdict::adequate ? phrase("ADEQUATE: build exactly as drawn")
                                                : phrase("DO NOT BUILD THIS AS DRAWN");
}

Phrase banner_reason(const review::Review& review) {
    if (adequate(review))
        return phrase("All checks pass for this wood, these fasteners and these places, and for no others.");
    return phrase("{}. {}", wording::word(review.verdict), wording::verdict_reason(review));
}

Phrase sheet_cautions() {
    return phrase(
        "* customary practice, not a code value. Go by the figures; do not scale drawings. Where the site "
        "differs, stop and ask. A design aid: local code and the authority having jurisdiction govern.");
}

double add_head(PageWords& page, std::vector<Placed>& others, const PagePlan& plan, const review::Review& review,
                const Issue& issue) {
    constexpr double pad_mm = 2.2, stop_mm = 7.0;
    double top_mm = plan.top_mm;
    const auto name = at_most(page.broken(review.detail, plan.width_mm - 2.0 * stop_mm, name_lettering), 2, "");
    top_mm = page.add_lines(plan.left_mm, top_mm, name, name_lettering);
    const auto under = at_most(page.broken(subtitle(review, issue), plan.width_mm - stop_mm, words_lettering), 2, "");
    top_mm = page.add_lines(plan.left_mm, top_mm, under, words_lettering) + 1.5;

    const double frame_top_mm = top_mm;
    const std::string words = format::text(banner_words(review.verdict), issue.locale);
    PageWords banner(banner_scale(page, plan, review, words));
    const double words_mm = banner.scale() * drawing::text_width_mm(words, banner_lettering);
    top_mm = banner.add_line(plan.left_mm + 0.5 * (plan.width_mm - words_mm), top_mm + 0.5 * pad_mm, words,
                             banner_lettering);
    const auto reason = at_most(page.broken(written(banner_reason(review), issue.locale),
                                            plan.width_mm - 2.0 * pad_mm - stop_mm, words_lettering),
                                4, format::text(phrase("More in the report."), issue.locale));
    top_mm = page.add_lines(plan.left_mm + pad_mm, top_mm, reason, words_lettering) + 0.5 * pad_mm;
    page.add_frame(plan.left_mm, frame_top_mm, plan.width_mm, top_mm - frame_top_mm,
                   adequate(review) ? Pen::cut : Pen::fails);
    others.push_back(placed_on_paper(banner.scene(), {0.0, 0.0}, banner.scale()));
    return top_mm;
}

double add_foot(PageWords& page, const PagePlan& plan, const review::Review& review, const Issue& issue) {
    constexpr double sign_mm = 4.0, gap_mm = 1.0;
    const std::string cautions_words = sentences({sheet_cautions(), origin(review, issue)}, issue.locale);
    const auto cautions = page.broken(cautions_words, plan.width_mm, words_lettering);
    const double line_mm = page.line_mm(TextSize::normal);
    const double top_mm = plan.foot_mm - (static_cast<double>(cautions.size()) + 1.0) * line_mm - sign_mm - gap_mm;
    page.add_rule(plan.left_mm, plan.left_mm + plan.width_mm, top_mm, Pen::cut);
    page.add_lines(plan.left_mm, top_mm + gap_mm, cautions, words_lettering);
    const double sign_top_mm = plan.foot_mm - line_mm;
    const std::string looked = format::text(phrase("Inspected before the boards were closed. Name"), issue.locale);
    const std::string date = format::text(phrase("Date"), issue.locale);
    page.add_line(plan.left_mm, sign_top_mm, looked, {TextSize::normal, true});
    const auto wide_mm = [&](const std::string& words) {
        return page.scale() * drawing::text_width_mm(words, {TextSize::normal, true});
    };
    const double name_mm = plan.left_mm + wide_mm(looked) + 2.0, right_mm = plan.left_mm + plan.width_mm;
    const double date_mm = name_mm + 0.62 * (right_mm - name_mm);
    const double rule_mm = sign_top_mm + 0.8 * line_mm;
    page.add_rule(name_mm, date_mm - 2.0, rule_mm, Pen::outline);
    page.add_line(date_mm, sign_top_mm, date, {TextSize::normal, true});
    page.add_rule(date_mm + wide_mm(date) + 2.0, right_mm, rule_mm, Pen::outline);
    return top_mm;
}

}  // namespace toehold::paper::site
