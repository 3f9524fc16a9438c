#include "model/placement.h"
#include "model/problem_list.h"
#include "model/validate.h"
#include "model/validate_anchors.h"
#include "model/validate_framing.h"
#include "model/validate_metal.h"
#include "model/validate_remarks.h"
#include "model/validate_side.h"
#include "model/validate_weld.h"

#include <algorithm>
#include <cmath>

namespace toehold::model {
namespace {

using format::phrase;
using format::verbatim;

constexpr double largest_post_in = 48.0, largest_wall_in = 12.0;

void check_guard(ProblemList& problems, const BaseDetail& detail) {
    problems.at("guard").positive(phrase("height (in)"), detail.guard.height_in, 240.0);
    const Guard& guard = detail.guard;
    if (guard.tributary_length_in)
        problems.positive(phrase("tributary length (in)"), *guard.tributary_length_in, 1200.0);
}

/// The stub fits into the tube, and the tube covers enough of it to hold.
void check_stub(ProblemList& problems, const Stub& stub, const Footprint& tube) {
    problems.at("post/stub");
    if (stub.wall_in != 0.0) {
        check_tube(problems, stub.width_in, stub.depth_in, stub.wall_in, largest_post_in, largest_wall_in);
    } else {
        problems.positive(phrase("width (in)"), stub.width_in, 48.0);
        problems.positive(phrase("depth (in)"), stub.depth_in, 48.0);
    }
    problems.positive(phrase("height (in)"), stub.height_in, 120.0);
    const double inside_width_in = tube.width_in - 2.0 * tube.wall_in;
    const double inside_depth_in = tube.depth_in - 2.0 * tube.wall_in;
    if (stub.width_in > inside_width_in || stub.depth_in > inside_depth_in) {
        problems.add(phrase("the stub does not fit inside the post"),
                     phrase("a stub no larger than the inside of the tube, {} x {} in", brief(inside_width_in),
                            brief(inside_depth_in)),
                     phrase("{} x {} in", brief(stub.width_in), brief(stub.depth_in)));
    }
    constexpr double least_share = 0.75;
    if (stub.width_in < least_share * inside_width_in || stub.depth_in < least_share * inside_depth_in) {
        problems.add(phrase("the stub is too small to hold the post upright"),
                     phrase("a stub at least three quarters of the inside of the tube, {} x {} in",
                            brief(inside_width_in), brief(inside_depth_in)),
                     phrase("{} x {} in", brief(stub.width_in), brief(stub.depth_in)));
    }
}

void check(ProblemList& problems, const RectangularTube& tube) {
    check_tube(problems.at("post"), tube.width_in, tube.depth_in, tube.wall_in, largest_post_in, largest_wall_in);
    if (tube.certificate) check_certificate(problems.at("post/certificate"), *tube.certificate);
    if (tube.stub) check_stub(problems, *tube.stub, shaft(tube));
}

void check(ProblemList& problems, const RoundTube& tube) {
    check_tube(problems.at("post"), tube.diameter_in, tube.diameter_in, tube.wall_in, largest_post_in, largest_wall_in);
    if (tube.certificate) check_certificate(problems.at("post/certificate"), *tube.certificate);
    if (!tube.stub) return;
    check_stub(problems, *tube.stub, shaft(tube));
    if (tube.stub->width_in != tube.stub->depth_in)
        problems.add(phrase("the stub of a round post is not round"), phrase("a width and depth that are equal"));
}

void check(ProblemList& problems, const SolidBar& bar) {
    problems.at("post").positive(phrase("width (in)"), bar.width_in, 12.0);
    problems.positive(phrase("depth (in)"), bar.depth_in, 12.0);
    if (bar.round && bar.width_in != bar.depth_in)
        problems.add(phrase("the round bar is not round"), phrase("a width and depth that are equal"));
}

void check(ProblemList& problems, const TwinBars& bars) {
    problems.at("post").positive(phrase("width (in)"), bars.width_in, 12.0);
    problems.positive(phrase("depth (in)"), bars.depth_in, 12.0);
    problems.positive(phrase("gap (in)"), bars.gap_in, 12.0);
}

void check(ProblemList& problems, const WoodPost& post) {
    problems.at("post").positive(phrase("width (in)"), post.width_in, 48.0);
    problems.positive(phrase("depth (in)"), post.depth_in, 48.0);
    const Shoe& shoe = post.shoe;
    if (!is_described(shoe)) return;
    check_tube(problems.at("post/shoe"), shoe.width_in, shoe.depth_in, shoe.wall_in, largest_post_in, largest_wall_in);
    problems.positive(phrase("height (in)"), shoe.height_in, 120.0);
    if (shoe.allowable_moment_lb_in)
        problems.positive(phrase("allowable moment (lb in)"), *shoe.allowable_moment_lb_in, 1e7);
    constexpr double fit_in = 0.02;
    if (post.width_in > shoe.width_in - 2.0 * shoe.wall_in + fit_in ||
        post.depth_in > shoe.depth_in - 2.0 * shoe.wall_in + fit_in) {
        problems.add(phrase("the post does not fit inside its shoe"),
                     phrase("an inside width and depth no smaller than the post's"));
    }
}

/// Half widths of what stands on the plate, x and y; a round tube's radius twice.
Position half_foot(const Post& post) {
    const Footprint foot = footprint(post);
    return {0.5 * foot.width_in, 0.5 * foot.depth_in};
}

void check_foot_on_plate(ProblemList& problems, const BaseDetail& detail) {
    const Position half = half_foot(detail.post);
    const double corner = footprint(detail.post).round ? std::sqrt(0.5) : 1.0;
    for (const double sign_x : {-1.0, 1.0}) {
        for (const double sign_y : {-1.0, 1.0}) {
            const Position point{sign_x * corner * half.x_in, sign_y * corner * half.y_in};
            if (edge_distance_in(on_deck(detail).plate.outline, point) < -1e-6) {
                problems.at("post").add(
                    phrase("the post's foot hangs over the plate's edge"),
                    phrase("a foot inside the plate's outline (the post's center is at x = 0, y = 0)"));
                return;
            }
        }
    }
}

void check_wind(ProblemList& problems, const WindLoad& wind) {
    problems.at("loads/wind").positive(phrase("pressure (psf)"), wind.pressure_psf, 500.0);
    if (wind.solid_ratio) problems.positive(phrase("solid ratio"), *wind.solid_ratio, 1.0);
    if (wind.area_ft2) problems.positive(phrase("area (sq ft)"), *wind.area_ft2, 1000.0);
    if (wind.infill_height_in) problems.positive(phrase("infill height (in)"), *wind.infill_height_in, 240.0);
    if (wind.centroid_in) problems.positive(phrase("centroid (in)"), *wind.centroid_in, 240.0);
}

void check_loads(ProblemList& problems, const Loads& loads) {
    constexpr double most_lb = 20000.0;
    if (loads.wind) check_wind(problems, *loads.wind);
    if (loads.proof_push_lb) problems.at("loads/proof").positive(phrase("push (lb)"), *loads.proof_push_lb, most_lb);
    if (loads.concentrated) {
        problems.at("loads/concentrated").between(phrase("push (lb)"), loads.concentrated->push_lb, 0.0, most_lb);
        problems.between(phrase("down (lb)"), loads.concentrated->down_lb, -most_lb, most_lb);
    }
    if (loads.line) {
        problems.at("loads/line").between(phrase("push (lb/ft)"), loads.line->push_lb_per_ft, 0.0, most_lb);
        problems.positive(phrase("spacing (ft)"), loads.line->spacing_ft, 100.0);
        problems.between(phrase("down (lb)"), loads.line->down_lb, -most_lb, most_lb);
    }
    if (loads.user.size() > 20)
        problems.at("loads").add(phrase("too many user loads"), phrase("at most 20"),
                                 verbatim(std::to_string(loads.user.size())));
    for (const UserLoad& load : loads.user) {
        problems.at("loads/user").between(phrase("push (lb)"), load.push_lb, 0.0, most_lb);
        problems.between(phrase("down (lb)"), load.down_lb, -most_lb, most_lb);
        if (load.height_in) problems.positive(phrase("height (in)"), *load.height_in, 240.0);
    }
}

void check_basis(ProblemList& problems, const Basis& basis) {
    problems.at("basis");
    if (basis.load_duration) problems.between(phrase("load duration factor"), *basis.load_duration, 0.9, 1.6);
    if (basis.time_effect) problems.between(phrase("time effect factor"), *basis.time_effect, 0.6, 1.0);
    if (!basis.stiffness) return;
    problems.at("basis/fixed-stiffness").positive(phrase("bed (psi/in)"), basis.stiffness->bed_psi_per_in, 1e9);
    problems.positive(phrase("anchor (lb/in)"), basis.stiffness->anchor_lb_per_in, 1e9);
    if (basis.stiffness->reason.empty())
        problems.add(phrase("a fixed stiffness needs its reason"), phrase("a sentence"));
}

/// A wood post on a plate stands in a shoe; one fastened by its side has none.
void check_shoe(ProblemList& problems, const Post& post) {
    const auto* const wood = std::get_if<WoodPost>(&post);
    if (wood == nullptr || is_described(wood->shoe)) return;
    problems.at("post/shoe")
        .add(phrase("a wood post on a plate needs a shoe"), phrase("a shoe with its size and metal"));
}

/// What a plate on the deck must have; the plate's own problems come last, and its foot is looked at without them.
Problems check_mount(ProblemList& problems, const BaseDetail& detail, const PlateOnDeck& mount) {
    problems.at("guard").between(phrase("plate below surface (in)"), mount.plate_below_surface_in, 0.0, 48.0);
    check_shoe(problems, detail.post);
    check_weld(problems, detail);
    check_layers(problems, mount.layers);
    Problems of_plate = validate(mount.plate);
    if (of_plate.empty()) check_foot_on_plate(problems, detail);
    return of_plate;
}

Problems check_mount(ProblemList& problems, const BaseDetail& detail, const SideFastened& mount) {
    check_side(problems, detail, mount);
    return {};
}

}  // namespace

Problems validate(const BaseDetail& detail) {
    ProblemList problems;
    check_guard(problems, detail);
    std::visit([&](const auto& post) { check(problems, post); }, detail.post);
    const Problems of_mount =
        std::visit([&](const auto& mount) { return check_mount(problems, detail, mount); }, detail.mount);
    check_framing(problems, detail.framing);
    check_anchors(problems, detail);
    check_loads(problems, detail.loads);
    check_basis(problems, detail.basis);
    check_remarks(problems, detail.remarks);
    Problems all = problems.take();
    all.insert(all.end(), of_mount.begin(), of_mount.end());
    return all;
}

}  // namespace toehold::model
