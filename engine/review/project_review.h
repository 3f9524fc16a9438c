#pragma once
// A project in, a review of every post out. Posts whose bases load the same framing are reviewed with the others' loads
// on it, where those loads can act at the same time.
#include "catalog/resolve_rail.h"
#include "model/project.h"
#include "review/line/line_review.h"
#include "review/review.h"

#include <functional>
#include <string>
#include <vector>

namespace toehold::review {

/// One post's detail with its catalog rows, ready to be reviewed.
struct ResolvedPost {
    model::PlacedPost post;
    catalog::Resolved resolved;
};

/// A guard line's rail with its catalog rows.
struct ResolvedLine {
    std::string id;
    catalog::ResolvedRail rail;
};

struct PostReview {
    model::PlacedPost post;
    Review review;
    /// Posts named with this one in `ProjectReview::shared`, in the project's order.
    std::vector<std::string> shares_with;
};

/// A member that more than one post loads: each with at least a twentieth of the largest action of some kind (moment,
/// shear, torque) that any post puts on it. Smaller shares are added up too; they are only not named.
struct SharedMember {
    model::PartId part;
    std::vector<std::string> posts;  ///< two or more, in the project's order
};

struct ProjectReview {
    std::string project;  ///< its name
    std::string input_sha256;
    Verdict verdict = Verdict::incomplete;    ///< the gravest of the posts' and the lines'
    std::vector<PostReview> posts;            ///< in the project's order
    std::vector<model::RoleCount> roles;      ///< how many posts stand in a line, at a corner, at an end
    std::vector<LineReview> lines;            ///< of guard, in the project's order
    std::vector<SharedMember> shared;         ///< in the order of members
    bool pushes_together = false;             ///< loads that act on all posts were put on the shared framing together
    std::vector<format::Phrase> assumptions;  ///< on what acts together and what cannot
    std::vector<model::Remark> remarks;
};

/// How many posts have the verdict.
[[nodiscard]] std::size_t posts_with(const ProjectReview& review, Verdict verdict);

/// How far a project's review is, post by post.
struct ProjectProgress {
    std::size_t forces = 0, checks = 0;    ///< posts whose forces are found, whose checks have run
    std::size_t posts = 0;                 ///< all of them
    const PostReview* reviewed = nullptr;  ///< the post whose checks ran last; nullptr: forces are being found
};
/// What is asked and told while a project is reviewed; either may be empty.
struct ProjectWatch {
    Stop stop = {};  ///< asked between posts; once true, what comes back is to be thrown away
    std::function<void(const ProjectProgress&)> progress = {};
};

/// `posts` are of one project: their framing is one framing, each seen from its own post. `lines`: the guard lines that
/// have a rail. A post of a line is reviewed under the part of a concentrated push that reaches it where the line
/// shares, else under the whole; and under the length of rail that continuity gives it where that is more than its
/// loads say. `whole`: with assumptions, the proof factor and what posts that share come to alone (`PostShare::lone`
/// and `reviewed_in`), each of which costs further reviews; verdicts are the same without. Throws as `review` does, and
/// std::invalid_argument where a rail is not among `lines`.
[[nodiscard]] ProjectReview review_project(const model::Project& project, const std::vector<ResolvedPost>& posts,
                                           const std::string& input_sha256, const std::vector<ResolvedLine>& lines = {},
                                           bool whole = true, const ProjectWatch& watch = {});

}  // namespace toehold::review
