#include "xml/detail/parts.h"

#include <array>

namespace toehold::xml {
namespace {

using units::Kind;
using EndGrainKind = model::EndGrainFasteners::Kind;
using AngleKind = model::SideAngles::Kind;

constexpr std::array<std::string_view, 6> connection_names{"nails",     "screws", "structural-screws",
                                                           "toe-nails", "angles", "connector"};
constexpr std::array<Word<model::Threads>, 2> threads_words{
    {{"included", model::Threads::included}, {"excluded", model::Threads::excluded}}};
constexpr std::array<Word<AngleKind>, 3> angle_kinds{
    {{"wood-screw", AngleKind::wood_screw}, {"lag-screw", AngleKind::lag_screw}, {"bolt", AngleKind::bolt}}};

/// Zero, the model's `not given`, when the attribute is not there; a zero in the file is refused.
double read_given(ElementReader& reader, std::string_view attribute, Kind kind) {
    return reader.optional_quantity(attribute, kind, Sign::positive).value_or(0.0);
}

/// What nails and screws have in common, wherever they are driven.
template <class Fasteners>
Fasteners read_fasteners(ElementReader& reader) {
    Fasteners fasteners;
    fasteners.diameter_in = reader.quantity("diameter", Kind::length, Sign::positive);
    fasteners.length_in = reader.quantity("length", Kind::length, Sign::positive);
    fasteners.count = reader.count("count");
    fasteners.spread_in = reader.optional_quantity("spread", Kind::length, Sign::not_negative).value_or(0.0);
    return fasteners;
}

model::EndGrainFasteners read_end_grain(ElementReader& reader) {
    auto fasteners = read_fasteners<model::EndGrainFasteners>(reader);
    fasteners.kind = EndGrainKind::nail;
    if (reader.name() == "screws") fasteners.kind = EndGrainKind::wood_screw;
    if (reader.name() != "structural-screws") return fasteners;
    fasteners.kind = EndGrainKind::structural_screw;
    fasteners.reported.lateral_lb = read_given(reader, "lateral", Kind::force);
    fasteners.reported.withdrawal_lb = read_given(reader, "withdrawal", Kind::force);
    fasteners.reported.report = reader.text("report");
    fasteners.reported.conditions = reader.text("conditions");
    return fasteners;
}

model::SideAngles read_angles(ElementReader& reader) {
    model::SideAngles angles;
    if (reader.has("sides")) angles.sides = reader.count("sides");
    angles.thickness_in = reader.quantity("thickness", Kind::length, Sign::positive);
    angles.metal = reader.id("metal");
    const std::optional<AngleKind> kind = reader.required_choice<AngleKind>("kind", angle_kinds);
    if (!kind) {
        reader.ignore_rest();
        return angles;
    }
    angles.kind = *kind;
    angles.diameter_in = reader.quantity("diameter", Kind::length, Sign::positive);
    // A bolt goes through the wood, so a length of one is refused as an attribute nobody knows.
    if (*kind != AngleKind::bolt) angles.length_in = reader.quantity("length", Kind::length, Sign::positive);
    angles.per_leg = reader.count("per-leg");
    angles.spacing_in = read_given(reader, "spacing", Kind::length);
    angles.gauge_in = reader.quantity("gauge", Kind::length, Sign::positive);
    // A wood screw is threaded where it holds, so a word on its threads is refused too.
    if (*kind != AngleKind::wood_screw)
        angles.threads = reader.optional_choice<model::Threads>("threads", threads_words);
    return angles;
}

model::ReportedConnector read_connector(ElementReader& reader) {
    model::ReportedConnector connector;
    connector.name = reader.text("name");
    connector.report = reader.optional_text("report");
    connector.uplift_lb = read_given(reader, "uplift", Kind::force);
    connector.down_lb = read_given(reader, "down", Kind::force);
    connector.lateral_lb = read_given(reader, "lateral", Kind::force);
    connector.couple_arm_in = read_given(reader, "couple-arm", Kind::length);
    connector.pull_lb = read_given(reader, "pull", Kind::force);
    connector.height_in = read_given(reader, "height", Kind::length);
    connector.stiffness_lb_per_in = reader.optional_quantity("stiffness", Kind::force_per_length, Sign::positive);
    connector.from_top_in = reader.optional_quantity("from-top", Kind::length, Sign::not_negative);
    connector.from_bottom_in = reader.optional_quantity("from-bottom", Kind::length, Sign::not_negative);
    connector.chosen = reader.optional_yes_no("chosen").value_or(connector.chosen);
    return connector;
}

template <class Fasteners>
Element fasteners_element(std::string_view name, const Fasteners& fasteners) {
    Element element(name);
    element.quantity("diameter", fasteners.diameter_in, Kind::length);
    element.quantity("length", fasteners.length_in, Kind::length).text("count", std::to_string(fasteners.count));
    return element.given_quantity("spread", fasteners.spread_in, Kind::length);
}

Element connection_element(const model::EndGrainFasteners& fasteners) {
    if (fasteners.kind == EndGrainKind::nail) return fasteners_element("nails", fasteners);
    if (fasteners.kind == EndGrainKind::wood_screw) return fasteners_element("screws", fasteners);
    Element element = fasteners_element("structural-screws", fasteners);
    element.given_quantity("lateral", fasteners.reported.lateral_lb, Kind::force);
    element.given_quantity("withdrawal", fasteners.reported.withdrawal_lb, Kind::force);
    return element.text("report", fasteners.reported.report).text("conditions", fasteners.reported.conditions);
}

Element connection_element(const model::ToeNails& nails) { return fasteners_element("toe-nails", nails); }

Element connection_element(const model::SideAngles& angles) {
    Element element("angles");
    if (angles.sides != model::SideAngles{}.sides) element.text("sides", std::to_string(angles.sides));
    element.quantity("thickness", angles.thickness_in, Kind::length).text("metal", angles.metal);
    element.text("kind", word_for<AngleKind>(angles.kind, angle_kinds));
    element.quantity("diameter", angles.diameter_in, Kind::length);
    element.given_quantity("length", angles.length_in, Kind::length);
    element.text("per-leg", std::to_string(angles.per_leg));
    element.given_quantity("spacing", angles.spacing_in, Kind::length);
    element.quantity("gauge", angles.gauge_in, Kind::length);
    if (angles.threads) element.text("threads", word_for<model::Threads>(*angles.threads, threads_words));
    return element;
}

Element connection_element(const model::ReportedConnector& connector) {
    Element element("connector");
    element.text("name", connector.name).optional_text("report", connector.report);
    element.given_quantity("uplift", connector.uplift_lb, Kind::force);
    element.given_quantity("down", connector.down_lb, Kind::force);
    element.given_quantity("lateral", connector.lateral_lb, Kind::force);
    element.given_quantity("couple-arm", connector.couple_arm_in, Kind::length);
    element.given_quantity("pull", connector.pull_lb, Kind::force);
    element.given_quantity("height", connector.height_in, Kind::length);
    element.optional_quantity("stiffness", connector.stiffness_lb_per_in, Kind::force_per_length);
    element.optional_quantity("from-top", connector.from_top_in, Kind::length);
    element.optional_quantity("from-bottom", connector.from_bottom_in, Kind::length);
    if (!connector.chosen) element.yes_no("chosen", false);
    return element;
}

struct AddTo {
    Element& holder;
    void operator()(std::monostate /*nothing described*/) const {}
    template <class Connection>
    void operator()(const Connection& connection) const {
        holder.child(connection_element(connection));
    }
};

}  // namespace

model::EndConnection read_connection(ElementReader& holder) {
    std::optional<ElementReader> reader = holder.one_of(connection_names, false);
    if (!reader) return {};
    if (reader->name() == "toe-nails") return read_fasteners<model::ToeNails>(*reader);
    if (reader->name() == "angles") return read_angles(*reader);
    if (reader->name() == "connector") return read_connector(*reader);
    return read_end_grain(*reader);
}

void add_connection(Element& holder, const model::EndConnection& connection) { std::visit(AddTo{holder}, connection); }

}  // namespace toehold::xml
