#include "paper/proof/load_steps.h"

#include "demand/loads/code_loads.h"
#include "model/base_detail.h"
#include "resistance/ultimate/load_test.h"

#include <algorithm>

namespace toehold::paper::proof {

double design_load_lb(const model::BaseDetail& detail) {
    return std::max(demand::code_concentrated_lb, demand::code_line_lb(detail).value_or(0.0));
}

std::vector<double> up_to_the_hold_lb(double design_lb) {
    std::vector<double> loads;
    for (const double times : {0.25, 0.5, 0.75, 1.0, 1.5, resistance::ultimate::held_over_design})
        loads.push_back(times * design_lb);
    return loads;
}

}  // namespace toehold::paper::proof
