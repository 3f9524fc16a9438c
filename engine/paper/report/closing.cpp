// What the reader must know to rely on the numbers: assumptions, cautions, and the documents the numbers come from.
#include "paper/report/sections.h"
#include "paper/report/sources.h"
#include "paper/report/standards.h"
#include "wording/outcomes.h"

namespace toehold::paper::report {
namespace {

Table standards_table(const review::Review& review) {
    Table table;
    table.columns = {{"document", 0.22}, {"title", 0.53}, {"used for", 0.25}};
    for (const Standard& standard : standards_used(review)) {
        if (standard.of_a_product) continue;  // named with its value among the sources
        table.rows.push_back({{std::string(standard.name), true},
                              words_cell(std::string(standard.title)),
                              words_cell(std::string(standard.used_for))});
    }
    return table;
}

/// One paragraph, a line for each, so that they stand close.
void add_long_sources(Blocks& blocks, const review::Review& review) {
    const LongSources sources(review);
    std::string words;
    for (std::size_t index = 0; index < sources.all().size(); ++index)
        words += (index == 0 ? "Source " : "\nSource ") + std::to_string(index + 1) + ": " + sources.all()[index];
    if (words.empty()) return;
    blocks.emplace_back(
        paragraph("Sources of values in the worked steps. What is said to be from memory has not yet been confirmed "
                  "against the printed page."));
    blocks.emplace_back(fine_print(words));
}

}  // namespace

void add_assumptions(Blocks& blocks, const Source& source) {
    blocks.emplace_back(Heading{1, "9  Assumptions, and the other choice", "assumptions"});
    if (source.review.assumptions.empty()) blocks.emplace_back(paragraph("None were collected for this review."));
    Table table;
    table.ruled = false;
    table.columns = {{"", 0.02}, {"", 0.98, drawing::Across::left, true}};
    for (const review::Assumption& assumption : source.review.assumptions) {
        std::string words = assumption.text;
        if (const format::Phrase other = wording::other_choice(assumption); !other.empty())
            words += " Otherwise: " + format::english(other);
        table.rows.push_back({words_cell("•"), words_cell(std::move(words))});
    }
    if (!table.rows.empty()) blocks.emplace_back(std::move(table));
}

void add_cautions(Blocks& blocks, const Source& source) {
    blocks.emplace_back(Heading{1, "10  Cautions and sources", "cautions"});
    for (const format::Phrase& caution : source.review.cautions) blocks.emplace_back(item("•", caution));
    blocks.emplace_back(standards_table(source.review));
    add_long_sources(blocks, source.review);
}

}  // namespace toehold::paper::report
