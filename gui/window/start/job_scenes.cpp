#include "window/start/job_scenes.h"

#include "catalog/resolve.h"
#include "drawing/drawings.h"
#include "model/validate.h"

#include <algorithm>
#include <variant>

namespace toehold::window {

drawing::Scene plan_of(const model::BaseDetail& detail, const catalog::Catalog& catalog, const format::Locale& locale,
                       bool dimensions) {
    catalog::Resolution resolution;
    if (model::validate(detail).empty()) resolution = catalog::resolve(detail, catalog);
    drawing::Subject subject{detail, nullptr, nullptr, locale};
    if (resolution.resolved) subject.resolved = &*resolution.resolved;
    drawing::PlanOptions options;
    options.dimensions = dimensions;
    return drawing::plan(subject, options);
}

drawing::Scene small_plan_of(const model::BaseDetail& detail, const catalog::Catalog& catalog) {
    drawing::Scene scene = plan_of(detail, catalog, {}, false);
    std::erase_if(scene.items, [](const drawing::Item& item) {
        if (std::holds_alternative<drawing::Text>(item)) return true;
        const auto* path = std::get_if<drawing::Path>(&item);
        return path != nullptr && (path->pen == drawing::Pen::dimension || path->pen == drawing::Pen::center);
    });
    scene.margin_mm = 0.0;
    return scene;
}

}  // namespace toehold::window
