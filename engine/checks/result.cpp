#include "checks/result.h"

#include "units/limit.h"

#include <limits>
#include <utility>

namespace toehold::checks {
namespace {

constexpr const char* as_it_is = "given";

}  // namespace

Step from_file(std::string symbol, format::Phrase meaning, double value, std::string unit) {
    return {std::move(symbol), std::move(meaning), as_it_is, value, std::move(unit), "input", Origin::file, true};
}

Step given(std::string symbol, format::Phrase meaning, double value, std::string unit, std::string clause) {
    return {std::move(symbol), std::move(meaning), as_it_is,      value,
            std::move(unit),   std::move(clause),  Origin::given, true};
}

Step demanded(std::string symbol, format::Phrase meaning, double value, std::string unit) {
    return {std::move(symbol), std::move(meaning), "demand", value, std::move(unit), "demand", Origin::demanded, true};
}

void conclude(CheckResult& result) {
    constexpr double nothing = 1e-9;
    if (result.capacity > 0.0) {
        result.ratio = result.demand / result.capacity;
        result.status = units::at_most(result.ratio, 1.0) ? Status::holds : Status::fails;
    } else if (result.demand > nothing) {
        result.ratio = std::numeric_limits<double>::infinity();
        result.status = Status::no_path;
    } else {
        result.ratio = 0.0;
        result.status = Status::holds;
    }
}

}  // namespace toehold::checks
