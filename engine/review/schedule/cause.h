#pragma once
// What makes a review's verdict, as a value that reviews can be sorted and counted by.
#include "format/phrase.h"
#include "model/part.h"

#include <optional>
#include <string>

namespace toehold::review {

struct LineReview;
struct Review;

/// A check or a finding.
struct Cause {
    std::string id;               ///< of the check or finding; empty: no check could be made
    format::Phrase title;         ///< of it; empty where the id is
    model::PartId part;           ///< what its result is about
    std::optional<double> ratio;  ///< demand over capacity; absent: of a finding, not specified, or no load path
};

/// Of an inadequate detail its first cause (the finding where one comes first, else the check), of an incomplete one
/// the first thing not specified, of an adequate one the strength nearest its limit.
[[nodiscard]] Cause cause_of(const Review& review);
/// Of a guard line's rail; without an id where it is adequate, or where no share is given.
[[nodiscard]] Cause cause_of(const LineReview& line);

}  // namespace toehold::review
