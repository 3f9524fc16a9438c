#pragma once
// The part of `validate` that concerns the connection at a member's end.
#include "model/connection.h"
#include "model/problem_list.h"

namespace toehold::model {

/// Problems belong to the element `problems` is at. `depth_in`: of the member whose end it is, vertical.
void check_connection(ProblemList& problems, const EndConnection& connection, double depth_in);

}  // namespace toehold::model
