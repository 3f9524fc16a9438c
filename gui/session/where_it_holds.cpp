#include "session/where_it_holds.h"

#include "editing/parts/measures.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace toehold::session {
namespace {

/// Whether there is something to shade: an anchor whose edge distances leave it one line has a region without any.
bool has_extent(const study::Region& region) {
    return std::any_of(region.holds.begin(), region.holds.end(), [](const study::Polygon& piece) {
        if (piece.size() == 2) return !(piece[0] == piece[1]);
        constexpr double nothing_in2 = 0.5e-9;
        return std::abs(editing::signed_area(piece)) > nothing_in2;
    });
}

}  // namespace

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
        wanted = editing::dragged_whole(session_.detail(), session_.selection().front());
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

format::Phrase WhereItHolds::words() const {
    using format::phrase;
    if (!asked_ || (!waits_ && !known_)) return {};
    if (!known_) return phrase("Looking for where every check passes.");
    const study::Region& region = known_->region;
    if (!region.holds.empty() || !region.likely.empty()) {
        if (known_->last && !has_extent(region)) return phrase("Every check passes only along the line marked.");
        if (known_->last) return phrase("Every check passes in the shaded region.");
        return phrase("Every check passes in the shaded region; the hatched one is still being checked.");
    }
    if (!known_->last) return phrase("Looking for where every check passes.");
    if (!region.stops_most) return phrase("Nowhere in its reach does every check pass.");
    return phrase("Nowhere in its reach does every check pass: {}.", region.stops_most->title);
}

}  // namespace toehold::session
