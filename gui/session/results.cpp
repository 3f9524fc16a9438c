// The session's part that waits for answers: what it asks for, what it takes, and how far that is of the detail as it
// stands.
#include "session/annotations.h"
#include "session/governing.h"
#include "session/session.h"
#include "solving/solve_service.h"

#include <utility>

namespace toehold::session {
namespace {

/// How many changes the forces may lag behind a moving hand without being marked: a tenth of a second or so.
constexpr std::uint64_t close_behind = 4;

}  // namespace

const model::Problems& Session::problems() const { return problems_; }
const format::Phrase& Session::failure() const { return failure_; }
const catalog::Resolved* Session::resolved() const { return resolved_.get(); }
const solving::Quick* Session::quick() const { return quick_.get(); }
const review::Review* Session::review() const { return review_.get(); }
bool Session::review_is_complete() const { return review_is_complete_; }

const review::Review* Session::current_review() const {
    return review_revision_ == revision_ ? review_.get() : nullptr;
}

std::optional<double> Session::direction_asked_for() const {
    if (display_.direction_rad) return display_.direction_rad;
    const review::Review* review = current_review();
    if (review == nullptr || !quick_) return std::nullopt;
    return governing_direction(*review, quick_->polar.largest_direction_rad);
}

void Session::request() {
    if (submit_) submit_({revision_, detail(), direction_asked_for(), moving_});
}

Freshness Session::freshness() const {
    if (!resolved_ || (!quick_ && !review_)) return Freshness::none;
    const bool quick_is_done = quick_revision_ == revision_;
    if (quick_is_done && current_review() != nullptr) return Freshness::current;
    return quick_is_done && quick_ ? Freshness::quick : Freshness::stale;
}

void Session::take_quick(const solving::Result& result) {
    if (result.revision < quick_revision_ || !result.problems.empty()) return;
    quick_revision_ = result.revision;
    quick_ = result.quick;
    quick_resolved_ = result.resolved;
    if (result.revision == revision_) failure_ = result.failure;
}

void Session::take_review(const solving::Result& result) {
    if (result.revision < review_revision_ || !result.problems.empty()) return;
    if (result.revision == revision_ && !result.failure.empty()) failure_ = result.failure;
    if (!result.review) return;
    review_revision_ = result.revision;
    review_ = result.review;
    review_is_complete_ = result.stage == solving::Stage::complete;
    const std::optional<double> governing = direction_asked_for();
    // The quick answer, at nominal stiffness, may have taken another push for the one that pulls most.
    if (!moving_ && governing && quick_ && !same_direction(*governing, quick_->push.direction_rad)) request();
}

void Session::receive(const solving::Result& result) {
    if (result.revision < first_revision_ || result.revision > revision_) return;
    if (result.stage == solving::Stage::quick) {
        take_quick(result);
    } else {
        take_review(result);
    }
    notify(Change::results);
}

drawing::Overlay Session::overlay() const {
    drawing::Overlay overlay;
    overlay.pressure = display_.pressure;
    overlay.bent = display_.bent;
    overlay.marks = display_.marks;
    overlay.locale = locale();
    if (!quick_ || !quick_resolved_) return overlay;
    const Answers answers{*quick_resolved_, *quick_, current_review(), display_.method};
    const bool governing =
        !display_.direction_rad || same_direction(quick_->push.direction_rad, quick_->polar.largest_direction_rad);
    overlay.push = push_shown(*quick_, governing);
    overlay.anchors = marks(answers, resolved_ ? *resolved_ : *quick_resolved_);
    overlay.field = field_shown(*quick_, display_.method);
    show_bearing(overlay, answers);
    const bool follows_the_hand = moving_ && resolved_ && revision_ - quick_revision_ <= close_behind;
    overlay.stale = quick_revision_ != revision_ && !follows_the_hand;
    return overlay;
}

std::vector<drawing::PolarCurve> Session::polar_curves() const {
    if (!quick_ || !quick_resolved_) return {};
    return polar_curves_of({*quick_resolved_, *quick_, nullptr, display_.method});
}

}  // namespace toehold::session
