#include "solving/projects.h"

#include "catalog/resolve_rail.h"
#include "review/project_review.h"
#include "wording/verdict.h"
#include "xml/detail/project_file.h"
#include "xml/document/file.h"

#include <algorithm>
#include <exception>
#include <utility>

namespace toehold::solving {
namespace {

/// A project with every catalog row looked up.
struct Resolved {
    std::vector<review::ResolvedPost> posts;
    std::vector<review::ResolvedLine> lines;  ///< those with a rail
    model::Problems problems;
};

/// What is wrong with a mount is told once, however many posts stand on it.
void add_new(model::Problems& all, const model::Problems& more) {
    for (const model::Problem& problem : more) {
        if (std::find(all.begin(), all.end(), problem) == all.end()) all.push_back(problem);
    }
}

Resolved resolve(const model::Project& project, const catalog::Catalog& catalog) {
    Resolved resolved;
    resolved.problems = model::validate(project);
    if (!resolved.problems.empty()) return resolved;
    for (const model::PlacedPost& post : project.posts) {
        catalog::Resolution one = catalog::resolve(model::detail_of(project, post), catalog);
        add_new(resolved.problems, one.problems);
        if (one.resolved) resolved.posts.push_back({post, std::move(*one.resolved)});
    }
    for (const model::GuardLine& line : project.guard_lines) {
        if (!line.rail) continue;
        catalog::RailResolution one =
            catalog::resolve_rail(*line.rail, project.framing, catalog, "guard-lines/guard-line[" + line.id + "]/rail");
        add_new(resolved.problems, one.problems);
        if (one.rail) resolved.lines.push_back({line.id, std::move(*one.rail)});
    }
    return resolved;
}

/// The project's review with every post told of on the way; nullptr: given up.
std::shared_ptr<const review::ProjectReview> reviewed(const model::Project& project, const Resolved& resolved,
                                                      const Errand::Stop& stop,
                                                      const std::function<void(ProjectNews)>& tell) {
    review::ProjectWatch watch;
    watch.stop = stop;
    watch.progress = [&tell](const review::ProjectProgress& far) {
        ProjectNews news;
        news.forces = far.forces;
        news.checks = far.checks;
        news.posts = far.posts;
        if (far.reviewed != nullptr) news.reviewed = outcome_of(far.reviewed->post.id, far.reviewed->review);
        tell(std::move(news));
    };
    // Of the file as it would be saved now.
    const std::string digest = xml::sha256(xml::write_project(project));
    auto review = std::make_shared<const review::ProjectReview>(
        review::review_project(project, resolved.posts, digest, resolved.lines, true, watch));
    return stop() ? nullptr : review;
}

}  // namespace

PostOutcome outcome_of(const std::string& post, const review::Review& review) {
    return {post, review.verdict, review::cause_of(review), wording::verdict_reason(review),
            review.facts.largest_tension};
}

void review_project(const model::Project& project, const catalog::Catalog& catalog, const Errand::Stop& stop,
                    const std::function<void(ProjectNews)>& tell) {
    ProjectNews last;
    last.posts = project.posts.size();
    try {
        const Resolved resolved = resolve(project, catalog);
        last.problems = resolved.problems;
        if (last.problems.empty()) last.review = reviewed(project, resolved, stop, tell);
    } catch (const std::exception& fault) {
        last.failure = format::verbatim(fault.what());
    }
    if (!stop()) tell(std::move(last));
}

Projects::Projects(const catalog::Catalog& catalog, std::function<void(ProjectNews)> deliver)
    : catalog_(catalog), deliver_(std::move(deliver)) {}

std::uint64_t Projects::begin(model::Project project) {
    const std::uint64_t number = ++last_;
    errand_.begin([this, number, project = std::move(project)](const Errand::Stop& stop) {
        review_project(project, catalog_, stop, [&](ProjectNews news) {
            news.number = number;
            if (!stop()) deliver_(std::move(news));
        });
    });
    return number;
}

void Projects::stop() { errand_.stop(); }

}  // namespace toehold::solving
