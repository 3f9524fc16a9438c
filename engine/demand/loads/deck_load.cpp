#include "demand/loads/deck_load.h"

#include "model/base_detail.h"

#include <algorithm>
#include <vector>

namespace toehold::demand {
namespace {

using format::Citation;
using format::phrase;
using format::Quantity;

// Boards of 5/4 in to 2 in with their joists weigh 5 to 8 psf; 10 psf is what deck span tables count (common practice).
constexpr double usual_dead_psf = 10.0;
// IRC Table R301.5, decks.
constexpr double dwelling_live_psf = 40.0;
// IBC 2021 Table 1607.1 item 5: 1.5 times the live load of the area served, not required to exceed 100 psf. The area
// served is not in the file, so the largest is taken; of a dwelling, 1.5 x 40 psf.
constexpr double most_live_psf = 100.0;
constexpr double of_area_served = 1.5;

double code_live_psf(const model::BaseDetail& detail) {
    const bool dwelling = detail.guard.occupancy == model::Occupancy::one_and_two_family;
    if (!dwelling) return most_live_psf;
    return model::residential(model::building_code(detail.basis)) ? dwelling_live_psf
                                                                  : of_area_served * dwelling_live_psf;
}

}  // namespace

DeckLoadInForce deck_load(const model::BaseDetail& detail) {
    const model::DeckLoad& stated = detail.framing.deck;
    DeckLoadInForce load{stated.dead_psf.value_or(usual_dead_psf), stated.live_psf.value_or(code_live_psf(detail)), {}};
    if (!stated.dead_psf) {
        load.assumptions.push_back(
            phrase("Assumed {} of dead load of the deck on its joists; not specified in the file.",
                   Quantity{load.dead_psf, "psf"}));
    }
    if (!stated.live_psf) {
        const std::string clause = model::clause(model::building_code(detail.basis), model::Provision::deck_live_load);
        load.assumptions.push_back(
            detail.guard.occupancy == model::Occupancy::one_and_two_family
                ? phrase("Assumed {} of live load of the deck on its joists, for a dwelling; not specified in the file "
                         "({}).",
                         Quantity{load.live_psf, "psf"}, Citation{clause})
                : phrase("Assumed {} of live load of the deck on its joists, the most that is required; the area "
                         "served is not specified in the file ({}).",
                         Quantity{load.live_psf, "psf"}, Citation{clause}));
    }
    return load;
}

DeckFactors deck_factors(const model::Basis& basis, const LoadCase& load) {
    const bool lrfd = basis.method == model::Method::lrfd;
    const double least = lrfd ? 0.9 : 0.6;
    if (load.duration == LoadDuration::proof_test) return {1.0, 0.0, 0.6};
    const double dead = lrfd ? 1.2 : 1.0;
    if (load.duration == LoadDuration::guard_live) return {dead, lrfd ? 1.6 : 1.0, least};
    if (load.push_lb == 0.0) return {dead, 0.0, least};
    return {dead, lrfd ? 1.0 : 0.75, least};
}

double tributary_width_in(const model::Framing& framing, std::size_t joist) {
    constexpr double usual_spacing_in = 16.0;
    const std::vector<model::Joist>& all = framing.joists.value().members;
    const double at_in = all.at(joist).offset_in;
    double below_in = 0.0, above_in = 0.0;  // 0: no joist on that side
    for (const model::Joist& other : all) {
        const double away_in = other.offset_in - at_in;
        if (away_in > 0.0 && (above_in == 0.0 || away_in < above_in)) above_in = away_in;
        if (away_in < 0.0 && (below_in == 0.0 || -away_in < below_in)) below_in = -away_in;
    }
    if (below_in == 0.0 && above_in == 0.0) return usual_spacing_in;
    if (below_in == 0.0) below_in = above_in;
    if (above_in == 0.0) above_in = below_in;
    return 0.5 * (below_in + above_in);
}

}  // namespace toehold::demand
