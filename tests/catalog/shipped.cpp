#include "catalog/shipped.h"

#include "xml/catalog/catalog_file.h"

namespace toehold::test {

const catalog::Catalog& shipped_catalog() {
    static const catalog::Catalog catalog = xml::read_catalog(TOEHOLD_DATA_FOLDER).catalog;
    return catalog;
}

}  // namespace toehold::test
