#pragma once
// The stiffness of supports, anchors and members: what reads the same stands together.
#include "format/phrase.h"
#include "model/part.h"

#include <vector>

namespace toehold::demand {
struct Demand;
}
namespace toehold::review {
struct Review;
}

namespace toehold::wording {

struct Stiffness {
    std::vector<model::PartId> beds;  ///< what the bed of the mount is on
    std::vector<model::PartId> parts;
    format::Quantity value;  ///< as computed
    format::Phrase source;
};

/// Of a review with a demand; those of one value and one source are one.
[[nodiscard]] std::vector<Stiffness> stiffnesses(const review::Review& review);
/// The same, each as a sentence.
[[nodiscard]] std::vector<format::Phrase> stiffness_sentences(const review::Review& review);
/// The two ranges of stiffness and where their ends come from, a sentence each; none where the file fixes them.
[[nodiscard]] std::vector<format::Phrase> range_sentences(const demand::Demand& demand);

}  // namespace toehold::wording
