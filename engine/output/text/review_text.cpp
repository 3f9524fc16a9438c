#include "output/text.h"
#include "output/text/sections.h"

namespace toehold::output {

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

}  // namespace toehold::output
