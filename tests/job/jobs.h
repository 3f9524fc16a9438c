#pragma once
// Jobs to start details from: every place with every kind of post, occupancy and deck.
#include "job/job.h"

#include <vector>

namespace toehold::test {

[[nodiscard]] std::vector<job::Job> all_jobs();

/// For a test's INFO: `corner, 6x6 wood, 42 in`.
[[nodiscard]] std::string words(const job::Job& job);

}  // namespace toehold::test
