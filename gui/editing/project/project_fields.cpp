#include "editing/project/project_fields.h"

#include "editing/project/groups.h"
#include "editing/project/put_back.h"

#include <algorithm>

namespace toehold::editing {
namespace {

Form describe(model::Project& project, const catalog::Catalog& catalog, units::System system) {
    Form form(catalog, system);
    form.at({"", {}, phrase("Project")});
    form.text({"name", phrase("Name"), phrase("Of the project, as its papers show it. Empty: not named.")},
              project.name);
    form.text({"note", phrase("Note"), phrase("Kept with the project; nothing is computed from it.")}, project.note);
    line_fields(form, project);
    post_at_fields(form, project);
    return form;
}

}  // namespace

std::vector<Field> project_fields(const model::Project& project, const catalog::Catalog& catalog,
                                  units::System system) {
    model::Project described = project;
    const Form form = describe(described, catalog, system);
    std::vector<Field> all;
    all.reserve(form.entries().size());
    for (const Entry& entry : form.entries()) all.push_back(entry.field);
    return all;
}

ProjectFieldEdit set_project_field(const model::Project& project, const catalog::Catalog& catalog, units::System system,
                                   const std::string& path, const std::string& text) {
    model::Project changed = project;
    const Form form = describe(changed, catalog, system);
    const auto entry = std::find_if(form.entries().begin(), form.entries().end(),
                                    [&path](const Entry& one) { return one.field.path == path; });
    if (entry == form.entries().end()) return {std::nullopt, {}, phrase("This project has no field {}.", path)};
    const Outcome outcome = entry->set(text);
    if (!outcome.refusal.empty()) return {std::nullopt, {}, outcome.refusal};
    if (const Phrase problem = new_problem(project, changed); !problem.empty()) return {std::nullopt, {}, problem};
    const Phrase step =
        outcome.step.empty() ? phrase("Change {}: {}", entry->field.group, entry->field.label) : outcome.step;
    return {std::move(changed), step, {}};
}

}  // namespace toehold::editing
