// A rail's connection to a post or a wall, by its evaluation report, whose values hold one direction at a time. A load
// has any direction: its parts use the values up in a linear sum, which is worst where their squares add.
#include "checks/basis/result_parts.h"
#include "checks/basis/wood_basis.h"
#include "checks/rail/rail.h"

#include <cmath>
#include <utility>

namespace toehold::checks {
namespace {

using format::phrase;

struct ConnectionWay {
    const char* aspect;
    format::Phrase title;
    double force_lb = 0.0;
    double reported_lb = 0.0;  ///< 0: no value
    double wind_lb = 0.0;      ///< at once with the force
    [[nodiscard]] double all_lb() const { return force_lb + wind_lb; }
};

CheckResult checked(const ConnectionWay& way, const std::optional<model::RailConnection>& connection,
                    const model::PartId& part, const model::Basis& basis) {
    CheckResult result;
    result.id = "rail-connection";
    result.title = way.title;
    result.aspect = way.aspect;
    result.part = part;
    result.clause = "evaluation report";
    result.unit = "lb";
    result.demand = way.all_lb();
    result.steps = {demanded("R", phrase("force of the rail on what holds it"), result.demand, "lb")};
    if (way.wind_lb > 0.0)
        result.steps.push_back(demanded("R_W", phrase("of that, the wind's on the infill"), way.wind_lb, "lb"));
    if (!connection || !(way.reported_lb > 0.0)) {
        lacks_evidence(result, phrase("The connection of the rail has no allowable force in this direction: enter it "
                                      "with its evaluation report."));
        return result;
    }
    result.clause = connection->report;
    result.steps.push_back(given("R_a", phrase("allowable force of the connection in this direction"), way.reported_lb,
                                 "lb", connection->report));
    const Adjusted usable = reported_value(way.reported_lb, "lb", basis);
    append(result.steps, usable.steps);
    result.capacity = usable.value;
    conclude(result);
    return result;
}

/// A way that has a value, checked.
struct CheckedWay {
    CheckResult result;
    double of_wind = 0.0;  ///< part of its demand that is wind's
};

/// A load that turns all round: the largest of a cos + b sin is (a^2 + b^2)^(1/2). Wind does not turn with it: its
/// parts add.
CheckResult in_any_direction(const std::vector<CheckedWay>& ways, const model::RailConnection& connection,
                             const model::PartId& part) {
    CheckResult result;
    result.id = "rail-connection";
    result.title = phrase("Rail connection, load in any direction");
    result.aspect = "any-direction";
    result.part = part;
    result.clause = connection.report;
    double squares = 0.0, of_wind = 0.0;
    for (const auto& [way, wind] : ways) {
        result.steps.push_back({"r_" + way.aspect, way.title, "R/R_a", way.ratio, "", way.clause});
        squares += std::pow(way.ratio * (1.0 - wind), 2);
        of_wind += way.ratio * wind;
    }
    result.demand = std::sqrt(squares) + of_wind;
    result.capacity = 1.0;
    if (of_wind > 0.0) {
        result.steps.push_back(
            {"r_W", phrase("parts of the wind in a linear sum"), "sum of R_W/R_a", of_wind, "", "statics"});
    }
    result.steps.push_back({"r", phrase("parts of the load in a linear sum, in its worst direction"),
                            of_wind > 0.0 ? "root of the sum of the squares of those without wind, + r_W"
                                          : "root of the sum of their squares",
                            result.demand, "", "statics"});
    conclude(result);
    return result;
}

}  // namespace

std::vector<CheckResult> rail_connection(const std::optional<model::RailConnection>& connection,
                                         const model::PartId& part, const RailForces& forces, bool required,
                                         const model::Basis& basis) {
    const model::RailConnection values = connection.value_or(model::RailConnection{});
    std::vector<CheckResult> results;
    std::vector<CheckedWay> known;
    for (ConnectionWay& way : std::vector<ConnectionWay>{
             {"across", phrase("Rail connection, across the rail"), forces.across_lb, values.across_lb,
              forces.wind_across_lb},
             {"along", phrase("Rail connection, along the rail"), forces.along_lb, values.along_lb,
              forces.wind_along_lb},
             {"vertical", phrase("Rail connection, vertical"), forces.vertical_lb, values.vertical_lb, 0.0}}) {
        if (!required && !(way.reported_lb > 0.0)) continue;
        results.push_back(checked(way, connection, part, basis));
        if (results.back().status == Status::missing_evidence) continue;
        known.push_back({results.back(), way.all_lb() > 0.0 ? way.wind_lb / way.all_lb() : 0.0});
    }
    if (known.size() > 1) results.push_back(in_any_direction(known, values, part));
    return results;
}

}  // namespace toehold::checks
