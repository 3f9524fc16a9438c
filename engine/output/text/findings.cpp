#include "output/text/columns.h"
#include "output/text/sections.h"
#include "output/words.h"

namespace toehold::output {

std::string findings_section(const review::Review& review) {
    if (review.findings.empty()) return "FINDINGS: none\n";
    std::string text = "FINDINGS, gravest first\n";
    for (const checks::Finding& finding : review.findings) {
        const std::string where = finding.subject.empty() ? "" : finding.subject + ": ";
        const std::string clause = finding.clause.empty() ? "" : " [" + finding.clause + "]";
        text += paragraph(where + finding.message + clause, "  " + padded_right(word(finding.severity), 9));
    }
    return text;
}

}  // namespace toehold::output
