#pragma once
// What the drawings say at the anchors and of the push, from the newest answers. Pure functions of plain values.
#include "session/session.h"

#include <vector>

namespace toehold::session {

/// Everything the marks are read from. `resolved` is what the quick answer is of; `review` is null unless it is of the
/// detail as it stands.
struct Answers {
    const catalog::Resolved& resolved;
    const solving::Quick& quick;
    const review::Review* review = nullptr;
    drawing::Method method = drawing::Method::flexible;
};

/// Forces on the anchor with this number in the quick answer's order; capacity, ratio and status from the review.
[[nodiscard]] drawing::AnchorMark mark_of(const Answers& answers, std::size_t anchor);
/// The marks of the anchors of `shown`, in its order; an anchor the quick answer does not know has no forces.
[[nodiscard]] std::vector<drawing::AnchorMark> marks(const Answers& answers, const catalog::Resolved& shown);

[[nodiscard]] drawing::PushShown push_shown(const solving::Quick& quick, bool governing);
[[nodiscard]] std::optional<demand::DeflectedShape> field_shown(const solving::Quick& quick, drawing::Method method);
/// What presses on the mount under the push shown and the pull of its ties, where no field shows it and the method is
/// the one the checks use.
void show_bearing(drawing::Overlay& overlay, const Answers& answers);
[[nodiscard]] std::vector<drawing::PolarCurve> polar_curves_of(const Answers& answers);

}  // namespace toehold::session
