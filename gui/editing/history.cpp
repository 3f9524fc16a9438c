#include "editing/history.h"

#include <utility>

namespace toehold::editing {
namespace {

const format::Phrase& nameless() {
    static const format::Phrase none;
    return none;
}

}  // namespace

History::History(model::BaseDetail start) { steps_.push_back({{}, {}, std::move(start)}); }

const model::BaseDetail& History::now() const { return steps_[at_].detail; }

void History::apply(format::Phrase name, model::BaseDetail next, std::string merge_key) {
    if (next == now()) return;
    steps_.erase(steps_.begin() + static_cast<std::ptrdiff_t>(at_) + 1, steps_.end());
    if (saved_ > at_) saved_is_lost_ = true;
    const bool merges = at_ > 0 && !merge_key.empty() && steps_[at_].merge_key == merge_key;
    if (!merges) {
        steps_.push_back({std::move(name), std::move(merge_key), std::move(next)});
        ++at_;
    } else if (next == steps_[at_ - 1].detail) {
        steps_.pop_back();
        --at_;
        seal();
    } else {
        steps_[at_].name = std::move(name);
        steps_[at_].detail = std::move(next);
    }
}

void History::seal() { steps_[at_].merge_key.clear(); }

bool History::can_undo() const { return at_ > 0; }
bool History::can_redo() const { return at_ + 1 < steps_.size(); }
const format::Phrase& History::undo_name() const { return can_undo() ? steps_[at_].name : nameless(); }
const format::Phrase& History::redo_name() const { return can_redo() ? steps_[at_ + 1].name : nameless(); }

void History::undo() {
    if (!can_undo()) return;
    --at_;
    seal();
}

void History::redo() {
    if (!can_redo()) return;
    ++at_;
    seal();
}

bool History::changed() const { return saved_is_lost_ || at_ != saved_; }

void History::mark_saved() {
    saved_ = at_;
    saved_is_lost_ = false;
    seal();
}

}  // namespace toehold::editing
