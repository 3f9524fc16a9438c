#include "study/proof_load/readings.h"

#include "units/quantity.h"
#include "units/scan.h"

#include <string>

namespace toehold::study {
namespace {

using format::phrase;

ReadingsRead refuse(std::string_view found) {
    return {std::nullopt,
            phrase("\"{}\" is no reading; accepted: PUSH=MOVEMENT, each with its unit and not below 0, several with "
                   "commas between, such as \"50 lb=0.21 in, 100 lb=0.43 in\"",
                   std::string(found))};
}

std::optional<double> quantity(std::string_view text, units::Kind kind) {
    const std::optional<double> value = units::parse(text, kind).value;
    return value && *value >= 0.0 ? value : std::nullopt;
}

}  // namespace

ReadingsRead read_readings(std::string_view text) {
    std::vector<mechanics::Reading> readings;
    for (std::string_view rest = text;;) {
        const std::size_t comma = rest.find(',');
        const std::string_view one = units::trimmed(rest.substr(0, comma));
        const std::size_t equals = one.find('=');
        if (equals == std::string_view::npos) return refuse(one);
        const std::optional<double> push = quantity(one.substr(0, equals), units::Kind::force);
        const std::optional<double> movement = quantity(one.substr(equals + 1), units::Kind::length);
        if (!push || !movement) return refuse(one);
        readings.push_back({*movement, *push});
        if (comma == std::string_view::npos) break;
        rest.remove_prefix(comma + 1);
    }
    return {std::move(readings), {}};
}

}  // namespace toehold::study
