#include "demand/loads/code_loads.h"
#include "demand/loads/load_cases.h"
#include "review/line/review_line.h"
#include "review/verdict.h"
#include "units/length.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace toehold::review {
namespace {

using demand::LineLargest;

/// Push and vertical force of one load act at once.
double together_lb(double push_lb, double down_lb) { return std::hypot(push_lb, down_lb); }

double line_lb_per_ft(const model::BaseDetail& detail) {
    const double code = demand::code_line_lb_per_ft(detail.guard).value_or(0.0);
    if (!detail.loads.line) return code;
    const model::LineLoad& own = *detail.loads.line;
    const double down = own.spacing_ft > 0.0 ? own.down_lb / own.spacing_ft : 0.0;
    return std::max(code, together_lb(own.push_lb_per_ft, down));
}

/// The worse of push and load along the rail; both per unit of load.
double worse_lb(const checks::RailLoads& loads, const LineLargest& push, const LineLargest& line) {
    return std::max(loads.push_lb * push.value, loads.line_lb_per_in * line.value);
}

checks::SolvedRail solved_rail(const checks::RailLoads& loads, const demand::LineSpan& span) {
    return {worse_lb(loads, span.push.moment_lb_in, span.line.moment_lb_in),
            worse_lb(loads, span.push.shear_lb, span.line.shear_lb),
            worse_lb(loads, span.upright_push.moment_lb_in, span.upright_line.moment_lb_in),
            worse_lb(loads, span.upright_push.shear_lb, span.upright_line.shear_lb)};
}

/// Of a line that was not solved the whole push, and half of the spans beside a post.
checks::RailForces forces_by_hand(const checks::RailLoads& loads, double half_spans_in) {
    const double force = std::max(loads.push_lb, loads.line_lb_per_in * half_spans_in);
    return {force, force, force};
}

checks::RailForces solved_forces(const checks::RailLoads& loads, const demand::ConnectionForces& found,
                                 double upright_lb) {
    return {worse_lb(loads, found.push_across, found.line_across), worse_lb(loads, found.push_along, found.line_along),
            upright_lb};
}

/// Straight down or up on one post: of a load along the rail no more than the shears of the spans beside it together;
/// of a push more than all of it where the rail reaches past the post.
double upright_on_post_lb(const SolvedLine& solved, const checks::RailLoads& loads, std::size_t number) {
    const std::string& post = solved.line->posts[number];
    double line_lb = 0.0;
    for (std::size_t span = 0; span < solved.spans.size(); ++span) {
        if (solved.spans[span].from != post && solved.spans[span].to != post) continue;
        line_lb += loads.line_lb_per_in * solved.demand->spans.at(span).upright_line.shear_lb.value;
    }
    return std::max(loads.push_lb * std::max(1.0, solved.demand->posts.at(number).upright_share), line_lb);
}

/// What pushes on the line's rail, factored.
checks::RailLoads rail_loads(const model::BaseDetail& detail) {
    const model::BuildingCode code = model::building_code(detail.basis);
    const double factor = demand::live_load_factor(detail.basis);
    const auto clause = [code](model::Provision provision) { return model::clause(code, provision); };
    return {factor * rail_push_lb(detail), factor * line_lb_per_ft(detail) / units::inches_per_foot,
            demand::code_directions(detail) != model::Directions::outward,
            clause(model::Provision::concentrated_guard_load), clause(model::Provision::line_guard_load)};
}

class RailChecks {
  public:
    RailChecks(const SolvedLine& solved, const model::BaseDetail& detail)
        : solved_(solved), detail_(detail), loads_(rail_loads(detail)) {}

    std::vector<checks::CheckResult> all() && {
        for (std::size_t number = 0; number < solved_.spans.size(); ++number) add_span(number);
        for (std::size_t number = 0; number < solved_.posts.size(); ++number) add_post(number);
        if (solved_.line->first_wall) add_wall(*solved_.line->first_wall, solved_.spans.front(), true);
        if (solved_.line->last_wall) add_wall(*solved_.line->last_wall, solved_.spans.back(), false);
        sort_worst_first(results_);
        return std::move(results_);
    }

  private:
    void add_span(std::size_t number) {
        const model::Span& span = solved_.spans[number];
        checks::RailSpan of_rail{model::rail_part(span.from, span.to), model::length_in(span), std::nullopt};
        of_rail.held_at_one_end = reaches_into_the_air(number);
        const bool known = solved_.demand && solved_.demand->spans.at(number).held;
        if (known) of_rail.solved = solved_rail(loads_, solved_.demand->spans.at(number));
        const checks::RailInput input{*solved_.rail, loads_, detail_.basis};
        results_.push_back(checks::rail_bending(input, of_rail));
        results_.push_back(checks::rail_shear(input, of_rail));
        if (!known || detail_.basis.movement_limit != model::MovementLimit::astm_e985) return;
        results_.push_back(checks::rail_deflection(
            of_rail, moved(solved_.demand->spans.at(number).movement, rail_push_lb(detail_)), detail_.guard.height_in));
    }

    [[nodiscard]] bool continuous() const { return solved_.rail->rail.run == model::RailRun::continuous; }

    /// A continuous rail whose end at a wall has no connection that is described.
    [[nodiscard]] bool reaches_into_the_air(std::size_t span) const {
        const auto loose = [](const std::optional<model::WallEnd>& wall) { return wall && !wall->connection; };
        return continuous() && ((span == 0 && loose(solved_.line->first_wall)) ||
                                (span + 1 == solved_.spans.size() && loose(solved_.line->last_wall)));
    }

    void add_post(std::size_t number) {
        const std::string& post = solved_.line->posts[number];
        const checks::RailForces forces = solved_.demand
                                              ? solved_forces(loads_, solved_.demand->posts.at(number).connection,
                                                              upright_on_post_lb(solved_, loads_, number))
                                              : forces_by_hand(loads_, solved_.half_spans_in[number]);
        add_connection(solved_.rail->rail.connection, {model::PartKind::post, post}, forces, solved_.line->sharing);
    }

    void add_wall(const model::WallEnd& wall, const model::Span& span, bool first) {
        if (!wall.connection && continuous()) return;  // it reaches past its post and hangs on nothing
        const auto* const found =
            solved_.demand ? &(first ? solved_.demand->first_wall : solved_.demand->last_wall) : nullptr;
        const double reach_in = model::length_in(span);
        const checks::RailForces forces =
            found != nullptr && *found
                ? solved_forces(loads_, **found, std::max(loads_.push_lb, loads_.line_lb_per_in * reach_in))
                : forces_by_hand(loads_, 0.5 * reach_in);
        // The stretch hangs on the wall, whether the line shares or not.
        add_connection(wall.connection, model::rail_part(span.from, span.to), forces, true);
    }

    void add_connection(const std::optional<model::RailConnection>& connection, const model::PartId& part,
                        const checks::RailForces& forces, bool required) {
        for (checks::CheckResult& result : checks::rail_connection(connection, part, forces, required, detail_.basis))
            results_.push_back(std::move(result));
    }

    const SolvedLine& solved_;
    const model::BaseDetail& detail_;
    checks::RailLoads loads_;
    std::vector<checks::CheckResult> results_;
};

}  // namespace

checks::RailMovement moved(const demand::LineMovement& by_a_pound, double push_lb) {
    return {push_lb * by_a_pound.rail_in, push_lb * by_a_pound.connection_in, push_lb * by_a_pound.post_in,
            push_lb * by_a_pound.base_in};
}

double rail_push_lb(const model::BaseDetail& detail) {
    if (!detail.loads.concentrated) return demand::code_concentrated_lb;
    const model::ConcentratedLoad& own = *detail.loads.concentrated;
    return std::max(demand::code_concentrated_lb, together_lb(own.push_lb, own.down_lb));
}

std::vector<checks::CheckResult> rail_checks(const SolvedLine& solved, const std::vector<ResolvedPost>& posts) {
    if (solved.rail == nullptr || solved.posts.empty()) return {};
    return RailChecks(solved, posts[solved.posts.front()].resolved.detail).all();
}

}  // namespace toehold::review
