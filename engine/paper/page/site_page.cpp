#include "paper/page/site_page.h"

#include "paper/page/code.h"
#include "paper/page/html.h"
#include "paper/page/sections.h"
#include "paper/site/site_page.h"
#include "paper/words.h"
#include "review/assumptions.h"
#include "wording/status.h"

#include <utility>

namespace toehold::paper {
namespace page {

using format::Locale;
using format::Phrase;
using format::phrase;

std::string verdict_class(review::Verdict verdict) {
    switch (verdict) {
        case review::Verdict::adequate:
            return "adequate";
        case review::Verdict::inadequate:
            return "inadequate";
        case review::Verdict::incomplete:
            break;
    }
    return "incomplete";
}

std::string said(const Phrase& words, const Locale& locale) { return escaped(format::text(words, locale)); }

namespace {

std::string head_of(const SiteSubject& subject, const Issue& issue) {
    const std::string title = said(phrase("{}: site page", subject.name), issue.locale);
    return "<head>\n<meta charset=\"UTF-8\" />\n<meta name=\"viewport\" content=\"width=device-width, "
           "initial-scale=1\" />\n" +
           element("title", title) + "\n" + element("style", style()) + "\n</head>\n";
}

std::string subtitle(const SiteSubject& subject, const Issue& issue) {
    std::vector<Phrase> words{phrase("Site page: what goes under the boards.")};
    const std::string project = project_of(issue, subject.posts.front().review.resolved.detail);
    if (!project.empty() && project != subject.name) words.push_back(phrase("Project: {}.", project));
    if (!subject.note.empty()) words.push_back(format::verbatim(site::first_sentence(subject.note)));
    if (!issue.revision.empty()) words.push_back(phrase("Revision {}.", issue.revision));
    return element("p", "class=\"faint\"", escaped(sentences(words, issue.locale))) + "\n";
}

/// Of a project: which posts, their verdict, and the way to their section.
std::string contents(const std::vector<Section>& sections, const Locale& locale) {
    if (sections.size() < 2) return {};
    std::string rows =
        element("tr", element("th", said(phrase("Posts"), locale)) + element("th", said(phrase("Quantity"), locale)) +
                          element("th", said(phrase("Verdict"), locale)));
    for (const Section& one : sections) {
        const review::Verdict verdict = one.drawn().review.verdict;
        rows +=
            "\n" +
            element("tr", element("td", element("a", "href=\"#" + anchor_of(one) + "\"", said(one.marks(), locale))) +
                              element("td", std::to_string(one.alike.posts.size())) +
                              element("td", "class=\"" + verdict_class(verdict) + "\"",
                                      said(wording::word(verdict), locale)));
    }
    return element("table", "\n" + element("tbody", rows) + "\n") + "\n";
}

std::string quantities(const SiteSubject& subject, const Locale& locale) {
    std::string all;
    for (const Phrase& line : subject.quantities) all += element("p", said(line, locale)) + "\n";
    return all;
}

/// The code, and in letters what it holds.
std::string code_of(const SiteSubject& subject, const Issue& issue) {
    const bool linked = !issue.link.empty();
    const std::string holds = linked ? issue.link : subject.input_sha256;
    const std::string label = format::text(
        linked ? phrase("QR code of this page's address") : phrase("QR code of the input's SHA-256"), issue.locale);
    const std::string shown = linked ? element("a", "class=\"hash\" href=\"" + escaped(holds) + "\"", escaped(holds))
                                     : element("span", "class=\"hash\"", "SHA-256 " + escaped(holds));
    return element("figure", "class=\"code\"", qr_code(holds, label) + element("figcaption", shown)) + "\n";
}

std::string foot_of(const SiteSubject& subject, const Issue& issue) {
    std::string all = element("p", said(site::sheet_cautions(), issue.locale)) + "\n";
    for (const Phrase& caution : review::cautions()) all += element("p", said(caution, issue.locale)) + "\n";
    std::string from = issue.program;
    for (const std::string& more : {issue.date, issue.file}) from += more.empty() ? "" : ", " + more;
    all += element("p", "class=\"faint\"", escaped(from)) + "\n" +
           element("p", "class=\"hash\"",
                   said(phrase("Input SHA-256"), issue.locale) + " " + escaped(subject.input_sha256)) +
           "\n" + code_of(subject, issue);
    return element("footer", "\n" + all);
}

}  // namespace
}  // namespace page

std::string site_page(const SiteSubject& subject, const Issue& issue) {
    using page::element;
    const std::vector<AlikePosts> alike = alike_posts(subject.posts);
    std::vector<page::Section> sections;
    sections.reserve(alike.size());
    for (const AlikePosts& one : alike) sections.push_back({subject, one, sections.size(), issue});
    std::string main;
    for (const page::Section& section : sections) main += page::section_of(section);
    // The program speaks English and French; where it speaks another language than English it has a catalogue.
    const char* const language = issue.locale.catalogue ? "fr" : "en";
    std::string body = element("h1", page::escaped(subject.name)) + "\n" + page::subtitle(subject, issue);
    // A rail may fail where no post does.
    const bool alone = sections.size() == 1 && sections.front().drawn().review.verdict == subject.verdict;
    if (!alone) {
        body += element("p", "class=\"verdict " + page::verdict_class(subject.verdict) + "\"",
                        element("strong", page::said(site::banner_words(subject.verdict), issue.locale)));
    }
    body += page::contents(sections, issue.locale) + page::quantities(subject, issue.locale) +
            page::key_plan(subject, issue.locale) + page::kept_words(subject, issue.locale) + main +
            page::foot_of(subject, issue);
    return "<!DOCTYPE html>\n" +
           element("html", "xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"" + std::string(language) + "\"",
                   "\n" + page::head_of(subject, issue) +
                       element("body", "id=\"page\" data-input=\"" + page::escaped(subject.input_sha256) + "\"",
                               "\n" + body + "\n" + element("script", page::script()) + "\n") +
                       "\n") +
           "\n";
}

}  // namespace toehold::paper
