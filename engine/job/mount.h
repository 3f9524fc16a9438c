#pragma once
// Everything from the post's foot to the boards, as chosen for the job.
#include "job/assumptions.h"
#include "job/design.h"

namespace toehold::job {

[[nodiscard]] model::PlateOnDeck mount_of(const Job& job, const Design& design);
/// What of post, plate, weld, anchors and boards the job did not tell.
void assume_mount(const Job& job, const Design& design, const model::BaseDetail& detail, Assumptions& assumptions);

}  // namespace toehold::job
