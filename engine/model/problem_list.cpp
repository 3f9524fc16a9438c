#include "model/problem_list.h"

#include <fmt/format.h>

#include <utility>

namespace toehold::model {

using format::phrase;
using format::verbatim;

std::string brief(double value) { return fmt::format("{:.6g}", value); }

format::Phrase these_or(const std::vector<std::string>& ids, format::Phrase otherwise) {
    constexpr std::size_t most_listed = 8;
    if (ids.empty() || ids.size() > most_listed) return otherwise;
    return verbatim(fmt::format("{}", fmt::join(ids, ", ")));
}

ProblemList& ProblemList::at(std::string element) {
    element_ = std::move(element);
    return *this;
}

void ProblemList::add(format::Phrase message, format::Phrase accepted, format::Phrase found) {
    Problem problem;
    problem.element = element_;
    problem.message = std::move(message);
    problem.accepted = std::move(accepted);
    problem.found = std::move(found);
    problems_.push_back(std::move(problem));
}

// The comparisons are written so that a NaN fails them.
void ProblemList::positive(const format::Phrase& what, double value, double at_most) {
    if (value > 0.0 && value <= at_most) return;
    add(phrase("{} is out of range", what), phrase("more than 0, at most {}", brief(at_most)), verbatim(brief(value)));
}

void ProblemList::between(const format::Phrase& what, double value, double at_least, double at_most) {
    if (value >= at_least && value <= at_most) return;
    add(phrase("{} is out of range", what), phrase("{} to {}", brief(at_least), brief(at_most)),
        verbatim(brief(value)));
}

}  // namespace toehold::model
