#pragma once
// Joists, rim, supports and blocks about the post, as chosen for the job.
#include "job/assumptions.h"
#include "job/design.h"

namespace toehold::job {

[[nodiscard]] model::Framing framing_of(const Job& job, const Design& design, const catalog::Catalog& catalog);
/// What of the framing the job did not tell.
void assume_framing(const Job& job, const model::Framing& framing, Assumptions& assumptions);

}  // namespace toehold::job
