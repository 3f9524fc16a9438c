#include "paper/site/site_page.h"
#include "paper/words.h"
#include "wording/status.h"

#include <algorithm>

namespace toehold::paper::site {
namespace {

using drawing::Lettering;
using drawing::Pen;
using drawing::TextSize;

constexpr Lettering words_lettering{TextSize::normal};
constexpr Lettering name_lettering{TextSize::large, true};
constexpr Lettering banner_lettering{TextSize::title, true};

/// A note's first sentence: what the detail is, or that it is invented.
std::string first_sentence(const std::string& note) {
    const std::size_t stop = note.find(". ");
    return stop == std::string::npos ? note : note.substr(0, stop + 1);
}

std::string subtitle(const review::Review& review, const Issue& issue) {
    const std::string project = project_of(issue, review.resolved.detail);
    std::string words = "Site sheet: what goes under the boards.";
    if (!project.empty()) words += " Project: " + project + ".";
    if (!review.resolved.detail.note.empty()) words += " " + first_sentence(review.resolved.detail.note);
    return words;
}

/// What the sheet was made from.
std::string origin(const review::Review& review, const Issue& issue) {
    constexpr std::size_t short_hash = 12;
    std::string words = "Made from " + (issue.file.empty() ? std::string("a detail") : issue.file) + ", SHA-256 " +
                        review.input_sha256.substr(0, short_hash);
    if (!issue.program.empty()) words += ", " + issue.program;
    if (!issue.date.empty()) words += ", " + issue.date;
    return words + ".";
}

bool adequate(const review::Review& review) { return review.verdict == review::Verdict::adequate; }

std::string banner_words(const review::Review& review) {
    return adequate(review) ? "ADEQUATE: build exactly as drawn" : "DO NOT BUILD THIS AS DRAWN";
}

std::string banner_reason(const review::Review& review) {
    if (adequate(review))
        return "Every check holds for this wood, these fasteners and these places, and for no others.";
    const std::string stop = review.reason.empty() || review.reason.back() == '.' ? "" : ".";
    return std::string(wording::word(review.verdict)) + ". " + review.reason + stop;
}

/// No more than so many lines; what is cut off is in the report.
std::vector<std::string> at_most(std::vector<std::string> lines, std::size_t most, const char* more) {
    if (lines.size() <= most) return lines;
    lines.resize(most);
    lines.back() += " ...";
    if (more[0] != '\0') lines.emplace_back(more);
    return lines;
}

/// The largest letters of the page that the width lets stand, or for good news a size above the headings.
double banner_scale(const PageWords& page, const PagePlan& plan, const review::Review& review) {
    constexpr double inside = 0.93, calm = 1.25;
    const double fits = inside * plan.width_mm / drawing::text_width_mm(banner_words(review), banner_lettering);
    return adequate(review) ? std::min(calm * page.scale(), fits) : fits;
}

}  // namespace

double add_head(PageWords& page, std::vector<Placed>& others, const PagePlan& plan, const review::Review& review,
                const Issue& issue) {
    constexpr double pad_mm = 2.2, stop_mm = 7.0;
    double top_mm = plan.top_mm;
    const auto name = at_most(page.broken(review.detail, plan.width_mm - 2.0 * stop_mm, name_lettering), 2, "");
    top_mm = page.add_lines(plan.left_mm, top_mm, name, name_lettering);
    const auto under = at_most(page.broken(subtitle(review, issue), plan.width_mm - stop_mm, words_lettering), 2, "");
    top_mm = page.add_lines(plan.left_mm, top_mm, under, words_lettering) + 1.5;

    const double frame_top_mm = top_mm;
    PageWords banner(banner_scale(page, plan, review));
    const double words_mm = banner.scale() * drawing::text_width_mm(banner_words(review), banner_lettering);
    top_mm = banner.add_line(plan.left_mm + 0.5 * (plan.width_mm - words_mm), top_mm + 0.5 * pad_mm,
                             banner_words(review), banner_lettering);
    const auto reason =
        at_most(page.broken(banner_reason(review), plan.width_mm - 2.0 * pad_mm - stop_mm, words_lettering), 4,
                "More in the report.");
    top_mm = page.add_lines(plan.left_mm + pad_mm, top_mm, reason, words_lettering) + 0.5 * pad_mm;
    page.add_frame(plan.left_mm, frame_top_mm, plan.width_mm, top_mm - frame_top_mm,
                   adequate(review) ? Pen::cut : Pen::fails);
    others.push_back(placed_on_paper(banner.scene(), {0.0, 0.0}, banner.scale()));
    return top_mm;
}

double add_foot(PageWords& page, const PagePlan& plan, const review::Review& review, const Issue& issue) {
    constexpr double sign_mm = 4.0, gap_mm = 1.0;
    const std::string cautions_words =
        "* customary practice, not a code value. Go by the figures, measure nothing off the drawings. Where the site "
        "differs, stop and ask. A design aid: local code and the authority having jurisdiction govern. ";
    const auto cautions = page.broken(cautions_words + origin(review, issue), plan.width_mm, words_lettering);
    const double line_mm = page.line_mm(TextSize::normal);
    const double top_mm = plan.foot_mm - (static_cast<double>(cautions.size()) + 1.0) * line_mm - sign_mm - gap_mm;
    page.add_rule(plan.left_mm, plan.left_mm + plan.width_mm, top_mm, Pen::cut);
    page.add_lines(plan.left_mm, top_mm + gap_mm, cautions, words_lettering);
    const double sign_top_mm = plan.foot_mm - line_mm;
    const std::string looked = "Looked at before the boards were closed. Name", date = "Date";
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
