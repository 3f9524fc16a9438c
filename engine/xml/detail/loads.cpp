#include "xml/detail/parts.h"

#include "units/length.h"
#include "xml/document/characters.h"

#include <array>
#include <span>

namespace toehold::xml {
namespace {

using units::Kind;

constexpr std::array<Word<model::Directions>, 3> directions{{{"all-round", model::Directions::all_round},
                                                             {"across", model::Directions::across},
                                                             {"outward", model::Directions::outward}}};
/// Of a wind pressure: true where it is one of allowable stress design already.
constexpr std::array<Word<bool>, 2> levels{{{"strength", false}, {"service", true}}};

/// The number of `50 plf` itself: through lb/in and back it could lose its last digit, and a rewritten file differ.
std::optional<double> number_before(std::string_view text, std::span<const std::string_view> units_written) {
    for (const std::string_view unit : units_written) {
        std::string_view rest = trimmed(text);
        if (!rest.ends_with(unit)) continue;
        rest.remove_suffix(unit.size());
        if (const std::optional<double> number = units::parse_number(trimmed(rest))) return number;
    }
    return std::nullopt;
}

constexpr std::array<std::string_view, 3> per_foot{"plf", "lb/ft", "lbf/ft"};
constexpr std::array<std::string_view, 1> feet{"ft"};

model::ConcentratedLoad read_concentrated(ElementReader& reader) {
    return {reader.quantity("push", Kind::force, Sign::positive),
            reader.optional_quantity("down", Kind::force, Sign::any).value_or(0.0)};
}

model::LineLoad read_line(ElementReader& reader) {
    model::LineLoad load;
    const double push_lb_per_in = reader.quantity("push", Kind::force_per_length, Sign::positive);
    const double spacing_in = reader.quantity("spacing", Kind::length, Sign::positive);
    load.push_lb_per_ft =
        number_before(reader.optional_text("push"), per_foot).value_or(push_lb_per_in * units::inches_per_foot);
    load.spacing_ft =
        number_before(reader.optional_text("spacing"), feet).value_or(spacing_in / units::inches_per_foot);
    load.down_lb = reader.optional_quantity("down", Kind::force, Sign::any).value_or(0.0);
    return load;
}

model::UserLoad read_user(ElementReader& reader) {
    model::UserLoad load;
    load.name = reader.text("name");
    load.push_lb = reader.quantity("push", Kind::force, Sign::not_negative);
    load.down_lb = reader.optional_quantity("down", Kind::force, Sign::any).value_or(0.0);
    load.height_in = reader.optional_quantity("height", Kind::length, Sign::positive);
    load.source = reader.optional_text("source");
    return load;
}

model::WindLoad read_wind(ElementReader& reader) {
    model::WindLoad wind;
    wind.pressure_psf = reader.quantity("pressure", Kind::pressure, Sign::positive);
    wind.service_level = reader.optional_choice<bool>("level", levels).value_or(wind.service_level);
    wind.area_ft2 = reader.optional_quantity("area", Kind::area, Sign::positive);
    wind.infill_height_in = reader.optional_quantity("infill-height", Kind::length, Sign::positive);
    wind.solid_ratio = reader.optional_number("solid-ratio", Sign::positive);
    wind.centroid_in = reader.optional_quantity("centroid", Kind::length, Sign::positive);
    wind.with_live_load = reader.optional_yes_no("with-live-load").value_or(wind.with_live_load);
    return wind;
}

Element wind_element(const model::WindLoad& wind) {
    Element element("wind");
    element.quantity("pressure", wind.pressure_psf, Kind::pressure);
    element.text("level", word_for<bool>(wind.service_level, levels));
    element.optional_quantity("area", wind.area_ft2, Kind::area);
    element.optional_quantity("infill-height", wind.infill_height_in, Kind::length);
    if (wind.solid_ratio) element.text("solid-ratio", exact_number(*wind.solid_ratio));
    element.optional_quantity("centroid", wind.centroid_in, Kind::length);
    return element.yes_no("with-live-load", wind.with_live_load);
}

Element concentrated_element(const model::ConcentratedLoad& load) {
    Element element("concentrated");
    return element.quantity("push", load.push_lb, Kind::force).given_quantity("down", load.down_lb, Kind::force);
}

Element line_element(const model::LineLoad& load) {
    Element element("line");
    element.text("push", exact_number(load.push_lb_per_ft) + " plf");
    element.text("spacing", exact_number(load.spacing_ft) + " ft");
    return element.given_quantity("down", load.down_lb, Kind::force);
}

Element user_element(const model::UserLoad& load) {
    Element element("user");
    element.text("name", load.name).quantity("push", load.push_lb, Kind::force);
    element.given_quantity("down", load.down_lb, Kind::force);
    return element.optional_quantity("height", load.height_in, Kind::length).optional_text("source", load.source);
}

}  // namespace

model::Loads read_loads(ElementReader& reader) {
    model::Loads loads;
    loads.directions = reader.optional_choice<model::Directions>("directions", directions).value_or(loads.directions);
    if (std::optional<ElementReader> item = reader.optional_child("concentrated")) {
        loads.concentrated = read_concentrated(*item);
    }
    if (std::optional<ElementReader> item = reader.optional_child("line")) loads.line = read_line(*item);
    for (ElementReader& item : reader.children("user")) loads.user.push_back(read_user(item));
    if (std::optional<ElementReader> item = reader.optional_child("wind")) loads.wind = read_wind(*item);
    if (std::optional<ElementReader> item = reader.optional_child("proof"))
        loads.proof_push_lb = item->quantity("push", Kind::force, Sign::positive);
    loads.stated = loads.concentrated || loads.line || !loads.user.empty();
    return loads;
}

Element loads_element(const model::Loads& loads) {
    Element element("loads");
    element.text("directions", word_for<model::Directions>(loads.directions, directions));
    if (loads.concentrated) element.child(concentrated_element(*loads.concentrated));
    if (loads.line) element.child(line_element(*loads.line));
    for (const model::UserLoad& load : loads.user) element.child(user_element(load));
    if (loads.wind) element.child(wind_element(*loads.wind));
    if (loads.proof_push_lb) {
        Element proof("proof");
        element.child(proof.quantity("push", *loads.proof_push_lb, Kind::force));
    }
    return element;
}

}  // namespace toehold::xml
