#pragma once
// What of a post on a member's side and its framing must go together when one of them changes.
#include "model/base_detail.h"

namespace toehold::editing {

/// Members that were given another id keep being named; what named one that is gone names nothing.
void follow_members(model::BaseDetail& detail, const model::BaseDetail& before);
/// Another post has nothing of the one before that it cannot have: no shoe, stub or bracket on wood, no notch in metal.
void fit_other_post(model::BaseDetail& detail, const model::BaseDetail& before);
/// The framing moves in or out as a whole so that the member keeps its distance to the post, which stands at the
/// origin, when the post, its notch, its face, its member, the bracket plate or a layer changes. A change of the
/// framing itself moves nothing.
void keep_touching(model::BaseDetail& detail, const model::BaseDetail& before);

}  // namespace toehold::editing
