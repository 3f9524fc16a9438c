#pragma once
// How the parts of a detail stand in a document: each is read from its element and written as one.
#include "model/base_detail.h"
#include "xml/document/element.h"
#include "xml/document/element_reader.h"

#include <filesystem>
#include <vector>

namespace toehold::xml {

/// A whole detail as the element that is written of it.
[[nodiscard]] Element detail_element(const model::BaseDetail& detail);

/// The guard and how far below the walking surface the mount stands.
void read_guard(ElementReader& reader, model::BaseDetail& detail);
[[nodiscard]] Element guard_element(const model::BaseDetail& detail);

/// The attribute `shape` says which other attributes belong to a post; one of wood holds its shoe.
[[nodiscard]] model::Post read_post(ElementReader& reader);
[[nodiscard]] Element post_element(const model::Post& post);

/// What stands in `<base-detail>` for the mount: `<plate>` or `<plate-from>`, `<weld>`, `<anchors>`, `<layers>`.
/// `folder`: where a plate document is looked for.
void read_plate_on_deck(ElementReader& root, model::PlateOnDeck& mount, const std::filesystem::path& folder);
void add_plate_on_deck(Element& root, const model::PlateOnDeck& mount);

/// `id_required`: in a library the id is what a detail refers to; inside a detail it may be left out.
[[nodiscard]] model::Plate read_plate(ElementReader& reader, bool id_required);
[[nodiscard]] Element plate_element(const model::Plate& plate);

[[nodiscard]] model::PlateReference read_plate_reference(ElementReader& reader);
[[nodiscard]] Element plate_reference_element(const model::PlateReference& reference);

/// `<weld>` may hold `<gussets>`.
[[nodiscard]] model::Weld read_weld(ElementReader& reader);
[[nodiscard]] Element weld_element(const model::Weld& weld);

/// `<anchors>` holds one of lag-screw, wood-screw, through-bolt and reported-fastener, and perhaps a washer.
[[nodiscard]] model::AnchorGroup read_anchor_group(ElementReader& reader);
[[nodiscard]] Element anchor_group_element(const model::AnchorGroup& group);

[[nodiscard]] model::Framing read_framing(ElementReader& reader);
[[nodiscard]] Element framing_element(const model::Framing& framing);

/// One of nails, screws, toe-nails, angles and connector inside `holder`, or none.
[[nodiscard]] model::EndConnection read_connection(ElementReader& holder);
/// Nothing is added where nothing is described.
void add_connection(Element& holder, const model::EndConnection& connection);

/// `stated` is set when at least one load is named.
[[nodiscard]] model::Loads read_loads(ElementReader& reader);
[[nodiscard]] Element loads_element(const model::Loads& loads);

/// What the file leaves out stays absent: the model has the defaults.
[[nodiscard]] model::Basis read_basis(ElementReader& reader);
[[nodiscard]] Element basis_element(const model::Basis& basis);

/// In the order in which they were made.
[[nodiscard]] std::vector<model::Remark> read_remarks(ElementReader& reader);
[[nodiscard]] Element remarks_element(const std::vector<model::Remark>& remarks);

}  // namespace toehold::xml
