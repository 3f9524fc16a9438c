// What the XML library accepts and a document must not hold (the library's own leniency is why these rules exist).
#include "support.h"
#include "xml/markup_rules.h"
#include "xml/strict_document.h"
#include "xml/text_file.h"

#include <catch2/catch.hpp>

using namespace toehold;
using test::sentences;
using test::tells;

namespace {

model::Problems problems_of(std::string_view text) { return xml::parse_strictly(text).problems; }

void check_refused(std::string_view text, const std::string& words, int line = 1) {
    const model::Problems problems = problems_of(text);
    INFO(text.substr(0, 100) << "\n" << sentences(problems));
    REQUIRE_FALSE(problems.empty());
    CHECK(tells(problems, words));
    CHECK(problems.front().line == line);
}

}  // namespace

TEST_CASE("a plain document has no problem of form", "[unit]") {
    for (const char* text :
         {"<a/>", "<?xml version=\"1.0\" encoding=\"utf-8\"?>\n<!-- x -->\n<a b='1' c=\"2\">\n<d/>\n</a>\n<!-- y -->\n",
          "\xEF\xBB\xBF<a b=\"&lt;&gt;&amp;&quot;&apos;&#10;&#xB0;\"/>", "<a></a >",
          "<?xml version='1.0' standalone='no' ?><a/>", "<a  b = '1'/>"}) {
        INFO(text);
        const xml::StrictDocument document = xml::parse_strictly(text);
        CHECK(sentences(document.problems) == "");
        CHECK(document.root != nullptr);
    }
}

TEST_CASE("exactly one element stands at the top", "[bad-input]") {
    check_refused("<a/>\n<b/>", "a second element at the top", 2);
    check_refused("junk<a/>", "text does not belong here");
    check_refused("<a/>junk", "text does not belong here");
    check_refused("", "the file is empty");
    check_refused("  \n\n", "the file is empty", 3);
    check_refused("<!-- only this -->", "the file is empty");
}

TEST_CASE("no text, CDATA, DOCTYPE or processing instruction", "[bad-input]") {
    check_refused("<a>1<!--c-->2</a>", "text does not belong here");
    check_refused("<a>\n  <b/>\n  stray\n</a>", "text does not belong here", 3);
    check_refused("<a><![CDATA[x]]></a>", "text does not belong here");
    check_refused("<!DOCTYPE a><a/>", "a DOCTYPE");
    check_refused("<!DOCTYPE a [<!ENTITY b SYSTEM \"/etc/passwd\">]>\n<a>&b;</a>", "a DOCTYPE");
    check_refused("<?php x ?><a/>", "a processing instruction");
    check_refused("<a><?go?></a>", "a processing instruction");
    check_refused(" <?xml version=\"1.0\"?><a/>", "a processing instruction");
}

TEST_CASE("only XML 1.0 in UTF-8", "[bad-input]") {
    check_refused("<?xml version=\"9.9\"?><a/>", "this version of XML");
    check_refused("<?xml version=\"1.0\" encoding=\"ISO-8859-1\"?><a/>", "this encoding");
    check_refused("<?xml encoding=\"UTF-8\"?><a/>", "does not belong in the XML declaration");
    check_refused("<?xml version=\"1.0\" encodang=\"UTF-8\"?><a/>", "does not belong in the XML declaration");
    check_refused("<?xml encoding=\"UTF-8\" version=\"1.0\"?><a/>", "does not belong in the XML declaration");
    check_refused("<?xml version=\"1.0\" version=\"1.0\"?><a/>", "does not belong in the XML declaration");
    check_refused("<?xml version=\"1.0\" standalone=\"2\"?><a/>", "standalone is yes or no");
    check_refused("<?xml ?><a/>", "does not say its version");
    check_refused("<?xml version=\"1.0\"", "name is expected");
    check_refused("<a b=\"\xFF\"/>", "no UTF-8");
    check_refused("<a>\n<b c=\"\xC0\x80\"/></a>", "no UTF-8", 2);
    check_refused("<a b=\"\x01\"/>", "control character");
    check_refused(std::string_view("<a b=\"x\0y\"/>", 12), "control character");
    check_refused("\xFF\xFE<\0a\0/\0>\0", "no UTF-8");
}

TEST_CASE("references outside the five names and the permitted characters are refused", "[bad-input]") {
    for (const char* value : {"&undefined;", "&", "& b", "&#0;", "&#1;", "&#xD800;", "&#x110000;", "&#xFFFFFFFFFF;",
                              "&#;", "&#x;", "&#-1;", "&lt", "&amp;&b;"}) {
        check_refused(std::string("<a b=\"") + value + "\"/>", "begins no known reference");
    }
}

TEST_CASE("broken tags and attributes are refused where they break", "[bad-input]") {
    check_refused("<a b=\"1\"c=\"2\"/>", "a blank is missing");
    check_refused("<a b=\"<\"/>", "holds \"<\"");
    check_refused("<a b=1/>", "not in quotes");
    check_refused("<a b/>", "has no value");
    check_refused("<a b=\"1\" b=\"2\"/>", "given twice");
    check_refused("<a =\"1\"/>", "name is expected");
    check_refused("<a b=\"1", "not in quotes");
    check_refused("<a b=\"two\nlines\"/>", "line break");
    check_refused("<a b=\"a\ttab\"/>", "tab");
    check_refused("<a><b></a></b>", "<b> of line 1 is not closed");
    check_refused("<a>\n<b>\n</a>", "<b> of line 2 is not closed", 3);
    check_refused("</a>", "without its opening tag");
    check_refused("<a></a", "not complete");
    check_refused("<a>< b/></a>", "begins no element");
    check_refused("<a><!-- x -- y --></a>", "inside a comment");
    check_refused("<a><!-- x", "a comment is not closed");
    check_refused("<a>", "ends too early");
    check_refused("<a", "ends inside <a>");
}

TEST_CASE("nesting and attributes are limited before the library sees them", "[bad-input]") {
    std::string deep;
    for (int depth = 0; depth < 100000; ++depth) deep += "<a>";
    check_refused(deep, "nested too deeply");
    std::string wide = "<a";
    for (int index = 0; index < 32000; ++index) wide += " b" + std::to_string(index) + "=\"\"";
    check_refused(wide + "/>", "too many attributes");
    check_refused(std::string(xml::max_document_bytes + 1, ' '), "larger than 4 MB", 0);
}

TEST_CASE("as deep and as wide as is allowed is read", "[unit]") {
    std::string text;
    for (std::size_t depth = 0; depth < xml::max_element_depth; ++depth) text += "<a>";
    for (std::size_t depth = 0; depth < xml::max_element_depth; ++depth) text += "</a>";
    CHECK(sentences(problems_of(text)) == "");
    std::string wide = "<a";
    for (std::size_t index = 0; index < xml::max_attributes; ++index) wide += " b" + std::to_string(index) + "=\"\"";
    CHECK(sentences(problems_of(wide + "/>")) == "");
}

TEST_CASE("several faults of form are told at once, but never thousands", "[bad-input]") {
    CHECK(problems_of("<a b=\"&\">x<c d=\"&\"/>y</a>").size() == 4);
    std::string many = "<a>";
    for (int index = 0; index < 100000; ++index) many += "x<b/>";
    CHECK(problems_of(many + "</a>").size() <= 20);
}
