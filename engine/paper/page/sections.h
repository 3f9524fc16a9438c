#pragma once
// Parts of the site page, each as ready HTML.
#include "paper/page/site_page.h"

namespace toehold::paper::page {

/// Posts that share drawings and instructions, with what the page says of them.
struct Section {
    const SiteSubject& subject;
    const AlikePosts& alike;
    std::size_t number = 0;  ///< among the page's sections, from 0
    const Issue& issue;

    [[nodiscard]] const SitePost& drawn() const { return subject.posts.at(alike.posts.front()); }
    [[nodiscard]] format::Phrase marks() const;
};

/// `s1`: where the section can be linked to.
[[nodiscard]] std::string anchor_of(const Section& section);

// key_plan.cpp
/// Empty for one post, or where a place is not known.
[[nodiscard]] std::string key_plan(const SiteSubject& subject, const format::Locale& locale);

// post_section.cpp
/// Verdict, drawings, instructions, and the fields to sign for each post.
[[nodiscard]] std::string section_of(const Section& section);

// sign_off.cpp
/// A field set for each post: a box for each thing to look at, name and date.
[[nodiscard]] std::string sign_off(const Section& section, std::size_t looks);
/// Above all of them: how many are signed, where it is kept, printing. Shown by the script alone.
[[nodiscard]] std::string kept_words(const SiteSubject& subject, const format::Locale& locale);

/// `adequate`, `inadequate`, `incomplete`: the style's names.
[[nodiscard]] std::string verdict_class(review::Verdict verdict);
/// A phrase as escaped words in the reader's language and units.
[[nodiscard]] std::string said(const format::Phrase& words, const format::Locale& locale);

}  // namespace toehold::paper::page
