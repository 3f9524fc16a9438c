#pragma once
#include "model/base_detail.h"
#include "model/problem_list.h"

namespace toehold::model {

void check_weld(ProblemList& problems, const BaseDetail& detail);

}  // namespace toehold::model
