#include "drawing/annotation/labels.h"
#include "format/figures.h"
#include "paper/site/instructions.h"
#include "paper/site/wording.h"
#include "resistance/wood/lead_hole.h"

#include <fmt/format.h>

#include <string_view>

namespace toehold::paper::site {
namespace {

struct Joint {
    const std::string& member;
    const std::string& holder;
    double specific_gravity = 0.0;
    units::System system = units::System::us;
};

std::string shank_words(double diameter_in, double length_in, units::System system) {
    return drawing::length_figure(diameter_in, system) + " x " + tape_words(length_in, system);
}

std::string nail_words(int count, double diameter_in, double length_in, units::System system) {
    const std::string name = nail_name(diameter_in, length_in);
    return fmt::format("{} nail{}{}{}, {}", count, count == 1 ? "" : "s", name.empty() ? "" : " ", name,
                       shank_words(diameter_in, length_in, system));
}

std::string apart(int count, double spread_in, units::System system) {
    if (count < 2 || !(spread_in > 0.0)) return "";
    return tape_words(spread_in / (count - 1), system) + " apart";
}

Fastening words(const std::monostate& /*nothing*/, const Joint& joint) {
    return {"NO FASTENING IS DESCRIBED.", "Ask before anything stands on this " + joint.member + "."};
}

Fastening words(const model::EndGrainFasteners& of, const Joint& joint) {
    const bool nail = of.kind == model::EndGrainFasteners::Kind::nail;
    std::string what = nail ? nail_words(of.count, of.diameter_in, of.length_in, joint.system)
                            : fmt::format("{} wood screw{}, {}", of.count, of.count == 1 ? "" : "s",
                                          shank_words(of.diameter_in, of.length_in, joint.system));
    const std::string spaced = apart(of.count, of.spread_in, joint.system);
    return {what + ".", fmt::format("Straight through the {} into the {}'s end grain{}{}.", joint.holder, joint.member,
                                    spaced.empty() ? "" : ", one above the other ", spaced)};
}

Fastening words(const model::ToeNails& of, const Joint& joint) {
    std::string name = nail_words(of.count, of.diameter_in, of.length_in, joint.system);
    name.replace(name.find("nail"), 4, "toe-nail");
    const int on_a_side = of.count / 2;
    const std::string spaced = apart(on_a_side, of.spread_in, joint.system);
    return {
        name + ".",
        fmt::format("Shared evenly by both sides of the {}{}{}. Start {} from its end, at about 30 degrees to it "
                    "(NDS 2018 12.1.6.4).",
                    joint.member, spaced.empty() ? "" : ", ", spaced, tape_words(of.length_in / 3.0, joint.system))};
}

std::string angle_holes(const model::SideAngles& of, const Joint& joint) {
    // Bolt holes 1/32 to 1/16 in over the bolt: NDS 2018 12.1.3.2 (from memory).
    if (of.kind == model::SideAngles::Kind::bolt)
        return " Bolt holes " + bit_words(of.diameter_in + 1.0 / 32.0, of.diameter_in + 1.0 / 16.0, joint.system) +
               "; washer under head and nut on wood.";
    if (of.kind == model::SideAngles::Kind::wood_screw) return " Pilot holes as for any wood screw (NDS 2018 12.1.5).";
    const resistance::LagLeadHole hole = resistance::lag_screw_lead_hole(of.diameter_in, joint.specific_gravity);
    return " Pilot hole for the thread " + bit_words(hole.thread_low_in, hole.thread_high_in, joint.system) + ".";
}

Fastening words(const model::SideAngles& of, const Joint& joint) {
    static constexpr std::string_view kinds[] = {"wood screw", "lag screw", "bolt"};
    const std::string_view kind = kinds[static_cast<std::size_t>(of.kind)];
    const bool bolt = of.kind == model::SideAngles::Kind::bolt;
    const std::string size = bolt ? drawing::length_words(of.diameter_in, joint.system)
                                  : shank_words(of.diameter_in, of.length_in, joint.system);
    const std::string spaced = apart(of.per_leg, of.spacing_in * (of.per_leg - 1), joint.system);
    return {fmt::format("steel angle {} thick on {}; {} {}{} {} in each leg.",
                        drawing::length_words(of.thickness_in, joint.system), of.sides == 1 ? "one side" : "both sides",
                        of.per_leg, kind, of.per_leg == 1 ? "" : "s", size),
            fmt::format("Upright in the corner of {} and {}. Fasteners {}{}{} from the corner.{}", joint.member,
                        joint.holder, spaced, spaced.empty() ? "" : ", ", tape_words(of.gauge_in, joint.system),
                        angle_holes(of, joint))};
}

Fastening words(const model::ReportedConnector& of, const Joint& joint) {
    std::string values;
    const auto add = [&](double force_lb, const char* way) {
        if (force_lb > 0.0)
            values += (values.empty() ? "" : ", ") + format::number_text(force_lb, "lb", joint.system) + " " + way;
    };
    add(of.uplift_lb, "up");
    add(of.down_lb, "down");
    add(of.lateral_lb, "sideways");
    add(of.pull_lb, "pulled off");
    const char* const unit = joint.system == units::System::si ? "N" : "lb";
    std::string how = values.empty() ? "" : std::string("Must hold, ") + unit + ": " + values + ". ";
    how += of.report.empty() ? "No report is named: ASK." : "Report: " + of.report + ".";
    return {of.name + ".", how};
}

}  // namespace

Fastening fastening_words(const model::EndConnection& connection, const std::string& member, const std::string& holder,
                          double specific_gravity, units::System system) {
    const Joint joint{member, holder, specific_gravity, system};
    return std::visit([&](const auto& one) { return words(one, joint); }, connection);
}

}  // namespace toehold::paper::site
