// The built guard beside the computed one, and beside guards that others tested.
#include "resistance/ultimate/guard_tests.h"
#include "resistance/ultimate/withdrawal.h"
#include "resistance/wood/connection_factors.h"
#include "study/proof_load/movement.h"
#include "wording/proof_load.h"

#include <cmath>

namespace toehold::wording {
namespace {

namespace ultimate = resistance::ultimate;
using format::Phrase;
using format::phrase;
using format::Quantity;
using study::Agreement;

/// To 0.01 in: no gauge on a deck reads more.
Quantity inches(double value) {
    constexpr double step = 0.01;
    return {step * std::round(value / step), "in"};
}
Quantity pounds(double value) { return {value, "lb"}; }
/// To a thousand: readings tell no more.
Quantity turning(double value) {
    constexpr double step = 1000.0;
    return {step * std::round(value / step), "lb-in/rad"};
}

Phrase agreement(const study::ComputedMovement& computed, const study::Compared& compared) {
    constexpr double for_lb = 100.0;
    const double moved = for_lb / compared.measured.line.stiffness;
    const double soft = for_lb * computed.soft.total(), stiff = for_lb * computed.stiff.total();
    switch (compared.agreement) {
        case Agreement::agrees:
            return phrase("AGREES: the built guard moves {} for {}, computed {} to {}.", inches(moved), pounds(for_lb),
                          inches(stiff), inches(soft));
        case Agreement::softer:
            return phrase(
                "SOFTER: the built guard moves {} for {}, {:.2f} times the softest computed ({} to {}). Look for loose "
                "anchors, missing blocks or a gap under the plate.",
                inches(moved), pounds(for_lb), compared.times, inches(stiff), inches(soft));
        case Agreement::stiffer:
            break;
    }
    return phrase(
        "STIFFER: the built guard moves {} for {}, {:.2f} times the stiffest computed ({} to {}). Look for a rail that "
        "takes part of the push, or a gauge that moved along.",
        inches(moved), pounds(for_lb), compared.times, inches(stiff), inches(soft));
}

Phrase implied(const study::ComputedMovement& computed, const study::Compared& compared) {
    if (!compared.rotational_stiffness)
        return phrase("It moves no more than the post alone should: no stiffness of the base can be given.");
    return phrase("Implied stiffness of base and framing against rotation: {}; computed {} to {}.",
                  turning(*compared.rotational_stiffness), turning(computed.rotational_stiffness(computed.soft)),
                  turning(computed.rotational_stiffness(computed.stiff)));
}

Phrase test_sentence(const ultimate::GuardPostTest& test) {
    const auto specimens = static_cast<long long>(test.specimens);
    if (test.fastening == ultimate::PostFastening::lag_screws)
        return phrase("Lag screws into the band, {} posts: {} on the mean, {} to {}; the screws came out.", specimens,
                      pounds(test.mean_lb), pounds(test.least_lb), pounds(test.most_lb));
    return phrase(
        "Bolts through the band, {} posts: {} on the mean, {} to {}; the band came off the joists' ends. {} of "
        "movement at 200 lb.",
        specimens, pounds(test.mean_lb), pounds(test.least_lb), pounds(test.most_lb),
        inches(test.movement_at_200_lb_in.value_or(0.0)));
}

}  // namespace

std::vector<Phrase> compared(const study::ComputedMovement& computed, const study::Compared& compared) {
    std::vector<Phrase> all{agreement(computed, compared), implied(computed, compared)};
    if (compared.measured.with_play)
        all.push_back(phrase("Play before the guard resists, by the line through the readings: {}.",
                             inches(compared.measured.line.play)));
    if (computed.play_in > 0.0)
        all.push_back(phrase("Computed play of the post in what holds it: {}, beside the movement above.",
                             inches(computed.play_in)));
    if (!computed.framing_lacks.empty()) all.push_back(computed.framing_lacks);
    return all;
}

std::vector<Phrase> published_tests() {
    const double wet_lb_per_in =
        resistance::screw_withdrawal_wet_service(resistance::ConnectionMoisture::wet) *
        ultimate::lag_mean_lb_per_in(ultimate::guard_test_gravity, ultimate::guard_test_screw_in);
    std::vector<Phrase> all{
        phrase("Published tests of wood guard posts at the side of a deck, pushed outward {} above it (a builders' "
               "journal, February 2005):",
               inches(ultimate::guard_test_height_in))};
    for (const ultimate::GuardPostTest& test : ultimate::guard_post_tests()) all.push_back(test_sentence(test));
    all.push_back(
        phrase("None of these posts stands on a base plate, and the distance between their fasteners was not "
               "published: Toehold does not model them and claims no agreement. They tell how such a test ends and "
               "scatters: all ten broke below half of {}.",
               pounds(ultimate::guard_test_aim_lb)));
    all.push_back(
        phrase("The mean withdrawal used here, wet, on two {} lag screws {} from the band's edges (assumed) would give "
               "{}. The tests with lag screws had less: splitting and prying are in a test and not in a mean of "
               "screws pulled straight.",
               inches(ultimate::guard_test_screw_in), inches(ultimate::AssumedScrews{}.lower_in),
               pounds(std::round(ultimate::push_by_withdrawal_lb(wet_lb_per_in)))));
    all.push_back(
        phrase("The band came off by screws in end grain, which have no published mean here: a prediction leaves such "
               "a link out, by name."));
    return all;
}

}  // namespace toehold::wording
