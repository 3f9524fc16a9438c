#include "solving/regions.h"

#include "catalog/resolve.h"
#include "model/validate.h"

#include <exception>
#include <utility>

namespace toehold::solving {
namespace {

/// Looks and tells each answer through `told`.
void look(const catalog::Resolved& resolved, const catalog::Catalog& catalog, RegionNews news, const Errand::Stop& stop,
          const std::function<void(const RegionNews&)>& told) {
    const study::Subject subject{resolved, catalog};
    const std::optional<study::Reach> reach = editing::reach_of(subject, news.dragged);
    if (!reach) return;
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
}

}  // namespace

Regions::Regions(const catalog::Catalog& catalog, std::function<void(std::shared_ptr<const RegionNews>)> deliver)
    : catalog_(catalog), deliver_(std::move(deliver)) {}

std::uint64_t Regions::begin(model::BaseDetail detail, editing::Dragged dragged) {
    RegionNews news;
    news.number = ++last_;
    news.dragged = std::move(dragged);
    errand_.begin([this, detail = std::move(detail), news](const Errand::Stop& stop) {
        if (!model::validate(detail).empty()) return;
        const catalog::Resolution resolution = catalog::resolve(detail, catalog_);
        if (!resolution.resolved) return;
        try {
            look(*resolution.resolved, catalog_, news, stop, [&](const RegionNews& found) {
                if (!stop()) deliver_(std::make_shared<const RegionNews>(found));
            });
        } catch (const std::exception&) {
            // A place without a number is not shaded; the review of the detail as it stands says what is the matter.
            return;
        }
    });
    return news.number;
}

void Regions::stop() {
    ++last_;
    errand_.stop();
}

}  // namespace toehold::solving
