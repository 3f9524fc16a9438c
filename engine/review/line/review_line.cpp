#include "review/line/review_line.h"

#include "demand/kept.h"
#include "review/verdict.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace toehold::review {
namespace {

PushPlace place_of(const SolvedLine& solved, const demand::LineLargest& found) {
    const model::Span& span = solved.spans.at(found.span);
    return {span.from, span.to, found.along_in, span.plan_in, found.direction_rad};
}

PostShare post_share(const model::Project& project, const SolvedLine& solved, const std::vector<SolvedLine>& all,
                     std::size_t number) {
    PostShare share;
    share.post = solved.line->posts[number];
    share.role = model::role_of(project, share.post);
    share.half_spans_in = solved.half_spans_in[number];
    share.counted = loads_of_lines(all, solved.posts[number]).counted;
    if (!solved.demand) return share;
    const demand::PostShares& found = solved.demand->posts.at(number);
    const bool whole = std::abs(found.share.value - 1.0) <= solved_within;
    share.share = whole ? 1.0 : found.share.value;
    share.stood = place_of(solved, found.share);
    share.line_length_in = found.line_length_in.value;
    return share;
}

std::vector<LineMovementAt> movements_of(const SolvedLine& solved, const model::BaseDetail& detail) {
    std::vector<LineMovementAt> movements;
    if (!solved.demand) return movements;
    const bool limited = detail.basis.movement_limit == model::MovementLimit::astm_e985;
    const double push_lb = rail_push_lb(detail), height_in = detail.guard.height_in;
    for (std::size_t number = 0; number < solved.posts.size(); ++number) {
        LineMovementAt at{{model::PartKind::post, solved.line->posts[number]},
                          moved(solved.demand->posts.at(number).movement, push_lb)};
        if (limited) at.limit_in = height_in / 12.0;
        movements.push_back(std::move(at));
    }
    for (std::size_t number = 0; number < solved.spans.size(); ++number) {
        const model::Span& span = solved.spans[number];
        if (!solved.demand->spans.at(number).held) continue;
        LineMovementAt at{model::rail_part(span.from, span.to),
                          moved(solved.demand->spans.at(number).movement, push_lb)};
        if (limited) at.limit_in = checks::rail_deflection_limit_in(height_in, model::length_in(span));
        movements.push_back(std::move(at));
    }
    return movements;
}

/// A line that counts on its neighbors has to know what they do.
void conclude(LineReview& review) {
    const auto first_with = [&review](bool failing) {
        return std::find_if(review.checks.begin(), review.checks.end(), [failing](const checks::CheckResult& result) {
            return failing ? fails(result) : result.status == checks::Status::missing_evidence;
        });
    };
    const auto failing = first_with(true), missing = first_with(false);
    if (failing != review.checks.end()) {
        review.verdict = Verdict::inadequate;
        review.cause = fact_of(*failing);
    } else if (!review.unsolved.empty()) {
        review.verdict = Verdict::incomplete;
    } else if (missing != review.checks.end()) {
        review.verdict = Verdict::incomplete;
        review.cause = fact_of(*missing);
    }
}

}  // namespace

std::vector<model::RoleCount> roles_of(const LineReview& line) {
    std::vector<model::PostRole> roles;
    for (const PostShare& post : line.posts) roles.push_back(post.role);
    return model::count_roles(roles);
}

const LineReview* line_with(const std::vector<LineReview>& lines, Verdict verdict) {
    const auto found =
        std::find_if(lines.begin(), lines.end(), [verdict](const LineReview& line) { return line.verdict == verdict; });
    return found == lines.end() ? nullptr : &*found;
}

LineReview review_line(const model::Project& project, const std::vector<ResolvedPost>& posts,
                       const std::vector<SolvedLine>& all, std::size_t number) {
    const SolvedLine& solved = all[number];
    const model::BaseDetail& detail = posts[solved.posts.front()].resolved.detail;
    LineReview review;
    review.id = solved.line->id;
    review.sharing = solved.line->sharing;
    review.rail = solved.rail != nullptr;
    review.continuous = review.rail && solved.rail->rail.run == model::RailRun::continuous;
    review.push_lb = rail_push_lb(detail);
    review.load_along = asks_for_a_length(detail);
    if (solved.demand) review.proof = LineProof{solved.demand->frames, solved.demand->residual};
    for (std::size_t post = 0; post < solved.posts.size(); ++post)
        review.posts.push_back(post_share(project, solved, all, post));
    review.movements = movements_of(solved, detail);
    review.checks = rail_checks(solved, posts);
    review.unsolved = solved.unsolved;
    conclude(review);
    if (solved.demand) review.rests_on = what_sharing_rests_on(solved, detail.basis);
    review.assumptions = assumptions_of_line(solved, review, detail);
    return review;
}

std::vector<LineReview> review_lines(const model::Project& project, const std::vector<ResolvedPost>& posts,
                                     const std::vector<ResolvedLine>& rails) {
    demand::Kept kept;
    const std::vector<SolvedLine> solved = solve_lines(project, posts, rails, kept);
    std::vector<LineReview> lines;
    for (std::size_t number = 0; number < solved.size(); ++number)
        lines.push_back(review_line(project, posts, solved, number));
    return lines;
}

}  // namespace toehold::review
