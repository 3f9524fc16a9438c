#pragma once
// The small vocabulary of validation: each call adds one problem when its condition is not met.
#include "model/problem.h"

#include <string>
#include <utility>
#include <vector>

namespace toehold::model {

class ProblemList {
  public:
    /// Everything added belongs to this element until the next call.
    ProblemList& at(std::string element);
    void add(format::Phrase message, format::Phrase accepted = {}, format::Phrase found = {});
    /// 0 < value <= at_most. `what`: the value's name and unit, `height (in)`.
    void positive(const format::Phrase& what, double value, double at_most);
    /// at_least <= value <= at_most.
    void between(const format::Phrase& what, double value, double at_least, double at_most);
    [[nodiscard]] Problems take() { return std::exchange(problems_, {}); }

  private:
    std::string element_;
    Problems problems_;
};

/// For a message: at most six significant digits.
[[nodiscard]] std::string brief(double value);

/// For what would be accepted: these ids where they are few, all of them; else, or without any, `otherwise`.
[[nodiscard]] format::Phrase these_or(const std::vector<std::string>& ids, format::Phrase otherwise);

/// No detail or plate has a measure beyond this, in; larger ones are slips of the unit.
inline constexpr double largest_length_in = 1200.0;

}  // namespace toehold::model
