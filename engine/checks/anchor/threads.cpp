#include "checks/anchor/threads.h"

#include "catalog/resolve.h"
#include "checks/anchor/seating.h"
#include "resistance/wood/dowel_properties.h"
#include "units/limit.h"

#include <algorithm>

namespace toehold::checks {
namespace {

using format::Dimension;
using format::phrase;

/// From the head to where the thread begins.
ThreadPlace from_shank(double shank_in, double above_in, double bearing_in) {
    const double threads_in = std::clamp(above_in + bearing_in - shank_in, 0.0, bearing_in);
    ThreadPlace place;
    place.full_diameter = resistance::full_diameter_counts(threads_in, bearing_in);
    place.clear_of_plane = units::at_least(shank_in, above_in);
    place.reason = phrase("threads take {} of {} in the wood", Dimension{threads_in}, Dimension{bearing_in});
    return place;
}

ThreadPlace of_bolt(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    if (!anchor.bolt) return {};
    const model::ThroughBolt& bolt = *anchor.bolt;
    if (bolt.length_in) {
        const double thread_in =
            bolt.thread_length_in.value_or(resistance::bolt_thread_length_in(anchor.diameter_in, *bolt.length_in));
        return from_shank(*bolt.length_in - thread_in, seating(resolved, anchor).above_member_in,
                          member_of(resolved, anchor).depth_in);
    }
    const bool excluded = bolt.threads == model::Threads::excluded;
    return {excluded, excluded,
            excluded ? phrase("threads out of the shear plane and the bearing, as the file states")
                     : phrase("threads taken in the shear plane: the bolt's length is not specified")};
}

/// The tip's half counts as bearing length, and has thread on it.
ThreadPlace of_lag(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    const Seating seated = seating(resolved, anchor);
    const double bearing_in = seated.embedment_in - 0.5 * seated.tip_in_member_in;
    return from_shank(anchor.length_in - anchor.thread_length_in, seated.above_member_in, std::max(bearing_in, 0.0));
}

}  // namespace

ThreadPlace thread_place(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    if (!lands(anchor)) return {};
    if (anchor.kind == catalog::FastenerKind::through_bolt) return of_bolt(resolved, anchor);
    if (anchor.kind == catalog::FastenerKind::lag_screw) return of_lag(resolved, anchor);
    return {};
}

}  // namespace toehold::checks
