#include "output/text/columns.h"
#include "output/text/sections.h"
#include "output/words.h"

namespace toehold::output {

std::string findings_section(const review::Review& review) {
    if (review.findings.empty()) return "FINDINGS: none\n";
    std::string text = "FINDINGS, gravest first\n";
    for (const checks::Finding& finding : review.findings) {
        std::string line = finding.subject.empty() ? "" : finding.subject + ": ";
        line += finding.message;
        if (!finding.clause.empty()) line.append(" [").append(finding.clause).append("]");
        text += paragraph(line, "  " + padded_right(word(finding.severity), 9));
    }
    return text;
}

}  // namespace toehold::output
