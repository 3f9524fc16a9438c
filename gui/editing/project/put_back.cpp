#include "editing/project/put_back.h"

#include <algorithm>

namespace toehold::editing {
namespace {

using format::Phrase;
using format::phrase;

Phrase left_behind(const model::BaseDetail& before, const model::BaseDetail& base) {
    format::Listed parts;
    if (base.framing != before.framing) parts.items.push_back(phrase("framing"));
    if (base.guard != before.guard) parts.items.push_back(phrase("guard"));
    if (base.loads != before.loads) parts.items.push_back(phrase("loads"));
    if (base.basis != before.basis) parts.items.push_back(phrase("basis"));
    if (base.remarks != before.remarks) parts.items.push_back(phrase("remarks"));
    if (parts.items.empty()) return {};
    return phrase("What was changed here of {} belongs to the whole project and stays in this copy.", std::move(parts));
}

}  // namespace

Phrase new_problem(const model::Project& before, const model::Project& after) {
    const model::Problems now = model::validate(after);
    if (now.empty()) return {};  // each looks into every post's detail
    const model::Problems known = model::validate(before);
    for (const model::Problem& problem : now) {
        if (std::find(known.begin(), known.end(), problem) == known.end())
            return format::verbatim(model::sentence(problem));
    }
    return {};
}

PutBack put_back(const model::Project& project, const std::string& post, const model::BaseDetail& before,
                 const model::BaseDetail& base) {
    PutBack result;
    result.left_behind = left_behind(before, base);
    const model::PlacedPost* const placed = model::find_post(project, post);
    if (placed == nullptr) {
        result.refusal = phrase("The project has no post {} any more.", post);
        return result;
    }
    model::Project changed = project;
    for (model::NamedMount& mount : changed.mounts) {
        if (mount.id != placed->mount) continue;
        mount.post = base.post;
        mount.mount = base.mount;
    }
    if (changed == project) {
        result.refusal = phrase("Mount {} of the project is as this base has it.", placed->mount);
        return result;
    }
    result.refusal = new_problem(project, changed);
    if (!result.refusal.empty()) return result;
    for (const model::PlacedPost& one : project.posts) {
        if (one.mount == placed->mount) result.posts.push_back(one.id);
    }
    result.step = phrase("Change mount {}", placed->mount);
    result.project = std::move(changed);
    return result;
}

}  // namespace toehold::editing
