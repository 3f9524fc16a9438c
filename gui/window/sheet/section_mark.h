#pragma once
// Where the section is cut, marked in the plan: a chain line heavy at its ends, arrows the way one looks, letters A.
#include "drawing/drawings.h"

namespace toehold::window {

/// Adds the mark, which passes the plan's bounds at both ends.
void mark_section(drawing::Scene& plan, const drawing::SectionPlane& plane);

}  // namespace toehold::window
