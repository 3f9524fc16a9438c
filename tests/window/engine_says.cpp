#include "window/engine_says.h"

#include "catalog/resolve.h"
#include "wording/verdict.h"
#include "xml/catalog/catalog_file.h"
#include "xml/detail/detail_file.h"

#include <cctype>
#include <stdexcept>

namespace toehold::test {

namespace {

catalog::Resolved resolved(const model::BaseDetail& detail) {
    const catalog::Resolution resolution = catalog::resolve(detail, catalogs());
    if (!resolution.resolved) throw std::runtime_error("cannot resolve " + detail.name);
    return *resolution.resolved;
}

}  // namespace

const catalog::Catalog& catalogs() {
    static const catalog::Catalog catalog = xml::read_catalog(TOEHOLD_DATA_FOLDER).catalog;
    return catalog;
}

model::BaseDetail demo(const std::string& name) {
    const xml::DetailRead read = xml::read_detail(std::string(TOEHOLD_DATA_FOLDER) + "/demo/" + name + ".xml");
    if (!read.detail) throw std::runtime_error("cannot read the demo " + name);
    return *read.detail;
}

review::Review evaluation(const model::BaseDetail& detail) { return review::evaluate(resolved(detail), ""); }

std::string reason_told(const review::Review& review) { return format::english(wording::verdict_reason(review)); }

demand::PushResult under_push(const model::BaseDetail& detail, double direction_rad) {
    demand::Preview preview(resolved(detail));
    return preview.push(preview.worst_case(direction_rad), direction_rad);
}

}  // namespace toehold::test
