#include "job/job.h"

#include "demand/loads/code_loads.h"
#include "job/assumptions.h"
#include "job/design.h"
#include "job/framing.h"
#include "job/mount.h"
#include "job/side_mount.h"

#include <stdexcept>

namespace toehold::job {
namespace {

using format::phrase;

/// For the file's readers, and in English as everything a file says.
std::string name_of(const Job& job) {
    switch (job.place) {
        case Place::between_joists:
            return "Guard post between joists";
        case Place::over_a_joist:
            return "Guard post over a joist";
        case Place::beside_the_rim:
            return "Guard post beside the rim";
        case Place::corner:
            return "Guard post at a corner";
        case Place::cantilever:
            return "Guard post on cantilevered joists";
        case Place::deck_side:
            break;
    }
    return "Guard post on the side of the deck";
}

/// What the code allows where the top is told to be no handrail. Two bolts up a post hold little along the rail, so
/// that on the deck's side it is taken; elsewhere the push stays all round.
std::optional<model::Directions> directions_of(const Job& job) {
    if (job.place != Place::deck_side || job.handrail != false) return std::nullopt;
    if (model::directions_without_handrail(code_of(job)) == model::GuardDirections::any) return std::nullopt;
    return model::Directions::across;
}

model::BaseDetail detail_of(const Job& job, const Design& design, const catalog::Catalog& catalog) {
    model::BaseDetail detail;
    detail.name = name_of(job);
    detail.note = "Started from the job. Confirm or replace every assumed value before it is built.";
    detail.guard = guard_of(job);
    detail.post = design.post;
    if (design.side) {
        detail.mount = side_mount_of(job, design);
    } else {
        model::on_deck(detail) = mount_of(job, design);
    }
    detail.framing = framing_of(job, design, catalog);
    detail.loads.directions = directions_of(job).value_or(detail.loads.directions);
    detail.basis.moisture = model::Moisture::wet;
    detail.basis.code = code_of(job);
    return detail;
}

void assume_loads(const Job& job, Assumptions& assumptions) {
    if (!directions_of(job)) return;
    assumptions.attribute(
        "loads", "directions",
        phrase("The top is no handrail, and the code then asks for no push along the rail; confirm it "
               "with the building official."));
}

void assume_basis(const Job& job, Assumptions& assumptions) {
    assumptions.attribute("basis", "method", phrase("What values of wood and hardware are commonly given for."));
    assumptions.attribute("basis", "moisture", phrase("A deck outdoors is taken as wet; dry gives higher values."));
    if (!job.code) {
        assumptions.attribute("basis", "code",
                              phrase("Taken by the occupancy; name the edition in force where it is built."));
    }
}

}  // namespace

bool needs_tributary_length(const Job& job) { return demand::code_line_lb_per_ft(guard_of(job)).has_value(); }

Started start(const Job& job, const catalog::Catalog& catalog) {
    if (const model::Problems wrong = problems(job, catalog); !wrong.empty())
        throw std::invalid_argument("job: " + model::sentence(wrong.front()));
    const Design design = design_for(job, catalog);
    Started started{detail_of(job, design, catalog), {}};
    Assumptions assumptions;
    if (design.side) {
        assume_side_mount(job, design, started.detail, assumptions);
    } else {
        assume_mount(job, design, started.detail, assumptions);
    }
    assume_framing(job, started.detail.framing, assumptions);
    assume_loads(job, assumptions);
    assume_basis(job, assumptions);
    started.assumed = assumptions.of(started.detail);
    return started;
}

}  // namespace toehold::job
