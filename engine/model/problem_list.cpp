#include "model/problem_list.h"

#include <fmt/format.h>

#include <utility>

namespace toehold::model {

std::string brief(double value) { return fmt::format("{:.6g}", value); }

ProblemList& ProblemList::at(std::string element) {
    element_ = std::move(element);
    return *this;
}

void ProblemList::add(std::string message, std::string accepted, std::string found) {
    Problem problem;
    problem.element = element_;
    problem.message = std::move(message);
    problem.accepted = std::move(accepted);
    problem.found = std::move(found);
    problems_.push_back(std::move(problem));
}

// The comparisons are written so that a NaN fails them.
void ProblemList::positive(const std::string& what, double value, double at_most) {
    if (value > 0.0 && value <= at_most) return;
    add(what + " is out of range", "more than 0, at most " + brief(at_most), brief(value));
}

void ProblemList::between(const std::string& what, double value, double at_least, double at_most) {
    if (value >= at_least && value <= at_most) return;
    add(what + " is out of range", brief(at_least) + " to " + brief(at_most), brief(value));
}

}  // namespace toehold::model
