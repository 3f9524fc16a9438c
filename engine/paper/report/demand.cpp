// The forces on every anchor, by each way of finding them.
#include "format/figures.h"
#include "paper/report/sections.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toehold::paper::report {
namespace {

using demand::AnchorEnvelope;
using drawing::Across;
using units::System;

Table anchors_table(const review::Review& review, System system) {
    Table table;
    const auto column = [&table](const char* title, double share) {
        table.columns.push_back({title, share, Across::right});
    };
    table.columns.push_back({"anchor", 0.07});
    column("x", 0.07);
    column("y", 0.07);
    column("hand, to edge", 0.08);
    column("hand, to row", 0.08);
    column("rigid", 0.08);
    column("flexible", 0.085);
    column("range, low", 0.08);
    column("range, high: used", 0.095);
    column("push towards", 0.105);
    column("shear", 0.08);
    column("proof pull", 0.085);
    const auto lb = [system](double value) { return words_cell(format::number_text(value, "lb", system)); };
    for (std::size_t index = 0; index < review.demand->anchors.size(); ++index) {
        const AnchorEnvelope& envelope = review.demand->anchors[index];
        const catalog::Anchor& anchor = review.resolved.anchors.at(index);
        Cell used = lb(envelope.tension_lb);
        used.bold = true;
        table.rows.push_back({{anchor.id, true},
                              words_cell(format::number_text(anchor.at.x_in, "in", system)),
                              words_cell(format::number_text(anchor.at.y_in, "in", system)),
                              lb(envelope.hand_edge_lb),
                              lb(envelope.hand_anchor_lb),
                              lb(envelope.rigid_tension_lb),
                              envelope.flexible_tension_lb ? lb(*envelope.flexible_tension_lb) : words_cell("-"),
                              lb(envelope.tension_low_lb),
                              used,
                              words_cell(format::degrees_text(format::degrees(envelope.direction_rad))),
                              lb(envelope.shear_lb),
                              lb(envelope.proof_tension_lb)});
    }
    return table;
}

std::string legend(System system) {
    return fmt::format(
        "Forces in {}, places in {}. Hand: moment over the arm from the heel anchors to the plate's edge, or to the "
        "opposite row, pushes square to the plate. Rigid and flexible: a plate that does not bend and one that does, "
        "stiffness as computed. Range: lowest and highest of the largest pull over the combinations of stiffness; the "
        "highest is what the checks use, under a push in the direction given, in deg. Proof pull: under {:g} times the "
        "unfactored load.",
        unit_of("lb", system), unit_of("in", system), demand::proof_factor);
}

using HandOf = double (*)(const AnchorEnvelope&);

/// The anchor on which the hand calculation falls shortest; empty where it reaches within a tenth.
std::string shortfall(const review::Review& review, HandOf hand, std::string_view arm, System system) {
    constexpr double worth_saying = 1.1;
    const auto& all = review.demand->anchors;
    const auto missed = [hand](const AnchorEnvelope& one) { return one.tension_lb - hand(one); };
    const auto worst = std::max_element(all.begin(), all.end(),
                                        [&missed](const auto& a, const auto& b) { return missed(a) < missed(b); });
    if (worst == all.end() || worst->tension_lb <= worth_saying * hand(*worst)) return {};
    return fmt::format(
        "The hand calculation with the arm to {} would have missed {} of the {} on anchor {}: it gives {}. ", arm,
        figure(missed(*worst), "lb", system), figure(worst->tension_lb, "lb", system),
        review.resolved.anchors.at(static_cast<std::size_t>(worst - all.begin())).id,
        figure(hand(*worst), "lb", system));
}

/// Rounded to three digits: more would claim to know the stiffness of wood.
double three_digits(double value) {
    if (!(value > 0.0)) return value;
    const double unit = std::pow(10.0, std::floor(std::log10(value)) - 2.0);
    return std::round(value / unit) * unit;
}

std::string bending_words(const demand::Bending& bending, System system) {
    constexpr double percent = 100.0;
    std::string words =
        bending.prying >= 0.0
            ? fmt::format("The plate's bending: prying adds {:.1f} % to the sum of the pulls", percent * bending.prying)
            : fmt::format("The plate's bending: the sum of the pulls is {:.1f} % below the rigid plate's",
                          -percent * bending.prying);
    words += fmt::format(", where that sum is largest (push towards {} deg).",
                         format::degrees_text(format::degrees(bending.prying_direction_rad)));
    if (bending.softest_lb_in_per_rad > 0.0) {
        words += fmt::format(
            " Rotation stiffness of the post's foot in its softest direction: {} per radian; on a rigid plate {}.",
            figure(three_digits(bending.softest_lb_in_per_rad), "lb in", system),
            figure(three_digits(bending.rigid_softest_lb_in_per_rad), "lb in", system));
    }
    constexpr double worth_saying = 0.05;
    if (bending.framing_change && std::abs(*bending.framing_change) > worth_saying) {
        words += fmt::format(" Framing that gives under the plate changes the largest pull by {:+.0f} %.",
                             percent * *bending.framing_change);
    }
    return words;
}

std::string bearing_words(const demand::Demand& demand, System system) {
    const demand::State& state = demand.states.at(demand.peak_bearing_state);
    double area_in2 = 0.0;
    for (const demand::SupportForce& support : state.supports) area_in2 += support.contact_area_in2;
    return fmt::format("Bearing under the plate: {} at the most, on {} of contact, push towards {} deg.",
                       figure(demand.peak_bearing_psi, "psi", system), figure(area_in2, "in2", system),
                       format::degrees_text(format::degrees(state.direction_rad)));
}

std::string no_demand_words(const std::string& why) {
    return sentence("No demand was found: " + why) +
           " Nothing that depends on a force could be checked; what the detail itself shows stands in section 7.";
}

}  // namespace

void add_demand(Blocks& blocks, const Source& source) {
    const review::Review& review = source.review;
    const System system = source.issue.system;
    blocks.emplace_back(Heading{1, "4  Demand at the anchors", "demand"});
    if (!review.demand) {
        blocks.emplace_back(paragraph(no_demand_words(review.no_demand)));
        return;
    }
    blocks.emplace_back(anchors_table(review, system));
    blocks.emplace_back(fine_print(legend(system)));
    const std::string hand =
        shortfall(
            review, [](const AnchorEnvelope& one) { return one.hand_edge_lb; }, "the plate's edge", system) +
        shortfall(
            review, [](const AnchorEnvelope& one) { return one.hand_anchor_lb; }, "the opposite row", system);
    if (!hand.empty()) blocks.emplace_back(paragraph(hand));
    std::string bed = review.demand->bending ? bending_words(*review.demand->bending, system) + " " : std::string();
    if (!review.demand->states.empty()) bed += bearing_words(*review.demand, system);
    if (!bed.empty()) blocks.emplace_back(paragraph(bed));
    add_accuracy(blocks, source);
    add_demand_figures(blocks, source);
}

}  // namespace toehold::paper::report
