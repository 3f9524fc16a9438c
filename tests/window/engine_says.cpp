#include "window/engine_says.h"

#include "wording/verdict.h"

namespace toehold::test {

review::Review evaluation(const model::BaseDetail& detail) { return review::evaluate(resolved_by_shipped(detail), ""); }

std::string reason_told(const review::Review& review) { return format::english(wording::verdict_reason(review)); }

demand::PushResult under_push(const model::BaseDetail& detail, double direction_rad) {
    demand::Preview preview(resolved_by_shipped(detail));
    return preview.push(preview.worst_case(direction_rad), direction_rad);
}

}  // namespace toehold::test
