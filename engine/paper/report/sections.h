#pragma once
// The report's sections in their order, each in the file its name says. Each puts its headings and blocks at the end.
#include "paper/report/blocks.h"
#include "paper/report/standards.h"

#include <string>
#include <vector>

namespace toehold::model {
struct Basis;
}

namespace toehold::paper::report {

void add_title_block(Blocks& blocks, const Source& source);
void add_summary(Blocks& blocks, const Source& source);
void add_detail(Blocks& blocks, const Source& source);
void add_loads(Blocks& blocks, const Source& source);
void add_demand(Blocks& blocks, const Source& source);
void add_load_path(Blocks& blocks, const Source& source);
void add_checks(Blocks& blocks, const Source& source);
void add_findings(Blocks& blocks, const Source& source);
void add_remedies(Blocks& blocks, const Source& source);
void add_assumptions(Blocks& blocks, const Source& source);
void add_cautions(Blocks& blocks, const Source& source);

// Parts of sections, each a file of its own.
void add_detail_figures(Blocks& blocks, const Source& source);
void add_demand_figures(Blocks& blocks, const Source& source);
void add_accuracy(Blocks& blocks, const Source& source);
/// `section`: the number before a check's own, `6` gives `6.1`.
void add_check_steps(Blocks& blocks, const Source& source, const std::string& section = "6");
/// Sources whose words are too long for the steps' column, under that heading; nothing where there are none.
void add_sources(Blocks& blocks, const Source& source, Heading heading);

/// Method and basis, code and standards, as the title block has them. `plates`: whether any post stands on one.
[[nodiscard]] std::vector<Facts::Fact> basis_facts(const model::Basis& basis, const std::vector<Standard>& standards,
                                                   const format::Locale& locale, bool plates = true);
/// Those of codes and design, in full.
[[nodiscard]] Table standards_table(const std::vector<Standard>& standards, const format::Locale& locale);

}  // namespace toehold::paper::report
