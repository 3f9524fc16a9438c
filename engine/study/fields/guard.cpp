// What pushes, and how high it stands.
#include "study/fields/groups.h"

#include "model/base_detail.h"

#include <algorithm>

namespace toehold::study {
namespace {

using format::Phrase;
using format::phrase;
using model::BaseDetail;

Range widened(Range usual, std::optional<double> now) {
    if (!now) return usual;
    return {std::min(usual.least, *now), std::max(usual.most, *now)};
}

void add_height(FieldList& list, const BaseDetail& detail) {
    Field field;
    field.id = "height";
    field.name = phrase("guard height");
    field.help = phrase("Top of the guard above the walking surface.");
    field.now = detail.guard.height_in;
    field.range = widened({30.0, 48.0}, field.now);
    field.step = 2.0;
    add(list, std::move(field), [](BaseDetail& made, double value) {
        made.guard.height_in = value;
        return Phrase();
    });
}

/// A stated area of wind grows with the rail this post takes.
void set_tributary(BaseDetail& detail, double length_in) {
    const std::optional<double> before = model::tributary_length_in(detail.guard, detail.loads);
    if (before && detail.loads.wind && detail.loads.wind->area_ft2) *detail.loads.wind->area_ft2 *= length_in / *before;
    detail.guard.tributary_length_in = length_in;
    if (detail.loads.line) detail.loads.line->spacing_ft = length_in / units::inches_per_foot;
}

void add_tributary(FieldList& list, const BaseDetail& detail) {
    Field field;
    field.id = "tributary";
    field.name = phrase("tributary length of rail");
    field.help = phrase("Post spacing; a line load of the file, and a stated area of wind, follow it.");
    field.now = model::tributary_length_in(detail.guard, detail.loads);
    field.range = widened({36.0, 96.0}, field.now);
    field.step = 6.0;
    add(list, std::move(field), [](BaseDetail& made, double value) {
        set_tributary(made, value);
        return Phrase();
    });
}

void add_push(FieldList& list, const BaseDetail& detail) {
    if (!detail.loads.concentrated || !(detail.loads.concentrated->push_lb > 0.0)) return;
    Field field;
    field.id = "push";
    field.name = phrase("concentrated load of the file");
    field.help = phrase("The code's own load remains beside it, so that less than that changes nothing.");
    field.unit = "lb";
    field.now = detail.loads.concentrated->push_lb;
    field.step = 25.0;
    field.range = {*field.now, 2.0 * *field.now};
    add(list, std::move(field), [](BaseDetail& made, double value) {
        made.loads.concentrated->push_lb = value;
        return Phrase();
    });
}

void add_line_load(FieldList& list, const BaseDetail& detail) {
    if (!detail.loads.line || !(detail.loads.line->push_lb_per_ft > 0.0)) return;
    Field field;
    field.id = "line-load";
    field.name = phrase("line load of the file");
    field.help = phrase("The code's own load remains beside it, so that less than that changes nothing.");
    field.unit = "lb/ft";
    field.now = detail.loads.line->push_lb_per_ft;
    field.step = 5.0;
    field.range = about(*field.now, field.step);
    add(list, std::move(field), [](BaseDetail& made, double value) {
        made.loads.line->push_lb_per_ft = value;
        return Phrase();
    });
}

}  // namespace

void add_guard_fields(FieldList& list, const Subject& subject) {
    const BaseDetail& detail = subject.resolved.detail;
    add_height(list, detail);
    add_tributary(list, detail);
    add_push(list, detail);
    add_line_load(list, detail);
}

}  // namespace toehold::study
