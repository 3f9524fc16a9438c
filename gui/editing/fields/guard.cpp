#include "editing/fields/groups.h"
#include "editing/words.h"

#include <array>

namespace toehold::editing {
namespace {

constexpr std::array<Word<model::Occupancy>, 2> occupancies{
    {{model::Occupancy::one_and_two_family, "one-and-two-family", TOEHOLD_MARK("One- or two-family dwelling")},
     {model::Occupancy::other, "other", TOEHOLD_MARK("Any other")}}};

}  // namespace

void detail_fields(Form& form, model::BaseDetail& detail) {
    form.at({"", "", TOEHOLD_MARK("Detail")});
    form.text({"name", TOEHOLD_MARK("Name"), TOEHOLD_MARK("What the detail is called on every sheet.")}, detail.name);
    form.text({"note", TOEHOLD_MARK("Note"), TOEHOLD_MARK("Anything a reader should know.")}, detail.note);
    form.text({"project", TOEHOLD_MARK("Project"), TOEHOLD_MARK("What the detail belongs to. Empty: not stated.")},
              detail.project);
}

void guard_fields(Form& form, model::BaseDetail& detail) {
    model::Guard& guard = detail.guard;
    form.at({"guard", "guard", TOEHOLD_MARK("Guard")});
    form.length({"height", TOEHOLD_MARK("Height"), TOEHOLD_MARK("Top of the guard above the walking surface.")},
                guard.height_in);
    form.zero_if_empty({"plate-below-surface", TOEHOLD_MARK("Plate below the surface"),
                        TOEHOLD_MARK("Underside of the plate below the walking surface. Empty: 0, the plate stands on "
                                     "the decking.")},
                       on_deck(detail).plate_below_surface_in, units::Kind::length, Range::not_negative);
    form.word({"occupancy", TOEHOLD_MARK("Occupancy"),
               TOEHOLD_MARK("Decides which pushes the code asks for. Where it is not known, any other is the safer.")},
              guard.occupancy, occupancies);
}

}  // namespace toehold::editing
