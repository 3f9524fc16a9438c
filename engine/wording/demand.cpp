#include "wording/demand.h"

#include "demand/hardware_demand.h"
#include "demand/loads/code_loads.h"
#include "format/figures.h"
#include "model/mount_words.h"
#include "review/review.h"
#include "wording/verdict.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace toehold::wording {
namespace {

using demand::AnchorEnvelope;
using format::Dimension;
using format::Phrase;
using format::phrase;
using format::Quantity;

constexpr double in_percent = 100.0;

std::string degrees(double direction_rad) { return format::degrees_text(format::degrees(direction_rad)); }

/// The push, its height over the place the post turns about and the arm from there, as a reviewer multiplies them.
Phrase hand_couple(const demand::HandCouple& couple) {
    constexpr double proof_lb = demand::proof_factor * demand::code_concentrated_lb;
    return phrase(
        "By hand: {} at {} over an arm of {} draws the fasteners and ties at that height with {} together (push toward "
        "{} deg); a proof push of {} would with {}.",
        Quantity{couple.push_lb, "lb"}, Dimension{couple.height_in}, Dimension{couple.arm_in},
        Quantity{couple.tension_lb, "lb"}, degrees(couple.direction_rad), Quantity{proof_lb, "lb"},
        Quantity{couple.tension_lb * proof_lb / couple.push_lb, "lb"});
}

using HandOf = double (*)(const AnchorEnvelope&);

/// The anchor on which the hand calculation falls shortest; nothing where it reaches within a tenth.
const AnchorEnvelope* farthest_missed(const std::vector<AnchorEnvelope>& all, HandOf hand) {
    constexpr double worth_saying = 1.1;
    const auto missed = [hand](const AnchorEnvelope& envelope) { return envelope.tension_lb - hand(envelope); };
    const auto worst = std::max_element(all.begin(), all.end(),
                                        [&missed](const auto& a, const auto& b) { return missed(a) < missed(b); });
    if (worst == all.end() || worst->tension_lb <= worth_saying * hand(*worst)) return nullptr;
    return &*worst;
}

/// Rounded to three digits: more would claim to know the stiffness of wood.
double three_digits(double value) {
    if (!(value > 0.0)) return value;
    const double unit = std::pow(10.0, std::floor(std::log10(value)) - 2.0);
    return std::round(value / unit) * unit;
}

void add_bending(std::vector<Phrase>& sentences, const demand::Bending& bending) {
    const std::string toward = degrees(bending.prying_direction_rad);
    sentences.push_back(
        bending.prying >= 0.0
            ? phrase("Prying adds {:.1f}% to the sum of the tensions where that sum is largest (push toward "
                     "{} deg).",
                     in_percent * bending.prying, toward)
            : phrase("The sum of the tensions is {:.1f}% below a rigid base's where it is largest (push "
                     "toward {} deg).",
                     -in_percent * bending.prying, toward));
    if (bending.softest_lb_in_per_rad <= 0.0) return;
    sentences.push_back(phrase(
        "Rotational stiffness at the foot of the post in its softest direction: {} per radian; on a rigid base: {}.",
        Quantity{three_digits(bending.softest_lb_in_per_rad), "lb in"},
        Quantity{three_digits(bending.rigid_softest_lb_in_per_rad), "lb in"}));
}

}  // namespace

Phrase anchor_legend(const review::Review& review, const format::Locale& locale) {
    const model::MountWords words = model::mount_words(review.resolved.detail);
    return phrase(
        "Forces in {}, places in {}, directions in deg from +x counterclockwise (90 is outward). TENSION USED is the "
        "largest over loads, directions and the range of stiffness; the checks use it. Least tension is the other end "
        "of that range. Flexible, nominal: {}, with stiffness as computed. Rigid, nominal: the same with {}. Hand: {}. "
        "Proof tension: under {} times the code's {} at the top of the guard.",
        format::in_system(0.0, "lb", locale.system).unit, format::in_system(0.0, "in", locale.system).unit, words.bends,
        words.rigid, words.hand, format::number_text(demand::proof_factor),
        Quantity{demand::code_concentrated_lb, "lb"});
}

std::vector<Phrase> hand_shortfalls(const review::Review& review) {
    std::vector<Phrase> sentences;
    if (!review.demand) return sentences;
    const std::vector<AnchorEnvelope>& all = review.demand->anchors;
    const auto id_of = [&](const AnchorEnvelope& anchor) {
        return review.resolved.anchors.at(static_cast<std::size_t>(&anchor - all.data())).id;
    };
    if (const AnchorEnvelope* missed = farthest_missed(all, [](const AnchorEnvelope& a) { return a.hand_edge_lb; })) {
        sentences.push_back(phrase(
            "The hand calculation with {} gives {} on anchor {}: {} less than the {} found.",
            model::mount_words(review.resolved.detail).hand_arm, Quantity{missed->hand_edge_lb, "lb"}, id_of(*missed),
            Quantity{missed->tension_lb - missed->hand_edge_lb, "lb"}, Quantity{missed->tension_lb, "lb"}));
    }
    if (const AnchorEnvelope* missed = farthest_missed(all, [](const AnchorEnvelope& a) { return a.hand_anchor_lb; })) {
        sentences.push_back(
            phrase("The hand calculation with the arm to the opposite row gives {} on anchor {}: {} less "
                   "than the {} found.",
                   Quantity{missed->hand_anchor_lb, "lb"}, id_of(*missed),
                   Quantity{missed->tension_lb - missed->hand_anchor_lb, "lb"}, Quantity{missed->tension_lb, "lb"}));
    }
    return sentences;
}

std::vector<Phrase> base_behavior(const review::Review& review) {
    std::vector<Phrase> sentences;
    if (!review.demand) return sentences;
    const demand::Demand& demand = *review.demand;
    for (const demand::HandCouple& couple : demand::hand_couples(demand)) sentences.push_back(hand_couple(couple));
    if (demand.bending) add_bending(sentences, *demand.bending);
    if (Phrase framing = framing_flexibility(review.facts); !framing.empty()) sentences.push_back(std::move(framing));
    if (Phrase proof = proof_factor(review); !proof.empty()) sentences.push_back(std::move(proof));
    if (demand.states.empty()) return sentences;
    const demand::State& state = demand.states.at(demand.peak_bearing_state);
    double area_in2 = 0.0;
    for (const demand::SupportForce& support : state.supports) area_in2 += support.contact_area_in2;
    sentences.push_back(phrase("Largest bearing pressure: {}, on {} of contact, push toward {} deg.",
                               Quantity{demand.peak_bearing_psi, "psi"}, Quantity{area_in2, "in2"},
                               degrees(state.direction_rad)));
    return sentences;
}

Phrase proof_factor(const review::Review& review) {
    if (!review.facts.proof_factor) return {};
    const review::ProofFactor& proof = *review.facts.proof_factor;
    return phrase(
        "Proof factor: {} times the code's {} at the top of the guard, {}, brings the first strength to its "
        "allowable limit ({}, {}).",
        format::number_text(std::round(100.0 * proof.multiple) / 100.0), Quantity{proof.concentrated_lb, "lb"},
        Quantity{proof.multiple * proof.concentrated_lb, "lb"}, proof.title, model::part_name(proof.part));
}

Phrase load_case(const demand::LoadCase& load, const model::BaseDetail& detail) {
    const Phrase datum = model::mount_words(detail).datum;
    Phrase line = phrase("{}: push {}, down {}, {} above {}", load.name, Quantity{load.push_lb, "lb"},
                         Quantity{load.down_lb, "lb"}, Dimension{load.height_in}, datum);
    if (load.wind_lb != 0.0) {
        line = load.push_lb != 0.0 ? phrase("{}; {} of wind across the rail, {} above it", std::move(line),
                                            Quantity{load.wind_lb, "lb"}, Dimension{load.wind_height_in})
                                   : phrase("{}: {} across the rail, {} above {}", load.name,
                                            Quantity{load.wind_lb, "lb"}, Dimension{load.wind_height_in}, datum);
    }
    if (load.covered_by) line = phrase("{}; not solved, a larger push at the same height covers it", std::move(line));
    if (load.wind_lb == 0.0 && load.load_factor != 1.0)
        line = phrase("{}, load factor {} included", std::move(line), format::number_text(load.load_factor));
    return load.source.empty() ? line : phrase("{} [{}]", std::move(line), load.source);
}

std::vector<Phrase> stiffness_range(const demand::Demand& demand) {
    std::vector<Phrase> combinations;
    for (const demand::StiffnessScenario& one : demand.scenarios) {
        const std::string bed = format::number_text(one.bed), anchors = format::number_text(one.anchors);
        combinations.push_back(one.flexible_framing ? phrase("bed x {}, anchors x {}, flexible framing", bed, anchors)
                                                    : phrase("bed x {}, anchors x {}", bed, anchors));
    }
    return combinations;
}

std::vector<Phrase> accuracy(const demand::Proof& proof) {
    std::vector<Phrase> sentences{
        phrase("equilibrium of {} solves: relative residual of force {}, of moment {}, of contact {}", proof.solves,
               Quantity{proof.force_residual, ""}, Quantity{proof.moment_residual, ""},
               Quantity{proof.complementarity_residual, ""})};
    if (!proof.plate) return sentences;
    sentences.push_back(phrase(
        "flexible base of {} unknowns, envelope in a space of {}: the largest tension is within {:.2g}% of a finer "
        "mesh's and within {:.2g}% of the full mesh's",
        proof.plate->unknowns, proof.plate->reduced_unknowns, in_percent * proof.plate->mesh_error,
        in_percent * proof.plate->reduction_error));
    return sentences;
}

namespace {

Phrase stub_words(const model::Stub& stub, bool round) {
    const Dimension width{stub.width_in}, depth{stub.depth_in}, height{stub.height_in};
    if (stub.wall_in > 0.0) {
        return round ? phrase("tube stub {}, wall {}, {} high", width, Dimension{stub.wall_in}, height)
                     : phrase("tube stub {} x {}, wall {}, {} high", width, depth, Dimension{stub.wall_in}, height);
    }
    return round ? phrase("solid stub {}, {} high", width, height)
                 : phrase("solid stub {} x {}, {} high", width, depth, height);
}

Phrase over_stub(Phrase tube, const std::optional<model::Stub>& stub, bool round) {
    return stub ? phrase("{} over a {}", std::move(tube), stub_words(*stub, round)) : tube;
}

}  // namespace

Phrase post(const model::Post& post) {
    if (const auto* tube = std::get_if<model::RectangularTube>(&post)) {
        return over_stub(phrase("tube {} x {}, wall {}", Dimension{tube->width_in}, Dimension{tube->depth_in},
                                Dimension{tube->wall_in}),
                         tube->stub, false);
    }
    if (const auto* tube = std::get_if<model::RoundTube>(&post))
        return over_stub(phrase("round tube {}, wall {}", Dimension{tube->diameter_in}, Dimension{tube->wall_in}),
                         tube->stub, true);
    if (const auto* bar = std::get_if<model::SolidBar>(&post)) {
        return bar->round ? phrase("round bar {}", Dimension{bar->width_in})
                          : phrase("bar {} x {}", Dimension{bar->width_in}, Dimension{bar->depth_in});
    }
    if (const auto* bars = std::get_if<model::TwinBars>(&post)) {
        return phrase("two bars {} x {}, {} apart", Dimension{bars->width_in}, Dimension{bars->depth_in},
                      Dimension{bars->gap_in});
    }
    const auto& wood = std::get<model::WoodPost>(post);
    if (!model::is_described(wood.shoe))
        return phrase("wood {} x {}", Dimension{wood.width_in}, Dimension{wood.depth_in});
    return phrase("wood {} x {} in a shoe", Dimension{wood.width_in}, Dimension{wood.depth_in});
}

Phrase basis(const model::Basis& basis) {
    const std::string code = model::edition(model::building_code(basis));
    return basis.method == model::Method::asd
               ? phrase("ASD, C_D {}, {}", format::number_text(model::load_duration(basis)), code)
               : phrase("LRFD, lambda {}, {}", format::number_text(model::time_effect(basis)), code);
}

}  // namespace toehold::wording
