#include "paper/shop/chain.h"

#include "drawing/annotation/labels.h"
#include "drawing/render/lettering.h"

namespace toehold::paper::shop {
namespace {

using drawing::DimensionEnd;
using drawing::WordsAt;

constexpr double clear_mm = 1.4;

double words_mm(const std::string& words) {
    return drawing::text_width_mm(words, {drawing::TextSize::small, false, false});
}

struct Link {
    std::string words;
    double middle_mm = 0.0, half_mm = 0.0;  ///< along the chain
    WordsAt at = WordsAt::line;
};

std::vector<Link> links_of(const std::vector<DimensionEnd>& ends, const Drafting& drafting) {
    std::vector<Link> links;
    for (std::size_t index = 0; index + 1 < ends.size(); ++index) {
        const double from = ends[index].at_in, to = ends[index + 1].at_in;
        Link link{drawing::length_figure(to - from, drafting.locale.system), 0.5 * (from + to) * drafting.mm_per_in};
        link.half_mm = 0.5 * words_mm(link.words);
        if (2.0 * link.half_mm + clear_mm > (to - from) * drafting.mm_per_in) {
            const bool after_raised = index > 0 && links.back().at == WordsAt::raised;
            link.at = after_raised ? WordsAt::below_line : WordsAt::raised;
        }
        links.push_back(std::move(link));
    }
    return links;
}

/// Whether words on one side of the line keep clear of each other, and of what stands past the chain's ends.
bool clear(const std::vector<Link>& links, WordsAt at, double low_mm, double high_mm) {
    constexpr double past_end_mm = 2.6;
    double end_mm = low_mm - past_end_mm - clear_mm;
    for (const Link& link : links) {
        if (link.at != at) continue;
        if (link.middle_mm - link.half_mm < end_mm + clear_mm) return false;
        end_mm = link.middle_mm + link.half_mm;
    }
    return end_mm <= high_mm + past_end_mm;
}

}  // namespace

bool add_fitting_chain(drawing::Scene& scene, const drawing::DimensionRow& row, const std::vector<DimensionEnd>& ends,
                       const Drafting& drafting) {
    constexpr std::size_t most_ends = 24;
    if (ends.size() < 2 || ends.size() > most_ends) return false;
    const std::vector<Link> links = links_of(ends, drafting);
    const double low_mm = ends.front().at_in * drafting.mm_per_in, high_mm = ends.back().at_in * drafting.mm_per_in;
    for (const WordsAt at : {WordsAt::raised, WordsAt::below_line})
        if (!clear(links, at, low_mm, high_mm)) return false;
    for (std::size_t index = 0; index < links.size(); ++index)
        drawing::add_dimension(scene, row, ends[index], ends[index + 1], links[index].words, links[index].at);
    return true;
}

void add_measure(drawing::Scene& scene, const drawing::DimensionRow& row, const DimensionEnd& from,
                 const DimensionEnd& to, const std::string& words, const Drafting& drafting) {
    const bool fits = words_mm(words) + clear_mm <= (to.at_in - from.at_in) * drafting.mm_per_in;
    drawing::add_dimension(scene, row, from, to, words, fits ? WordsAt::line : WordsAt::after);
}

}  // namespace toehold::paper::shop
