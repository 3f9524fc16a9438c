#pragma once
// How the rows of a catalog stand in a document. Every row says its `evidence` and its `source`.
#include "catalog/catalog.h"
#include "xml/catalog/row_index.h"
#include "xml/document/element_reader.h"

namespace toehold::xml {

[[nodiscard]] catalog::Source read_source(ElementReader& row);
/// `kind`; carbon steel when left out.
[[nodiscard]] catalog::MetalKind read_bolt_metal(ElementReader& row);

/// `species`, `lumber`, `decking`.
void read_wood(ElementReader& root, CatalogIndex& index, catalog::Catalog& catalog);
/// `lag-screw`, `wood-screw`, `bolt`, `bolt-grade`, `washer`.
void read_fasteners(ElementReader& root, CatalogIndex& index, catalog::Catalog& catalog);
/// `metal`, `filler`.
void read_metals(ElementReader& root, CatalogIndex& index, catalog::Catalog& catalog);

/// Reads every child of this name with `read(row, index)` and gives it its place in the index.
template <class Row, class Read>
void read_rows(ElementReader& root, std::string_view name, CatalogIndex& index, std::vector<Row>& rows, Read read) {
    for (ElementReader& row : root.children(name)) {
        index.add(row);
        rows.push_back(read(row, index));
    }
}

/// A problem with the row unless `holds`.
void expect(ElementReader& row, bool holds, const format::Phrase& message, std::string_view attribute);

}  // namespace toehold::xml
