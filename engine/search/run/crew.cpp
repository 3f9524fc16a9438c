#include "search/run/crew.h"

#include <algorithm>
#include <iterator>
#include <stdexcept>
#include <string>
#include <utility>

namespace toehold::search {
namespace {

/// Neighbors mostly share a plate, and what a thread keeps of it. Few enough that the last block keeps nobody waiting
/// long: of so many numbers some tenth are details.
constexpr Candidate block = 128;

}  // namespace

Crew::Crew(const Space& space, const catalog::Catalog& catalog, const std::vector<bool>& known,
           const std::function<bool()>& stop, std::size_t threads)
    : space_(space), catalog_(catalog), known_(known), stop_(stop), working_(threads) {
    for (std::size_t thread = 0; thread < threads; ++thread) threads_.emplace_back([this] { work(); });
}

Crew::~Crew() { stopped_ = true; }

void Crew::judge_block(Judge& judge, Candidate first, std::vector<Judgement>& judgements) {
    const Candidate end = std::min(first + block, Candidate{known_.size()});
    for (Candidate candidate = first; candidate < end; ++candidate) {
        if (known_[static_cast<std::size_t>(candidate)]) continue;
        if (!stopped_ && stop_ && stop_()) stopped_ = true;
        if (stopped_) return;
        try {
            judgements.push_back(judge.judge(candidate));
        } catch (const std::exception& error) {
            throw std::runtime_error("candidate " + std::to_string(candidate) + ": " + error.what());
        }
    }
}

void Crew::hand_over(std::vector<Judgement> judgements) {
    const std::scoped_lock lock(mutex_);
    ready_.insert(ready_.end(), std::make_move_iterator(judgements.begin()), std::make_move_iterator(judgements.end()));
    something_.notify_one();
}

void Crew::work() {
    std::exception_ptr fault;
    Judge judge(space_, catalog_);
    while (!stopped_ && !fault) {
        const Candidate first = next_.fetch_add(block);
        if (first >= Candidate{known_.size()}) break;
        std::vector<Judgement> judgements;
        try {
            judge_block(judge, first, judgements);
        } catch (...) {
            fault = std::current_exception();
            stopped_ = true;
        }
        hand_over(std::move(judgements));
    }
    const std::scoped_lock lock(mutex_);
    if (fault) fault_ = fault;
    --working_;
    something_.notify_one();
}

std::vector<Judgement> Crew::take(std::chrono::milliseconds at_most) {
    std::unique_lock lock(mutex_);
    something_.wait_for(lock, at_most, [this] { return !ready_.empty() || working_ == 0; });
    return std::exchange(ready_, {});
}

bool Crew::done() {
    const std::scoped_lock lock(mutex_);
    if (working_ > 0 || !ready_.empty()) return false;
    if (fault_) std::rethrow_exception(fault_);
    return true;
}

}  // namespace toehold::search
