#include "solving/sizing.h"

#include <atomic>
#include <exception>
#include <utility>

namespace toehold::solving {

/// What a running search is told.
struct Sizing::Told {
    std::atomic<bool> enough = false;  ///< stop, and say what was found
};

Sizing::Sizing(const catalog::Catalog& catalog, std::function<void(SizingNews)> deliver)
    : catalog_(catalog), deliver_(std::move(deliver)) {}

std::uint64_t Sizing::begin(search::Space space) {
    const std::uint64_t number = ++last_;
    told_ = std::make_shared<Told>();
    errand_.begin([this, number, told = told_, space = std::move(space)](const Errand::Stop& overtaken) {
        SizingNews news;
        news.search = number;
        search::RunOptions options;
        options.stop = [&] { return told->enough || overtaken(); };
        options.progress = [&](const search::Progress& progress) {
            news.progress = progress;
            if (!overtaken()) deliver_(news);
        };
        try {
            news.outcome = std::make_shared<const search::Outcome>(search::run(space, catalog_, options));
            news.progress.counts = news.outcome->counts;
        } catch (const std::exception& fault) {
            news.failure = format::verbatim(fault.what());
        }
        if (!overtaken()) deliver_(std::move(news));
    });
    return number;
}

void Sizing::stop() {
    if (told_) told_->enough = true;
}

}  // namespace toehold::solving
