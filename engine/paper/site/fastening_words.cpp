#include "drawing/annotation/labels.h"
#include "format/figures.h"
#include "paper/site/instructions.h"
#include "paper/site/wording.h"
#include "paper/words.h"
#include "resistance/wood/lead_hole.h"

namespace toehold::paper::site {
namespace {

using format::Phrase;
using format::phrase;

struct Joint {
    Phrase holder;  ///< `the joist`
    double specific_gravity = 0.0;
    units::System system = units::System::us;
};

Phrase holder_words(std::optional<model::MemberKind> holder) {
    if (!holder) return phrase("the member that holds it");
    switch (*holder) {
        case model::MemberKind::block:
            return phrase("the block that holds it");
        case model::MemberKind::joist:
            return phrase("the joist");
        case model::MemberKind::rim:
            return phrase("the rim");
    }
    return {};
}

std::string shank_words(double diameter_in, double length_in, units::System system) {
    return drawing::length_figure(diameter_in, system) + " x " + tape_words(length_in, system);
}

Phrase nail_words(int count, const std::string& size, const std::string& shank) {
    if (size.empty()) return count == 1 ? phrase("1 nail, {}.", shank) : phrase("{} nails, {}.", count, shank);
    return count == 1 ? phrase("1 nail {} common, {}.", size, shank)
                      : phrase("{} nails {} common, {}.", count, size, shank);
}

Phrase toe_nail_words(int count, const std::string& size, const std::string& shank) {
    if (size.empty()) return count == 1 ? phrase("1 toe-nail, {}.", shank) : phrase("{} toe-nails, {}.", count, shank);
    return count == 1 ? phrase("1 toe-nail {} common, {}.", size, shank)
                      : phrase("{} toe-nails {} common, {}.", count, size, shank);
}

/// From one fastener to the next; empty where they are not in a row.
std::string spacing(int count, double spread_in, units::System system) {
    if (count < 2 || !(spread_in > 0.0)) return {};
    return tape_words(spread_in / (count - 1), system);
}

Fastening words(const std::monostate& /*nothing*/, const Joint& /*joint*/) {
    return {phrase("NO FASTENERS ARE SPECIFIED."), phrase("Ask before anything stands on this block.")};
}

Fastening words(const model::EndGrainFasteners& of, const Joint& joint) {
    const std::string shank = shank_words(of.diameter_in, of.length_in, joint.system);
    Phrase what;
    if (of.kind == model::EndGrainFasteners::Kind::nail) {
        what = nail_words(of.count, penny_size(of.diameter_in, of.length_in), shank);
    } else if (of.kind == model::EndGrainFasteners::Kind::structural_screw) {
        what = of.count == 1 ? phrase("1 structural screw, {} (report: {}).", shank, of.reported.report)
                             : phrase("{} structural screws, {} (report: {}).", of.count, shank, of.reported.report);
    } else {
        what = of.count == 1 ? phrase("1 wood screw, {}.", shank) : phrase("{} wood screws, {}.", of.count, shank);
    }
    const std::string apart = spacing(of.count, of.spread_in, joint.system);
    return {std::move(what),
            apart.empty() ? phrase("Straight through {} into the end grain of the block.", joint.holder)
                          : phrase("Straight through {} into the end grain of the block, one above the other {} apart.",
                                   joint.holder, apart)};
}

Fastening words(const model::ToeNails& of, const Joint& joint) {
    const std::string apart = spacing(of.count / 2, of.spread_in, joint.system);
    const std::string start = tape_words(of.length_in / 3.0, joint.system);
    return {toe_nail_words(of.count, penny_size(of.diameter_in, of.length_in),
                           shank_words(of.diameter_in, of.length_in, joint.system)),
            apart.empty() ? phrase("Half on each side of the block. Start {} from its end, at about 30 degrees to it "
                                   "(NDS 2018 12.1.6.3).",
                                   start)
                          : phrase("Half on each side of the block, {} apart. Start {} from its end, at about 30 "
                                   "degrees to it (NDS 2018 12.1.6.3).",
                                   apart, start)};
}

Phrase angle_holes(const model::SideAngles& of, const Joint& joint) {
    // Bolt holes 1/32 to 1/16 in over the bolt: NDS 2018 12.1.3.2 (from memory).
    if (of.kind == model::SideAngles::Kind::bolt) {
        return phrase("Bolt holes {}; washer under head and nut on wood.",
                      bit_words(of.diameter_in + 1.0 / 32.0, of.diameter_in + 1.0 / 16.0, joint.system));
    }
    if (of.kind == model::SideAngles::Kind::wood_screw)
        return phrase("Pilot holes as for any wood screw (NDS 2018 12.1.5).");
    const resistance::LagLeadHole hole = resistance::lag_screw_lead_hole(of.diameter_in, joint.specific_gravity);
    return phrase("Pilot hole for the thread {}.", bit_words(hole.thread_low_in, hole.thread_high_in, joint.system));
}

Phrase leg_words(const model::SideAngles& of, units::System system) {
    const std::string shank = shank_words(of.diameter_in, of.length_in, system);
    const bool one = of.per_leg == 1;
    switch (of.kind) {
        case model::SideAngles::Kind::wood_screw:
            return one ? phrase("1 wood screw {}", shank) : phrase("{} wood screws {}", of.per_leg, shank);
        case model::SideAngles::Kind::lag_screw:
            return one ? phrase("1 lag screw {}", shank) : phrase("{} lag screws {}", of.per_leg, shank);
        case model::SideAngles::Kind::bolt:
            break;
    }
    const std::string bolt = drawing::length_words(of.diameter_in, system);
    return one ? phrase("1 bolt {}", bolt) : phrase("{} bolts {}", of.per_leg, bolt);
}

Fastening words(const model::SideAngles& of, const Joint& joint) {
    const std::string thick = drawing::length_words(of.thickness_in, joint.system);
    const std::string gauge = tape_words(of.gauge_in, joint.system);
    const std::string apart = spacing(of.per_leg, of.spacing_in * (of.per_leg - 1), joint.system);
    const Phrase leg = leg_words(of, joint.system), holes = angle_holes(of, joint);
    return {of.sides == 1 ? phrase("steel angle {} thick on one side; {} in each leg.", thick, leg)
                          : phrase("steel angle {} thick on both sides; {} in each leg.", thick, leg),
            apart.empty()
                ? phrase("Upright in the corner of the block and {}. Fasteners {} from the corner. {}", joint.holder,
                         gauge, holes)
                : phrase("Upright in the corner of the block and {}. Fasteners {} apart, {} from the corner. {}",
                         joint.holder, apart, gauge, holes)};
}

Fastening words(const model::ReportedConnector& of, const Joint& joint) {
    const auto number = [&joint](double force_lb) { return format::number_text(force_lb, "lb", joint.system); };
    format::Listed values;
    if (of.uplift_lb > 0.0) values.items.push_back(phrase("{} up", number(of.uplift_lb)));
    if (of.down_lb > 0.0) values.items.push_back(phrase("{} down", number(of.down_lb)));
    if (of.lateral_lb > 0.0) values.items.push_back(phrase("{} lateral", number(of.lateral_lb)));
    if (of.pull_lb > 0.0) values.items.push_back(phrase("{} pull-off", number(of.pull_lb)));
    Phrase how = !of.chosen          ? phrase("Not chosen yet: ASK.")
                 : of.report.empty() ? phrase("No report is named: ASK.")
                                     : phrase("Report: {}.", of.report);
    if (!values.items.empty()) {
        const char* const unit = joint.system == units::System::si ? "N" : "lb";
        how = phrase("Required allowable, {}: {}. {}", unit, std::move(values), std::move(how));
    }
    return {phrase("{}.", of.name), std::move(how)};
}

}  // namespace

Fastening fastening_words(const model::EndConnection& connection, std::optional<model::MemberKind> holder,
                          double specific_gravity, units::System system) {
    const Joint joint{holder_words(holder), specific_gravity, system};
    return std::visit([&](const auto& one) { return words(one, joint); }, connection);
}

}  // namespace toehold::paper::site
