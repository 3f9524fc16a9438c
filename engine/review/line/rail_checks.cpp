#include "demand/by_duration.h"
#include "demand/loads/code_loads.h"
#include "review/line/rail_loads.h"
#include "review/line/review_line.h"
#include "review/verdict.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <utility>

namespace toehold::review {
namespace {

using demand::LineLargest;

/// The worse of push and load along the rail; both per unit of load.
double worse_lb(const checks::RailLoads& loads, const LineLargest& push, const LineLargest& line) {
    return std::max(loads.push_lb * push.value, loads.line_lb_per_in * line.value);
}

checks::SolvedRail solved_rail(const checks::RailLoads& loads, const demand::LineSpan& span) {
    return {worse_lb(loads, span.push.moment_lb_in, span.line.moment_lb_in),
            worse_lb(loads, span.push.shear_lb, span.line.shear_lb),
            worse_lb(loads, span.upright_push.moment_lb_in, span.upright_line.moment_lb_in),
            worse_lb(loads, span.upright_push.shear_lb, span.upright_line.shear_lb),
            loads.wind_lb_per_in * span.wind.moment_lb_in.value,
            loads.wind_lb_per_in * span.wind.shear_lb.value};
}

/// Of a line that was not solved the whole push, and half of the spans beside a post.
checks::RailForces forces_by_hand(const checks::RailLoads& loads, double half_spans_in) {
    const double force = std::max(loads.push_lb, loads.line_lb_per_in * half_spans_in);
    const double wind = loads.wind_lb_per_in * half_spans_in;  // along the rail too: of another leg, round a corner
    return {force, force, force, wind, wind};
}

checks::RailForces solved_forces(const checks::RailLoads& loads, const demand::ConnectionForces& found,
                                 double upright_lb) {
    return {worse_lb(loads, found.push_across, found.line_across), worse_lb(loads, found.push_along, found.line_along),
            upright_lb, loads.wind_lb_per_in * found.wind_across.value, loads.wind_lb_per_in * found.wind_along.value};
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

/// Of one check under every combination the worst.
using Check = std::function<checks::CheckResult(const RailCombination&)>;
checks::CheckResult worst_of(const std::vector<RailCombination>& combinations, const Check& check) {
    checks::CheckResult worst = check(combinations.front());
    for (std::size_t index = 1; index < combinations.size(); ++index) {
        checks::CheckResult other = check(combinations[index]);
        if (other.ratio > worst.ratio) worst = std::move(other);
    }
    return worst;
}

class RailChecks {
  public:
    RailChecks(const SolvedLine& solved, const model::BaseDetail& detail)
        : solved_(solved), detail_(detail), combinations_(rail_combinations(solved, detail)) {}

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
        const auto under = [&](const auto& check, const RailCombination& combination) {
            checks::RailSpan loaded = of_rail;
            if (known) loaded.solved = solved_rail(combination.loads, solved_.demand->spans.at(number));
            const model::Basis basis = demand::for_duration(detail_.basis, combination.duration);
            return check(checks::RailInput{*solved_.rail, combination.loads, basis}, loaded);
        };
        results_.push_back(
            worst_of(combinations_, [&](const RailCombination& one) { return under(checks::rail_bending, one); }));
        results_.push_back(
            worst_of(combinations_, [&](const RailCombination& one) { return under(checks::rail_shear, one); }));
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
        const auto forces = [&](const checks::RailLoads& loads) {
            return solved_.demand ? solved_forces(loads, solved_.demand->posts.at(number).connection,
                                                  upright_on_post_lb(solved_, loads, number))
                                  : forces_by_hand(loads, solved_.half_spans_in[number]);
        };
        add_connection(solved_.rail->rail.connection, {model::PartKind::post, post}, forces, solved_.line->sharing);
    }

    void add_wall(const model::WallEnd& wall, const model::Span& span, bool first) {
        if (!wall.connection && continuous()) return;  // it reaches past its post and hangs on nothing
        const auto* const found =
            solved_.demand ? &(first ? solved_.demand->first_wall : solved_.demand->last_wall) : nullptr;
        const double reach_in = model::length_in(span);
        const auto forces = [&](const checks::RailLoads& loads) {
            return found != nullptr && *found
                       ? solved_forces(loads, **found, std::max(loads.push_lb, loads.line_lb_per_in * reach_in))
                       : forces_by_hand(loads, 0.5 * reach_in);
        };
        // The stretch hangs on the wall, whether the line shares or not.
        add_connection(wall.connection, model::rail_part(span.from, span.to), forces, true);
    }

    /// Each way under the combination that is worst for it.
    void add_connection(const std::optional<model::RailConnection>& connection, const model::PartId& part,
                        const std::function<checks::RailForces(const checks::RailLoads&)>& forces, bool required) {
        std::vector<checks::CheckResult> worst;
        for (const RailCombination& combination : combinations_) {
            std::vector<checks::CheckResult> ways =
                checks::rail_connection(connection, part, forces(combination.loads), required,
                                        demand::for_duration(detail_.basis, combination.duration));
            if (worst.empty()) worst = ways;
            for (std::size_t way = 0; way < ways.size(); ++way) {
                if (ways[way].ratio > worst[way].ratio) worst[way] = std::move(ways[way]);
            }
        }
        for (checks::CheckResult& result : worst) results_.push_back(std::move(result));
    }

    const SolvedLine& solved_;
    const model::BaseDetail& detail_;
    std::vector<RailCombination> combinations_;
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
    return std::max(demand::code_concentrated_lb, std::hypot(own.push_lb, own.down_lb));
}

std::vector<checks::CheckResult> rail_checks(const SolvedLine& solved, const std::vector<ResolvedPost>& posts) {
    if (solved.rail == nullptr || solved.posts.empty()) return {};
    return RailChecks(solved, posts[solved.posts.front()].resolved.detail).all();
}

}  // namespace toehold::review
