#pragma once
// The details in data/demo, by their file's name without `.xml`.
#include "catalog/resolve.h"
#include "model/validate.h"
#include "review/review.h"
#include "xml/catalog/catalog_file.h"
#include "xml/detail/detail_file.h"

#include <stdexcept>
#include <string>

namespace toehold::test {

inline const catalog::Catalog& catalogs() {
    static const catalog::Catalog catalog = xml::read_catalog(TOEHOLD_DATA_FOLDER).catalog;
    return catalog;
}

inline catalog::Resolved shipped_detail(const std::string& name) {
    const xml::DetailRead read = xml::read_detail(std::string(TOEHOLD_DATA_FOLDER) + "/demo/" + name + ".xml");
    if (!read.detail) throw std::runtime_error("cannot read the shipped detail " + name);
    const catalog::Resolution resolution = catalog::resolve(*read.detail, catalogs());
    if (!resolution.resolved) throw std::runtime_error("cannot resolve the shipped detail " + name);
    return *resolution.resolved;
}

inline review::Review shipped_review(const std::string& name) { return review::review(shipped_detail(name), ""); }

}  // namespace toehold::test
