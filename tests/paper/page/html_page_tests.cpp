// The site page, read back by programs of others: xmllint for its form, zbarimg for its code.
#include "paper/page/site_page.h"

#include "paper/page/code.h"
#include "paper/page/html.h"
#include "paper/project/near_post.h"
#include "paper/read_back.h"
#include "paper/site/site_sample.h"
#include "support/three_posts.h"

#include <catch2/catch.hpp>

#include <regex>
#include <set>

using namespace toehold;
using test::contains;

namespace {

const char* const holding = "heron-landing-lags-in-deep-blocks";
const char* const failing = "heron-landing-short-lags-in-flat-block";

paper::Issue issue() {
    paper::Issue made = test::issue_in(units::System::us);
    made.program = "Toehold";
    return made;
}

std::string page_of(const review::Review& review, const paper::Issue& with = issue()) {
    return paper::site_page(paper::site_subject(review, with), with);
}

const std::string& holding_page() {
    static const std::string page = page_of(test::reviewed_demo(holding));
    return page;
}

std::vector<std::string> all_matches(const std::string& text, const std::string& pattern) {
    const std::regex expression(pattern);
    std::vector<std::string> found;
    for (std::sregex_iterator at(text.begin(), text.end(), expression), end; at != end; ++at)
        found.push_back((*at)[1].str());
    return found;
}

std::size_t count(const std::string& text, const std::string& part) {
    std::size_t found = 0;
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) ++found;
    return found;
}

/// Three posts as if each had the review of the shipped detail that is built the same.
paper::SiteSubject three_posts(const model::Project& project) {
    paper::SiteSubject subject{project.name, project.note, review::Verdict::adequate, std::string(64, 'b'), {}};
    for (const model::PlacedPost& post : project.posts) {
        review::Review review = test::reviewed_demo(holding);
        review.resolved =
            catalog::resolve(paper::detail_at_post(project, post), test::shipped_catalog()).resolved.value();
        subject.posts.push_back({post.id, review, post});
    }
    return subject;
}

/// The code's path as a bitmap, four dots a module.
std::string bitmap_of(const std::string& svg) {
    std::smatch box;
    REQUIRE(std::regex_search(svg, box, std::regex("viewBox=\"0 0 (\\d+) ")));
    const int across = std::stoi(box[1].str()), dots = 4;
    std::vector<std::string> rows(static_cast<std::size_t>(across * dots),
                                  std::string(static_cast<std::size_t>(across * dots), '0'));
    const std::regex bar("M(\\d+) (\\d+)h(\\d+)v1");
    for (std::sregex_iterator at(svg.begin(), svg.end(), bar), end; at != end; ++at) {
        const int left = std::stoi((*at)[1].str()), top = std::stoi((*at)[2].str()), wide = std::stoi((*at)[3].str());
        for (int row = dots * top; row < dots * (top + 1); ++row) {
            for (int column = dots * left; column < dots * (left + wide); ++column)
                rows[static_cast<std::size_t>(row)][static_cast<std::size_t>(column)] = '1';
        }
    }
    std::string bitmap = "P1\n" + std::to_string(across * dots) + " " + std::to_string(across * dots) + "\n";
    for (const std::string& row : rows) {
        for (const char dot : row) bitmap += std::string(1, dot) + " ";
        bitmap += "\n";
    }
    return bitmap;
}

std::string read_code(const std::string& svg) {
    return test::read_by("zbarimg --nodbus --raw -q FILE", bitmap_of(svg), "pbm");
}

}  // namespace

TEST_CASE("The site page is well-formed, and fetches nothing", "[process]") {
    const std::string& page = holding_page();
    CHECK(page.rfind("<!DOCTYPE html>\n<html ", 0) == 0);
    CHECK(test::read_by("xmllint --nonet --noout", page, "xml").empty());
    for (const char* never : {"src=", "<link", "@import", "url(http", "<img", "<iframe", "<object", "fetch(",
                              "XMLHttpRequest", "import("}) {
        INFO(never);
        CHECK_FALSE(contains(page, never));
    }
    for (const std::string& to : all_matches(page, "href=\"([^\"]{1})")) CHECK(to == "#");
}

TEST_CASE("No two things of the page have one id, and what is referred to is there", "[unit]") {
    const auto ids = all_matches(holding_page(), " id=\"([^\"]+)\"");
    const std::set<std::string> known(ids.begin(), ids.end());
    CHECK(known.size() == ids.size());
    std::set<std::string> missing;
    for (const std::string& to : all_matches(holding_page(), "href=\"#([^\"]+)\"")) {
        if (known.count(to) == 0) missing.insert(to);
    }
    CHECK(missing.empty());
}

TEST_CASE("The page says what the site sheet says, with its verdict and its input", "[unit]") {
    const std::string& page = holding_page();
    for (const char* part : {"Blocks B1 and B2: 4x8 on edge, 14 1/2 in long.", "Pilot holes: 7/16 in, then 5/16 in.",
                             "ADEQUATE: build exactly as drawn", "CHECK BEFORE CLOSING", "WHAT GOES IN", "DO NOT"}) {
        INFO(part);
        CHECK(contains(page, part));
    }
    CHECK(contains(page, test::reviewed_demo(holding).input_sha256));
    CHECK(count(page, "customary practice, not a code value") == 1);
    const std::string bad = page_of(test::reviewed_demo(failing));
    CHECK(contains(bad, "DO NOT BUILD THIS AS DRAWN"));
    CHECK_FALSE(contains(bad, "build exactly as drawn"));
}

TEST_CASE("A post is signed for with a box for each thing to look at, a name and a date", "[unit]") {
    const std::string& page = holding_page();
    const std::size_t looks = page.find("CHECK BEFORE CLOSING"), ends = page.find("</ol>", looks);
    const std::size_t things = count(page.substr(looks, ends - looks), "<li>");
    CHECK(things > 3);
    CHECK(count(page, "type=\"checkbox\"") == things);
    CHECK(count(page, "type=\"date\"") == 1);
    CHECK(count(page, "name=\"post-1-name\"") == 1);
}

TEST_CASE("Posts built alike share drawings, and each is signed for", "[process]") {
    model::Project project = test::three_posts();
    const std::string page = paper::site_page(three_posts(project), issue());
    CHECK(test::read_by("xmllint --nonet --noout", page, "xml").empty());
    CHECK(contains(page, ">P1 to P3</h2>"));
    CHECK(count(page, "<fieldset>") == 3);
    CHECK(count(page, "class=\"drawing\"") == 2);
    CHECK(contains(page, "Its blocks: B5 and B6."));
    CHECK(count(page, "<text ") == 3);  // the key plan's marks
    CHECK_FALSE(contains(page, "left out"));
    project.framing.blocks.at(2).across_in += 0.25;
    const std::string parted = paper::site_page(three_posts(project), issue());
    CHECK(count(parted, "class=\"drawing\"") == 4);
    CHECK(contains(parted, "href=\"#s2\""));
    CHECK(contains(parted, ">P1, P3</h2>"));
    CHECK(count(parted, "customary practice, not a code value") == 1);
    CHECK(test::pdf_pages(paper::site_book(three_posts(project), issue())) == 2);
}

TEST_CASE("A post under a rail that fails may not be built, and the page says why", "[unit]") {
    review::LineReview line;
    line.id = "L1";
    line.rail = true;
    CHECK(paper::under_rail(test::reviewed_demo(holding), line).verdict == review::Verdict::adequate);
    line.verdict = review::Verdict::inadequate;
    review::CheckFact cause;
    cause.check = "rail-bending";
    cause.title = format::phrase("Rail bending");
    cause.status = checks::Status::fails;
    cause.ratio = 1.5;
    line.cause = cause;
    const std::string page = page_of(paper::under_rail(test::reviewed_demo(holding), line));
    CHECK(contains(page, "DO NOT BUILD THIS AS DRAWN"));
    CHECK(contains(page, "Rail bending"));
    CHECK_FALSE(contains(page, "build exactly as drawn"));
    CHECK(paper::under_rail(test::reviewed_demo(failing), line).facts.first_finding.has_value() ==
          test::reviewed_demo(failing).facts.first_finding.has_value());
}

TEST_CASE("Marks of the key plan never stand on each other, and those left out are said", "[unit]") {
    paper::SiteSubject subject = three_posts(test::three_posts());
    // Thirty posts 4 in apart: no room for every mark.
    for (int number = 4; number <= 30; ++number) {
        paper::SitePost more = subject.posts.front();
        more.mark = "P" + std::to_string(number);
        more.placed->at = {96.0 + 4.0 * (number - 3), 0.0};
        subject.posts.push_back(more);
    }
    const std::string page = paper::site_page(subject, issue());
    CHECK(contains(page, "Marks without room are left out."));
    double before = -1.0;
    std::size_t marks = 0;
    for (const std::string& x : all_matches(page, "<text x=\"([0-9.]+)\" y=\"[0-9.]+\">P\\d\\d<")) {
        if (before > 0.0 && std::stod(x) > before) CHECK(std::stod(x) - before >= 8.0);
        before = std::stod(x);
        ++marks;
    }
    CHECK(marks > 3);
}

TEST_CASE("The code holds the link where there is one, else the input's hash", "[process]") {
    const std::string hash(64, 'c');
    CHECK(read_code(paper::page::qr_code(hash, "hash")) == hash + "\n");
    const std::string link = "https://example.org/heron-landing/site.html?post=P1&rev=A";
    CHECK(read_code(paper::page::qr_code(link, "link")) == link + "\n");
    CHECK_THROWS_AS(paper::page::qr_code(std::string(4000, 'a'), ""), std::invalid_argument);
    CHECK_THROWS_AS(paper::page::qr_code("", ""), std::invalid_argument);
    paper::Issue linked = issue();
    linked.link = link;
    const std::string page = page_of(test::reviewed_demo(holding), linked);
    CHECK(contains(page, "href=\"https://example.org/heron-landing/site.html?post=P1&amp;rev=A\""));
}

TEST_CASE("Names of a file cannot become part of the page's form", "[bad-input][process]") {
    CHECK(paper::page::escaped("<b a='1'>\"&\x01") == "&lt;b a=&#39;1&#39;&gt;&quot;&amp;?");
    review::Review review = test::reviewed_demo(holding);
    review.detail = "</title><script>alert(1)</script> & \"Landing\"";
    review.resolved.detail.note = "<!-- ]]> \xff";
    const std::string page = page_of(review);
    CHECK(test::read_by("xmllint --nonet --noout", page, "xml").empty());
    CHECK(count(page, "<script") == 1);
}

TEST_CASE("The page is the same for the same input, in inches and in millimeters", "[unit]") {
    CHECK(page_of(test::reviewed_demo(holding)) == holding_page());
    const paper::Issue si = test::issue_in(units::System::si);
    CHECK(contains(page_of(test::reviewed_demo(holding), si), "4x8 on edge, 368 mm long."));
}
