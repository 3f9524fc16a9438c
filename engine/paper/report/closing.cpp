// What the reader must know to rely on the numbers: assumptions, cautions, and the documents the numbers come from.
#include "paper/layout/symbols.h"
#include "paper/report/sections.h"
#include "paper/report/sources.h"
#include "paper/report/standards.h"
#include "review/review.h"
#include "wording/outcomes.h"

namespace toehold::paper::report {
namespace {

using format::Phrase;
using format::phrase;

/// One paragraph, a line for each, so that they stand close.
void add_long_sources(Blocks& blocks, const Source& source) {
    const LongSources sources(source.review);
    std::string words;
    for (std::size_t index = 0; index < sources.all().size(); ++index) {
        const std::string text = format::text(sources.all()[index], source.locale());
        words += (index == 0 ? "" : "\n") + source.text(phrase("Source {}: {}", index + 1, text));
    }
    if (words.empty()) return;
    blocks.emplace_back(paragraph(
        source.text(phrase("Sources of values in the worked steps. What is said to be from memory has not yet been "
                           "confirmed against the printed page."))));
    blocks.emplace_back(fine_print(words));
}

}  // namespace

Table standards_table(const std::vector<Standard>& standards, const format::Locale& locale) {
    Table table;
    table.columns = {{written(phrase("document"), locale), 0.22},
                     {written(phrase("title"), locale), 0.53},
                     {written(phrase("used for"), locale), 0.25}};
    for (const Standard& standard : standards) {
        if (standard.kind == Standard::Kind::product) continue;  // named with its value among the sources
        table.rows.push_back({{std::string(standard.name), true},
                              words_cell(std::string(standard.title)),
                              words_cell(written(standard.used_for, locale))});
    }
    return table;
}

void add_sources(Blocks& blocks, const Source& source, Heading heading) {
    if (LongSources(source.review).all().empty()) return;
    blocks.emplace_back(std::move(heading));
    add_long_sources(blocks, source);
}

void add_assumptions(Blocks& blocks, const Source& source) {
    blocks.emplace_back(section(9, phrase("Assumptions and alternatives"), "assumptions", source.locale()));
    if (source.review.assumptions.empty())
        blocks.emplace_back(paragraph(source.text(phrase("None were collected for this review."))));
    Table table;
    table.ruled = false;
    table.columns = {{"", 0.02}, {"", 0.98, drawing::Across::left, true}};
    for (const review::Assumption& assumption : source.review.assumptions) {
        Phrase words = assumption.text;
        if (Phrase other = wording::other_choice(assumption); !other.empty())
            words = phrase("{} Otherwise: {}", std::move(words), std::move(other));
        table.rows.push_back({words_cell("•"), words_cell(layout::written_math(source.text(words)))});
    }
    if (!table.rows.empty()) blocks.emplace_back(std::move(table));
}

void add_cautions(Blocks& blocks, const Source& source) {
    blocks.emplace_back(section(10, phrase("Cautions and sources"), "cautions", source.locale()));
    for (const Phrase& caution : source.review.cautions) blocks.emplace_back(item("•", source.text(caution)));
    blocks.emplace_back(standards_table(standards_used(source.review), source.locale()));
    add_long_sources(blocks, source);
}

}  // namespace toehold::paper::report
