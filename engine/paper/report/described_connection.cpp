// What joins the end of a member to what holds it.
#include "paper/report/described.h"

namespace toehold::paper::report {
namespace {

using format::Dimension;
using format::Phrase;
using format::phrase;
using format::Quantity;

Phrase size(double diameter_in, double length_in) {
    return length_in > 0.0 ? phrase("{} x {}", Dimension{diameter_in}, Dimension{length_in})
                           : phrase("{}", Dimension{diameter_in});
}

Phrase words_of(std::monostate) { return phrase("not specified"); }

Phrase words_of(const model::EndGrainFasteners& fasteners) {
    const Phrase each = size(fasteners.diameter_in, fasteners.length_in);
    const Dimension spread{fasteners.spread_in};
    if (fasteners.kind == model::EndGrainFasteners::Kind::structural_screw) {
        return phrase(
            "{} structural screws {} into end grain, {} between the outermost; each lateral {}, withdrawal {} ({}; {})",
            fasteners.count, each, spread, Quantity{fasteners.reported.lateral_lb, "lb"},
            Quantity{fasteners.reported.withdrawal_lb, "lb"}, fasteners.reported.report, fasteners.reported.conditions);
    }
    return fasteners.kind == model::EndGrainFasteners::Kind::nail
               ? phrase("{} nails {} into end grain, {} between the outermost", fasteners.count, each, spread)
               : phrase("{} wood screws {} into end grain, {} between the outermost", fasteners.count, each, spread);
}

Phrase words_of(const model::ToeNails& nails) {
    return phrase("{} toe-nails {}, half on each side", nails.count, size(nails.diameter_in, nails.length_in));
}

Phrase leg_words(const model::SideAngles& angles) {
    const Phrase each = size(angles.diameter_in, angles.length_in);
    switch (angles.kind) {
        case model::SideAngles::Kind::wood_screw:
            return phrase("{} wood screws {}", angles.per_leg, each);
        case model::SideAngles::Kind::lag_screw:
            return phrase("{} lag screws {}", angles.per_leg, each);
        case model::SideAngles::Kind::bolt:
            break;
    }
    return phrase("{} bolts {}", angles.per_leg, each);
}

Phrase words_of(const model::SideAngles& angles) {
    Phrase words =
        angles.sides == 1
            ? phrase("{} angle on one side, in each leg {}", Dimension{angles.thickness_in}, leg_words(angles))
            : phrase("{} angles on both sides, in each leg {}", Dimension{angles.thickness_in}, leg_words(angles));
    if (angles.spacing_in > 0.0) words = phrase("{}, {} apart", std::move(words), Dimension{angles.spacing_in});
    words = phrase("{}, {} from the corner", std::move(words), Dimension{angles.gauge_in});
    return angles.threads == model::Threads::excluded ? phrase("{}, threads out of the shear plane", std::move(words))
                                                      : words;
}

Phrase words_of(const model::ReportedConnector& connector) {
    format::Listed values;
    const auto add = [&values](double value, Phrase words) {
        if (value > 0.0) values.items.push_back(std::move(words));
    };
    add(connector.uplift_lb, phrase("up {}", Quantity{connector.uplift_lb, "lb"}));
    add(connector.down_lb, phrase("down {}", Quantity{connector.down_lb, "lb"}));
    add(connector.lateral_lb, phrase("lateral {}", Quantity{connector.lateral_lb, "lb"}));
    add(connector.pull_lb, phrase("pull-off {}", Quantity{connector.pull_lb, "lb"}));
    add(connector.couple_arm_in, phrase("couple over {}", Quantity{connector.couple_arm_in, "in"}));
    add(connector.height_in, phrase("kept square over {}", Quantity{connector.height_in, "in"}));
    if (const auto& stiffness = connector.stiffness_lb_per_in)
        add(*stiffness, phrase("stiffness {}", Quantity{*stiffness, "lb/in"}));
    if (const auto& top = connector.from_top_in)
        values.items.push_back(phrase("highest fastener {} below the top", Dimension{*top}));
    if (const auto& bottom = connector.from_bottom_in)
        values.items.push_back(phrase("lowest fastener {} above the bottom", Dimension{*bottom}));
    const Phrase report = !connector.chosen          ? phrase("the least it must have; not chosen yet")
                          : connector.report.empty() ? phrase("no source")
                                                     : format::verbatim(connector.report);
    return values.items.empty() ? phrase("{} (values: {}), no values", connector.name, report)
                                : phrase("{} (values: {}): {}", connector.name, report, std::move(values));
}

}  // namespace

Phrase connection_words(const model::EndConnection& connection) {
    return std::visit([](const auto& one) { return words_of(one); }, connection);
}

}  // namespace toehold::paper::report
