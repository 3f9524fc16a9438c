#include "solving/regions.h"

#include "catalog/resolve.h"
#include "model/validate.h"

#include <exception>
#include <utility>

namespace toehold::solving {
/// The search begun last.
struct Regions::Begun {
    struct Search {
        editing::Dragged dragged;
        study::RegionSearch search;
    };
    std::optional<Search> last;

    using Told = std::function<void(const RegionNews&)>;
    /// Looks and tells each answer through `told`. False: there is nothing to look for.
    bool look(const model::BaseDetail& detail, const catalog::Catalog& catalog, RegionNews news,
              const Errand::Stop& stop, const Told& told);
    bool looked(const model::BaseDetail& detail, const catalog::Catalog& catalog, const RegionNews& news,
                const Errand::Stop& stop, const Told& told);
};

bool Regions::Begun::look(const model::BaseDetail& detail, const catalog::Catalog& catalog, RegionNews news,
                          const Errand::Stop& stop, const Told& told) {
    if (!model::validate(detail).empty()) return false;
    catalog::Resolution resolution = catalog::resolve(detail, catalog);
    if (!resolution.resolved) return false;
    std::optional<study::Reach> reach = editing::reach_of({*resolution.resolved, catalog}, news.dragged);
    if (!reach) return false;
    news.plane = reach->plane;
    news.along = reach->along;
    news.now_in = reach->now.x_in;
    if (!last || !(last->dragged == news.dragged) || !last->search.is_of(detail))
        last.emplace(Search{news.dragged, {std::move(*resolution.resolved), catalog, *reach}});
    study::RegionRun run;
    run.jobs = 0;
    run.stop = stop;
    run.better = [&](const study::Region& region) {
        news.region = region;
        news.last = !region.provisional;
        told(news);
    };
    last->search.go_on(run);  // stopped, nobody waits for what it found
    return true;
}

bool Regions::Begun::looked(const model::BaseDetail& detail, const catalog::Catalog& catalog, const RegionNews& news,
                            const Errand::Stop& stop, const Told& told) {
    try {
        return look(detail, catalog, news, stop, told);
    } catch (const std::exception&) {
        // A place without a number is not shaded; the review of the detail as it stands says what is the matter.
        last.reset();
        return false;
    }
}

Regions::Regions(const catalog::Catalog& catalog, std::function<void(std::shared_ptr<const RegionNews>)> deliver)
    : catalog_(catalog), deliver_(std::move(deliver)), begun_(std::make_unique<Begun>()) {}
Regions::~Regions() = default;

std::uint64_t Regions::begin(model::BaseDetail detail, editing::Dragged dragged) {
    RegionNews news;
    news.number = ++last_;
    news.dragged = std::move(dragged);
    errand_.begin([this, detail = std::move(detail), news](const Errand::Stop& stop) {
        const auto tell = [&](const RegionNews& found) {
            if (!stop()) deliver_(std::make_shared<const RegionNews>(found));
        };
        if (begun_->looked(detail, catalog_, news, stop, tell)) return;
        RegionNews nothing = news;
        nothing.looked = false;
        nothing.last = true;
        tell(nothing);
    });
    return news.number;
}

void Regions::stop() {
    ++last_;
    errand_.stop();
}

}  // namespace toehold::solving
