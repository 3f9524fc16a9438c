#pragma once
// The demand of a review as JSON: what `toehold.review/1` has of it, key by key. An infinite number is written as null.
#include "review/review.h"

#include <nlohmann/json.hpp>

namespace toehold::exporting::as_json {

/// The values of the keys of these names; null, or an empty array, where the review has no demand.
struct DemandFields {
    nlohmann::ordered_json anchors, bearing, proof, loads, range, supports, bending, plate_field, framing,
        rotational_stiffness, ties, hand_couples, range_ends;
};
[[nodiscard]] DemandFields demand_fields(const review::Review& review);

}  // namespace toehold::exporting::as_json
