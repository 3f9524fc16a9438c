#include "paper/page/drawing_in_page.h"
#include "paper/page/html.h"
#include "paper/page/sections.h"
#include "paper/site/instructions.h"
#include "paper/site/page_words.h"
#include "paper/site/side/side_drawings.h"
#include "paper/site/site_drawings.h"
#include "paper/site/site_page.h"
#include "paper/words.h"
#include "wording/marks.h"

#include <fmt/format.h>

namespace toehold::paper::page {
namespace {

using format::Locale;
using format::Phrase;
using format::phrase;

std::string item_of(const site::Instruction& one, const Locale& locale, bool sentence) {
    const std::string lead = format::text(one.lead, locale), words = format::text(one.words, locale);
    return element("li", (lead.empty() ? std::string() : element("b", escaped(lead)) + " ") +
                             escaped(sentence ? site::sentence(words) : words));
}

std::string list_of(const Phrase& heading, std::string_view kind, const site::Instructions& items,
                    const Locale& locale) {
    if (items.empty()) return {};
    const bool never = kind == "ul";
    std::string all;
    for (const site::Instruction& one : items) all += item_of(one, locale, !never) + "\n";
    return element("h3", said(heading, locale)) + "\n" + element(kind, never ? "class=\"never\"" : "", "\n" + all) +
           "\n";
}

std::string figure_of(const site::SceneAtScale& make, const Phrase& caption, std::size_t number, const Locale& locale) {
    const std::string words = format::text(caption, locale);
    return element("figure", "class=\"drawing\"",
                   drawing_in_page(make, number, words) + element("figcaption", escaped(words))) +
           "\n";
}

std::string drawings(const Section& section) {
    const site::SiteSubject subject{section.drawn().review.resolved, section.issue.locale};
    const auto plan = [&subject](double mm_per_in) { return site::framing_plan(subject, mm_per_in); };
    const auto cut = [&subject](double mm_per_in) { return site::site_section(subject, mm_per_in); };
    const format::Locale& locale = section.issue.locale;
    std::string figures = figure_of(plan, site::framing_plan_caption(subject), 2 * section.number, locale) +
                          figure_of(cut, site::site_section_caption(subject), 2 * section.number + 1, locale);
    if (!site::is_on_a_side(subject)) return figures;
    constexpr std::size_t beyond_all_sections = 10'000;  // ids apart from those of every section's first two
    const auto above = [&subject](double mm_per_in) { return site::joint_from_above(subject, mm_per_in); };
    return figures +
           figure_of(above, site::joint_from_above_caption(subject), beyond_all_sections + section.number, locale);
}

std::string verdict_of(const Section& section) {
    const review::Review& review = section.drawn().review;
    const std::string reason = written(site::banner_reason(review), section.issue.locale);
    return element("p", "class=\"verdict " + verdict_class(review.verdict) + "\"",
                   element("strong", said(site::banner_words(review.verdict), section.issue.locale)) +
                       element("span", escaped(reason))) +
           "\n";
}

/// Ids on the drawings are those of one of several posts.
std::string drawn_for(const Section& section) {
    if (section.alike.posts.size() < 2) return {};
    return element("p", "class=\"faint\"",
                   said(phrase("Drawn for {}, with the names of its blocks and joists. The others are built the same; "
                               "their blocks are named where they are signed for.",
                               section.drawn().mark),
                        section.issue.locale)) +
           "\n";
}

}  // namespace

Phrase Section::marks() const {
    std::vector<std::string> all;
    for (const std::size_t index : alike.posts) all.push_back(subject.posts.at(index).mark);
    return wording::marks(all);
}

std::string anchor_of(const Section& section) { return fmt::format("s{}", section.number + 1); }

std::string section_of(const Section& section) {
    const Locale& locale = section.issue.locale;
    const site::AllInstructions words = site::all_instructions({section.drawn().review.resolved, locale.system});
    const std::string heading = "id=\"" + anchor_of(section) + "\"" + (section.number == 0 ? " class=\"first\"" : "");
    return element("h2", heading, said(section.marks(), locale)) + "\n" + verdict_of(section) + drawn_for(section) +
           drawings(section) + list_of(phrase("WHAT GOES IN"), "ol", words.in, locale) +
           list_of(phrase("CHECK BEFORE CLOSING"), "ol", words.look, locale) +
           list_of(phrase("DO NOT"), "ul", words.dont, locale) + sign_off(section, words.look.size());
}

}  // namespace toehold::paper::page
