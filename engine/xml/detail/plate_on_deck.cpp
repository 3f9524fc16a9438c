#include "catalog/closest_ids.h"
#include "xml/detail/parts.h"
#include "xml/detail/plates_file.h"

#include <array>

namespace toehold::xml {
namespace {

using format::phrase;

using units::Kind;

/// The plate the detail refers to, from its document beside the detail.
model::Plate fetch_plate(ElementReader& reader, model::PlateReference& reference, const std::filesystem::path& folder) {
    if (std::filesystem::path(reference.file).is_absolute()) {
        reader.report(phrase("a plate document is named from the detail's own folder"), "file",
                      phrase("a relative path"));
        return {};
    }
    const PlatesRead library = read_plates(folder / reference.file);
    std::vector<std::string> known;
    for (const model::Plate& plate : library.plates) {
        if (plate.id == reference.id) {
            reference.found_sha256 = plate_sha256(plate);
            return plate;
        }
        known.push_back(plate.id);
    }
    if (library.problems.empty()) {
        reader.report(phrase("{} has no plate with this id", reference.file), "id",
                      catalog::accepted_ids(reference.id, known));
    } else {
        reader.report(phrase("the plate document cannot be used"), "file");
        reader.report(library.problems);
    }
    return {};
}

void read_plate_part(ElementReader& part, model::PlateOnDeck& mount, const std::filesystem::path& folder) {
    if (part.name() == "plate") {
        mount.plate = read_plate(part, false);
        return;
    }
    // Problems of the plate in this detail are told of its `plate`; here that is the line of the reference.
    part.stands_for("plate");
    model::PlateReference& reference = mount.plate_reference.emplace(read_plate_reference(part));
    if (!reference.file.empty()) mount.plate = fetch_plate(part, reference, folder);
}

constexpr std::array<Word<model::PackingShape>, 2> packing_shapes{
    {{"rectangle", model::PackingShape::rectangle}, {"round", model::PackingShape::round}}};

model::Packing read_packing(ElementReader& reader) {
    model::Packing packing;
    packing.shape =
        reader.optional_choice<model::PackingShape>("shape", packing_shapes).value_or(model::PackingShape::rectangle);
    if (packing.shape == model::PackingShape::round) {
        packing.width_in = reader.quantity("diameter", Kind::length, Sign::positive);
    } else {
        packing.width_in = reader.quantity("width", Kind::length, Sign::positive);
        packing.depth_in = reader.quantity("depth", Kind::length, Sign::positive);
    }
    packing.material = reader.id("material");
    packing.hole_in = reader.optional_quantity("hole", Kind::length, Sign::positive).value_or(0.0);
    for (ElementReader& at : reader.children("at")) {
        packing.places.push_back(
            {at.quantity("x", Kind::length, Sign::any), at.quantity("y", Kind::length, Sign::any)});
    }
    return packing;
}

Element packing_element(const model::Packing& packing) {
    Element element("packing");
    if (packing.shape == model::PackingShape::round) {
        element.text("shape", "round").quantity("diameter", packing.width_in, Kind::length);
    } else {
        element.quantity("width", packing.width_in, Kind::length).quantity("depth", packing.depth_in, Kind::length);
    }
    element.text("material", packing.material).given_quantity("hole", packing.hole_in, Kind::length);
    for (const model::Position place : packing.places) {
        Element at("at");
        element.child(at.quantity("x", place.x_in, Kind::length).quantity("y", place.y_in, Kind::length));
    }
    return element;
}

/// `<layers/>` without a child says that the plate stands on the framing itself.
model::Layers read_layers(ElementReader& reader) {
    const auto thickness_in = [](ElementReader& layer) {
        return layer.quantity("thickness", Kind::length, Sign::positive);
    };
    model::Layers layers;
    if (std::optional<ElementReader> decking = reader.optional_child("decking"))
        layers.decking = read_decking(*decking);
    if (std::optional<ElementReader> packing = reader.optional_child("packing"))
        layers.packing = read_packing(*packing);
    for (ElementReader& shim : reader.children("shim")) {
        layers.shims.push_back({shim.id("material"), thickness_in(shim)});
    }
    return layers;
}

Element layers_element(const model::Layers& layers) {
    Element element("layers");
    if (layers.decking) element.child(decking_element(*layers.decking));
    if (layers.packing) element.child(packing_element(*layers.packing));
    for (const model::Shim& shim : layers.shims) {
        Element item("shim");
        element.child(item.text("material", shim.material).quantity("thickness", shim.thickness_in, Kind::length));
    }
    return element;
}

}  // namespace

void read_plate_on_deck(ElementReader& root, std::optional<ElementReader> plate, model::PlateOnDeck& mount,
                        const std::filesystem::path& folder) {
    if (plate) read_plate_part(*plate, mount, folder);
    if (std::optional<ElementReader> part = root.optional_child("weld")) mount.weld = read_weld(*part);
    for (ElementReader& part : root.children("anchors")) mount.anchors.push_back(read_anchor_group(part));
    if (std::optional<ElementReader> part = root.child("layers")) mount.layers = read_layers(*part);
}

void add_plate_on_deck(Element& root, const model::PlateOnDeck& mount) {
    root.child(mount.plate_reference ? plate_reference_element(*mount.plate_reference) : plate_element(mount.plate));
    if (mount.weld) root.child(weld_element(*mount.weld));
    for (const model::AnchorGroup& group : mount.anchors) root.child(anchor_group_element(group));
    root.child(layers_element(mount.layers));
}

}  // namespace toehold::xml
