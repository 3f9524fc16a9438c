// A sound plug-in, as small as one can be: what an author would copy. It asks that the anchors' steel be no more than a
// made-up 3000 lb, and that a plate be 1/4 in thick; both rules are invented.
#include "plugin/toehold_plugin.h"

#include <cstddef>
#include <cstdint>

namespace {

std::int32_t check_anchors(const toehold_detail* detail, toehold_report report, void* host) {
    for (std::size_t index = 0; index < detail->anchor_count; ++index) {
        const toehold_anchor& anchor = detail->anchors[index];
        const toehold_step steps[] = {{"T", "largest tension", "", anchor.tension_lb, "lb", "demand", TOEHOLD_DEMANDED},
                                      {"D", "diameter", "", anchor.diameter_in, "in", "", TOEHOLD_FROM_FILE}};
        const toehold_result result = {anchor.part, anchor.part.id, "", anchor.tension_lb, 3000.0, "lb", 0,
                                       "",          steps,          2};
        if (report(host, &result) != 0) return 1;
    }
    return 0;
}

std::int32_t check_plate(const toehold_detail* detail, toehold_report report, void* host) {
    const bool known = detail->plate_thickness_in > 0.0;
    const toehold_result result = {{"plate", ""},
                                   "plate",
                                   "house rule 2",
                                   0.25,
                                   detail->plate_thickness_in,
                                   "in",
                                   known ? 0 : 1,
                                   known ? "" : "no thickness",
                                   nullptr,
                                   0};
    return report(host, &result);
}

const toehold_check checks[] = {
    {"sample-anchors", "Anchors, sample", "house rule 1", "Tension of every anchor.", check_anchors},
    {"sample-plate", "Plate, sample", "house rule 2", "Thickness of the plate.", check_plate}};
const toehold_plugin plugin = {TOEHOLD_PLUGIN_HEADER, "Sample checks", checks, 2};

}  // namespace

TOEHOLD_PLUGIN_EXPORT const toehold_plugin* toehold_plugin_entry(void) { return &plugin; }
