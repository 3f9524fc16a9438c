#include "paper/page/html.h"
#include "paper/page/sections.h"
#include "paper/words.h"

#include <fmt/format.h>

namespace toehold::paper::page {
namespace {

using format::Locale;
using format::phrase;

/// Names of fields stay apart whatever the marks are, and the same as long as the input is.
std::string field_name(std::size_t post, const std::string& what) { return fmt::format("post-{}-{}", post + 1, what); }

std::string boxes(std::size_t post, std::size_t looks, const std::string& mark, const Locale& locale) {
    std::string all;
    for (std::size_t number = 1; number <= looks; ++number) {
        const std::string read = said(phrase("{}, check {}", mark, number), locale);
        all += element("label", fmt::format("<input type=\"checkbox\" name=\"{}\" aria-label=\"{}\" />{}",
                                            field_name(post, std::to_string(number)), read, number)) +
               "\n";
    }
    return element("div", "class=\"boxes\"", "\n" + all);
}

std::string line(std::size_t post, const char* const what, const std::string& type, const format::Phrase& label,
                 const Locale& locale) {
    // A date that is empty counts as wrong, which lets paper hide the browser's own words for it.
    const std::string needed = type == "date" ? " required=\"required\"" : " autocomplete=\"name\"";
    return element("label", "class=\"line\"",
                   said(label, locale) +
                       fmt::format(" <input type=\"{}\" name=\"{}\"{} />", type, field_name(post, what), needed));
}

std::string blocks_of(const SitePost& post, const Locale& locale) {
    std::vector<std::string> ids;
    for (const model::Block& block : post.review.resolved.detail.framing.blocks) ids.push_back(block.id);
    if (ids.empty()) return {};
    return element(
               "p", "class=\"faint\"",
               said(ids.size() == 1 ? phrase("Its block: {}.", ids.front()) : phrase("Its blocks: {}.", listed(ids)),
                    locale)) +
           "\n";
}

std::string field_set(const Section& section, std::size_t index, std::size_t looks) {
    const SitePost& post = section.subject.posts.at(index);
    const Locale& locale = section.issue.locale;
    const std::string own = section.alike.posts.size() > 1 ? blocks_of(post, locale) : std::string();
    return element("fieldset", "\n" + element("legend", escaped(post.mark)) + "\n" + own +
                                   boxes(index, looks, post.mark, locale) + "\n" +
                                   element("div", "class=\"signature\"",
                                           line(index, "name", "text", phrase("Name"), locale) +
                                               line(index, "date", "date", phrase("Date"), locale)) +
                                   "\n") +
           "\n";
}

}  // namespace

std::string sign_off(const Section& section, std::size_t looks) {
    const Locale& locale = section.issue.locale;
    std::string all =
        element("h3", said(phrase("INSPECTED BEFORE THE BOARDS WERE CLOSED"), locale)) + "\n" +
        element("p", "class=\"faint\"", said(phrase("The boxes have the numbers of the checks above."), locale)) + "\n";
    for (const std::size_t index : section.alike.posts) all += field_set(section, index, looks);
    return all;
}

std::string kept_words(const SiteSubject& subject, const Locale& locale) {
    const std::string count = fmt::format("<strong id=\"signed\">0</strong> / {}", subject.posts.size());
    return "<div id=\"kept\" class=\"screen\" hidden=\"hidden\">\n" +
           element("p", said(phrase("Posts signed for:"), locale) + " " + count) + "\n" +
           element("p", "class=\"faint\"",
                   said(phrase("What you enter is kept in this browser on this device alone, for this input alone. To "
                               "hand it in, print the page or save it as PDF."),
                        locale)) +
           "\n<p id=\"not-kept\" class=\"inadequate\" hidden=\"hidden\">" +
           said(phrase("This browser does not keep what you enter: print before you close the page."), locale) +
           "</p>\n" + element("button", "type=\"button\" id=\"print\"", said(phrase("Print"), locale)) + "\n</div>\n";
}

}  // namespace toehold::paper::page
