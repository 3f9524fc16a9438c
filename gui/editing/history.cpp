#include "editing/history.h"

#include <utility>

namespace toehold::editing {
namespace {

const format::Phrase& nameless() {
    static const format::Phrase none;
    return none;
}

}  // namespace

template <class State>
Past<State>::Past(State start) {
    steps_.push_back({{}, {}, std::move(start)});
}

template <class State>
const State& Past<State>::now() const {
    return steps_[at_].state;
}

template <class State>
void Past<State>::apply(format::Phrase name, State next, std::string merge_key) {
    if (next == now()) return;
    steps_.erase(steps_.begin() + static_cast<std::ptrdiff_t>(at_) + 1, steps_.end());
    if (saved_ > at_) saved_is_lost_ = true;
    const bool merges = at_ > 0 && !merge_key.empty() && steps_[at_].merge_key == merge_key;
    if (!merges) {
        steps_.push_back({std::move(name), std::move(merge_key), std::move(next)});
        ++at_;
    } else if (next == steps_[at_ - 1].state) {
        steps_.pop_back();
        --at_;
        seal();
    } else {
        steps_[at_].name = std::move(name);
        steps_[at_].state = std::move(next);
    }
}

template <class State>
void Past<State>::seal() {
    steps_[at_].merge_key.clear();
}

template <class State>
bool Past<State>::can_undo() const {
    return at_ > 0;
}
template <class State>
bool Past<State>::can_redo() const {
    return at_ + 1 < steps_.size();
}
template <class State>
const format::Phrase& Past<State>::undo_name() const {
    return can_undo() ? steps_[at_].name : nameless();
}
template <class State>
const format::Phrase& Past<State>::redo_name() const {
    return can_redo() ? steps_[at_ + 1].name : nameless();
}

template <class State>
void Past<State>::undo() {
    if (!can_undo()) return;
    --at_;
    seal();
}

template <class State>
void Past<State>::redo() {
    if (!can_redo()) return;
    ++at_;
    seal();
}

template <class State>
bool Past<State>::changed() const {
    return saved_is_lost_ || at_ != saved_;
}

template <class State>
void Past<State>::mark_saved() {
    saved_ = at_;
    saved_is_lost_ = false;
    seal();
}

template class Past<model::BaseDetail>;
template class Past<model::Project>;

}  // namespace toehold::editing
