#pragma once
// The site sheet's page: where banner, drawings, lists and foot stand, at the largest lettering that lets them.
#include "paper/papers.h"
#include "paper/site/page_words.h"
#include "review/facts.h"

#include <optional>

namespace toehold::paper::site {

/// Font sizes of the body, mm; 12 pt is 4.23 mm. The last is the least anything on the sheet is set in.
inline constexpr double body_sizes_mm[] = {4.3, 4.1, 3.9, 3.7, 3.5, 3.3};
inline constexpr double least_lettering_mm = 3.3;

struct PagePlan {
    Size size;
    double left_mm = 0.0, top_mm = 0.0, width_mm = 0.0, foot_mm = 0.0;  ///< inside the margins
};

// site_banner.cpp
/// May it be built, in a few words, and why.
[[nodiscard]] format::Phrase banner_words(review::Verdict verdict);
[[nodiscard]] format::Phrase banner_reason(const review::Review& review);
/// What holds for every sheet.
[[nodiscard]] format::Phrase sheet_cautions();
/// A note's first sentence: what the detail is, or that it is invented.
[[nodiscard]] std::string first_sentence(const std::string& note);
/// What it is and whether it may be built. Returns where it ends.
double add_head(PageWords& page, std::vector<Placed>& others, const PagePlan& plan, const review::Review& review,
                const Issue& issue);
/// Cautions, what the sheet was made from, and the place for a name. Returns its top; stands on the page's foot.
double add_foot(PageWords& page, const PagePlan& plan, const review::Review& review, const Issue& issue);

}  // namespace toehold::paper::site
