#include "editing/fields/groups.h"
#include "editing/words.h"

#include <array>

namespace toehold::editing {
namespace {

using units::Kind;

constexpr std::array<Word<model::Method>, 2> methods{
    {{model::Method::asd, "ASD", TOEHOLD_MARK("ASD: allowable stress design")},
     {model::Method::lrfd, "LRFD", TOEHOLD_MARK("LRFD: load and resistance factors")}}};
constexpr std::array<Word<model::Moisture>, 3> moistures{
    {{model::Moisture::wet, "wet", TOEHOLD_MARK("Wet")},
     {model::Moisture::dry, "dry", TOEHOLD_MARK("Dry: at most 19 %, built and in service")},
     {model::Moisture::dried_in_service, "dried-in-service", TOEHOLD_MARK("Built wet, dry in service")}}};
constexpr std::array<Word<model::Temperature>, 3> temperatures{
    {{model::Temperature::to_100F, "to-100F", TOEHOLD_MARK("To 100 F (38 C)")},
     {model::Temperature::to_125F, "to-125F", TOEHOLD_MARK("Above 100 F, to 125 F (52 C)")},
     {model::Temperature::to_150F, "to-150F", TOEHOLD_MARK("Above 125 F, to 150 F (66 C)")}}};
constexpr std::array<Word<model::DeckingInShear>, 2> decking_in_shear{
    {{model::DeckingInShear::gap, "gap", TOEHOLD_MARK("Gap: the boards hold no shank")},
     {model::DeckingInShear::bearing, "bearing", TOEHOLD_MARK("Bearing: wood round the shank")}}};
constexpr std::array<Word<model::PlateBehaviour>, 2> plates{
    {{model::PlateBehaviour::flexible, "flexible", TOEHOLD_MARK("Flexible: the plate bends")},
     {model::PlateBehaviour::rigid, "rigid", TOEHOLD_MARK("Rigid")}}};
constexpr std::array<Word<model::BuildingCode>, 2> codes{
    {{model::BuildingCode::irc_2021, "IRC-2021", TOEHOLD_MARK("IRC 2021")},
     {model::BuildingCode::ibc_2021, "IBC-2021", TOEHOLD_MARK("IBC 2021")}}};

const model::FixedStiffness start_stiffness{25000.0, 50000.0, "reason not yet stated"};

void method_fields(Form& form, model::Basis& basis) {
    form.word({"method", TOEHOLD_MARK("Method"), TOEHOLD_MARK("How loads and resistances are compared.")}, basis.method,
              methods);
    form.optional_factor({"load-duration", TOEHOLD_MARK("Load duration factor"),
                          TOEHOLD_MARK("CD, of ASD, from 0.9 to 1.6. Empty: 1.0.")},
                         basis.load_duration);
    form.optional_factor({"time-effect", TOEHOLD_MARK("Time effect factor"),
                          TOEHOLD_MARK("Lambda, of LRFD, from 0.6 to 1.0. Empty: 0.8.")},
                         basis.time_effect);
    form.optional_word({"code", TOEHOLD_MARK("Code"), TOEHOLD_MARK("Empty: IBC 2021.")}, basis.code, codes);
}

void wood_fields(Form& form, model::Basis& basis) {
    form.optional_word({"moisture", TOEHOLD_MARK("Moisture"), TOEHOLD_MARK("Of the wood. Empty: wet.")}, basis.moisture,
                       moistures);
    form.optional_word(
        {"temperature", TOEHOLD_MARK("Temperature"), TOEHOLD_MARK("That the wood stays at for long. Empty: to 100 F.")},
        basis.temperature, temperatures);
    form.optional_yes_no({"incised", TOEHOLD_MARK("Incised"),
                          TOEHOLD_MARK("Whether the wood is incised for its treatment. Empty: it is.")},
                         basis.incised);
    form.optional_word({"decking-in-shear", TOEHOLD_MARK("Decking in shear"),
                        TOEHOLD_MARK("Whether the boards count as wood round the shank. Empty: a gap.")},
                       basis.decking_in_shear, decking_in_shear);
}

void stiffness_fields(Form& form, model::FixedStiffness& stiffness) {
    form.at({"basis/fixed-stiffness", "", TOEHOLD_MARK("Fixed stiffness")});
    form.quantity({"bed", TOEHOLD_MARK("Bed"), TOEHOLD_MARK("Pressure under the plate for each length it sinks.")},
                  stiffness.bed_psi_per_in, Kind::bed_stiffness);
    form.quantity({"anchor", TOEHOLD_MARK("Anchor"), TOEHOLD_MARK("Pull of every anchor for each length it gives.")},
                  stiffness.anchor_lb_per_in, Kind::force_per_length);
    form.required_text({"reason", TOEHOLD_MARK("Reason"), TOEHOLD_MARK("Why these and not the computed ones.")},
                       stiffness.reason);
}

}  // namespace

void basis_fields(Form& form, model::Basis& basis) {
    form.at({"basis", "", TOEHOLD_MARK("Basis")});
    method_fields(form, basis);
    wood_fields(form, basis);
    form.optional_word({"plate", TOEHOLD_MARK("Plate taken as"),
                        TOEHOLD_MARK("How the plate shares a push among its anchors. Empty: flexible.")},
                       basis.plate, plates);
    form.presence({"fixed", TOEHOLD_MARK("Stiffness fixed"),
                   TOEHOLD_MARK("Whether yours replaces the computed one and its range; begins as 25000 psi/in of bed "
                                "and 50000 lb/in an anchor, for you to replace, with the reason.")},
                  basis.stiffness, start_stiffness);
    if (basis.stiffness) stiffness_fields(form, *basis.stiffness);
}

}  // namespace toehold::editing
