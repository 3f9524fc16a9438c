#include "job/mount.h"
#include "job/post_order.h"

#include "units/quantity.h"

namespace toehold::job {
namespace {

using format::Dimension;
using format::Phrase;
using format::phrase;
using format::Quantity;

void assume_wood_post(const Job& job, const model::WoodPost& post, Assumptions& assumptions) {
    if (!job.species) {
        assumptions.attribute("post", "species", phrase("What most treated posts are of; read it on the grade stamp."));
    }
    if (!job.grade)
        assumptions.attribute("post", "grade", phrase("The grade most posts are sold by; read it on the stamp."));
    assumptions.attribute("post", "notched", phrase("A guard post is not cut where it bends most."));
    if (!model::is_described(post.shoe)) return;
    assumptions.element(
        "post/shoe",
        phrase("steel sleeve, wall {}, {} high, closed and welded", Dimension{post.shoe.wall_in},
               Dimension{post.shoe.height_in}),
        phrase(
            "The one kind of shoe whose strength follows from its geometry; any other needs its own test or report."));
}

void assume_plate(const Design& design, const model::Plate& plate, Assumptions& assumptions) {
    const auto& outline = std::get<model::RectangleOutline>(plate.outline);
    assumptions.element(
        "plate",
        phrase("{} x {} plate of {}, {} thick, four {} holes {} from its edges", Dimension{outline.width_in},
               Dimension{outline.depth_in}, plate.metal, Dimension{plate.thickness_in},
               Dimension{std::get<model::RoundHole>(plate.holes.front().shape).diameter_in}, Dimension{plate_edge_in}),
        phrase("By a hand estimate: {} at the top of the guard is {} at the plate and about {} on the corner anchor.",
               Quantity{design.push_lb, "lb"}, Quantity{design.moment_lb_in, "lb in"},
               Quantity{design.tension_lb, "lb"}));
}

void assume_weld(const model::Weld& weld, Assumptions& assumptions) {
    assumptions.element("weld", phrase("{} fillet all around, filler {}", Dimension{weld.leg_in}, weld.filler),
                        phrase("A sixteenth over the wall, at most what one pass lays; the filler for this metal."));
}

void assume_anchors(const Job& job, const Design& design, Assumptions& assumptions) {
    const Phrase why_size = phrase(
        "The largest that keeps its distance to the edges of a 4x block, with room to turn its head beside the post.");
    if (design.bolts) {
        const Phrase access = job.access_below
                                  ? phrase("Bolts, because there is access below the deck.")
                                  : phrase("Bolts, taking it that nuts can be turned below the deck; else lag screws.");
        assumptions.element("anchors",
                            phrase("four {} bolts {}, a {} square plate under each nut", Dimension{anchor_in},
                                   design.bolt_grade, Dimension{3.0}),
                            phrase("{} {}", access, why_size));
        return;
    }
    assumptions.element(
        "anchors", phrase("four {} lag screws, {} long", Dimension{anchor_in}, Dimension{design.screw_length_in}),
        phrase("Lag screws, because there is no access below the deck. {} As long as the block allows.", why_size));
}

void assume_packing(const Design& design, Assumptions& assumptions) {
    if (design.packing.empty()) return;
    assumptions.element(
        "layers/packing", phrase("{} square solid metal packing about each anchor", Dimension{2.0 * plate_edge_in}),
        phrase("No general value allows a post to bear on these boards; without packing their report must allow it."));
}

}  // namespace

void assume_post(const Job& job, const model::BaseDetail& detail, Assumptions& assumptions) {
    if (const auto* wood = std::get_if<model::WoodPost>(&detail.post)) {
        assume_wood_post(job, *wood, assumptions);
    } else if (!names_metal(job.post)) {
        assumptions.attribute("post", "metal",
                              phrase("The usual grade of this form; ask the supplier, and give another if it is so."));
    }
}

void assume_boards(const Job& job, const Design& design, const std::string& at, Assumptions& assumptions) {
    if (!job.decking_thickness) {
        assumptions.attribute(at + "/decking", design.decking_size.empty() ? "thickness" : "size",
                              phrase("The usual thickness of such boards; measure one."));
    }
    assumptions.element(
        at + "/decking/fasteners",
        phrase("two {} screws where a board crosses a joist", Dimension{design.wood_boards ? 3.0 : 2.5}),
        phrase("The usual fastening of such boards; look at the deck, and give what is there."));
}

void assume_mount(const Job& job, const Design& design, const model::BaseDetail& detail, Assumptions& assumptions) {
    const model::PlateOnDeck& mount = model::on_deck(detail);
    assume_post(job, detail, assumptions);
    assume_plate(design, mount.plate, assumptions);
    assume_weld(*mount.weld, assumptions);
    assume_anchors(job, design, assumptions);
    assume_boards(job, design, "layers", assumptions);
    assume_packing(design, assumptions);
}

}  // namespace toehold::job
