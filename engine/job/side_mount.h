#pragma once
// A post bolted to the outside of the rim, as chosen for the job: a wood post between two joists with ties along them,
// a metal one on a plate of its own in front of a joist (common practice of both).
#include "job/assumptions.h"
#include "job/design.h"

namespace toehold::job {

/// The design has a side.
[[nodiscard]] model::SideFastened side_mount_of(const Job& job, const Design& design);
/// What of post, bolts, ties, bracket and boards the job did not tell.
void assume_side_mount(const Job& job, const Design& design, const model::BaseDetail& detail, Assumptions& assumptions);

}  // namespace toehold::job
