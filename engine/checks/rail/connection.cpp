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
    result.demand = way.force_lb;
    result.steps = {demanded("R", phrase("force of the rail on what holds it"), way.force_lb, "lb")};
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

/// A load that turns all round: the largest of a cos + b sin is (a^2 + b^2)^(1/2).
CheckResult in_any_direction(const std::vector<CheckResult>& ways, const model::RailConnection& connection,
                             const model::PartId& part) {
    CheckResult result;
    result.id = "rail-connection";
    result.title = phrase("Rail connection, load in any direction");
    result.aspect = "any-direction";
    result.part = part;
    result.clause = connection.report;
    double squares = 0.0;
    for (const CheckResult& way : ways) {
        result.steps.push_back({"r_" + way.aspect, way.title, "R/R_a", way.ratio, "", way.clause});
        squares += way.ratio * way.ratio;
    }
    result.demand = std::sqrt(squares);
    result.capacity = 1.0;
    result.steps.push_back({"r", phrase("parts of the load in a linear sum, in its worst direction"),
                            "root of the sum of their squares", result.demand, "", "statics"});
    conclude(result);
    return result;
}

}  // namespace

std::vector<CheckResult> rail_connection(const std::optional<model::RailConnection>& connection,
                                         const model::PartId& part, const RailForces& forces, bool required,
                                         const model::Basis& basis) {
    const model::RailConnection values = connection.value_or(model::RailConnection{});
    std::vector<CheckResult> results;
    for (ConnectionWay& way : std::vector<ConnectionWay>{
             {"across", phrase("Rail connection, across the rail"), forces.across_lb, values.across_lb},
             {"along", phrase("Rail connection, along the rail"), forces.along_lb, values.along_lb},
             {"vertical", phrase("Rail connection, vertical"), forces.vertical_lb, values.vertical_lb}}) {
        if (!required && !(way.reported_lb > 0.0)) continue;
        results.push_back(checked(way, connection, part, basis));
    }
    std::vector<CheckResult> known;
    for (const CheckResult& result : results) {
        if (result.status != Status::missing_evidence) known.push_back(result);
    }
    if (known.size() > 1) results.push_back(in_any_direction(known, values, part));
    return results;
}

}  // namespace toehold::checks
