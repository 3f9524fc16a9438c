#include "editing/mounts/mount.h"

#include "editing/mounts/plate_on_deck.h"
#include "editing/mounts/side_fastened.h"

#include <array>
#include <variant>

namespace toehold::editing {
namespace {

/// One row for every kind of mount, in the order of `model::MountKind`.
struct MountEditing {
    void (*fields)(Form&, model::BaseDetail&);
    void (*follow)(model::BaseDetail&, const model::BaseDetail&);
    void (*drop_stale)(model::BaseDetail&, const std::filesystem::path&);
    void (*drop_changed)(model::BaseDetail&, const model::BaseDetail&);
    References (*take)(model::BaseDetail&);
    void (*give)(model::BaseDetail&, const References&);
    std::vector<Handle> (*handles)(const model::BaseDetail&, const SheetPlace&);
    Moved (*drag)(const Grip&, const SheetPlace&);
    Snapped (*snap)(drawing::Point, const model::BaseDetail&, const SnapRules&);
    HandTools (*tools)();
    Phrase (*title)(const model::BaseDetail&, Sheet);
    model::Place (*step)(const SheetPlace&, drawing::Point);
    Coordinates (*coordinates)();
    MethodWords (*method)(drawing::Method);
    drawing::Method (*design)(const model::BaseDetail&);
    SheetWords (*sheet)();
};
constexpr std::array<MountEditing, std::variant_size_v<model::Mount>> mounts{
    {{plate_on_deck::fields, plate_on_deck::follow, plate_on_deck::drop_stale, plate_on_deck::drop_changed,
      plate_on_deck::take, plate_on_deck::give, plate_on_deck::handles, plate_on_deck::drag, plate_on_deck::snap,
      plate_on_deck::tools, plate_on_deck::title, plate_on_deck::step, plate_on_deck::coordinates,
      plate_on_deck::method, plate_on_deck::design, plate_on_deck::sheet},
     {side_fastened::fields, side_fastened::follow, side_fastened::drop_stale, side_fastened::drop_changed,
      side_fastened::take, side_fastened::give, side_fastened::handles, side_fastened::drag, side_fastened::snap,
      side_fastened::tools, side_fastened::title, side_fastened::step, side_fastened::coordinates,
      side_fastened::method, side_fastened::design, side_fastened::sheet}}};

const MountEditing& mount_of(const model::BaseDetail& detail) { return mounts.at(detail.mount.index()); }

}  // namespace

void mount_fields(Form& form, model::BaseDetail& detail) { mount_of(detail).fields(form, detail); }

void follow_change(model::BaseDetail& detail, const model::BaseDetail& before) {
    if (detail.mount.index() == before.mount.index()) mount_of(detail).follow(detail, before);
}

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

std::vector<Handle> mount_handles(const model::BaseDetail& detail, const SheetPlace& place) {
    return mount_of(detail).handles(detail, place);
}

Moved mount_drag(const Grip& grip, const SheetPlace& place) { return mount_of(grip.detail).drag(grip, place); }

Snapped mount_snap(drawing::Point to, const model::BaseDetail& detail, const SnapRules& rules) {
    return mount_of(detail).snap(to, detail, rules);
}

HandTools hand_tools(const model::BaseDetail& detail) { return mount_of(detail).tools(); }

Phrase sheet_title(const model::BaseDetail& detail, Sheet sheet) { return mount_of(detail).title(detail, sheet); }

model::Place step_in(const model::BaseDetail& detail, const SheetPlace& place, drawing::Point step) {
    return mount_of(detail).step(place, step);
}

Coordinates coordinates_of(const model::BaseDetail& detail, const model::PartId& part) {
    if (part.kind == model::PartKind::anchor) return mount_of(detail).coordinates();
    return plate_on_deck::coordinates();  // of the plan, in which framing stands under every mount
}

MethodWords method_words(const model::BaseDetail& detail, drawing::Method method) {
    return mount_of(detail).method(method);
}

drawing::Method design_method(const model::BaseDetail& detail) { return mount_of(detail).design(detail); }

SheetWords sheet_words(const model::BaseDetail& detail) { return mount_of(detail).sheet(); }

model::Place typed_step(const model::BaseDetail& detail, const std::vector<model::PartId>& parts,
                        model::Position step) {
    const bool of_anchors = !parts.empty() && parts.front().kind == model::PartKind::anchor;
    if (!of_anchors) return {step.x_in, step.y_in, 0.0};
    return mount_of(detail).step({Sheet::plan, {}}, {step.x_in, step.y_in});
}

}  // namespace toehold::editing
