#pragma once
// The site page: what the site sheet says, for every post, as one HTML file that a phone shows without a network and a
// printer prints without a script.
#include "model/project.h"
#include "paper/issue.h"
#include "review/line/line_review.h"
#include "review/review.h"
#include "review/schedule/cause.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::paper {

/// A post, reviewed. Of a project `review.resolved` is of the detail as it is built there (project/near_post.h).
struct SitePost {
    std::string mark;
    review::Review review;
    std::optional<model::PlacedPost> placed = std::nullopt;  ///< in the project; absent: a detail alone
};

/// Posts that are built alike and come to the same: they share drawings and instructions.
struct AlikePosts {
    std::vector<std::size_t> posts;  ///< places among those given, rising; never empty
};
[[nodiscard]] std::vector<AlikePosts> alike_posts(const std::vector<SitePost>& posts);

struct SiteSubject {
    std::string name;  ///< of the project or the detail
    std::string note;  ///< its first sentence is shown
    review::Verdict verdict = review::Verdict::incomplete;
    std::string input_sha256;
    std::vector<SitePost> posts;                       ///< one or more
    std::vector<std::vector<std::string>> lines = {};  ///< of guard: marks of posts in order along a rail
    /// How many posts stand in each line, at its corners, at its ends: a sentence a line.
    std::vector<format::Phrase> quantities = {};
};
/// Of a lone detail: one post, marked by `Post` in the reader's language.
[[nodiscard]] SiteSubject site_subject(const review::Review& review, const Issue& issue);

/// The post's review where its guard line's rail fails, or lacks what it needs: whoever builds the post must not be
/// told that it may be built. A review that is not adequate itself stays as it is.
[[nodiscard]] review::Review under_rail(review::Review review, const review::LineReview& line);

/// XHTML that is HTML too; nothing in it is fetched from anywhere. The QR code holds `issue.link`, else the input's
/// SHA-256. Throws std::invalid_argument for a link too long for a code.
[[nodiscard]] std::string site_page(const SiteSubject& subject, const Issue& issue);

/// A site sheet for each kind of post, one after the other, as PDF.
[[nodiscard]] std::string site_book(const SiteSubject& subject, const Issue& issue);

}  // namespace toehold::paper
