#include "export/text/review_text.h"

#include "export/text/columns.h"
#include "export/text/finding_line.h"
#include "export/text/sections.h"
#include "wording/outcomes.h"
#include "wording/status.h"
#include "wording/verdict.h"

namespace toehold::exporting {
namespace {

using format::Locale;
using format::Phrase;
using format::phrase;

/// A heading on its own line, the lines under it.
std::string section(const Phrase& heading, const std::string& lines, const Locale& locale) {
    return lines.empty() ? std::string() : format::text(heading, locale) + "\n" + lines;
}

std::string bullet(const Phrase& sentence, const Locale& locale) {
    return paragraph(format::text(sentence, locale), "  - ");
}

std::string governing_line(const review::Review& review, const Locale& locale) {
    const Phrase governs = wording::governing(review.governing);
    if (governs.empty()) return {};
    std::string line = format::text(governs, locale);
    for (const Phrase& item : wording::governing_items(review.governing)) line += "; " + format::text(item, locale);
    return paragraph(line, format::text(phrase("Governs:"), locale) + "  ");
}

std::string verdict_section(const review::Review& review, const Locale& locale) {
    std::string text = paragraph(format::text(wording::word(review.verdict), locale) + ": " + review.detail);
    text += paragraph(format::text(wording::verdict_reason(review), locale));
    text += governing_line(review, locale);
    for (const Phrase& sentence : {wording::shortfall(review.facts), wording::no_demand(review)}) {
        if (!sentence.empty()) text += paragraph(format::text(sentence, locale));
    }
    return text;
}

std::string findings_section(const review::Review& review, const Locale& locale) {
    if (review.findings.empty()) return format::text(phrase("FINDINGS: none"), locale) + "\n";
    std::string lines;
    for (const checks::Finding& finding : review.findings) lines += finding_line(finding, {}, locale);
    return section(phrase("FINDINGS, gravest first"), lines, locale);
}

std::string remedies_section(const review::Review& review, const Locale& locale) {
    constexpr std::size_t shown = 5;
    std::string lines;
    for (std::size_t index = 0; index < review.remedies.size() && index < shown; ++index) {
        const review::Remedy& remedy = review.remedies[index];
        lines += bullet(remedy.text, locale);
        lines += paragraph(format::text(wording::remedy_outcome(remedy), locale), "    ");
    }
    return section(phrase("WHAT WOULD HELP (each run through every check above)"), lines, locale);
}

std::string assumptions_section(const review::Review& review, const Locale& locale) {
    std::string lines;
    for (const review::Assumption& assumption : review.assumptions) {
        lines += bullet(assumption.text, locale);
        const Phrase other = wording::other_choice(assumption);
        if (other.empty()) continue;
        lines += paragraph(format::text(other, locale), "    " + format::text(phrase("otherwise:"), locale) + " ");
    }
    return section(phrase("ASSUMPTIONS"), lines, locale);
}

std::string cautions_section(const review::Review& review, const Locale& locale) {
    std::string lines;
    for (const Phrase& caution : review.cautions) lines += bullet(caution, locale);
    return section(phrase("CAUTIONS"), lines, locale);
}

}  // namespace

std::string review_text(const review::Review& review, const TextOptions& options) {
    const Locale& locale = options.locale;
    std::string text = verdict_section(review, locale);
    for (const std::string& part :
         {detail_section(review, locale), anchors_section(review, locale), checks_section(review, options),
          path_section(review, options), findings_section(review, locale), remedies_section(review, locale),
          loads_section(review, locale), assumptions_section(review, locale), cautions_section(review, locale)}) {
        if (!part.empty()) text += "\n" + part;
    }
    return text;
}

}  // namespace toehold::exporting
