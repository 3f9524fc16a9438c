#include "editing/mounts/mount.h"

#include "editing/mounts/plate_on_deck.h"

#include <array>
#include <variant>

namespace toehold::editing {
namespace {

/// One row for every kind of mount, in the order of `model::MountKind`.
struct MountEditing {
    void (*fields)(Form&, model::BaseDetail&);
    void (*drop_stale)(model::BaseDetail&, const std::filesystem::path&);
    void (*drop_changed)(model::BaseDetail&, const model::BaseDetail&);
    References (*take)(model::BaseDetail&);
    void (*give)(model::BaseDetail&, const References&);
};
constexpr std::array<MountEditing, std::variant_size_v<model::Mount>> mounts{
    {{plate_on_deck::fields, plate_on_deck::drop_stale, plate_on_deck::drop_changed, plate_on_deck::take,
      plate_on_deck::give}}};

const MountEditing& mount_of(const model::BaseDetail& detail) { return mounts.at(detail.mount.index()); }

}  // namespace

void mount_fields(Form& form, model::BaseDetail& detail) { mount_of(detail).fields(form, detail); }

void drop_stale_references(model::BaseDetail& detail, const std::filesystem::path& file) {
    mount_of(detail).drop_stale(detail, file);
}

void drop_changed_references(model::BaseDetail& detail, const model::BaseDetail& before) {
    if (detail.mount.index() == before.mount.index()) mount_of(detail).drop_changed(detail, before);
}

References take_references(model::BaseDetail& detail) { return mount_of(detail).take(detail); }

void give_references(model::BaseDetail& detail, const References& references) {
    mount_of(detail).give(detail, references);
}

}  // namespace toehold::editing
