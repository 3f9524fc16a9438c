#pragma once
// A line of guard drawn whole: from above, with what each post sees of a push on the rail, and unrolled as an
// elevation. Each draws what there is: without a review no shares, without a rail the posts alone.
#include "drawing/scene/scene.h"
#include "format/phrase.h"
#include "model/project.h"

namespace toehold::review {
struct LineReview;
}

namespace toehold::drawing {

struct LineSubject {
    const model::Project& project;
    const model::GuardLine& line;
    const review::LineReview* review = nullptr;  ///< of this line; nullptr: not solved
    format::Locale locale = {};
};

/// From above, in the project's axes; posts are marks of one size on paper. At each post a bar and its number: the
/// largest part of a push on the rail that reaches its top, in a frame that is the whole push.
[[nodiscard]] Scene line_plan(const LineSubject& subject);

/// Seen from outside the first span and unrolled round its corners: along the rail to the right, z up from the
/// project's walking surface; posts and rail to scale.
[[nodiscard]] Scene line_elevation(const LineSubject& subject);

}  // namespace toehold::drawing
