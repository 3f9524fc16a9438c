#include "editing/fields/choices.h"
#include "editing/fields/groups.h"
#include "editing/words.h"

#include <fmt/format.h>

namespace toehold::editing {
namespace {

/// The document the plate is from: naming one refers to it, naming none puts the plate into the detail.
void document_field(Form& form, model::BaseDetail& detail) {
    Field field = form.fresh(
        {"file", TOEHOLD_MARK("Plate document"),
         TOEHOLD_MARK(
             "The plate document, named from the detail's folder, that holds this plate. Kept only while it "
             "gives the plate as drawn. Empty, and once the plate is changed: the plate stands in the detail itself.")},
        FieldKind::text);
    field.may_be_empty = true;
    if (on_deck(detail).plate_reference) field.value = on_deck(detail).plate_reference->file;
    form.add(std::move(field), [&detail](const std::string& text) -> Outcome {
        const Reading<std::string> read = read_words("Plate document", text);
        if (!read.value) return {read.refusal};
        if (read.value->empty()) {
            on_deck(detail).plate_reference.reset();
            return {};
        }
        if (!on_deck(detail).plate_reference && on_deck(detail).plate.id.empty()) {
            return {"Plate document takes a plate by its id: give the plate an id first."};
        }
        if (!on_deck(detail).plate_reference)
            on_deck(detail).plate_reference = model::PlateReference{{}, on_deck(detail).plate.id, {}, {}};
        on_deck(detail).plate_reference->file = *read.value;
        return {};
    });
}

void pin_field(Form& form, model::PlateReference& reference) {
    Field field =
        form.fresh({"sha256", TOEHOLD_MARK("Pinned to"),
                    TOEHOLD_MARK("SHA-256 of the plate this detail was made with, 64 digits; listed is that of "
                                 "the plate as found. Empty: not pinned, and a change of it goes unseen.")},
                   FieldKind::text);
    field.value = reference.sha256;
    field.may_be_empty = true;
    if (!reference.found_sha256.empty()) field.choices = id_choices({reference.found_sha256});
    form.add(std::move(field), [&reference](const std::string& text) -> Outcome {
        const std::string digest = trimmed(text);
        constexpr std::size_t digits = 64;
        const bool all = digest.find_first_not_of("0123456789abcdef") == std::string::npos;
        if (!digest.empty() && (digest.size() != digits || !all)) {
            return {"Pinned to takes 64 hexadecimal digits in lower case."};
        }
        reference.sha256 = digest;
        return {};
    });
}

void reference_fields(Form& form, model::BaseDetail& detail) {
    form.at({"plate/from", "plate", TOEHOLD_MARK("Plate")});
    document_field(form, detail);
    if (!on_deck(detail).plate_reference) return;
    form.id({"id", TOEHOLD_MARK("Plate in the document"), TOEHOLD_MARK("Id of the plate in its document.")},
            on_deck(detail).plate_reference->id, {});
    pin_field(form, *on_deck(detail).plate_reference);
}

void optional_id(Form& form, std::string& id) {
    Field field = form.fresh(
        {"id", TOEHOLD_MARK("Id"), TOEHOLD_MARK("A short name, unique in a plate document. Empty: it has none.")},
        FieldKind::text);
    field.value = id;
    field.may_be_empty = true;
    form.add(std::move(field), [&id](const std::string& text) -> Outcome {
        if (trimmed(text).empty()) {
            id.clear();
            return {};
        }
        const Reading<std::string> read = read_id("Id", text, {});
        if (!read.value) return {read.refusal};
        id = *read.value;
        return {};
    });
}

}  // namespace

void plate_fields(Form& form, model::BaseDetail& detail) {
    reference_fields(form, detail);
    model::Plate& plate = on_deck(detail).plate;
    form.at({"plate", "plate", TOEHOLD_MARK("Plate")});
    optional_id(form, plate.id);
    form.text({"name", TOEHOLD_MARK("Name"), TOEHOLD_MARK("What the plate is called. Empty: it has no name.")},
              plate.name);
    form.pick({"metal", TOEHOLD_MARK("Metal"), TOEHOLD_MARK("Its strength is looked up in the catalogs.")}, plate.metal,
              row_choices(form.catalog().metals));
    form.length({"thickness", TOEHOLD_MARK("Thickness"), TOEHOLD_MARK("Of the plate.")}, plate.thickness_in);
    hole_count(form, detail);
    outline_fields(form, plate.outline);
    hole_fields(form, detail);
}

}  // namespace toehold::editing
