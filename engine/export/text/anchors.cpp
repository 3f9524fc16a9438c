// The demand on every anchor, and what the hand calculation would have missed.
#include "export/text/columns.h"
#include "export/text/sections.h"
#include "export/text/table.h"
#include "format/figures.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toehold::exporting {
namespace {

using demand::AnchorEnvelope;
using units::System;

std::vector<Column> columns_of_anchors() {
    return {{"anchor"},
            {"x", Align::right},
            {"y", Align::right},
            {"PULL USED", Align::right},
            {"push towards", Align::right},
            {"least pull", Align::right},
            {"bending, nominal", Align::right},
            {"rigid, nominal", Align::right},
            {"hand, to edge", Align::right},
            {"hand, to row", Align::right},
            {"shear", Align::right},
            {"proof pull", Align::right}};
}

Row row(const catalog::Anchor& anchor, const AnchorEnvelope& envelope, System system) {
    const auto lb = [system](double value) { return format::number_text(value, "lb", system); };
    return {
        {anchor.id, format::number_text(anchor.at.x_in, "in", system),
         format::number_text(anchor.at.y_in, "in", system), lb(envelope.tension_lb),
         format::degrees_text(format::degrees(envelope.direction_rad)), lb(envelope.tension_low_lb),
         envelope.flexible_tension_lb ? lb(*envelope.flexible_tension_lb) : "-", lb(envelope.rigid_tension_lb),
         lb(envelope.hand_edge_lb), lb(envelope.hand_anchor_lb), lb(envelope.shear_lb), lb(envelope.proof_tension_lb)},
        {}};
}

std::string legend(System system) {
    return fmt::format(
        "Forces in {}, places in {}, directions in deg from +x counter-clockwise (90 is outward). PULL USED is the "
        "largest over loads, directions and the range of stiffness, and is what the checks use; least pull is the "
        "other end of that range. Bending, nominal: the plate as it bends, with the stiffness as computed; rigid: the "
        "same with a plate that does not. Hand: moment over the arm from the heel anchors to the plate's edge, or to "
        "the opposite "
        "row, pushes square to the plate. Proof pull: under {:g} times the unfactored load.",
        format::in_system(0.0, "lb", system).unit, format::in_system(0.0, "in", system).unit, demand::proof_factor);
}

using HandOf = double (*)(const AnchorEnvelope&);

/// The anchor on which the hand calculation falls shortest, in words; empty where it reaches within a tenth.
std::string shortfall(const review::Review& review, HandOf hand, std::string_view arm, System system) {
    constexpr double worth_saying = 1.1;
    const std::vector<AnchorEnvelope>& all = review.demand->anchors;
    const auto missed = [hand](const AnchorEnvelope& envelope) { return envelope.tension_lb - hand(envelope); };
    const auto worst = std::max_element(all.begin(), all.end(),
                                        [&missed](const auto& a, const auto& b) { return missed(a) < missed(b); });
    if (worst == all.end() || worst->tension_lb <= worth_saying * hand(*worst)) return {};
    const auto index = static_cast<std::size_t>(worst - all.begin());
    return paragraph(
        fmt::format("The hand calculation with the arm to {} would have missed {} of the {} on anchor {}: it "
                    "gives {}.",
                    arm, format::figure_text(missed(*worst), "lb", system),
                    format::figure_text(worst->tension_lb, "lb", system), review.resolved.anchors.at(index).id,
                    format::figure_text(hand(*worst), "lb", system)),
        "  ");
}

/// Rounded to three digits: more would claim to know the stiffness of wood.
double three_digits(double value) {
    if (!(value > 0.0)) return value;
    const double unit = std::pow(10.0, std::floor(std::log10(value)) - 2.0);
    return std::round(value / unit) * unit;
}

/// What the plate's bending does to the sum of the pulls and to how far the post turns.
std::string bending_line(const std::optional<demand::Bending>& bending, System system) {
    if (!bending) return {};
    constexpr double in_percent = 100.0;
    const std::string pulls =
        bending->prying >= 0.0
            ? fmt::format("prying adds {:.1f} % to the sum of the pulls", in_percent * bending->prying)
            : fmt::format("the sum of the pulls is {:.1f} % below the rigid plate's", -in_percent * bending->prying);
    std::string text = fmt::format("The plate's bending: {}, where that sum is largest (push towards {} deg).", pulls,
                                   format::degrees_text(format::degrees(bending->prying_direction_rad)));
    if (bending->softest_lb_in_per_rad > 0.0) {
        text += fmt::format(
            " Rotation stiffness of the post's foot in its softest direction: {} per radian; on a rigid plate {}.",
            format::figure_text(three_digits(bending->softest_lb_in_per_rad), "lb in", system),
            format::figure_text(three_digits(bending->rigid_softest_lb_in_per_rad), "lb in", system));
    }
    constexpr double worth_saying = 0.05;
    if (bending->framing_change && std::abs(*bending->framing_change) > worth_saying) {
        text += fmt::format(" Framing that gives under the plate changes the largest pull by {:+.0f} %.",
                            in_percent * *bending->framing_change);
    }
    return paragraph(text, "  ");
}

std::string bearing_line(const demand::Demand& demand, System system) {
    if (demand.states.empty()) return {};
    const demand::State& state = demand.states.at(demand.peak_bearing_state);
    double area_in2 = 0.0;
    for (const demand::SupportForce& support : state.supports) area_in2 += support.contact_area_in2;
    return paragraph(fmt::format("Bearing under the plate: {} at the most, on {} of contact, push towards {} deg.",
                                 format::figure_text(demand.peak_bearing_psi, "psi", system),
                                 format::figure_text(area_in2, "in2", system),
                                 format::degrees_text(format::degrees(state.direction_rad))),
                     "  ");
}

}  // namespace

std::string anchors_section(const review::Review& review, System system) {
    if (!review.demand || review.demand->anchors.empty()) return {};
    std::vector<Row> rows;
    for (std::size_t index = 0; index < review.demand->anchors.size(); ++index) {
        rows.push_back(row(review.resolved.anchors.at(index), review.demand->anchors[index], system));
    }
    return "DEMAND ON EVERY ANCHOR\n" + table(columns_of_anchors(), rows) + paragraph(legend(system), "  ") +
           shortfall(
               review, [](const AnchorEnvelope& e) { return e.hand_edge_lb; }, "the plate's edge", system) +
           shortfall(
               review, [](const AnchorEnvelope& e) { return e.hand_anchor_lb; }, "the opposite row", system) +
           bending_line(review.demand->bending, system) + bearing_line(*review.demand, system);
}

}  // namespace toehold::exporting
