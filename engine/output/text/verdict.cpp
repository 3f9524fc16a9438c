#include "output/figures.h"
#include "output/text/columns.h"
#include "output/text/sections.h"
#include "output/words.h"

#include <cmath>

namespace toehold::output {
namespace {

/// The link of the load path that governs, where its check stands for one.
const checks::Link* governing_link(const review::Review& review) {
    for (const checks::CheckResult& result : review.checks) {
        const bool governs = result.id == review.governing.check && result.subject == review.governing.subject;
        if (governs && result.link) return &*result.link;
    }
    return nullptr;
}

std::string governing_line(const review::Review& review) {
    const review::Governing& governing = review.governing;
    if (governing.check.empty()) return {};
    std::string line = governing.title + ", " + governing.subject;
    if (const checks::Link* link = governing_link(review)) {
        line += "; from " + link->from + " to " + link->to + " by " + link->by;
    }
    if (std::isfinite(governing.ratio)) line += "; demand over capacity " + ratio_text(governing.ratio);
    if (governing.direction_deg) line += "; push towards " + degrees_text(*governing.direction_deg) + " deg";
    return paragraph(line, "Governs:  ");
}

std::string sentence(std::string text) {
    if (text.empty()) return text;
    if (text.front() >= 'a' && text.front() <= 'z') text.front() = static_cast<char>(text.front() - 'a' + 'A');
    if (text.back() != '.') text += '.';
    return text;
}

}  // namespace

std::string verdict_section(const review::Review& review) {
    std::string text = paragraph(std::string(word(review.verdict)) + ": " + review.detail);
    text += paragraph(sentence(review.reason));
    text += governing_line(review);
    if (!review.demand) text += paragraph(sentence("no demand was found: " + review.no_demand));
    return text;
}

}  // namespace toehold::output
