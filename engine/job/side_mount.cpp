#include "job/side_mount.h"

#include "job/layout.h"
#include "job/mount.h"

#include <string>

namespace toehold::job {
namespace {

using format::Dimension;
using format::phrase;
using format::Quantity;

constexpr const char* side_bolt = "bolt-1/2";
constexpr double side_bolt_in = 0.5;
constexpr double plate_in = 3.0, plate_thickness_in = 0.25;  ///< under heads on wood, and under nuts
constexpr double row_to_bracket_edge_in = 1.25;

std::vector<model::SidePlace> places_of(const SideDesign& side) {
    if (side.bolt_x_in == 0.0) return {{"U", 0.0, side.upper_in}, {"L", 0.0, side.lower_in}};
    return {{"A", -side.bolt_x_in, side.upper_in},
            {"B", side.bolt_x_in, side.upper_in},
            {"C", -side.bolt_x_in, side.lower_in},
            {"D", side.bolt_x_in, side.lower_in}};
}

model::AnchorGroup bolts_of(const Design& design) {
    model::AnchorGroup group;
    const model::BackingPlate plate{plate_in, plate_in, plate_thickness_in, design.backing_metal};
    group.fastener = model::ThroughBolt{side_bolt, design.bolt_grade, plate};
    group.corrosion_protection = design.stainless ? "stainless steel" : "hot-dip galvanized, ASTM A153";
    if (design.side->bracket_in == 0.0) {
        group.head_plate = plate;
    } else {
        group.washer = model::Washer{"washer-wide-1/2"};
    }
    return group;
}

model::BracketPlate bracket_of(const Design& design) {
    const SideDesign& side = *design.side;
    constexpr double one_pass_in = 0.3125, over_the_wall_in = 0.0625;
    const model::Footprint post = model::shaft(design.post);
    model::BracketPlate bracket;
    bracket.width_in = side.bracket_width_in;
    bracket.from_top_in = side.upper_in - row_to_bracket_edge_in;
    bracket.height_in = side.lower_in + row_to_bracket_edge_in - bracket.from_top_in;
    bracket.thickness_in = side.bracket_in;
    bracket.metal = design.plate_metal;
    bracket.weld_leg_in = model::is_solid(post) ? one_pass_in : std::min(one_pass_in, post.wall_in + over_the_wall_in);
    bracket.filler = design.filler;
    return bracket;
}

std::vector<model::TensionTie> ties_of(const SideDesign& side) {
    if (side.tie_lb == 0.0) return {};
    std::vector<model::TensionTie> ties;
    for (const double below_in : {side.upper_in, side.lower_in}) {
        for (const double way : {-1.0, 1.0}) {
            model::TensionTie tie;
            tie.id = "T" + std::to_string(ties.size() + 1);
            tie.name = "tension tie";
            tie.chosen = false;
            tie.x_in = way * tie_at_in;
            tie.below_top_in = below_in;
            tie.tension_lb = side.tie_lb;
            tie.deflection_in = 0.125;
            tie.into = way < 0.0 ? "J2" : "J3";
            tie.eccentricity_in = tie_off_joist_in;
            ties.push_back(tie);
        }
    }
    return ties;
}

void assume_bolts(const Job& job, const Design& design, Assumptions& assumptions) {
    const SideDesign& side = *design.side;
    const format::Phrase why = phrase(
        "As far apart as four diameters to the rim's edges leaves them. By a hand estimate {} at the top of the "
        "guard draws the upper ones with {}.",
        Quantity{design.push_lb, "lb"}, Quantity{design.tension_lb, "lb"});
    const format::Phrase access =
        job.access_below
            ? phrase("The nuts are turned from below.")
            : phrase("The nuts are taken to be reached from below; no other fastening is drawn for a rim.");
    assumptions.element(
        "side-fastened/anchors",
        side.bracket_in > 0.0
            ? phrase("four {} bolts {}, {} and {} below the rim's top, a {} square plate under each nut",
                     Dimension{side_bolt_in}, design.bolt_grade, Dimension{side.upper_in}, Dimension{side.lower_in},
                     Dimension{plate_in})
            : phrase("two {} bolts {}, {} and {} below the rim's top, a {} square plate under each head and nut",
                     Dimension{side_bolt_in}, design.bolt_grade, Dimension{side.upper_in}, Dimension{side.lower_in},
                     Dimension{plate_in}),
        phrase("{} {}", why, access));
}

void assume_ties(const model::SideFastened& mount, Assumptions& assumptions) {
    for (const model::TensionTie& tie : mount.ties) {
        assumptions.element(
            "side-fastened/tie[" + tie.id + "]",
            phrase("allowable {} along the side of joist {}, {} of movement at that pull",
                   Quantity{tie.tension_lb, "lb"}, tie.into, Dimension{tie.deflection_in}),
            phrase("No hardware is chosen yet. Choose some whose evaluation report allows at least this, "
                   "and enter its values."));
    }
}

}  // namespace

model::SideFastened side_mount_of(const Job& job, const Design& design) {
    const SideDesign& side = *design.side;
    model::SideFastened mount;
    mount.member = "R1";
    mount.face = model::MemberFace::outside;
    mount.post_bottom_below_top_in = side.bottom_in;
    mount.places = places_of(side);
    mount.anchors = {bolts_of(design)};
    mount.ties = ties_of(side);
    if (side.bracket_in > 0.0) {
        mount.bracket = bracket_of(design);
        mount.post_bottom_below_top_in = mount.bracket->from_top_in + mount.bracket->height_in;
    }
    mount.decking = boards_of(job, design);
    return mount;
}

void assume_side_mount(const Job& job, const Design& design, const model::BaseDetail& detail,
                       Assumptions& assumptions) {
    const model::SideFastened& mount = model::on_side(detail);
    assume_post(job, detail, assumptions);
    assumptions.attribute("side-fastened", "post-bottom",
                          mount.bracket ? phrase("At the bracket's lower edge.")
                                        : phrase("At the rim's lower edge, for the longest bearing."));
    assume_bolts(job, design, assumptions);
    assume_ties(mount, assumptions);
    if (mount.bracket) {
        assumptions.element(
            "side-fastened/bracket",
            phrase("{} x {} plate of {}, {} thick, {} fillets down both sides of the post",
                   Dimension{mount.bracket->width_in}, Dimension{mount.bracket->height_in}, mount.bracket->metal,
                   Dimension{mount.bracket->thickness_in}, Dimension{mount.bracket->weld_leg_in}),
            phrase("Room for a bolt on each side of the post; the checks say whether it is thick enough."));
    }
    assume_boards(job, design, "side-fastened", assumptions);
}

}  // namespace toehold::job
