// A post on a member's side: where it is taken hold of, on the face it lies against and in the section.
#include "editing/handles/sheet_handles.h"
#include "editing/parts/anchor_places.h"
#include "editing/parts/fastener_length.h"
#include "editing/parts/measures.h"
#include "editing/parts/side_fasteners.h"

#include <utility>

namespace toehold::editing {
namespace {

const drawing::Point up_and_down{0.0, 1.0};
const drawing::Point to_and_fro{1.0, 0.0};

Handle post_bottom(const model::BaseDetail& detail) {
    return {{HandleKind::post_bottom, {model::PartKind::post}},
            {0.0, -on_side(detail).post_bottom_below_top_in},
            up_and_down};
}

void add_tip(std::vector<Handle>& handles, const model::BaseDetail& detail, const AnchorPlace& place) {
    const model::AnchorGroup* const group = model::anchor_group(detail, place.id);
    const std::optional<double> length = group == nullptr ? std::nullopt : length_in(group->fastener);
    if (!length) return;
    const LevelFastener lies = level_fastener(detail);
    handles.push_back({{HandleKind::anchor_tip, model::anchor_part(place.id)},
                       {lies.head_y_in + lies.towards_y * *length, place.at.y_in},
                       to_and_fro});
}

}  // namespace

std::vector<Handle> face_handles(const model::BaseDetail& detail) {
    std::vector<Handle> handles;
    for (const AnchorPlace& place : places_of_anchors(detail))
        handles.push_back({{HandleKind::hole, model::anchor_part(place.id)}, point(place.at)});
    handles.push_back(post_bottom(detail));
    handles.push_back(post_face(model::PlanAxis::x, {half_post_in(detail.post, model::PlanAxis::x), 0.0}, to_and_fro));
    return handles;
}

std::vector<Handle> side_section_handles(const model::BaseDetail& detail, const drawing::SectionPlane& plane) {
    if (plane.along != model::PlanAxis::y) return {};
    std::vector<Handle> handles;
    // Whatever their place along the rail, the section shows all fasteners.
    for (const AnchorPlace& place : places_of_anchors(detail)) {
        handles.push_back({{HandleKind::hole, model::anchor_part(place.id)},
                           {level_fastener(detail).head_y_in, place.at.y_in},
                           up_and_down});
        add_tip(handles, detail, place);
    }
    handles.push_back(post_bottom(detail));
    for (Handle& handle : cut_block_handles(detail.framing, plane, 0.0)) handles.push_back(std::move(handle));
    return handles;
}

}  // namespace toehold::editing
