// The guard the post belongs to.
#include "editing/fields/groups.h"

#include <array>

namespace toehold::editing {
namespace {

const std::array<Word<model::Occupancy>, 3> occupancies{
    {{model::Occupancy::one_and_two_family, "one-and-two-family", phrase("One- or two-family dwelling")},
     {model::Occupancy::limited, "limited", phrase("Group I-3, F, H or S, not open to the public, under 50 people")},
     {model::Occupancy::other, "other", phrase("Any other")}}};

}  // namespace

void guard_fields(Form& form, model::BaseDetail& detail) {
    model::Guard& guard = detail.guard;
    form.at({"guard", {model::PartKind::guard}, phrase("Guard")});
    form.length({"height", phrase("Height"), phrase("Top of the guard above the walking surface.")}, guard.height_in);
    if (auto* const plate = std::get_if<model::PlateOnDeck>(&detail.mount)) {
        form.zero_if_empty({"plate-below-surface", phrase("Plate below the surface"),
                            phrase("Underside of the plate below the walking surface. Empty: 0, the plate stands on "
                                   "the decking.")},
                           plate->plate_below_surface_in, units::Kind::length, Range::not_negative);
    }
    form.word({"occupancy", phrase("Occupancy"),
               phrase("Decides which pushes the code asks for. Where it is not known, any other is the safer.")},
              guard.occupancy, occupancies);
    form.optional_quantity(
        {"tributary-length", phrase("Tributary length"),
         phrase("Length of top rail this post takes: the spacing of the posts. The code's load along "
                "the rail needs it.")},
        guard.tributary_length_in, units::Kind::length);
    form.optional_yes_no({"handrail", phrase("Top is a handrail"),
                          phrase("Whether the top of the guard serves as a handrail. Empty: it does.")},
                         guard.handrail);
}

}  // namespace toehold::editing
