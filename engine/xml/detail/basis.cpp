#include "xml/detail/basis.h"

#include "xml/detail/parts.h"
#include "xml/document/strict_document.h"

#include <tinyxml2.h>

#include <array>
#include <set>

namespace toehold::xml {
namespace {

using units::Kind;

constexpr std::array<Word<model::Method>, 2> methods{{{"ASD", model::Method::asd}, {"LRFD", model::Method::lrfd}}};
constexpr std::array<Word<model::Moisture>, 3> moistures{{{"wet", model::Moisture::wet},
                                                          {"dry", model::Moisture::dry},
                                                          {"dried-in-service", model::Moisture::dried_in_service}}};
constexpr std::array<Word<model::Temperature>, 3> temperatures{{{"to-100F", model::Temperature::to_100F},
                                                                {"to-125F", model::Temperature::to_125F},
                                                                {"to-150F", model::Temperature::to_150F}}};
constexpr std::array<Word<model::DeckingInShear>, 2> decking_in_shear{
    {{"gap", model::DeckingInShear::gap}, {"bearing", model::DeckingInShear::bearing}}};
constexpr std::array<Word<model::PlateBehaviour>, 2> plates{
    {{"flexible", model::PlateBehaviour::flexible}, {"rigid", model::PlateBehaviour::rigid}}};
constexpr std::array<Word<model::PlateStrength>, 2> plate_strengths{
    {{"lower-bound", model::PlateStrength::lower_bound}, {"yield-line", model::PlateStrength::yield_line}}};
constexpr std::array<Word<model::BuildingCode>, 6> codes{{{"IRC-2018", model::BuildingCode::irc_2018},
                                                          {"IRC-2021", model::BuildingCode::irc_2021},
                                                          {"IRC-2024", model::BuildingCode::irc_2024},
                                                          {"IBC-2018", model::BuildingCode::ibc_2018},
                                                          {"IBC-2021", model::BuildingCode::ibc_2021},
                                                          {"IBC-2024", model::BuildingCode::ibc_2024}}};

constexpr std::array<Word<model::TubeDiagonal>, 2> diagonals{
    {{"plastic", model::TubeDiagonal::plastic}, {"linear", model::TubeDiagonal::linear}}};
constexpr std::array<Word<model::StainlessBending>, 2> stainless{
    {{"plastic", model::StainlessBending::plastic}, {"first-yield", model::StainlessBending::first_yield}}};
constexpr std::array<Word<model::TorsionWithShear>, 2> torsion_forms{
    {{"parabolic", model::TorsionWithShear::parabolic},
     {"linear-two-thirds", model::TorsionWithShear::linear_two_thirds}}};
constexpr std::array<Word<model::BearingStress>, 2> bearing_stresses{
    {{"block", model::BearingStress::block}, {"peak", model::BearingStress::peak}}};
constexpr std::array<Word<model::MovementLimit>, 1> movement_limits{{{"astm-e985", model::MovementLimit::astm_e985}}};

model::FixedStiffness read_stiffness(ElementReader& reader) {
    model::FixedStiffness stiffness;
    stiffness.bed_psi_per_in = reader.quantity("bed", Kind::bed_stiffness, Sign::positive);
    stiffness.anchor_lb_per_in = reader.quantity("anchor", Kind::force_per_length, Sign::positive);
    stiffness.reason = reader.text("reason");
    return stiffness;
}

Element stiffness_element(const model::FixedStiffness& stiffness) {
    Element element("fixed-stiffness");
    element.quantity("bed", stiffness.bed_psi_per_in, Kind::bed_stiffness);
    element.quantity("anchor", stiffness.anchor_lb_per_in, Kind::force_per_length);
    return element.text("reason", stiffness.reason);
}

template <class Value>
void write_choice(Element& element, std::string_view attribute, const std::optional<Value>& value,
                  std::span<const Word<Value>> words) {
    if (value) element.text(attribute, word_for<Value>(*value, words));
}

void write_number(Element& element, std::string_view attribute, std::optional<double> value) {
    if (value) element.text(attribute, exact_number(*value));
}

/// Anything else would not stand as a name in the element the reader is given.
bool may_be_a_name(const std::string& text) {
    return !text.empty() && text.find_first_not_of("abcdefghijklmnopqrstuvwxyz-") == std::string::npos &&
           text.front() != '-';
}

void set(Element& element, const BasisSetting& setting) {
    std::erase_if(element.attributes, [&](const auto& attribute) { return attribute.first == setting.attribute; });
    element.optional_text(setting.attribute, setting.value);
}

model::Problem problem(const BasisSetting& setting, const format::Phrase& message) {
    return {{}, 0, "basis", format::verbatim(setting.attribute), {}, message};
}

model::Problems apply(Element& element, const std::vector<BasisSetting>& settings) {
    model::Problems problems;
    std::set<std::string> seen;
    for (const BasisSetting& setting : settings) {
        if (!may_be_a_name(setting.attribute)) {
            problems.push_back(problem(setting, format::phrase("<{}> has no attribute of this name", "basis")));
        } else if (!seen.insert(setting.attribute).second) {
            problems.push_back(problem(setting, format::phrase("this attribute is set twice")));
        } else {
            set(element, setting);
        }
    }
    return problems;
}

}  // namespace

model::Basis read_basis(ElementReader& reader) {
    model::Basis basis;
    basis.method = reader.optional_choice<model::Method>("method", methods).value_or(basis.method);
    basis.load_duration = reader.optional_number("load-duration", Sign::positive);
    basis.time_effect = reader.optional_number("time-effect", Sign::positive);
    basis.moisture = reader.optional_choice<model::Moisture>("moisture", moistures);
    basis.temperature = reader.optional_choice<model::Temperature>("temperature", temperatures);
    basis.incised = reader.optional_yes_no("incised");
    basis.decking_in_shear = reader.optional_choice<model::DeckingInShear>("decking-in-shear", decking_in_shear);
    basis.plate = reader.optional_choice<model::PlateBehaviour>("plate", plates);
    basis.plate_strength = reader.optional_choice<model::PlateStrength>("plate-strength", plate_strengths);
    basis.code = reader.optional_choice<model::BuildingCode>("code", codes);
    basis.movement_limit = reader.optional_choice<model::MovementLimit>("movement-limit", movement_limits);
    basis.tube_diagonal = reader.optional_choice<model::TubeDiagonal>("tube-diagonal", diagonals);
    basis.stainless_bending = reader.optional_choice<model::StainlessBending>("stainless-bending", stainless);
    basis.torsion = reader.optional_choice<model::TorsionWithShear>("torsion", torsion_forms);
    basis.bearing = reader.optional_choice<model::BearingStress>("bearing", bearing_stresses);
    basis.shrinkage_detailed = reader.optional_yes_no("shrinkage-detailed");
    if (std::optional<ElementReader> item = reader.optional_child("fixed-stiffness")) {
        basis.stiffness = read_stiffness(*item);
    }
    return basis;
}

Element basis_element(const model::Basis& basis) {
    Element element("basis");
    element.text("method", word_for<model::Method>(basis.method, methods));
    write_number(element, "load-duration", basis.load_duration);
    write_number(element, "time-effect", basis.time_effect);
    write_choice<model::Moisture>(element, "moisture", basis.moisture, moistures);
    write_choice<model::Temperature>(element, "temperature", basis.temperature, temperatures);
    if (basis.incised) element.yes_no("incised", *basis.incised);
    write_choice<model::DeckingInShear>(element, "decking-in-shear", basis.decking_in_shear, decking_in_shear);
    write_choice<model::PlateBehaviour>(element, "plate", basis.plate, plates);
    write_choice<model::PlateStrength>(element, "plate-strength", basis.plate_strength, plate_strengths);
    write_choice<model::BuildingCode>(element, "code", basis.code, codes);
    write_choice<model::MovementLimit>(element, "movement-limit", basis.movement_limit, movement_limits);
    write_choice<model::TubeDiagonal>(element, "tube-diagonal", basis.tube_diagonal, diagonals);
    write_choice<model::StainlessBending>(element, "stainless-bending", basis.stainless_bending, stainless);
    write_choice<model::TorsionWithShear>(element, "torsion", basis.torsion, torsion_forms);
    write_choice<model::BearingStress>(element, "bearing", basis.bearing, bearing_stresses);
    if (basis.shrinkage_detailed) element.yes_no("shrinkage-detailed", *basis.shrinkage_detailed);
    if (basis.stiffness) element.child(stiffness_element(*basis.stiffness));
    return element;
}

BasisRead change_basis(const model::Basis& basis, const std::vector<BasisSetting>& settings) {
    Element element = basis_element(basis);
    BasisRead result;
    result.problems = apply(element, settings);
    if (!result.problems.empty()) return result;
    const StrictDocument document = parse_strictly(document_text(element));
    Reading reading{document.problems, {}};
    if (document.root != nullptr) {
        ElementReader reader(*document.root, "basis", reading);
        result.basis = read_basis(reader);
    }
    result.problems = std::move(reading.problems);
    // The line is that of a text nobody wrote.
    for (model::Problem& one : result.problems) one.line = 0;
    if (!result.problems.empty()) result.basis.reset();
    return result;
}

}  // namespace toehold::xml
