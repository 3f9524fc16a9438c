#include "solving/solve_service.h"

#include "catalog/catalog.h"
#include "solving/requests.h"
#include "solving/solve.h"

#include <mutex>
#include <thread>
#include <utility>

namespace toehold::solving {
namespace {

/// Hands results over one at a time, and none of an older revision after one of a newer.
class Delivery {
  public:
    explicit Delivery(std::function<void(Result)> deliver) : deliver_(std::move(deliver)) {}
    void operator()(Result result) {
        const std::lock_guard lock(mutex_);
        if (result.revision < newest_) return;
        newest_ = result.revision;
        deliver_(std::move(result));
    }

  private:
    std::mutex mutex_;
    std::uint64_t newest_ = 0;
    std::function<void(Result)> deliver_;
};

}  // namespace

struct SolveService::Threads {
    const catalog::Catalog& catalog;
    Requests requests;
    Delivery deliver;
    std::jthread quick, review;  // last, so that what they use outlives them

    Threads(const catalog::Catalog& of, std::function<void(Result)> to, int rest_ms)
        : catalog(of), requests(std::chrono::milliseconds(rest_ms)), deliver(std::move(to)) {
        quick = std::jthread([this] { answer_quickly(); });
        review = std::jthread([this] { review_at_rest(); });
    }
    ~Threads() { requests.close(); }
    Threads(const Threads&) = delete;
    Threads& operator=(const Threads&) = delete;

    void answer_quickly() {
        while (const std::optional<Request> request = requests.next_quick()) {
            Result result = solve_quick(*request, catalog);
            if (!requests.closed()) deliver(std::move(result));
        }
    }

    void review_at_rest() {
        while (const std::optional<Request> request = requests.next_review()) {
            const review::Stop stop = [&] { return requests.overtaken(request->revision); };
            review_in_stages(*request, catalog, stop, [&](Result result) {
                if (!stop()) deliver(std::move(result));
            });
        }
    }
};

SolveService::SolveService(const catalog::Catalog& catalog, std::function<void(Result)> deliver, int rest_ms)
    : threads_(std::make_unique<Threads>(catalog, std::move(deliver), rest_ms)) {}
SolveService::~SolveService() = default;

void SolveService::submit(Request request) { threads_->requests.submit(std::move(request)); }

}  // namespace toehold::solving
