#include "editing/fields.h"

#include "editing/fields/groups.h"
#include "editing/mounts/mount.h"

namespace toehold::editing {
namespace {

Form describe(model::BaseDetail& detail, const catalog::Catalog& catalog, units::System system) {
    Form form(catalog, system);
    detail_fields(form, detail);
    guard_fields(form, detail);
    load_fields(form, detail.loads);
    post_fields(form, detail);
    mount_fields(form, detail);
    framing_fields(form, detail.framing);
    material_fields(form, detail);
    basis_fields(form, detail.basis);
    remark_fields(form, detail.remarks);
    return form;
}

Phrase step_for(const Field& field) { return phrase("Change {}: {}", field.group, field.label); }

}  // namespace

std::vector<Field> fields(const model::BaseDetail& detail, const catalog::Catalog& catalog, units::System system) {
    model::BaseDetail described = detail;
    const Form form = describe(described, catalog, system);
    std::vector<Field> all;
    all.reserve(form.entries().size());
    for (const Entry& entry : form.entries()) all.push_back(entry.field);
    return all;
}

FieldEdit set_field(const model::BaseDetail& detail, const catalog::Catalog& catalog, units::System system,
                    const std::string& path, const std::string& text) {
    model::BaseDetail changed = detail;
    const Form form = describe(changed, catalog, system);
    for (const Entry& entry : form.entries()) {
        if (entry.field.path != path) continue;
        const Outcome outcome = entry.set(text);
        if (!outcome.refusal.empty()) return {std::nullopt, {}, outcome.refusal};
        follow_change(changed, detail);
        drop_changed_references(changed, detail);
        const Phrase step = outcome.step.empty() ? step_for(entry.field) : outcome.step;
        return {std::move(changed), step, {}};
    }
    return {std::nullopt, {}, phrase("This detail has no field {}.", path)};
}

}  // namespace toehold::editing
