#include "session/sizes.h"

#include "catalog/resolve.h"
#include "editing/sizes/choice_words.h"
#include "search/ranges/ranges.h"
#include "session/session.h"

#include <algorithm>
#include <limits>
#include <stdexcept>
#include <utility>

namespace toehold::session {
namespace {

using format::phrase;
using format::Phrase;

double number_of(const search::Score& score, SizeOrder order) {
    switch (order) {
        case SizeOrder::cost:
            return score.steel_cost;
        case SizeOrder::weight:
            return score.weight_lb;
        case SizeOrder::pieces:
            return score.pieces;
        case SizeOrder::anchors:
            return score.anchors;
        case SizeOrder::ratio:
            return score.governing_ratio;
        case SizeOrder::misplaced:
            return score.robustness_ratio.value_or(std::numeric_limits<double>::infinity());
    }
    return 0.0;
}

}  // namespace

Sizes::Sizes(Session& session, Search search, std::function<void()> told)
    : session_(session), search_(std::move(search)), told_(std::move(told)) {
    listening_ = session_.listen([this](Change change) {
        if (change != Change::detail) return;
        counted_.reset();
        changed();
    });
}

Sizes::~Sizes() { session_.stop_listening(listening_); }

const editing::RangesForm* Sizes::form() {
    if (!form_ && session_.resolved() != nullptr) reset_ranges();
    return form_ ? &*form_ : nullptr;
}

void Sizes::reset_ranges() {
    counted_.reset();
    form_.reset();
    if (const catalog::Resolved* resolved = session_.resolved())
        form_.emplace(session_.catalog(), search::default_ranges(*resolved, session_.catalog()),
                      session_.display().system);
}

void Sizes::tick(std::size_t row, std::size_t tick, bool on) {
    if (!form_) return;
    form_->tick(row, tick, on);
    counted_.reset();
    changed();
}

void Sizes::tick_all(std::size_t row, bool on) {
    if (!form_) return;
    form_->tick_all(row, on);
    counted_.reset();
    changed();
}

void Sizes::type(std::size_t row, std::size_t entry, const std::string& text) {
    if (!form_) return;
    form_->type(row, entry, text);
    counted_.reset();
    changed();
}

std::optional<search::Candidate> Sizes::count() {
    const editing::RangesForm* asked = form();
    const catalog::Resolved* resolved = session_.resolved();
    if (asked == nullptr || resolved == nullptr || !asked->ranges()) return std::nullopt;
    try {
        if (!counted_) counted_ = search::make_space(*resolved, *asked->ranges(), session_.catalog());
        return search::size(*counted_);
    } catch (const std::overflow_error&) {
        return std::nullopt;
    }
}

Phrase Sizes::why_not() {
    if (session_.resolved() == nullptr) return phrase("The detail as it stands cannot be solved.");
    const editing::RangesForm* asked = form();
    if (asked == nullptr) return phrase("The detail as it stands cannot be solved.");
    for (std::size_t row = 0; row < asked->rows().size(); ++row) {
        if (!asked->refusal(row).empty()) return asked->refusal(row);
    }
    const std::optional<search::Candidate> candidates = count();
    if (!candidates) return phrase("There are more candidates than can be counted. Take fewer.");
    if (*candidates == 0) return phrase("There are no candidates.");
    return {};
}

void Sizes::begin() {
    if (!why_not().empty() || !counted_) return;
    space_ = std::make_shared<const search::Space>(*counted_);
    outcome_.reset();
    rows_.clear();
    failure_ = {};
    progress_ = {};
    progress_.counts.candidates = search::size(*space_);
    opened_.reset();
    ++searches_;
    state_ = State::running;
    number_ = search_.begin(*space_);
    changed();
}

void Sizes::stop() {
    if (state_ == State::running) search_.stop();
}

void Sizes::receive(const solving::SizingNews& news) {
    if (news.search != number_ || state_ != State::running) return;
    progress_ = news.progress;
    if (!news.failure.empty()) {
        failure_ = news.failure;
        state_ = State::failed;
    } else if (news.outcome) {
        outcome_ = news.outcome;
        state_ = State::done;
        put_in_order();
    }
    changed();
}

void Sizes::order_by(SizeOrder order) {
    order_ = order;
    put_in_order();
    changed();
}

void Sizes::show_all(bool all) {
    all_ = all;
    put_in_order();
    changed();
}

void Sizes::put_in_order() {
    rows_.clear();
    if (!outcome_) return;
    for (const search::Result& result : all_ ? outcome_->holding : outcome_->front) rows_.push_back(&result);
    // The front comes cheapest first, and then by what else counts: those alike keep that order.
    std::stable_sort(rows_.begin(), rows_.end(), [this](const search::Result* one, const search::Result* other) {
        return number_of(one->score, order_) < number_of(other->score, order_);
    });
}

Phrase Sizes::choices_of(const search::Result& result) const {
    Phrase words;
    if (!space_ || !form_) return words;
    const std::vector<std::size_t> chosen = search::choices(*space_, result.candidate);
    for (std::size_t axis = 0; axis < chosen.size(); ++axis) {
        const std::vector<search::Option>& options = space_->axes[axis].options;
        if (options.size() < 2) continue;  // nothing was chosen there
        const std::string& label = options[chosen[axis]].label;
        if (label == "as-is" || label == "to suit") continue;
        Phrase one = editing::choice_words(form_->rows(), space_->axes[axis].id, label, session_.display().system);
        words = words.empty() ? std::move(one) : phrase("{}; {}", std::move(words), std::move(one));
    }
    return words;
}

bool Sizes::fits() const {
    if (!space_) return false;
    const model::BaseDetail& now = session_.detail();
    return now == space_->base.detail || (opened_ && now == *opened_);
}

void Sizes::take(const model::BaseDetail& detail, const Phrase& step) {
    if (!fits()) {
        session_.say(phrase("The detail has changed since this search. Search again, or undo the change."));
        return;
    }
    opened_ = detail;
    session_.change(step, detail, "sizes " + std::to_string(searches_));
    changed();
}

void Sizes::open(std::size_t row) {
    if (row < rows_.size()) take(rows_[row]->detail, phrase("Take sizes found"));
}

void Sizes::open_nearest() {
    if (has_nearest()) take(outcome_->nearest->detail, phrase("Take the nearest miss"));
}

std::optional<std::size_t> Sizes::opened() const {
    const auto found = std::find_if(rows_.begin(), rows_.end(), [this](const search::Result* result) {
        return result->detail == session_.detail();
    });
    if (found == rows_.end()) return std::nullopt;
    return static_cast<std::size_t>(found - rows_.begin());
}

}  // namespace toehold::session
