// What the reader must know to rely on the numbers: assumptions, then cautions.
#include "output/text/columns.h"
#include "output/text/sections.h"

namespace toehold::output {

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

}  // namespace toehold::output
