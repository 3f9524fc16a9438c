// Changes that were run through the same review, best first.
#include "output/figures.h"
#include "output/text/columns.h"
#include "output/text/sections.h"
#include "output/words.h"

#include <fmt/format.h>

#include <cmath>

namespace toehold::output {
namespace {

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

}  // namespace toehold::output
