#include "editing/mounts/plate_on_deck.h"

#include "editing/fields/groups.h"
#include "editing/parts/holes.h"
#include "xml/detail/plates_file.h"

#include <optional>

namespace toehold::editing::plate_on_deck {
namespace {

constexpr auto file_name = "plate-file", id_name = "plate-id", sha256_name = "plate-sha256";

/// Empty where none has the name.
std::string word(const References& references, const char* name) {
    const auto found = references.find(name);
    return found == references.end() ? std::string() : found->second;
}

}  // namespace

void fields(Form& form, model::BaseDetail& detail) {
    weld_fields(form, detail);
    plate_fields(form, detail);
    anchor_fields(form, detail);
    layer_fields(form, on_deck(detail).layers);
}

void follow(model::BaseDetail& /*detail*/, const model::BaseDetail& /*before*/) {}

void drop_stale(model::BaseDetail& detail, const std::filesystem::path& file) {
    model::PlateOnDeck& mount = on_deck(detail);
    if (!mount.plate_reference) return;
    const std::optional<model::Plate> plate = xml::referred_plate(*mount.plate_reference, file);
    if (!plate || !(*plate == mount.plate)) own_plate(detail);
}

void drop_changed(model::BaseDetail& detail, const model::BaseDetail& before) {
    if (!(on_deck(detail).plate == on_deck(before).plate)) own_plate(detail);
}

References take(model::BaseDetail& detail) {
    const std::optional<model::PlateReference> reference = on_deck(detail).plate_reference;
    own_plate(detail);
    if (!reference) return {};
    return {{file_name, reference->file}, {id_name, reference->id}, {sha256_name, reference->sha256}};
}

void give(model::BaseDetail& detail, const References& references) {
    if (!references.contains(file_name)) return;
    const std::string digest = xml::plate_sha256(on_deck(detail).plate);
    on_deck(detail).plate_reference = model::PlateReference{word(references, file_name), word(references, id_name),
                                                            word(references, sha256_name), digest};
}

Snapped snap(drawing::Point to, const model::BaseDetail& detail, const SnapRules& rules) {
    return editing::snap(to, on_deck(detail).plate, {}, rules);
}

}  // namespace toehold::editing::plate_on_deck
