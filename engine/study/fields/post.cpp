// The post's section, and its weld. Of a tube over a stub, a wood post in its shoe and twin bars, what must follow is
// not one scalar's to say: they have no such field.
#include "study/fields/groups.h"

#include "model/base_detail.h"
#include "model/follow_joint.h"

#include <algorithm>

namespace toehold::study {
namespace {

using format::Phrase;
using format::phrase;
using model::BaseDetail;
using model::RectangularTube;
using model::RoundTube;
using model::SolidBar;

Field length_field(const char* id, Phrase name, Phrase help, double now, double step) {
    Field field;
    field.id = id;
    field.name = std::move(name);
    field.help = std::move(help);
    field.now = now;
    field.step = step;
    field.range = about(now, step);
    return field;
}

/// Framing that lies against the post's side goes with its face.
template <class Post, class Set>
Phrase set_section(BaseDetail& made, Set set) {
    std::optional<model::SideJoint> before;
    if (kind(made.mount) == model::MountKind::side_fastened) before = model::side_joint(made);
    set(std::get<Post>(made.post));
    if (before) model::framing_follows(made, *before);
    return {};
}

Phrase section_help() { return phrase("Outside of the post; its wall stays, and the weld goes round it."); }

void add_square_tube(FieldList& list, const RectangularTube& tube) {
    add(list, length_field("post-size", phrase("post size"), section_help(), tube.width_in, 0.25),
        [](BaseDetail& made, double value) {
            return set_section<RectangularTube>(
                made, [value](RectangularTube& post) { post.width_in = post.depth_in = value; });
        });
}

void add_rectangular_tube(FieldList& list, const RectangularTube& tube) {
    add(list, length_field("post-width", phrase("post width (along the rail)"), section_help(), tube.width_in, 0.25),
        [](BaseDetail& made, double value) {
            std::get<RectangularTube>(made.post).width_in = value;
            return Phrase();
        });
    add(list, length_field("post-depth", phrase("post depth (across the rail)"), section_help(), tube.depth_in, 0.25),
        [](BaseDetail& made, double value) {
            return set_section<RectangularTube>(made, [value](RectangularTube& post) { post.depth_in = value; });
        });
}

void add_wall(FieldList& list, double now_in) {
    constexpr double sixteenth_in = 0.0625;
    Field field = length_field("post-wall", phrase("post wall"), phrase("Wall of the tube; its outside stays."), now_in,
                               sixteenth_in);
    field.range = {std::min(sixteenth_in, now_in), std::max(0.375, now_in)};
    add(list, std::move(field), [](BaseDetail& made, double value) {
        if (auto* const tube = std::get_if<RectangularTube>(&made.post)) tube->wall_in = value;
        if (auto* const tube = std::get_if<RoundTube>(&made.post)) tube->wall_in = value;
        return Phrase();
    });
}

void add_fields_of(FieldList& list, const RectangularTube& tube) {
    if (tube.stub) return;
    if (tube.width_in == tube.depth_in) {
        add_square_tube(list, tube);
    } else {
        add_rectangular_tube(list, tube);
    }
    add_wall(list, tube.wall_in);
}

void add_fields_of(FieldList& list, const RoundTube& tube) {
    if (tube.stub) return;
    add(list, length_field("post-size", phrase("post diameter"), section_help(), tube.diameter_in, 0.25),
        [](BaseDetail& made, double value) {
            return set_section<RoundTube>(made, [value](RoundTube& post) { post.diameter_in = value; });
        });
    add_wall(list, tube.wall_in);
}

void add_fields_of(FieldList& list, const SolidBar& bar) {
    if (bar.width_in != bar.depth_in) return;
    add(list,
        length_field("post-size", phrase("post size"), phrase("Side, or diameter, of the bar."), bar.width_in, 0.25),
        [](BaseDetail& made, double value) {
            return set_section<SolidBar>(made, [value](SolidBar& post) { post.width_in = post.depth_in = value; });
        });
}

template <class Other>
void add_fields_of(FieldList& /*list*/, const Other& /*post*/) {}

void add_weld(FieldList& list, const BaseDetail& detail) {
    const auto* const mount = std::get_if<model::PlateOnDeck>(&detail.mount);
    if (mount == nullptr) return;
    const std::optional<model::Weld>& weld = mount->weld;
    if (!weld || weld->kind != model::WeldKind::fillet) return;
    constexpr double sixteenth_in = 0.0625;
    Field field = length_field("weld-leg", phrase("weld leg"), phrase("Leg of the fillet at the post's foot."),
                               weld->leg_in, sixteenth_in);
    field.range = {std::min(0.125, weld->leg_in), std::max(0.375, weld->leg_in)};
    add(list, std::move(field), [](BaseDetail& made, double value) {
        on_deck(made).weld->leg_in = value;
        return Phrase();
    });
}

}  // namespace

void add_post_fields(FieldList& list, const Subject& subject) {
    std::visit([&list](const auto& post) { add_fields_of(list, post); }, subject.resolved.detail.post);
    add_weld(list, subject.resolved.detail);
}

}  // namespace toehold::study
