#pragma once
// What the parts of the face view share, and the parts themselves. Coordinates: x and z; where `right` is -1 the
// drawing is seen from outside, and x runs to the left.
#include "drawing/section/profile.h"
#include "drawing/side/shape.h"

namespace toehold::drawing::side {

struct FaceSheet {
    const Subject& subject;
    const PlanOptions& options;
    Shape shape;
    std::vector<Fixing> fixings;
    double right = 1.0;
    Box shown;

    [[nodiscard]] Point at(double x_in, double z_in) const { return {right * x_in, z_in}; }
    [[nodiscard]] Box box(Span across, Span upright) const;
};
[[nodiscard]] FaceSheet face_sheet(const Subject& subject, const PlanOptions& options, double right = 1.0);

/// Out to the edge of what covers a place: its head plate, washer, head or hole.
[[nodiscard]] double covered_radius_in(const Fixing& fixing);

// face_parts.cpp
/// Boards over it, the member, and what lies behind it as hidden edges.
void add_face_member(Scene& scene, const FaceSheet& sheet);
void add_face_behind(Scene& scene, const FaceSheet& sheet);
/// Members that end at the member's back, and blocks along it, within what the sheet shows.
[[nodiscard]] std::vector<Profile> members_behind(const FaceSheet& sheet);
void add_face_names(Scene& scene, const FaceSheet& sheet);
/// Post, broken off above, and its bracket plate with the weld.
void add_face_post(Scene& scene, const FaceSheet& sheet);
/// Head plates, washers and holes, with center marks; ties as small squares.
void add_face_places(Scene& scene, const FaceSheet& sheet);

// face_dimensions.cpp
void add_face_dimensions(Scene& scene, const FaceSheet& sheet);
/// From the places under the hand to the edges of post and member.
void add_face_measured(Scene& scene, const FaceSheet& sheet);

// face_forces.cpp
void add_face_bearing(Scene& scene, const FaceSheet& sheet);
void add_face_marks(Scene& scene, const FaceSheet& sheet);
void add_face_push(Scene& scene, const FaceSheet& sheet);

}  // namespace toehold::drawing::side
