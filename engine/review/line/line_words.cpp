// What counting on the neighbors rests on, and what was assumed of a line: sentences, one for each thing.
#include "review/line/rail_loads.h"
#include "review/line/review_line.h"

#include <cmath>
#include <numbers>
#include <utility>

namespace toehold::review {
namespace {

using format::Citation;
using format::phrase;
using format::Quantity;

format::Phrase of_continuity(const SolvedLine& solved) {
    switch (solved.rail->rail.run) {
        case model::RailRun::continuous:
            return solved.rail->rail.splices_in.empty()
                       ? phrase("The rail in one piece over its posts, without a splice.")
                       : phrase(
                             "The rail in one piece over its posts but for {} splices, which carry force and no "
                             "moment.",
                             solved.rail->rail.splices_in.size());
        case model::RailRun::broken:
            return phrase("The rail has a joint at each post that carries force and no moment.");
        case model::RailRun::between:
            break;
    }
    return phrase("The rail stands between its posts, with a joint at each face that carries force and no moment.");
}

format::Phrase of_connection(const std::optional<model::RailConnection>& connection) {
    if (!connection) return phrase("The connection of the rail to each post, of which no values are given.");
    const model::RailConnection& values = *connection;
    return phrase("The connection of the rail to each post, {}: allowable {} across, {} along and {} vertical ({}).",
                  values.name, Quantity{values.across_lb, "lb"}, Quantity{values.along_lb, "lb"},
                  Quantity{values.vertical_lb, "lb"}, Citation{values.report});
}

format::Phrase of_connection_stiffness(const std::optional<model::RailConnection>& connection) {
    if (connection && connection->stiffness_lb_per_in)
        return phrase("A level stiffness of {} of that connection, as given.",
                      Quantity{*connection->stiffness_lb_per_in, "lb/in"});
    return phrase("That connection taken as rigid: no stiffness is given.");
}

bool turns(const SolvedLine& solved) {
    for (std::size_t span = 1; span < solved.spans.size(); ++span) {
        const double turn =
            std::remainder(solved.spans[span].heading_rad - solved.spans[span - 1].heading_rad, 2.0 * std::numbers::pi);
        if (std::abs(turn) > model::straight_rad) return true;
    }
    return false;
}

void add_walls(std::vector<format::Phrase>& all, const model::GuardLine& line) {
    const auto add = [&all](const std::optional<model::WallEnd>& wall, const std::string& post) {
        if (!wall) return;
        all.push_back(
            wall->connection
                ? phrase("The wall beyond post {}, which holds the rail by {}.", post, wall->connection->name)
                : phrase("The wall beyond post {} counts for nothing: no connection to it is described.", post));
        if (wall->connection && !wall->connection->stiffness_lb_per_in)
            all.push_back(
                phrase("That connection to the wall taken as rigid, which favors the posts near it: no "
                       "stiffness is given."));
    };
    add(line.first_wall, line.posts.front());
    add(line.last_wall, line.posts.back());
}

format::Phrase of_the_code(const model::Basis& basis) {
    const model::BuildingCode code = model::building_code(basis);
    return phrase(
        "{} and {} ask for the concentrated load at any point of the guard and say nothing of neighboring "
        "posts that share it: the building official must accept it.",
        Citation{model::clause(code, model::Provision::concentrated_guard_load)},
        Citation{model::clause(code, model::Provision::guard_load_standard)});
}

/// To a tenth of an inch, which is more than the range of stiffness lets one know.
Quantity length(double inches) { return {0.1 * std::round(10.0 * inches), "in"}; }

void add_lengths(std::vector<format::Phrase>& all, const LineReview& review) {
    constexpr double clearly = 1.005;
    format::Listed posts;
    for (const PostShare& post : review.posts) {
        if (post.line_length_in <= clearly * post.half_spans_in) continue;
        posts.items.push_back(
            phrase("{}: {} for {}", post.post, length(post.line_length_in), length(post.half_spans_in)));
    }
    if (posts.items.empty()) return;
    all.push_back(
        phrase("By the rail's continuity these posts take a load along the rail over more than half of the "
               "spans beside them, and the greater counts, shared or not: {}.",
               std::move(posts)));
}

void add_leverage(std::vector<format::Phrase>& all, const LineReview& review) {
    for (const PostShare& post : review.posts) {
        if (post.counted <= 1.0) continue;
        all.push_back(
            phrase("Where the push stands on the rail, post {} gets {:.2f} of it at its top: that counts, "
                   "shared or not.",
                   post.post, post.counted));
    }
}

bool is_aluminum(const catalog::ResolvedRail& rail) {
    const auto* const metal = std::get_if<catalog::Metal>(&rail.material);
    return metal != nullptr && metal->kind == catalog::MetalKind::aluminum;
}

}  // namespace

std::vector<format::Phrase> what_sharing_rests_on(const SolvedLine& solved, const model::Basis& basis) {
    std::vector<format::Phrase> all{of_continuity(solved), of_connection(solved.rail->rail.connection),
                                    of_connection_stiffness(solved.rail->rail.connection)};
    if (turns(solved)) {
        all.push_back(solved.rail->rail.corners_rigid ? phrase("Corners joined so that they carry moment in plan.")
                                                      : phrase("Corners that carry force and no moment."));
    }
    add_walls(all, *solved.line);
    all.push_back(
        phrase("Bases and posts between the soft and the stiff end of what is known of them: each post at its "
               "stiffest with the others at their softest, whichever gives it most."));
    all.push_back(of_the_code(basis));
    return all;
}

std::vector<format::Phrase> assumptions_of_line(const SolvedLine& solved, const LineReview& review,
                                                const model::BaseDetail& detail) {
    std::vector<format::Phrase> all;
    if (solved.rail == nullptr) {
        all.push_back(
            phrase("The rail of guard line {} is not described: each post is reviewed by itself, and the rail "
                   "is not checked.",
                   review.id));
        return all;
    }
    if (review.load_along) add_lengths(all, review);
    add_leverage(all, review);
    if (!solved.rail->rail.connection && !review.sharing)
        all.push_back(phrase("The connection of the rail to its posts is not specified and not checked."));
    const std::optional<model::RailConnection>& joint = solved.rail->rail.connection;
    if (joint && !review.sharing && !(joint->across_lb > 0.0 && joint->along_lb > 0.0 && joint->vertical_lb > 0.0))
        all.push_back(
            phrase("The connection of the rail to its posts is checked only in the directions it has an "
                   "allowable force for."));
    if (review.continuous && is_aluminum(*solved.rail))
        all.push_back(phrase("The rail is taken as welded at its posts, which weakens it there."));
    add_load_assumptions(all, solved, detail);
    all.insert(all.end(), solved.assumptions.begin(), solved.assumptions.end());
    return all;
}

}  // namespace toehold::review
