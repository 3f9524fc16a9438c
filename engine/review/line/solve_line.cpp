#include "review/line/solve_line.h"

#include "checks/post/post_stiffness.h"
#include "checks/rail/rail.h"
#include "demand/loads/code_loads.h"
#include "model/facing.h"
#include "units/length.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <stdexcept>
#include <utility>

namespace toehold::review {
namespace {

using format::phrase;

/// How far the modulus of elasticity of visually graded sawn lumber may be from its mean: 1.645 coefficients of
/// variation of 0.25, a twentieth of all pieces beyond it each way (NDS 2018 Appendix F, Table F1, from memory, to
/// be confirmed).
constexpr double wood_modulus_spread = 1.645 * 0.25;

std::size_t number_of(const std::vector<ResolvedPost>& posts, const std::string& id) {
    const auto found =
        std::find_if(posts.begin(), posts.end(), [&id](const ResolvedPost& one) { return one.post.id == id; });
    return static_cast<std::size_t>(found - posts.begin());
}

demand::PostFlexibility bent_by_a_pound(const checks::PostStiffness& post, double height_in, double softer) {
    return {softer * checks::bent_in(post, 1.0, height_in, height_in, 1.0),
            softer * checks::bent_in(post, 1.0, height_in, height_in, 0.0)};
}

/// What was found of a post's base, by the post's number: found once, however many lines it is in.
using Bases = std::map<std::size_t, demand::BaseStiffnessOutcome>;

/// Absent, with the reason in `unsolved`, where a stiffness is not known.
std::optional<demand::LinePost> line_post(const ResolvedPost& one, const demand::BaseStiffnessOutcome& base,
                                          format::Phrase& unsolved) {
    const catalog::Resolved& resolved = one.resolved;
    const std::optional<checks::PostStiffness> stiffness = checks::post_stiffness(resolved);
    if (!stiffness) {
        unsolved = phrase("The grade of post {} is not specified: how stiff it is is not known.", one.post.id);
        return std::nullopt;
    }
    if (!base.range) {
        unsolved = phrase("The base of post {} has no stiffness: {}.", one.post.id, base.failure);
        return std::nullopt;
    }
    const bool wood = std::holds_alternative<model::WoodPost>(resolved.detail.post);
    const double height_in = model::lever_height_in(resolved.detail);
    demand::LinePost post;
    post.id = one.post.id;
    post.at = one.post.at;
    post.rise_in = one.post.rise_in;
    post.outward_rad = 0.5 * std::numbers::pi + model::turn_rad(one.post.facing);
    post.height_in = height_in;
    post.soft_post = bent_by_a_pound(*stiffness, height_in, wood ? 1.0 / (1.0 - wood_modulus_spread) : 1.0);
    post.stiff_post = bent_by_a_pound(*stiffness, height_in, wood ? 1.0 / (1.0 + wood_modulus_spread) : 1.0);
    post.base = *base.range;
    post.play_rad = stiffness->play_rad;
    return post;
}

std::optional<demand::LineWall> line_wall(const std::optional<model::WallEnd>& wall) {
    if (!wall) return std::nullopt;
    demand::LineWall held{wall->reach_in, wall->connection.has_value(), std::nullopt};
    if (wall->connection) held.stiffness_lb_per_in = wall->connection->stiffness_lb_per_in;
    return held;
}

void set_rail(demand::LineInput& input, const catalog::ResolvedRail& resolved, const model::Basis& basis) {
    const model::Rail& rail = resolved.rail;
    const checks::RailStiffness mean = checks::rail_stiffness(resolved, basis);
    const double spread = std::holds_alternative<model::WoodRail>(rail.section) ? wood_modulus_spread : 0.0;
    input.soft_rail = {(1.0 - spread) * mean.axial_lb, (1.0 - spread) * mean.level_lb_in2};
    input.stiff_rail = {(1.0 + spread) * mean.axial_lb, (1.0 + spread) * mean.level_lb_in2};
    input.run = rail.run;
    input.corners_rigid = rail.corners_rigid;
    input.splices_in = rail.splices_in;
    if (rail.connection) input.connection_lb_per_in = rail.connection->stiffness_lb_per_in;
}

/// A base softer than it is taken for leaves its neighbors more: no share can be counted on it.
void note_what_framing_lacks(SolvedLine& solved, const std::vector<demand::LinePost>& posts) {
    for (const demand::LinePost& post : posts) {
        if (post.base.framing_lacks.empty()) continue;
        if (solved.line->sharing) {
            solved.unsolved = phrase("Base of post {}: {} Its neighbors may take more: sharing cannot be counted.",
                                     post.id, post.base.framing_lacks);
            solved.demand.reset();
            return;
        }
        solved.assumptions.push_back(
            phrase("Base of post {}: {} The movements below are the least, and its neighbors' "
                   "shares may be more.",
                   post.id, post.base.framing_lacks));
    }
}

/// A corner post may be pushed from more sides than the others.
model::Directions widest_directions(const SolvedLine& solved, const std::vector<ResolvedPost>& posts) {
    const auto directions = [&posts](std::size_t number) {
        return demand::code_directions(posts[number].resolved.detail);
    };
    const bool all_round = std::any_of(solved.posts.begin(), solved.posts.end(), [&](std::size_t number) {
        return directions(number) == model::Directions::all_round;
    });
    return all_round ? model::Directions::all_round : directions(solved.posts.front());
}

void solve(SolvedLine& solved, const std::vector<ResolvedPost>& posts, Bases& bases, demand::Kept& kept) {
    demand::LineInput input;
    for (const std::size_t number : solved.posts) {
        const ResolvedPost& one = posts[number];
        auto base = bases.find(number);
        if (base == bases.end()) base = bases.emplace(number, demand::find_base_stiffness(one.resolved, &kept)).first;
        std::optional<demand::LinePost> post = line_post(one, base->second, solved.unsolved);
        if (!post) return;
        input.posts.push_back(std::move(*post));
    }
    const model::BaseDetail& detail = posts[solved.posts.front()].resolved.detail;
    set_rail(input, *solved.rail, detail.basis);
    input.first_wall = line_wall(solved.line->first_wall);
    input.last_wall = line_wall(solved.line->last_wall);
    input.directions = widest_directions(solved, posts);
    demand::LineOutcome outcome = demand::find_line_demand(input);
    solved.demand = std::move(outcome.demand);
    solved.unsolved = std::move(outcome.failure);
    if (solved.demand) note_what_framing_lacks(solved, input.posts);
    if (std::any_of(input.posts.begin(), input.posts.end(), [](const auto& one) { return one.play_rad > 0.0; }))
        solved.assumptions.push_back(
            phrase("Play of posts in what holds them is not in the movements and the moments of the rail."));
}

std::vector<double> half_spans(const model::GuardLine& line, const std::vector<model::Span>& spans) {
    std::vector<double> half(line.posts.size(), 0.0);
    for (std::size_t index = 0; index < line.posts.size(); ++index) {
        for (const model::Span& span : spans) {
            if (span.from == line.posts[index] || span.to == line.posts[index]) half[index] += 0.5 * length_in(span);
        }
    }
    return half;
}

}  // namespace

bool asks_for_a_length(const model::BaseDetail& detail) {
    return demand::code_line_lb_per_ft(detail.guard) || detail.loads.line || detail.loads.wind;
}

std::vector<SolvedLine> solve_lines(const model::Project& project, const std::vector<ResolvedPost>& posts,
                                    const std::vector<ResolvedLine>& rails, demand::Kept& kept) {
    std::vector<SolvedLine> lines;
    Bases bases;
    for (const model::GuardLine& line : project.guard_lines) {
        SolvedLine solved;
        solved.line = &line;
        solved.spans = model::spans_of(project, line);
        solved.half_spans_in = half_spans(line, solved.spans);
        if (project.loads.line && project.loads.line->spacing_ft > 0.0)
            solved.stated_length_in = units::inches_per_foot * project.loads.line->spacing_ft;
        for (const std::string& id : line.posts) solved.posts.push_back(number_of(posts, id));
        const auto rail =
            std::find_if(rails.begin(), rails.end(), [&line](const ResolvedLine& one) { return one.id == line.id; });
        if (rail != rails.end()) {
            solved.rail = &rail->rail;
            solve(solved, posts, bases, kept);
        } else if (line.rail) {
            throw std::invalid_argument("the rail of guard line " + line.id + " is not resolved");
        }
        lines.push_back(std::move(solved));
    }
    return lines;
}

LoadsOfLines loads_of_lines(const std::vector<SolvedLine>& lines, std::size_t post) {
    LoadsOfLines loads;
    double most = 0.0, length_in = 0.0;
    bool all_share = true;
    for (const SolvedLine& line : lines) {
        const auto place = std::find(line.posts.begin(), line.posts.end(), post);
        if (place == line.posts.end()) continue;
        const auto number = static_cast<std::size_t>(place - line.posts.begin());
        all_share = all_share && line.line->sharing && line.demand;
        length_in += line.demand ? line.demand->posts.at(number).line_length_in.value : line.half_spans_in[number];
        if (!line.demand) continue;
        const double share = line.demand->posts.at(number).share.value;
        if (share > most) most = share, loads.line = line.line->id;
    }
    if (most == 0.0) return loads;
    loads.length_in = length_in;
    loads.lone = most > 1.0 + solved_within ? most : 1.0;
    loads.counted = all_share ? most : loads.lone;  // a line that does not share may bring the whole push
    return loads;
}

model::BaseDetail loaded_by_lines(model::BaseDetail detail, double factor, const LoadsOfLines& loads) {
    if (factor != 1.0) detail.loads.sharing = model::Sharing{factor, loads.line};
    const double own_in = model::tributary_length_in(detail.guard, detail.loads).value_or(0.0);
    if (!asks_for_a_length(detail) || loads.length_in <= own_in * (1.0 + solved_within)) return detail;
    detail.guard.tributary_length_in = loads.length_in;
    if (detail.loads.line)
        set_spacing(*detail.loads.line,
                    std::max(detail.loads.line->spacing_ft, loads.length_in / units::inches_per_foot));
    return detail;
}

}  // namespace toehold::review
