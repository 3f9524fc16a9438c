#include "solving/requests.h"

#include <algorithm>
#include <utility>

namespace toehold::solving {

void Requests::submit(Request request) {
    {
        const std::lock_guard lock(mutex_);
        newest_ = std::max(newest_, request.revision);
        review_.reset();
        if (!request.moving && reviewed_ != request.revision) {
            review_ = request;
            rested_at_ = Clock::now() + rest_;
        }
        quick_ = std::move(request);
    }
    for_quick_.notify_one();
    for_review_.notify_one();
}

void Requests::close() {
    {
        const std::lock_guard lock(mutex_);
        closed_ = true;
    }
    for_quick_.notify_all();
    for_review_.notify_all();
}

std::optional<Request> Requests::next_quick() {
    std::unique_lock lock(mutex_);
    for_quick_.wait(lock, [this] { return closed_ || quick_; });
    if (closed_) return std::nullopt;
    return std::exchange(quick_, std::nullopt);
}

std::optional<Request> Requests::next_review() {
    std::unique_lock lock(mutex_);
    while (!closed_) {
        if (!review_) {
            for_review_.wait(lock);
        } else if (Clock::now() < rested_at_) {
            const Clock::time_point until = rested_at_;  // which may be another before this ends
            for_review_.wait_until(lock, until);
        } else {
            reviewed_ = review_->revision;
            return std::exchange(review_, std::nullopt);
        }
    }
    return std::nullopt;
}

bool Requests::overtaken(std::uint64_t revision) const {
    const std::lock_guard lock(mutex_);
    return closed_ || revision < newest_;
}

bool Requests::closed() const {
    const std::lock_guard lock(mutex_);
    return closed_;
}

}  // namespace toehold::solving
