#include "checks/connection/uses.h"

#include "checks/basis/result_parts.h"

#include <algorithm>
#include <cstddef>

namespace toehold::checks {
namespace {

double ratio_of(double force, double allowable, bool is_force) {
    const double nothing = is_force ? no_force_lb : no_couple_lb_in;
    if (!(allowable > 0.0) && force <= nothing) return 0.0;
    return ratio(force, allowable);
}

}  // namespace

double ratio(const EndUse& use) { return ratio_of(use.force, use.allowable, use.unit == "lb"); }

void Uses::count(UseGroup group, double force, double allowable, bool is_force) {
    double& largest = largest_.at(static_cast<std::size_t>(group));
    largest = std::max(largest, ratio_of(force, allowable, is_force));
}

void Uses::write(UseGroup group, double force, double allowable, const char* unit, UseWords words) {
    in_words_->push_back({std::move(words), force, allowable, unit, group});
}

void Uses::explain(const format::Phrase& why) {
    if (in_words_ == nullptr) return;
    for (EndUse& use : *in_words_) use.why = why;
}

}  // namespace toehold::checks
