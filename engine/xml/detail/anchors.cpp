#include "xml/detail/parts.h"

#include <fmt/format.h>

#include <array>

namespace toehold::xml {
namespace {

using units::Kind;

constexpr std::array<std::string_view, 4> fastener_names{"lag-screw", "wood-screw", "through-bolt",
                                                         "reported-fastener"};
constexpr std::array<Word<model::Threads>, 2> threads_words{
    {{"included", model::Threads::included}, {"excluded", model::Threads::excluded}}};
constexpr std::array<std::string_view, 3> below_names{"washer-below", "backing-plate", "lower-plate"};

/// Zero, the model's `not given`, when the attribute is not there; a zero in the file is refused.
double read_given(ElementReader& reader, std::string_view attribute, Kind kind) {
    return reader.optional_quantity(attribute, kind, Sign::positive).value_or(0.0);
}

template <class Screw>
Screw read_screw(ElementReader& reader) {
    Screw screw;
    screw.size = reader.id("size");
    screw.length_in = reader.quantity("length", Kind::length, Sign::positive);
    screw.thread_length_in = reader.optional_quantity("thread", Kind::length, Sign::positive);
    return screw;
}

model::BackingPlate read_metal_plate(ElementReader& reader) {
    model::BackingPlate plate;
    plate.width_in = reader.quantity("width", Kind::length, Sign::positive);
    plate.depth_in = reader.quantity("depth", Kind::length, Sign::positive);
    plate.thickness_in = reader.quantity("thickness", Kind::length, Sign::positive);
    plate.metal = reader.id("metal");
    return plate;
}

constexpr std::array<Word<model::LowerShape>, 3> lower_shapes{{{"plate", model::LowerShape::plate},
                                                               {"angle", model::LowerShape::angle},
                                                               {"channel", model::LowerShape::channel}}};

model::LowerPlate read_lower_plate(ElementReader& reader) {
    model::LowerPlate plate;
    plate.shape = reader.optional_choice<model::LowerShape>("shape", lower_shapes).value_or(model::LowerShape::plate);
    plate.center = {reader.quantity("x", Kind::length, Sign::any), reader.quantity("y", Kind::length, Sign::any)};
    plate.width_in = reader.quantity("width", Kind::length, Sign::positive);
    plate.depth_in = reader.quantity("depth", Kind::length, Sign::positive);
    plate.thickness_in = reader.quantity("thickness", Kind::length, Sign::positive);
    if (plate.shape != model::LowerShape::plate) plate.leg_in = reader.quantity("leg", Kind::length, Sign::positive);
    plate.metal = reader.id("metal");
    return plate;
}

model::ThroughBolt read_through_bolt(ElementReader& reader) {
    model::ThroughBolt bolt;
    bolt.size = reader.id("size");
    bolt.grade = reader.id("grade");
    bolt.length_in = reader.optional_quantity("length", Kind::length, Sign::positive);
    bolt.thread_length_in = reader.optional_quantity("thread", Kind::length, Sign::positive);
    bolt.threads = reader.optional_choice<model::Threads>("threads", threads_words);
    std::optional<ElementReader> below = reader.one_of(below_names, false);
    if (!below) return bolt;
    if (below->name() == "backing-plate") {
        bolt.below = read_metal_plate(*below);
    } else if (below->name() == "lower-plate") {
        bolt.below = read_lower_plate(*below);
    } else {
        bolt.below = model::Washer{below->id("size")};
    }
    return bolt;
}

model::ReportedFastener read_reported(ElementReader& reader) {
    model::ReportedFastener fastener;
    fastener.name = reader.text("name");
    fastener.report = reader.optional_text("report");
    fastener.diameter_in = reader.quantity("diameter", Kind::length, Sign::positive);
    fastener.length_in = reader.quantity("length", Kind::length, Sign::positive);
    fastener.thread_length_in = reader.quantity("thread", Kind::length, Sign::positive);
    fastener.withdrawal_lb_per_in = read_given(reader, "withdrawal", Kind::force_per_length);
    fastener.tension_lb = read_given(reader, "tension", Kind::force);
    fastener.lateral_lb = read_given(reader, "lateral", Kind::force);
    fastener.minimum_penetration_in = reader.quantity("minimum-penetration", Kind::length, Sign::not_negative);
    fastener.minimum_edge_in = read_given(reader, "minimum-edge", Kind::length);
    fastener.minimum_end_in = read_given(reader, "minimum-end", Kind::length);
    fastener.minimum_spacing_in = read_given(reader, "minimum-spacing", Kind::length);
    return fastener;
}

model::Fastener read_fastener(ElementReader& group) {
    std::optional<ElementReader> reader = group.one_of(fastener_names);
    if (!reader) return {};
    if (reader->name() == "lag-screw") return read_screw<model::LagScrew>(*reader);
    if (reader->name() == "wood-screw") return read_screw<model::WoodScrew>(*reader);
    if (reader->name() == "through-bolt") return read_through_bolt(*reader);
    return read_reported(*reader);
}

template <class Screw>
Element screw_element(std::string_view name, const Screw& screw) {
    Element element(name);
    element.text("size", screw.size).quantity("length", screw.length_in, Kind::length);
    return element.optional_quantity("thread", screw.thread_length_in, Kind::length);
}

Element fastener_element(const model::LagScrew& screw) { return screw_element("lag-screw", screw); }
Element fastener_element(const model::WoodScrew& screw) { return screw_element("wood-screw", screw); }

Element washer_element(std::string_view name, const model::Washer& washer) {
    Element element(name);
    return element.text("size", washer.size);
}

Element metal_plate_element(std::string_view name, const model::BackingPlate& plate) {
    Element element(name);
    element.quantity("width", plate.width_in, Kind::length).quantity("depth", plate.depth_in, Kind::length);
    return element.quantity("thickness", plate.thickness_in, Kind::length).text("metal", plate.metal);
}

Element lower_plate_element(const model::LowerPlate& plate) {
    Element element("lower-plate");
    if (plate.shape != model::LowerShape::plate)
        element.text("shape", word_for<model::LowerShape>(plate.shape, lower_shapes));
    element.quantity("x", plate.center.x_in, Kind::length).quantity("y", plate.center.y_in, Kind::length);
    element.quantity("width", plate.width_in, Kind::length).quantity("depth", plate.depth_in, Kind::length);
    element.quantity("thickness", plate.thickness_in, Kind::length);
    if (plate.shape != model::LowerShape::plate) element.quantity("leg", plate.leg_in, Kind::length);
    return element.text("metal", plate.metal);
}

Element fastener_element(const model::ThroughBolt& bolt) {
    Element element("through-bolt");
    element.text("size", bolt.size).text("grade", bolt.grade);
    element.optional_quantity("length", bolt.length_in, Kind::length);
    element.optional_quantity("thread", bolt.thread_length_in, Kind::length);
    if (bolt.threads) element.text("threads", word_for<model::Threads>(*bolt.threads, threads_words));
    if (const auto* const washer = std::get_if<model::Washer>(&bolt.below)) {
        element.child(washer_element("washer-below", *washer));
    }
    if (const auto* const plate = std::get_if<model::BackingPlate>(&bolt.below)) {
        element.child(metal_plate_element("backing-plate", *plate));
    }
    if (const auto* const plate = std::get_if<model::LowerPlate>(&bolt.below)) {
        element.child(lower_plate_element(*plate));
    }
    return element;
}

Element fastener_element(const model::ReportedFastener& fastener) {
    Element element("reported-fastener");
    element.text("name", fastener.name).optional_text("report", fastener.report);
    element.quantity("diameter", fastener.diameter_in, Kind::length);
    element.quantity("length", fastener.length_in, Kind::length);
    element.quantity("thread", fastener.thread_length_in, Kind::length);
    element.given_quantity("withdrawal", fastener.withdrawal_lb_per_in, Kind::force_per_length);
    element.given_quantity("tension", fastener.tension_lb, Kind::force);
    element.given_quantity("lateral", fastener.lateral_lb, Kind::force);
    element.quantity("minimum-penetration", fastener.minimum_penetration_in, Kind::length);
    element.given_quantity("minimum-edge", fastener.minimum_edge_in, Kind::length);
    element.given_quantity("minimum-end", fastener.minimum_end_in, Kind::length);
    return element.given_quantity("minimum-spacing", fastener.minimum_spacing_in, Kind::length);
}

}  // namespace

model::AnchorGroup read_anchor_group(ElementReader& reader) {
    model::AnchorGroup group;
    group.holes = reader.ids("holes");
    group.corrosion_protection = reader.optional_text("corrosion-protection");
    group.preload_lb = reader.optional_quantity("preload", Kind::force, Sign::positive);
    group.fastener = read_fastener(reader);
    if (std::optional<ElementReader> washer = reader.optional_child("washer")) {
        group.washer = model::Washer{washer->id("size")};
    }
    group.into = reader.optional_id("into");
    if (std::optional<ElementReader> plate = reader.optional_child("head-plate"))
        group.head_plate = read_metal_plate(*plate);
    return group;
}

Element anchor_group_element(const model::AnchorGroup& group) {
    Element element("anchors");
    element.optional_text("holes", fmt::format("{}", fmt::join(group.holes, " ")));
    element.optional_text("into", group.into);
    element.optional_text("corrosion-protection", group.corrosion_protection);
    if (group.preload_lb) element.quantity("preload", *group.preload_lb, Kind::force);
    element.child(std::visit([](const auto& fastener) { return fastener_element(fastener); }, group.fastener));
    if (group.washer) element.child(washer_element("washer", *group.washer));
    if (group.head_plate) element.child(metal_plate_element("head-plate", *group.head_plate));
    return element;
}

}  // namespace toehold::xml
