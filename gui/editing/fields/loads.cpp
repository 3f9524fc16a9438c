// The pushes on the guard, and by which code and method they are judged.
#include "editing/fields/groups.h"
#include "units/length.h"

#include <fmt/format.h>

#include <array>

namespace toehold::editing {
namespace {

using units::Kind;

const std::array<Word<model::Directions>, 3> directions{
    {{model::Directions::all_round, "all-round", phrase("From every direction")},
     {model::Directions::across, "across", phrase("Across the rail only")},
     {model::Directions::outward, "outward", phrase("Outward only")}}};

const Named down{"down", phrase("Downward at once"),
                 phrase("Force down on the guard at the same time; negative is up. Empty: none.")};

/// Along a rail the trade speaks of pounds a foot, or kilonewtons a metre; nobody of pounds an inch.
std::string shown_along_rail(double push_lb_per_ft, units::System system) {
    if (system == units::System::us) return fmt::format("{:.6g} plf", push_lb_per_ft);
    std::string text = shown(push_lb_per_ft / units::inches_per_foot, units::Kind::force_per_length, system);
    return text.replace(text.find(' '), std::string::npos, " kN/m");
}

std::optional<double> typed_along_rail(const std::string& text, units::System system) {
    if (const std::optional<double> bare = units::parse_number(text); bare && system == units::System::us) return bare;
    const std::optional<double> lb_per_in = typed(text, units::Kind::force_per_length, system);
    if (!lb_per_in) return std::nullopt;
    return *lb_per_in * units::inches_per_foot;
}

void push_along_rail(Form& form, double& push_lb_per_ft) {
    Field field =
        form.fresh({"push", phrase("Push along the rail"), phrase("Horizontal force on each length of the top rail.")},
                   FieldKind::quantity);
    field.quantity = units::Kind::force_per_length;
    field.value = shown_along_rail(push_lb_per_ft, form.system());
    form.add(std::move(field), [&push_lb_per_ft, system = form.system()](const std::string& text) -> Outcome {
        const std::optional<double> read = typed_along_rail(text, system);
        const char* const alone = system == units::System::us ? "plf" : "kN/m";
        if (!read) {
            return {phrase("Push along the rail takes {}; a number alone counts as {}.",
                           units::accepted(units::Kind::force_per_length), alone)};
        }
        if (!(*read > 0.0)) return {phrase("Push along the rail must be more than zero.")};
        push_lb_per_ft = *read;
        return {};
    });
}

void rail_taken(Form& form, double& spacing_ft) {
    Field field = form.fresh({"spacing", phrase("Rail taken by the post"),
                              phrase("Length of rail whose push this post takes: the spacing of posts.")},
                             FieldKind::quantity);
    field.value = shown(spacing_ft * units::inches_per_foot, units::Kind::length, form.system());
    form.add(std::move(field), [&spacing_ft, system = form.system()](const std::string& text) -> Outcome {
        const Reading<double> read =
            read_quantity(phrase("Rail taken by the post"), text, units::Kind::length, system, Range::positive);
        if (!read.value) return {read.refusal};
        spacing_ft = *read.value / units::inches_per_foot;
        return {};
    });
}

void concentrated_fields(Form& form, model::ConcentratedLoad& load) {
    form.at({"loads/concentrated", {model::PartKind::push}, phrase("Concentrated push")});
    form.quantity({"push", phrase("Push"), phrase("Horizontal force at the top of the guard.")}, load.push_lb,
                  units::Kind::force);
    form.zero_if_empty(down, load.down_lb, units::Kind::force, Range::any);
}

void line_fields(Form& form, model::LineLoad& load) {
    form.at({"loads/line", {model::PartKind::push}, phrase("Push along the rail")});
    push_along_rail(form, load.push_lb_per_ft);
    rail_taken(form, load.spacing_ft);
    form.zero_if_empty(down, load.down_lb, units::Kind::force, Range::any);
}

void user_fields(Form& form, model::UserLoad& load, std::size_t number) {
    form.at({fmt::format("loads/user[{}]", number), {model::PartKind::push}, phrase("Load {}", number)});
    form.required_text({"name", phrase("Name"), phrase("What the load is called in the results.")}, load.name);
    form.quantity({"push", phrase("Push"), phrase("Horizontal force; 0 where there is none.")}, load.push_lb,
                  units::Kind::force, Range::not_negative);
    form.zero_if_empty(down, load.down_lb, units::Kind::force, Range::any);
    form.optional_quantity(
        {"height", phrase("Height"), phrase("Of the push above the walking surface. Empty: the top of the guard.")},
        load.height_in, units::Kind::length);
    form.text({"source", phrase("Source"), phrase("Where the load comes from. Empty: specified by the user.")},
              load.source);
}

const std::array<Word<bool>, 2> wind_levels{{{false, "strength", phrase("Strength level: 0.6 of it under ASD")},
                                             {true, "service", phrase("Service level: 0.6 is in it")}}};
const model::WindLoad start_wind{20.0, false, std::nullopt, std::nullopt, std::nullopt, std::nullopt, true};

void wind_fields(Form& form, model::WindLoad& wind) {
    form.at({"loads/wind", {model::PartKind::push}, phrase("Wind on the infill")});
    form.quantity({"pressure", phrase("Pressure"), phrase("On the solid area, with every coefficient.")},
                  wind.pressure_psf, Kind::pressure);
    form.word({"level", phrase("Level"), phrase("What the pressure is for.")}, wind.service_level, wind_levels);
    form.optional_quantity({"area", phrase("Area"),
                            phrase("Solid area this post takes. Empty: height, tributary length and solid ratio.")},
                           wind.area_ft2, Kind::area);
    form.optional_quantity({"infill-height", phrase("Infill height"), phrase("Empty: the guard's height.")},
                           wind.infill_height_in, Kind::length);
    form.optional_factor(
        {"solid-ratio", phrase("Solid ratio"), phrase("Part of the infill's face that is solid. Empty: 1.")},
        wind.solid_ratio);
    form.optional_quantity({"centroid", phrase("Center of pressure"),
                            phrase("Above the walking surface. Empty: half the infill's height.")},
                           wind.centroid_in, Kind::length);
    form.yes_no({"with-live-load", phrase("With the guard's load"),
                 phrase("Whether wind and the guard's load act at once, in the standard's combination.")},
                wind.with_live_load);
}

/// A load is named by the detail where any is described; else the code's is assumed, and said to be.
void mark_stated(model::Loads& loads) { loads.stated = loads.concentrated || loads.line || !loads.user.empty(); }

template <class Load>
void load_presence(Form& form, const Named& name, model::Loads& loads, std::optional<Load>& load, const Load& start) {
    const std::size_t before = form.entries().size();
    form.presence(name, load, start);
    form.after(before, [&loads] { mark_stated(loads); });
}

const std::array<Word<model::Method>, 2> methods{
    {{model::Method::asd, "ASD", phrase("ASD: allowable stress design")},
     {model::Method::lrfd, "LRFD", phrase("LRFD: load and resistance factors")}}};
const std::array<Word<model::Moisture>, 3> moistures{
    {{model::Moisture::wet, "wet", phrase("Wet")},
     {model::Moisture::dry, "dry", phrase("Dry: at most 19 %, built and in service")},
     {model::Moisture::dried_in_service, "dried-in-service", phrase("Built wet, dry in service")}}};
const std::array<Word<model::Temperature>, 3> temperatures{
    {{model::Temperature::to_100F, "to-100F", phrase("To 100 °F (38 °C)")},
     {model::Temperature::to_125F, "to-125F", phrase("Above 100 °F, to 125 °F (52 °C)")},
     {model::Temperature::to_150F, "to-150F", phrase("Above 125 °F, to 150 °F (66 °C)")}}};
const std::array<Word<model::DeckingInShear>, 2> decking_in_shear{
    {{model::DeckingInShear::gap, "gap", phrase("Gap: the boards hold no shank")},
     {model::DeckingInShear::bearing, "bearing", phrase("Bearing: wood round the shank")}}};
const std::array<Word<model::PlateBehaviour>, 2> plates{
    {{model::PlateBehaviour::flexible, "flexible", phrase("Flexible: the plate bends")},
     {model::PlateBehaviour::rigid, "rigid", phrase("Rigid")}}};
const std::array<Word<model::PlateStrength>, 2> plate_strengths{
    {{model::PlateStrength::lower_bound, "lower-bound", phrase("Lower bound")},
     {model::PlateStrength::yield_line, "yield-line", phrase("Yield lines, less a tenth")}}};
const std::array<Word<model::BuildingCode>, 6> codes{{{model::BuildingCode::irc_2018, "IRC-2018", phrase("IRC 2018")},
                                                      {model::BuildingCode::irc_2021, "IRC-2021", phrase("IRC 2021")},
                                                      {model::BuildingCode::irc_2024, "IRC-2024", phrase("IRC 2024")},
                                                      {model::BuildingCode::ibc_2018, "IBC-2018", phrase("IBC 2018")},
                                                      {model::BuildingCode::ibc_2021, "IBC-2021", phrase("IBC 2021")},
                                                      {model::BuildingCode::ibc_2024, "IBC-2024", phrase("IBC 2024")}}};
const std::array<Word<model::TorsionWithShear>, 2> torsion_forms{
    {{model::TorsionWithShear::parabolic, "parabolic", phrase("Parabolic, on the shear strength")},
     {model::TorsionWithShear::linear_two_thirds, "linear-two-thirds", phrase("Linear, on two thirds of it")}}};
const std::array<Word<model::BearingStress>, 2> bearing_stresses{
    {{model::BearingStress::block, "block", phrase("Stress block about the resultant")},
     {model::BearingStress::peak, "peak", phrase("Elastic peak at the edge")}}};
const std::array<Word<model::MovementLimit>, 1> movement_limits{
    {{model::MovementLimit::astm_e985, "astm-e985", phrase("ASTM E985: a twelfth of the guard's height")}}};

const std::array<Word<model::TubeDiagonal>, 2> diagonals{
    {{model::TubeDiagonal::plastic, "plastic", phrase("Plastic moment in the push's own direction")},
     {model::TubeDiagonal::linear, "linear", phrase("Linear sum of both axes")}}};
const std::array<Word<model::StainlessBending>, 2> stainless_bendings{
    {{model::StainlessBending::plastic, "plastic", phrase("Plastic, compact walls")},
     {model::StainlessBending::first_yield, "first-yield", phrase("No more than first yield")}}};

const model::FixedStiffness start_stiffness{25000.0, 50000.0, "reason not yet stated"};

void method_fields(Form& form, model::Basis& basis) {
    form.word({"method", phrase("Method"), phrase("How loads and resistances are compared.")}, basis.method, methods);
    form.optional_factor(
        {"load-duration", phrase("Load duration factor"), phrase("CD, of ASD, from 0.9 to 1.6. Empty: 1.0.")},
        basis.load_duration);
    form.optional_factor(
        {"time-effect", phrase("Time effect factor"), phrase("Lambda, of LRFD, from 0.6 to 1.0. Empty: 0.8.")},
        basis.time_effect);
    form.optional_word({"code", phrase("Code"), phrase("Empty: IBC 2021.")}, basis.code, codes);
    form.optional_word({"movement-limit", phrase("Movement limit"),
                        phrase("Of the top of the guard, where a specification invokes one. Empty: none; a large "
                               "movement is a caution.")},
                       basis.movement_limit, movement_limits);
}

void metal_fields(Form& form, model::Basis& basis) {
    form.optional_word({"tube-diagonal", phrase("Tube bent on the diagonal"),
                        phrase("A compact square or rectangular steel tube. Empty: its plastic moment.")},
                       basis.tube_diagonal, diagonals);
    form.optional_word({"stainless-bending", phrase("Stainless post bending"),
                        phrase("A compact stainless section. Empty: its plastic moment.")},
                       basis.stainless_bending, stainless_bendings);
}

void wood_fields(Form& form, model::Basis& basis) {
    form.optional_word({"moisture", phrase("Moisture"), phrase("Of the wood. Empty: wet.")}, basis.moisture, moistures);
    form.optional_word(
        {"temperature", phrase("Temperature"), phrase("That the wood stays at for long. Empty: to 100 °F.")},
        basis.temperature, temperatures);
    form.optional_yes_no({"incised", phrase("Incised"),
                          phrase("Whether the wood is incised for its treatment. Empty: by species and treatment.")},
                         basis.incised);
    form.optional_word({"decking-in-shear", phrase("Decking in shear"),
                        phrase("Whether the boards count as wood round the shank. Empty: a gap.")},
                       basis.decking_in_shear, decking_in_shear);
    form.optional_word(
        {"torsion", phrase("Torsion with shear"), phrase("How the two act together in the framing. Empty: parabolic.")},
        basis.torsion, torsion_forms);
    form.optional_yes_no({"shrinkage-detailed", phrase("Detailed for shrinkage"),
                          phrase("Whether steel that holds fasteners more than 5 in apart across the grain is slotted "
                                 "or parted for the wood's shrinkage. Empty: it is not.")},
                         basis.shrinkage_detailed);
    form.optional_word({"bearing", phrase("Bearing on wood"),
                        phrase("Which pressure under the plate is held to the wood's. Empty: the stress block.")},
                       basis.bearing, bearing_stresses);
}

void stiffness_fields(Form& form, model::FixedStiffness& stiffness) {
    form.at({"basis/fixed-stiffness", {}, phrase("Fixed stiffness")});
    form.quantity({"bed", phrase("Bed"), phrase("Pressure under the plate for each length it sinks.")},
                  stiffness.bed_psi_per_in, Kind::bed_stiffness);
    form.quantity({"anchor", phrase("Anchor"), phrase("Pull of every anchor for each length it gives.")},
                  stiffness.anchor_lb_per_in, Kind::force_per_length);
    form.required_text({"reason", phrase("Reason"), phrase("Why these and not the computed ones.")}, stiffness.reason);
}

}  // namespace

void load_fields(Form& form, model::Loads& loads) {
    form.at({"loads", {model::PartKind::push}, phrase("Loads")});
    form.word({"directions", phrase("Directions"), phrase("From where the pushes come.")}, loads.directions,
              directions);
    load_presence(form,
                  {"concentrated", phrase("Concentrated push"),
                   phrase("Whether one is specified beside the code's 200 lb at the top of the guard, which is always "
                          "checked; begins as 200 lb.")},
                  loads, loads.concentrated, model::ConcentratedLoad{});
    load_presence(form,
                  {"line", phrase("Push along the rail"),
                   phrase("Whether one is specified; begins as 50 plf over 6 ft of rail.")},
                  loads, loads.line, model::LineLoad{50.0, 6.0, 0.0});
    const std::size_t before = form.entries().size();
    form.list(
        {"user-count", phrase("Number of other loads"),
         phrase("Each further load, by its name. One begins with 200 lb; a smaller number takes the last.")},
        loads.user.size(), {0, 20},
        [&loads] {
            loads.user.push_back(
                {fmt::format("Load {}", loads.user.size() + 1), 200.0, 0.0, std::nullopt, std::string()});
            return Phrase{};
        },
        [&loads] { loads.user.pop_back(); });
    form.after(before, [&loads] { mark_stated(loads); });
    form.presence({"wind", phrase("Wind on the infill"),
                   phrase("Whether wind is specified; begins as 20 psf over the guard's height.")},
                  loads.wind, start_wind);
    form.at({"loads/proof", {model::PartKind::push}, phrase("Proof test")});
    form.optional_quantity({"push", phrase("Push"), phrase("Outward at the top of the guard. Empty: none is checked.")},
                           loads.proof_push_lb, Kind::force);
    if (loads.wind) wind_fields(form, *loads.wind);
    if (loads.concentrated) concentrated_fields(form, *loads.concentrated);
    if (loads.line) line_fields(form, *loads.line);
    for (std::size_t index = 0; index < loads.user.size(); ++index) user_fields(form, loads.user[index], index + 1);
}

void basis_fields(Form& form, model::Basis& basis) {
    form.at({"basis", {}, phrase("Basis")});
    method_fields(form, basis);
    wood_fields(form, basis);
    metal_fields(form, basis);
    form.optional_word(
        {"plate", phrase("Plate taken as"), phrase("How the plate shares a push among its anchors. Empty: flexible.")},
        basis.plate, plates);
    form.optional_word({"plate-strength", phrase("Plate strength"),
                        phrase("What the verdict on plate bending rests on. Empty: a lower bound.")},
                       basis.plate_strength, plate_strengths);
    form.presence({"fixed", phrase("Stiffness fixed"),
                   phrase("Whether yours replaces the computed one and its range; begins as 25000 psi/in of bed "
                          "and 50000 lb/in an anchor, for you to replace, with the reason.")},
                  basis.stiffness, start_stiffness);
    if (basis.stiffness) stiffness_fields(form, *basis.stiffness);
}

}  // namespace toehold::editing
