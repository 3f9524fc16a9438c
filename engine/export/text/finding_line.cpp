#include "export/text/finding_line.h"

#include "export/text/columns.h"
#include "wording/status.h"

namespace toehold::exporting {

std::string finding_line(const checks::Finding& finding, const format::Phrase& side, const format::Locale& locale) {
    constexpr std::size_t side_columns = 8, severity_columns = 15;
    std::string line = format::text(model::part_name(finding.part), locale);
    if (!line.empty()) line += ": ";
    line += format::text(finding.message, locale);
    if (!finding.clause.empty())
        line.append(" [").append(format::text(std::string_view(finding.clause), locale)).append("]");
    std::string first = "  ";
    if (!side.empty()) first += padded_right(format::text(side, locale), side_columns);
    return paragraph(line,
                     first + padded_right(format::text(wording::word(finding.severity), locale), severity_columns));
}

}  // namespace toehold::exporting
