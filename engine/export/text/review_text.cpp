#include "export/text/review_text.h"
#include "export/text/columns.h"
#include "export/text/sections.h"
#include "format/figures.h"
#include "wording/status.h"

#include <fmt/format.h>

#include <cmath>

namespace toehold::exporting {
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
    if (std::isfinite(governing.ratio)) line += "; demand over capacity " + format::ratio_text(governing.ratio);
    if (governing.direction_deg) line += "; push towards " + format::degrees_text(*governing.direction_deg) + " deg";
    return paragraph(line, "Governs:  ");
}

std::string sentence(std::string text) {
    if (text.empty()) return text;
    if (text.front() >= 'a' && text.front() <= 'z') text.front() = static_cast<char>(text.front() - 'a' + 'A');
    if (text.back() != '.') text += '.';
    return text;
}

std::string outcome(const review::Remedy& remedy) {
    const std::string ratio = std::isfinite(remedy.governing.ratio)
                                  ? fmt::format("demand over capacity {:.2f}", remedy.governing.ratio)
                                  : std::string("nothing there to resist it");
    const std::string governs = fmt::format("{}, {}: {}", remedy.governing.title, remedy.governing.subject, ratio);
    const std::size_t left = remedy.failing_results + remedy.failing_findings;
    switch (remedy.verdict) {
        case review::Verdict::adequate:
            return "Then it holds. Nearest to its limit: " + governs + ".";
        case review::Verdict::incomplete:
            return "Then nothing fails, though something is missing. Governs: " + governs + ".";
        case review::Verdict::inadequate:
            break;
    }
    return fmt::format("Not enough: {} result{} still would not hold. Governs: {}.", left, left == 1 ? "" : "s",
                       governs);
}

}  // namespace

std::string verdict_section(const review::Review& review) {
    std::string text = paragraph(std::string(wording::word(review.verdict)) + ": " + review.detail);
    text += paragraph(sentence(review.reason));
    text += governing_line(review);
    if (!review.demand) text += paragraph(sentence("no demand was found: " + review.no_demand));
    return text;
}

std::string findings_section(const review::Review& review) {
    if (review.findings.empty()) return "FINDINGS: none\n";
    std::string text = "FINDINGS, gravest first\n";
    for (const checks::Finding& finding : review.findings) {
        std::string line = finding.subject.empty() ? "" : finding.subject + ": ";
        line += finding.message;
        if (!finding.clause.empty()) line.append(" [").append(finding.clause).append("]");
        text += paragraph(line, "  " + padded_right(wording::word(finding.severity), 9));
    }
    return text;
}

std::string remedies_section(const review::Review& review) {
    if (review.remedies.empty()) return {};
    constexpr std::size_t shown = 5;
    std::string text = "WHAT WOULD HELP (each run through every check above)\n";
    for (std::size_t index = 0; index < review.remedies.size() && index < shown; ++index) {
        const review::Remedy& remedy = review.remedies[index];
        text += paragraph(remedy.text, "  - ") + paragraph(outcome(remedy), "    ");
    }
    return text;
}

std::string assumptions_section(const review::Review& review) {
    if (review.assumptions.empty()) return {};
    std::string text = "ASSUMPTIONS\n";
    for (const review::Assumption& assumption : review.assumptions) {
        text += paragraph(assumption.text, "  - ");
        if (!assumption.other_choice.empty()) text += paragraph(assumption.other_choice, "    otherwise: ");
    }
    return text;
}

std::string cautions_section(const review::Review& review) {
    if (review.cautions.empty()) return {};
    std::string text = "CAUTIONS\n";
    for (const std::string& caution : review.cautions) text += paragraph(caution, "  - ");
    return text;
}

std::string review_text(const review::Review& review, const TextOptions& options) {
    std::string text = verdict_section(review);
    for (const std::string& section :
         {detail_section(review, options.system), anchors_section(review, options.system),
          checks_section(review, options), path_section(review, options), findings_section(review),
          remedies_section(review), loads_section(review, options.system), assumptions_section(review),
          cautions_section(review)}) {
        if (!section.empty()) text += "\n" + section;
    }
    return text;
}

std::string review_text(const review::Review& review, units::System system) {
    return review_text(review, TextOptions{system, false});
}

}  // namespace toehold::exporting
