// What was reviewed, and what pushed on it, on what stiffness, and how well the solves balance.
#include "export/text/columns.h"
#include "export/text/sections.h"
#include "wording/demand.h"
#include "wording/stiffness.h"

#include <map>

namespace toehold::exporting {
namespace {

using format::Dimension;
using format::Locale;
using format::Phrase;
using format::phrase;

std::string anchors(const std::vector<catalog::Anchor>& anchors, const Locale& locale) {
    std::map<std::string, std::vector<std::string>> ids;
    for (const catalog::Anchor& anchor : anchors) ids[anchor.name].push_back(anchor.id);
    std::string text;
    for (const auto& [name, holes] : ids) {
        text += text.empty() ? "" : "; ";
        for (const std::string& hole : holes) text += (&hole == &holes.front() ? "" : ", ") + hole;
        text += ": " + name;
    }
    return text.empty() ? format::text(phrase("none"), locale) : text;
}

std::string bullets(const std::vector<Phrase>& sentences, const Locale& locale) {
    std::string text;
    for (const Phrase& sentence : sentences) text += paragraph(format::text(sentence, locale), "  - ");
    return text;
}

std::string range(const demand::Demand& demand, const Locale& locale) {
    std::string all;
    for (const Phrase& one : wording::stiffness_range(demand)) {
        all += (all.empty() ? "" : "; ") + format::text(one, locale);
    }
    return all.empty() ? all : bullets({phrase("range of stiffness solved: {}", all)}, locale);
}

}  // namespace

std::string labelled(const Phrase& label, const std::string& words, const Locale& locale) {
    constexpr std::size_t label_columns = 9;
    return paragraph(words, "  " + padded_right(format::text(label, locale) + " ", label_columns));
}

std::string detail_section(const review::Review& review, const Locale& locale) {
    const model::BaseDetail& detail = review.resolved.detail;
    const auto said = [&locale](const Phrase& words) { return format::text(words, locale); };
    std::string text = said(phrase("DETAIL")) + "\n";
    text += labelled(phrase("guard"), said(phrase("{} above the walking surface", Dimension{detail.guard.height_in})),
                     locale);
    text += labelled(phrase("post"), said(wording::post(detail.post)), locale);
    text += labelled(model::part_name(model::main_part(detail)), said(model::main_part_words(detail)), locale);
    text += labelled(phrase("anchors"), anchors(review.resolved.anchors, locale), locale);
    text += labelled(phrase("basis"), said(wording::basis(detail.basis)), locale);
    if (!detail.note.empty()) text += labelled(phrase("note"), detail.note, locale);
    if (!review.input_sha256.empty())
        text += paragraph(review.input_sha256, "  " + said(phrase("SHA-256 of the file")) + "  ");
    return text;
}

std::string loads_section(const review::Review& review, const Locale& locale) {
    if (!review.demand) return {};
    std::string text = format::text(phrase("LOADS AND STIFFNESS"), locale) + "\n";
    for (const demand::LoadCase& load : review.demand->cases)
        text += bullets({wording::load_case(load, review.resolved.detail)}, locale);
    return text + bullets(wording::stiffness_sentences(review), locale) +
           bullets(wording::range_sentences(*review.demand), locale) + range(*review.demand, locale) +
           bullets(wording::accuracy(review.demand->proof), locale);
}

}  // namespace toehold::exporting
