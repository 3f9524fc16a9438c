// The anchors' tension and the plate's pressure bend a member vertically, horizontal forces across it laterally.
#include "catalog/resolve.h"
#include "checks/basis/wood_basis.h"
#include "checks/member/actions.h"
#include "resistance/wood/member_strength.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>
#include <vector>

namespace toehold::checks {
namespace {

using format::Citation;
using format::phrase;

/// Along a joist.
std::vector<double> support_places_in(const model::Framing& framing) {
    std::vector<double> places;
    for (const model::JoistSupport& support : framing.supports) places.push_back(support.at_in);
    return places;
}

/// Along a rim, of the joists fastened to it.
std::vector<double> joist_places_in(const CheckInput& input, std::size_t rim) {
    std::vector<double> places;
    if (!input.demand.framing) return places;
    const std::vector<model::Member> all = model::members(input.resolved.detail.framing);
    for (const demand::MemberSupport& support : input.demand.framing->supports) {
        if (support.kind == demand::MemberSupportKind::joist_to_rim && support.holder == rim)
            places.push_back(all.at(support.member).across_in);
    }
    return places;
}

std::vector<double> places_in(const CheckInput& input, const model::Member& member, std::size_t index) {
    switch (member.kind) {
        case model::MemberKind::block:
            return {};
        case model::MemberKind::joist:
            return support_places_in(input.resolved.detail.framing);
        case model::MemberKind::rim:
            break;
    }
    return joist_places_in(input, index);
}

/// Longest part of the member between neighbouring holds, or from the last of them to its end, in. Holds are a joist's
/// supports, and the joists fastened to a rim; a block, and a member held in fewer than two places, counts its whole
/// length. Under the guard's load alone, whose uplift presses the bottom edge, boards are not counted, nor are blocks
/// (NDS 2018 3.3.3, the conservative reading).
double unsupported_length_in(const CheckInput& input, std::size_t index) {
    const model::Member member = model::member(input.resolved.detail.framing, index);
    std::vector<double> places = places_in(input, member, index);
    if (places.size() < 2) return model::length_in(member);
    places.push_back(member.from_in);
    places.push_back(member.to_in);
    std::sort(places.begin(), places.end());
    double longest = 0.0;
    for (std::size_t i = 1; i < places.size(); ++i) longest = std::max(longest, places[i] - places[i - 1]);
    return longest;
}

/// Longest part of a joist beyond its last support, in. Under the deck's load the boards hold the compressed top edge
/// elsewhere (NDS 2018 3.3.3.3); over an overhang's support it is the bottom edge that is pressed.
double overhang_in(const CheckInput& input, std::size_t index) {
    const model::Member member = model::member(input.resolved.detail.framing, index);
    const std::vector<double> places = support_places_in(input.resolved.detail.framing);
    if (places.size() < 2) return model::length_in(member);
    const auto ends = std::minmax_element(places.begin(), places.end());
    return std::max({0.0, *ends.first - member.from_in, member.to_in - *ends.second});
}

/// One piece of the member.
struct Beam {
    double width_in = 0.0, depth_in = 0.0;
    double unsupported_in = 0.0;
    bool under_boards = false;  ///< the deck's load is on it, and its boards hold its top
    [[nodiscard]] bool on_edge() const { return depth_in >= width_in; }
    /// S about the axis across it, and about the upright one.
    [[nodiscard]] double vertical_in3() const { return resistance::section_modulus_in3(width_in, depth_in); }
    [[nodiscard]] double horizontal_in3() const { return resistance::section_modulus_in3(depth_in, width_in); }
};

/// What it may take about each axis; edgewise is the load on its narrow face.
struct Allowable {
    Adjusted edgewise, flatwise;
    double critical_psi = 0.0;
    double vertical_in3 = 0.0, horizontal_in3 = 0.0;  ///< of the beam
};

Allowable allowable(const Beam& beam, const catalog::LumberGrade& grade, const model::Basis& basis) {
    const double narrow_in = std::min(beam.width_in, beam.depth_in);
    const double wide_in = std::max(beam.width_in, beam.depth_in);
    Allowable result;
    result.vertical_in3 = beam.vertical_in3();
    result.horizontal_in3 = beam.horizontal_in3();
    result.edgewise = adjust_bending(grade, {narrow_in, wide_in, beam.unsupported_in}, basis);
    result.flatwise = adjust_bending(grade, {wide_in, narrow_in, 0.0}, basis);
    if (wide_in > narrow_in && beam.unsupported_in > 0.0) {
        const double slenderness = resistance::beam_slenderness(
            resistance::effective_length_in(beam.unsupported_in, wide_in), wide_in, narrow_in);
        result.critical_psi = resistance::critical_buckling_psi(adjust_modulus_min(grade, basis).value, slenderness);
    }
    return result;
}

const char* interaction(const Beam& beam) {
    if (beam.depth_in == beam.width_in || !(beam.unsupported_in > 0.0)) return "f_bv/F_b1' + f_bh/F_b2'";
    return beam.on_edge() ? "f_bv/F_b1' + f_bh/(F_b2' (1 - (f_bv/F_bE)^2))"
                          : "f_bh/F_b1' + f_bv/(F_b2' (1 - (f_bh/F_bE)^2))";
}

struct Bending {
    double vertical_psi = 0.0, horizontal_psi = 0.0;
    double ratio = 0.0;
};

Bending bending(const demand::MemberActions& share, const Beam& beam, const Allowable& allowed) {
    Bending result;
    result.vertical_psi = std::abs(share.vertical_moment_lb_in) / allowed.vertical_in3;
    result.horizontal_psi = std::abs(share.horizontal_moment_lb_in) / allowed.horizontal_in3;
    const double edgewise_psi = beam.on_edge() ? result.vertical_psi : result.horizontal_psi;
    const double flatwise_psi = beam.on_edge() ? result.horizontal_psi : result.vertical_psi;
    result.ratio = allowed.edgewise.value > 0.0
                       ? resistance::biaxial_bending_ratio({edgewise_psi, allowed.edgewise.value, flatwise_psi,
                                                            allowed.flatwise.value, allowed.critical_psi})
                       : std::numeric_limits<double>::infinity();
    return result;
}

void add_demand(CheckResult& result, const CheckInput& input, const demand::MemberActions& actions, const Beam& beam,
                const Bending& worst) {
    append(
        result.steps,
        {{"l_u",
          beam.under_boards ? phrase("longest length beyond the last support; elsewhere the deck boards hold the top")
                            : phrase("longest length between lateral supports, or beyond the last"),
          "from the plan", beam.unsupported_in, "in", "input", Origin::file},
         {"M_v", phrase("largest moment of the vertical forces"), vertical_statics(input),
          actions.vertical_moment_lb_in, "lb in", "demand", Origin::demanded},
         {"M_h", phrase("largest moment of the horizontal forces"), lateral_statics, actions.horizontal_moment_lb_in,
          "lb in", "demand", Origin::demanded},
         {"S_v", phrase("section modulus of one piece"), "b d^2/6", beam.vertical_in3(), "in3", ""},
         {"S_h", phrase("section modulus, lateral"), "d b^2/6", beam.horizontal_in3(), "in3", ""},
         {"f_bv", phrase("bending stress"), "share of M_v, over S_v", worst.vertical_psi, "psi", "NDS 2018 3.3.2"},
         {"f_bh", phrase("bending stress, lateral"), "share of M_h, over S_h", worst.horizontal_psi, "psi",
          "NDS 2018 3.3.2"}});
}

void add_allowable(std::vector<Step>& steps, const Adjusted& adjusted, const catalog::LumberGrade& grade,
                   const BentSection& section, const char* symbol, format::Phrase meaning) {
    steps.push_back(given("F_b", phrase("reference bending value"), reference_bending_psi(grade, section), "psi",
                          grade.engineered ? grade.source.text : "NDS Supplement 2018"));
    append(steps, adjusted.steps);
    steps.push_back(
        {symbol, std::move(meaning), "F_b times every factor", adjusted.value, "psi", "NDS 2018 Table 4.3.1"});
}

void too_slender(CheckResult& result, const Bending& bending, const Allowable& allowed) {
    result.demand = std::max(bending.vertical_psi, bending.horizontal_psi);
    result.unit = "psi";
    result.ratio = bending.ratio;
    result.status = Status::fails;
    result.note =
        allowed.edgewise.value > 0.0
            ? phrase(
                  "Buckles sideways: the bending stress reaches F_bE, {} ({}). Use a wider member or brace it "
                  "laterally.",
                  format::Quantity{allowed.critical_psi, "psi"}, Citation{"NDS 2018 3.9.2"})
            : phrase("Too slender to bend on edge: R_B exceeds 50 ({}). Use a wider member or brace it laterally.",
                     Citation{"NDS 2018 3.3.3.7"});
}

/// One way a member is loaded and held.
struct Way {
    Beam beam;
    Allowable allowed;
};

/// By the guard alone; and, of a joist, with the deck's load, under its boards where there are any.
std::vector<Way> ways_of(const CheckInput& input, const model::Member& member, std::size_t index) {
    const catalog::LumberGrade& grade = catalog::wood(input.resolved, index).grade;
    const model::Basis& basis = input.resolved.detail.basis;
    const Beam bare{model::ply_width_in(member), model::piece_depth_in(member), unsupported_length_in(input, index),
                    false};
    std::vector<Way> ways{{bare, allowable(bare, grade, basis)}};
    const bool loaded = !input.demand.framing->states.front().with_deck.empty();
    const bool boards = model::deck_boards(input.resolved.detail) != nullptr;
    if (!loaded || !boards || member.kind != model::MemberKind::joist || !member.length_stated) return ways;
    Beam under = bare;
    under.unsupported_in = overhang_in(input, index);
    under.under_boards = true;
    ways.push_back({under, allowable(under, grade, basis)});
    return ways;
}

/// Without a way of its own for the deck's load, the first carries it too.
const demand::MemberActions& actions_in(const CheckInput& input, const std::vector<Way>& ways, const Way& way,
                                        std::size_t state, std::size_t member) {
    const bool guard_alone = ways.size() > 1 && !way.beam.under_boards;
    return guard_alone ? input.demand.framing->states.at(state).members.at(member) : actions_of(input, state, member);
}

struct WorstBending {
    const Way* way = nullptr;
    std::size_t state = 0;
    Bending bending;
};

WorstBending worst_bending(const CheckInput& input, const std::vector<Way>& ways, const model::Member& member,
                           std::size_t index) {
    WorstBending worst;
    for (const Way& way : ways) {
        for (std::size_t state = 0; state < input.demand.states.size(); ++state) {
            const demand::MemberActions& actions = actions_in(input, ways, way, state, index);
            const Bending one = bending(share(actions, member), way.beam, way.allowed);
            if (worst.way == nullptr || one.ratio > worst.bending.ratio) worst = {&way, state, one};
        }
    }
    return worst;
}

CheckResult bending_of(const CheckInput& input, std::size_t index) {
    const model::Member member = model::member(input.resolved.detail.framing, index);
    const catalog::LumberGrade& grade = catalog::wood(input.resolved, index).grade;
    const std::vector<Way> ways = ways_of(input, member, index);
    const WorstBending worst = worst_bending(input, ways, member, index);
    const Beam& beam = worst.way->beam;
    const Allowable& allowed = worst.way->allowed;
    const demand::MemberActions& actions = actions_in(input, ways, *worst.way, worst.state, index);
    const Bending& governing = worst.bending;

    CheckResult result = member_result(input, member, worst.state, phrase("bending"));
    result.steps = plies_steps(member);
    if (!member.length_stated) {
        lacks_evidence(result,
                       phrase("The ends of the joists are not specified, so the unsupported length is not known. Give "
                              "`from` and `to` of the joists."));
        return result;
    }
    add_demand(result, input, actions, beam, governing);
    const double narrow_in = std::min(beam.width_in, beam.depth_in);
    const double wide_in = std::max(beam.width_in, beam.depth_in);
    add_allowable(result.steps, allowed.edgewise, grade, {narrow_in, wide_in, 0.0}, "F_b1'",
                  phrase("allowable, load on the narrow face"));
    add_allowable(result.steps, allowed.flatwise, grade, {wide_in, narrow_in, 0.0}, "F_b2'",
                  phrase("allowable, load on the wide face"));
    if (governing.ratio > std::numeric_limits<double>::max()) {
        too_slender(result, governing, allowed);
        return result;
    }
    if (allowed.critical_psi > 0.0) {
        result.steps.push_back({"F_bE", phrase("critical stress of lateral buckling on edge"), "1.20 E_min'/R_B^2",
                                allowed.critical_psi, "psi", "NDS 2018 3.3.3.8"});
    }
    result.steps.push_back({"R", phrase("combined"), interaction(beam), governing.ratio, "", "NDS 2018 Eq. 3.9-3"});
    result.demand = governing.ratio;
    result.capacity = 1.0;
    result.note = plies_note(member);
    if (beam.under_boards)
        result.note = sentences(result.note, phrase("With the deck's load, the boards holding the joist's top edge."));
    conclude(result);
    return result;
}

std::vector<CheckResult> member_bending(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (const std::size_t index : loaded_members(input)) results.push_back(bending_of(input, index));
    return results;
}

const RegisterCheck registered{
    {"member-bending", phrase("Framing bending"), "NDS 2018 3.9.2",
     phrase("Each loaded block, joist and rim in vertical and lateral bending from the anchors and "
            "the plate."),
     member_bending}};

}  // namespace
}  // namespace toehold::checks
