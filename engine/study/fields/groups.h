#pragma once
// The fields of each part of a detail, one file each, in the order of the load path; and what they are made with.
#include "study/field.h"

#include "units/length.h"

namespace toehold::study {

using FieldList = std::vector<Field>;

/// Changes the detail, whose model is valid; a sentence where it cannot. What it makes is validated by `add`.
using Change = std::function<format::Phrase(model::BaseDetail&, double value)>;

/// The field with its `set`: finite values above 0, of sizes only those, and nothing that the model forbids.
void add(FieldList& list, Field field, Change change);

/// The plate, to be changed: it is no longer the one of the document it was taken from.
[[nodiscard]] model::Plate& own_plate(model::BaseDetail& detail);
/// Under the head of a lag or wood screw; nullptr of another fastener.
[[nodiscard]] double* screw_length_in(model::Fastener& fastener);

/// From half to one and a half times `now`, in whole steps, `now` within.
[[nodiscard]] Range about(double now, double step);

void add_guard_fields(FieldList& list, const Subject& subject);
void add_post_fields(FieldList& list, const Subject& subject);
void add_plate_fields(FieldList& list, const Subject& subject);
/// Of a post on a member's side; none of another.
void add_side_fields(FieldList& list, const Subject& subject);
void add_anchor_fields(FieldList& list, const Subject& subject);
void add_block_fields(FieldList& list, const Subject& subject);
void add_joist_fields(FieldList& list, const Subject& subject);
void add_stiffness_fields(FieldList& list, const Subject& subject);

/// Nominal sizes a piece of this section may have along one side, the other side kept, no deeper than `at_most_in`; the
/// section's own among them.
struct LumberSide {
    double kept_in = 0.0, now_in = 0.0, at_most_in = 0.0;
};
[[nodiscard]] std::vector<Size> lumber_sizes(const LumberSide& side);
/// The nominal name of a section; empty where it is none.
[[nodiscard]] std::string lumber_name(double one_in, double other_in);

}  // namespace toehold::study
