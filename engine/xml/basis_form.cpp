#include "xml/basis_form.h"

#include <array>

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
constexpr std::array<Word<model::BuildingCode>, 2> codes{
    {{"IRC-2021", model::BuildingCode::irc_2021}, {"IBC-2021", model::BuildingCode::ibc_2021}}};

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
    basis.code = reader.optional_choice<model::BuildingCode>("code", codes);
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
    write_choice<model::BuildingCode>(element, "code", basis.code, codes);
    if (basis.stiffness) element.child(stiffness_element(*basis.stiffness));
    return element;
}

}  // namespace toehold::xml
