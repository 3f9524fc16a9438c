#include "solving/regions.h"

#include "catalog/resolve.h"
#include "model/validate.h"

#include <exception>
#include <utility>

namespace toehold::solving {
namespace {

using Told = std::function<void(const RegionNews&)>;

/// Looks and tells each answer through `told`. False: there is nothing to look for.
bool look(const model::BaseDetail& detail, const catalog::Catalog& catalog, RegionNews news, const Errand::Stop& stop,
          const Told& told) {
    if (!model::validate(detail).empty()) return false;
    const catalog::Resolution resolution = catalog::resolve(detail, catalog);
    if (!resolution.resolved) return false;
    const study::Subject subject{*resolution.resolved, catalog};
    const std::optional<study::Reach> reach = editing::reach_of(subject, news.dragged);
    if (!reach) return false;
    news.plane = reach->plane;
    news.along = reach->along;
    news.now_in = reach->now.x_in;
    study::RegionRun run;
    run.stop = stop;
    run.better = [&](const study::Region& region) {
        news.region = region;
        told(news);
    };
    news.region = study::find_region(subject, *reach, run);
    news.last = true;
    told(news);
    return true;
}

bool looked(const model::BaseDetail& detail, const catalog::Catalog& catalog, const RegionNews& news,
            const Errand::Stop& stop, const Told& told) {
    try {
        return look(detail, catalog, news, stop, told);
    } catch (const std::exception&) {
        // A place without a number is not shaded; the review of the detail as it stands says what is the matter.
        return false;
    }
}

}  // namespace

Regions::Regions(const catalog::Catalog& catalog, std::function<void(std::shared_ptr<const RegionNews>)> deliver)
    : catalog_(catalog), deliver_(std::move(deliver)) {}

std::uint64_t Regions::begin(model::BaseDetail detail, editing::Dragged dragged) {
    RegionNews news;
    news.number = ++last_;
    news.dragged = std::move(dragged);
    errand_.begin([this, detail = std::move(detail), news](const Errand::Stop& stop) {
        const auto tell = [&](const RegionNews& found) {
            if (!stop()) deliver_(std::make_shared<const RegionNews>(found));
        };
        if (looked(detail, catalog_, news, stop, tell)) return;
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
