#include "session/where_it_holds.h"

#include <utility>

namespace toehold::session {

WhereItHolds::WhereItHolds(Session& session, Search search, std::function<void()> told)
    : session_(session), search_(std::move(search)), told_(std::move(told)) {
    listening_ = session_.listen([this](Change change) {
        if (change == Change::detail || change == Change::selection || change == Change::display) ask_of_selection();
    });
}

WhereItHolds::~WhereItHolds() { session_.stop_listening(listening_); }

void WhereItHolds::ask(std::optional<editing::Dragged> dragged) {
    asked_ = std::move(dragged);
    known_.reset();
    waits_ = asked_.has_value();
    if (asked_) {
        detail_ = session_.detail();
        number_ = search_.begin(detail_, *asked_);
    } else {
        search_.stop();
    }
    told_();
}

void WhereItHolds::take(const editing::Handle& handle) {
    in_hand_ = true;
    const std::optional<editing::Dragged> dragged = editing::dragged_by(session_.detail(), handle);
    if (dragged && asked_ == dragged && detail_ == session_.detail()) return;  // it is known of the selection already
    if (dragged || asked_) ask(dragged);
}

void WhereItHolds::let_go() {
    if (!std::exchange(in_hand_, false)) return;
    if (asked_ && !session_.display().holds) ask(std::nullopt);
    ask_of_selection();
}

void WhereItHolds::ask_of_selection() {
    // A region is good for a whole drag: where the thing itself stands does not change it.
    if (in_hand_ || (!session_.display().holds && !asked_)) return;
    std::optional<editing::Dragged> wanted;
    if (session_.display().holds && session_.selection().size() == 1)
        wanted = editing::dragged_whole(session_.selection().front());
    if (wanted == asked_ && (!wanted || detail_ == session_.detail())) return;
    ask(wanted);
}

void WhereItHolds::receive(std::shared_ptr<const solving::RegionNews> news) {
    if (!asked_ || news->number != number_) return;
    waits_ = !news->last;
    // What is known stays, where the search for something better ends in nothing.
    if (news->looked) known_ = std::move(news);
    told_();
}

}  // namespace toehold::session
