#pragma once
// How the parts of a detail stand in a document: each is read from its element and written as one.
#include "model/base_detail.h"
#include "xml/document/element.h"
#include "xml/document/element_reader.h"

#include <array>
#include <filesystem>
#include <optional>
#include <string_view>
#include <vector>

namespace toehold::xml {

/// A whole detail as the element that is written of it.
[[nodiscard]] Element detail_element(const model::BaseDetail& detail);

/// The guard and, of a plate on the deck, how far below the walking surface it stands: the detail has its mount.
void read_guard(ElementReader& reader, model::BaseDetail& detail);
[[nodiscard]] Element guard_element(const model::BaseDetail& detail);

/// The attribute `shape` says which other attributes belong to a post; one of wood on a plate holds its shoe.
[[nodiscard]] model::Post read_post(ElementReader& reader, model::MountKind mount);
[[nodiscard]] Element post_element(const model::Post& post);

/// The two ways to give a plate.
inline constexpr std::array<std::string_view, 2> plate_names{"plate", "plate-from"};

/// What stands in `<base-detail>` for a plate on the deck: `<plate>` or `<plate-from>`, which is `plate` (absent where
/// neither is there, which has been told), `<weld>`, `<anchors>`, `<layers>`. `folder`: where a plate document is
/// looked for.
void read_plate_on_deck(ElementReader& root, std::optional<ElementReader> plate, model::PlateOnDeck& mount,
                        const std::filesystem::path& folder);
void add_plate_on_deck(Element& root, const model::PlateOnDeck& mount);

/// `<side-fastened>`, all of it but a project's id and post. Its anchors' problems are told of `anchors[1]` and so on,
/// as with a plate.
[[nodiscard]] model::SideFastened read_side_fastened(ElementReader& reader);
/// Into `element`, which is that element.
void add_side_fastened(Element& element, const model::SideFastened& mount);

/// Deck boards, under a plate or over the framing beside a post.
[[nodiscard]] model::Decking read_decking(ElementReader& reader);
[[nodiscard]] Element decking_element(const model::Decking& decking);

/// `id_required`: in a library the id is what a detail refers to; inside a detail it may be left out.
[[nodiscard]] model::Plate read_plate(ElementReader& reader, bool id_required);
[[nodiscard]] Element plate_element(const model::Plate& plate);

[[nodiscard]] model::PlateReference read_plate_reference(ElementReader& reader);
[[nodiscard]] Element plate_reference_element(const model::PlateReference& reference);

/// `<weld>` may hold `<gussets>`.
[[nodiscard]] model::Weld read_weld(ElementReader& reader);
[[nodiscard]] Element weld_element(const model::Weld& weld);

/// `<anchors>` holds one of lag-screw, wood-screw, through-bolt and reported-fastener, and perhaps a washer or, on a
/// post's side, a head plate.
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
