// A post of a project: its mark, where it stands, and on which mount.
#include "editing/fields/choices.h"
#include "editing/project/groups.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace toehold::editing {
namespace {

const std::array<Word<model::PostFacing>, 4> ways{{{model::PostFacing::plus_y, "+y", phrase("+y")},
                                                   {model::PostFacing::minus_y, "-y", phrase("-y")},
                                                   {model::PostFacing::plus_x, "+x", phrase("+x")},
                                                   {model::PostFacing::minus_x, "-x", phrase("-x")}}};

/// The post before this one in the first guard line where there is one; nullptr: in none.
const model::PlacedPost* post_before(const model::Project& project, const std::string& id) {
    for (const model::GuardLine& line : project.guard_lines) {
        const auto here = std::find(line.posts.begin(), line.posts.end(), id);
        if (here != line.posts.end() && here != line.posts.begin()) return model::find_post(project, *(here - 1));
    }
    return nullptr;
}

/// From the axis of the post before, in plan; setting it moves this post alone.
void spacing_field(Form& form, const model::Project& project, model::PlacedPost& post) {
    const model::PlacedPost* const before = post_before(project, post.id);
    if (before == nullptr) return;
    const model::Position from = before->at;
    const double apart_in = std::hypot(post.at.x_in - from.x_in, post.at.y_in - from.y_in);
    if (!(apart_in > 0.0)) return;
    Field field =
        form.fresh({"spacing", phrase("From post {}", before->id),
                    phrase("Between the axes, in plan. Moves this post alone, along the rail: the other posts "
                           "and the framing stay where they are.")},
                   FieldKind::quantity);
    field.value = shown(apart_in, units::Kind::length, form.system());
    form.add(std::move(field), [&post, from, apart_in, system = form.system()](const std::string& text) -> Outcome {
        const Reading<double> read =
            read_quantity(phrase("Spacing"), text, units::Kind::length, system, Range::positive);
        if (!read.value) return {read.refusal};
        const double scale = *read.value / apart_in;
        post.at = {from.x_in + scale * (post.at.x_in - from.x_in), from.y_in + scale * (post.at.y_in - from.y_in)};
        return {};
    });
}

std::vector<std::string> other_marks(const model::Project& project, const std::string& own) {
    std::vector<std::string> all;
    for (const model::PlacedPost& post : project.posts) {
        if (post.id != own) all.push_back(post.id);
    }
    return all;
}

void rename_in_lines(std::vector<model::GuardLine>& lines, const std::string& old, const std::string& fresh) {
    for (model::GuardLine& line : lines) std::replace(line.posts.begin(), line.posts.end(), old, fresh);
}

std::vector<Choice> mount_choices(const model::Project& project) {
    std::vector<Choice> all;
    for (const model::NamedMount& mount : project.mounts) all.push_back({mount.id, format::verbatim(mount.id)});
    return all;
}

void one_post(Form& form, model::Project& project, model::PlacedPost& post) {
    form.at({"post[" + post.id + "]", {model::PartKind::post, post.id}, phrase("Post {}", post.id)});
    form.id({"mark", phrase("Mark"), phrase("Its name on every paper. The guard lines follow it.")}, post.id,
            other_marks(project, post.id),
            [&project, &post](const std::string& old) { rename_in_lines(project.guard_lines, old, post.id); });
    form.pick({"mount", phrase("Mount"), phrase("How it is fastened, of the mounts this project describes.")},
              post.mount, mount_choices(project));
    spacing_field(form, project, post);
    form.place({"x", phrase("x"),
                phrase("Of the post's axis, in the project's plan. The framing does not move with "
                       "it.")},
               post.at.x_in);
    form.place({"y", phrase("y"),
                phrase("Of the post's axis, in the project's plan. The framing does not move with "
                       "it.")},
               post.at.y_in);
    form.word({"facing", phrase("Faces"), phrase("Outward, in the project's plan.")}, post.facing, ways);
    form.zero_if_empty(
        {"rise", phrase("Rise"), phrase("Of the walking surface at the post above the project's. Empty: 0, level.")},
        post.rise_in, units::Kind::length, Range::any);
}

}  // namespace

void post_at_fields(Form& form, model::Project& project) {
    for (model::PlacedPost& post : project.posts) one_post(form, project, post);
}

}  // namespace toehold::editing
