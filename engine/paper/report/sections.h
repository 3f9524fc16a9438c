#pragma once
// The report's sections in their order, each in the file its name says. Each puts its headings and blocks at the end.
#include "paper/report/blocks.h"

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
void add_check_steps(Blocks& blocks, const Source& source);

}  // namespace toehold::paper::report
