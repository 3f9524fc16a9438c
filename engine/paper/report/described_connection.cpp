// What joins the end of a member to what holds it.
#include "paper/report/blocks.h"
#include "paper/report/described.h"

#include <fmt/format.h>

namespace toehold::paper::report {
namespace {

using units::System;

std::string size(double diameter_in, double length_in, System system) {
    return length_in > 0.0 ? length(diameter_in, system) + " x " + length(length_in, system)
                           : length(diameter_in, system);
}

std::string words_of(std::monostate, System) { return "nothing described"; }

std::string words_of(const model::EndGrainFasteners& fasteners, System system) {
    const bool nails = fasteners.kind == model::EndGrainFasteners::Kind::nail;
    return fmt::format("{} {} {} into end grain, {} between the outermost", fasteners.count,
                       nails ? "nails" : "wood screws", size(fasteners.diameter_in, fasteners.length_in, system),
                       length(fasteners.spread_in, system));
}

std::string words_of(const model::ToeNails& nails, System system) {
    return fmt::format("{} toe-nails {}, shared by both sides", nails.count,
                       size(nails.diameter_in, nails.length_in, system));
}

std::string kind_words(model::SideAngles::Kind kind) {
    switch (kind) {
        case model::SideAngles::Kind::wood_screw:
            return "wood screws";
        case model::SideAngles::Kind::lag_screw:
            return "lag screws";
        case model::SideAngles::Kind::bolt:
            break;
    }
    return "bolts";
}

std::string words_of(const model::SideAngles& angles, System system) {
    std::string words =
        fmt::format("{} angle{} on {}, {} in each leg: {} {}", length(angles.thickness_in, system),
                    angles.sides == 1 ? "" : "s", angles.sides == 1 ? "one side" : "both sides", angles.per_leg,
                    kind_words(angles.kind), size(angles.diameter_in, angles.length_in, system));
    if (angles.spacing_in > 0.0) words += ", " + length(angles.spacing_in, system) + " apart";
    return words + ", " + length(angles.gauge_in, system) + " from the corner";
}

void add_value(std::string& words, const char* name, double value, const char* unit, System system) {
    if (value > 0.0) words += fmt::format(", {} {}", name, figure(value, unit, system));
}

std::string words_of(const model::ReportedConnector& connector, System system) {
    std::string values;
    add_value(values, "up", connector.uplift_lb, "lb", system);
    add_value(values, "down", connector.down_lb, "lb", system);
    add_value(values, "sideways", connector.lateral_lb, "lb", system);
    add_value(values, "drawing away", connector.pull_lb, "lb", system);
    add_value(values, "couple over", connector.couple_arm_in, "in", system);
    add_value(values, "kept square over", connector.height_in, "in", system);
    if (connector.stiffness_lb_per_in) add_value(values, "stiffness", *connector.stiffness_lb_per_in, "lb/in", system);
    return fmt::format("{} (values: {}){}", connector.name, connector.report.empty() ? "no source" : connector.report,
                       values.empty() ? ", no values" : values);
}

}  // namespace

std::string connection_words(const model::EndConnection& connection, System system) {
    return std::visit([system](const auto& one) { return words_of(one, system); }, connection);
}

}  // namespace toehold::paper::report
