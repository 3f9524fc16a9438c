#include "drawing/render/palette.h"
#include "paper/issue.h"
#include "paper/papers.h"
#include "paper/site/extent.h"
#include "paper/site/page_words.h"
#include "paper/site/site_drawings.h"
#include "paper/site/site_page.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace toehold::paper {
namespace site {
namespace {

constexpr double margin_mm = 10.0, gutter_mm = 6.0, between_mm = 2.5;
constexpr double largest_scale = 0.5;  ///< of the drawings
/// Heights the drawings are given where they are not wide enough to need less.
constexpr double plan_least_mm = 70.0, plan_highest_mm = 120.0;
constexpr double section_least_mm = 44.0, section_highest_mm = 80.0;

/// Two columns, each with a drawing over its lists.
struct Lists {
    SetList in, look, dont;
    double left_mm = 0.0, right_mm = 0.0;  ///< widths
};

Lists set_lists(const PageWords& page, const AllInstructions& words, double width_mm, double share,
                const format::Locale& locale) {
    using format::phrase;
    Lists lists;
    lists.left_mm = share * (width_mm - gutter_mm);
    lists.right_mm = width_mm - gutter_mm - lists.left_mm;
    lists.in = set_list(page, phrase("WHAT GOES IN"), ItemMark::number, words.in, lists.left_mm, locale);
    lists.look = set_list(page, phrase("CHECK BEFORE CLOSING"), ItemMark::box, words.look, lists.right_mm, locale);
    lists.dont = set_list(page, phrase("DO NOT"), ItemMark::cross, words.dont, lists.right_mm, locale);
    return lists;
}

struct Drawn {
    SceneAtScale plan, section;
    std::string plan_caption, section_caption;
};

Drawn drawn(const SiteSubject& subject) {
    return {[&subject](double mm_per_in) { return framing_plan(subject, mm_per_in); },
            [&subject](double mm_per_in) { return site_section(subject, mm_per_in); },
            format::text(framing_plan_caption(subject), subject.locale),
            format::text(site_section_caption(subject), subject.locale)};
}

/// Height over width of each drawing, about, with words of one size.
struct Proportions {
    double plan = 1.0, section = 1.0;
};

Proportions proportions(const Drawn& drawn, double scale) {
    constexpr double usual_width_mm = 90.0;
    return {proportion(drawn.plan, usual_width_mm / scale, largest_scale / scale),
            proportion(drawn.section, usual_width_mm / scale, largest_scale / scale)};
}

/// Of the drawings.
struct Heights {
    double plan_mm = 0.0, section_mm = 0.0;
};

/// A drawing limited by its column's width needs no more.
Heights needed(const Proportions& of, const Lists& lists, const Heights& usual) {
    constexpr double slack_mm = 2.0;
    return {std::min(usual.plan_mm, of.plan * lists.left_mm + slack_mm),
            std::min(usual.section_mm, of.section * lists.right_mm + slack_mm)};
}

double caption_mm(const PageWords& page, const std::string& words, double width_mm) {
    const auto lines = page.broken(words, width_mm, {drawing::TextSize::normal}).size();
    return static_cast<double>(lines) * page.line_mm(drawing::TextSize::normal) + 2.0 * between_mm;
}

Heights left_over(const PageWords& page, const Lists& lists, const Drawn& drawn, double room_mm) {
    return {room_mm - caption_mm(page, drawn.plan_caption, lists.left_mm) - height_mm(page, lists.in),
            room_mm - caption_mm(page, drawn.section_caption, lists.right_mm) - height_mm(page, lists.look) -
                height_mm(page, lists.dont)};
}

/// Above 1: both drawings have more than they need.
double ease(const Proportions& of, const Lists& lists, const Heights& heights) {
    const Heights least = needed(of, lists, {plan_least_mm, section_least_mm});
    return std::min(heights.plan_mm / least.plan_mm, heights.section_mm / least.section_mm);
}

Lists cut_to_fit(const PageWords& page, Lists lists, const Drawn& drawn, const Proportions& of, double room_mm,
                 const format::Locale& locale) {
    const Heights least = needed(of, lists, {plan_least_mm, section_least_mm});
    const double left_mm = room_mm - caption_mm(page, drawn.plan_caption, lists.left_mm) - least.plan_mm;
    const double right_mm = room_mm - caption_mm(page, drawn.section_caption, lists.right_mm) - least.section_mm;
    lists.in = shortened(page, std::move(lists.in), left_mm, lists.left_mm, locale);
    lists.look = shortened(page, std::move(lists.look), right_mm - height_mm(page, lists.dont), lists.right_mm, locale);
    return lists;
}

/// One lettering tried: everything but the drawings, and the room they are left.
struct Attempt {
    PageWords page;
    std::vector<Placed> others = {};
    Lists lists = {};
    double top_mm = 0.0, room_mm = 0.0;  ///< of the columns
    Heights heights = {};
    Proportions proportions = {};
};

Attempt attempt(const PagePlan& plan, const AllInstructions& words, const Drawn& drawn, const review::Review& review,
                const Issue& issue, double body_mm) {
    Attempt one{PageWords(body_mm / drawing::text_height_mm(drawing::TextSize::normal))};
    one.top_mm = add_head(one.page, one.others, plan, review, issue) + between_mm;
    one.room_mm = add_foot(one.page, plan, review, issue) - one.top_mm;
    one.proportions = proportions(drawn, one.page.scale());
    bool first = true;
    for (const double share : {0.5, 0.53, 0.56, 0.59, 0.62}) {
        Lists lists = set_lists(one.page, words, plan.width_mm, share, issue.locale);
        const Heights heights = left_over(one.page, lists, drawn, one.room_mm);
        if (!first && ease(one.proportions, lists, heights) <= ease(one.proportions, one.lists, one.heights)) continue;
        one.lists = std::move(lists);
        one.heights = heights;
        first = false;
    }
    return one;
}

Attempt best_attempt(const PagePlan& plan, const AllInstructions& words, const Drawn& drawn,
                     const review::Review& review, const Issue& issue) {
    for (const double body_mm : body_sizes_mm) {
        Attempt one = attempt(plan, words, drawn, review, issue, body_mm);
        if (ease(one.proportions, one.lists, one.heights) >= 1.0) return one;
    }
    Attempt least = attempt(plan, words, drawn, review, issue, least_lettering_mm);
    least.lists = cut_to_fit(least.page, std::move(least.lists), drawn, least.proportions, least.room_mm, issue.locale);
    least.heights = left_over(least.page, least.lists, drawn, least.room_mm);
    return least;
}

/// Returns where the caption ends.
double add_captioned(Attempt& on, const SceneAtScale& make, const std::string& caption, const Frame& frame) {
    const drawing::Lettering lettering{drawing::TextSize::normal};
    on.others.push_back(fitted(make, frame, on.page.scale(), largest_scale));
    const double top_mm = frame.top + frame.height + between_mm;
    return on.page.add_lines(frame.left, top_mm, on.page.broken(caption, frame.width, lettering), lettering) +
           between_mm;
}

void add_columns(Attempt& on, const PagePlan& plan, const Drawn& drawn) {
    const double right_mm = plan.left_mm + on.lists.left_mm + gutter_mm;
    const Heights most = needed(on.proportions, on.lists, {plan_highest_mm, section_highest_mm});
    const double in_mm =
        add_captioned(on, drawn.plan, drawn.plan_caption,
                      {plan.left_mm, on.top_mm, on.lists.left_mm, std::min(on.heights.plan_mm, most.plan_mm)});
    const double look_mm =
        add_captioned(on, drawn.section, drawn.section_caption,
                      {right_mm, on.top_mm, on.lists.right_mm, std::min(on.heights.section_mm, most.section_mm)});
    add_list(on.page, on.lists.in, plan.left_mm, in_mm, on.lists.left_mm);
    const double dont_mm = add_list(on.page, on.lists.look, right_mm, look_mm, on.lists.right_mm);
    add_list(on.page, on.lists.dont, right_mm, dont_mm, on.lists.right_mm);
}

}  // namespace
}  // namespace site

Sheet site_sheet(const review::Review& review, const Issue& issue) {
    const Size size = size_of(issue.paper, Turn::upright);
    const site::PagePlan plan{size, site::margin_mm, site::margin_mm, size.width_mm - 2.0 * site::margin_mm,
                              size.height_mm - site::margin_mm};
    const site::SiteSubject subject{review.resolved, issue.locale};
    const site::AllInstructions words = site::all_instructions({review.resolved, issue.locale.system});
    const site::Drawn drawn = site::drawn(subject);
    site::Attempt attempt = site::best_attempt(plan, words, drawn, review, issue);
    site::add_columns(attempt, plan, drawn);
    Sheet sheet{size, {placed_on_paper(attempt.page.scene(), {0.0, 0.0}, attempt.page.scale())}, {}, {}};
    std::move(attempt.others.begin(), attempt.others.end(), std::back_inserter(sheet.placed));
    return sheet;
}

}  // namespace toehold::paper
