// Stiffness of bed and anchors, where the detail fixes it. Where it does not, every ratio already is the worst over its
// whole range, and there is no one value to move.
#include "study/fields/groups.h"

#include "model/base_detail.h"

namespace toehold::study {
namespace {

using format::Phrase;
using format::phrase;
using model::BaseDetail;
using model::FixedStiffness;

void add_stiffness(FieldList& list, const char* id, Phrase name, const char* unit, double now,
                   double FixedStiffness::*member) {
    constexpr double steps = 10.0;
    Field field;
    field.id = id;
    field.name = std::move(name);
    field.help = phrase("The fixed stiffness of the detail's basis.");
    field.unit = unit;
    field.now = now;
    field.range = {0.5 * now, 1.5 * now};
    field.step = now / steps;
    add(list, std::move(field), [member](BaseDetail& made, double value) {
        (*made.basis.stiffness).*member = value;
        return Phrase();
    });
}

}  // namespace

void add_stiffness_fields(FieldList& list, const Subject& subject) {
    const std::optional<FixedStiffness>& fixed = subject.resolved.detail.basis.stiffness;
    if (!fixed) return;
    add_stiffness(list, "bed-stiffness", phrase("bed stiffness"), "psi/in", fixed->bed_psi_per_in,
                  &FixedStiffness::bed_psi_per_in);
    add_stiffness(list, "anchor-stiffness", phrase("anchor stiffness"), "lb/in", fixed->anchor_lb_per_in,
                  &FixedStiffness::anchor_lb_per_in);
}

}  // namespace toehold::study
