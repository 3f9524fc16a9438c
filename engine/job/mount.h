#pragma once
// Everything from the post's foot to the boards, as chosen for the job.
#include "job/assumptions.h"
#include "job/design.h"

namespace toehold::job {

[[nodiscard]] model::PlateOnDeck mount_of(const Job& job, const Design& design);
/// The boards and their fasteners, as every mount has them.
[[nodiscard]] model::Decking boards_of(const Job& job, const Design& design);
/// What of the post the job did not tell.
void assume_post(const Job& job, const model::BaseDetail& detail, Assumptions& assumptions);
/// What of the boards; `at`: the element they stand in.
void assume_boards(const Job& job, const Design& design, const std::string& at, Assumptions& assumptions);
/// What of post, plate, weld, anchors and boards the job did not tell.
void assume_mount(const Job& job, const Design& design, const model::BaseDetail& detail, Assumptions& assumptions);

}  // namespace toehold::job
