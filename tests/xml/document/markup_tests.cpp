// What the XML library accepts and a document must not hold (the library's own leniency is why these rules exist).
#include "xml/document/file.h"
#include "xml/document/strict_document.h"
#include "xml/samples.h"

#include <atomic>
#include <catch2/catch.hpp>
#include <ctime>
#include <thread>

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
    check_refused("junk<a/>", "text is not allowed here (found \"junk<a/>\"");
    check_refused("<a/>junk", "text is not allowed here (found \"junk\"");
    check_refused("", "the file holds no element");
    check_refused("  \n\n", "the file holds no element", 3);
    check_refused("<!-- only this -->", "the file holds no element");
}

TEST_CASE("no text, CDATA, DOCTYPE or processing instruction", "[bad-input]") {
    check_refused("<a>1<!--c-->2</a>", "text is not allowed here");
    check_refused("<a>\n  <b/>\n  stray\n</a>", "text is not allowed here", 3);
    check_refused("<a><![CDATA[x]]></a>", "a CDATA section is not allowed");
    check_refused("<a>\n<![CDATA[ ]]></a>", "a CDATA section is not allowed", 2);
    check_refused("<a>&lt;</a>", "text is not allowed here");
    check_refused("<a>&#65;</a>", "text is not allowed here");
    check_refused("<!DOCTYPE a><a/>", "a DOCTYPE");
    check_refused("<!DOCTYPE a [<!ENTITY b SYSTEM \"/etc/passwd\">]>\n<a>&b;</a>", "a DOCTYPE");
    check_refused("<?php x ?><a/>", "a processing instruction");
    check_refused("<a><?go?></a>", "a processing instruction");
    check_refused(" <?xml version=\"1.0\"?><a/>", "a processing instruction");
}

TEST_CASE("only XML 1.0 in UTF-8", "[bad-input]") {
    check_refused("<?xml version=\"9.9\"?><a/>", "this version of XML is not supported");
    check_refused("<?xml version=\"1.0\" encoding=\"ISO-8859-1\"?><a/>", "this encoding is not supported");
    check_refused("<?xml encoding=\"UTF-8\"?><a/>", "the XML declaration is not valid");
    check_refused("<?xml version=\"1.0\" encodang=\"UTF-8\"?><a/>", "the XML declaration is not valid");
    check_refused("<?xml encoding=\"UTF-8\" version=\"1.0\"?><a/>", "the XML declaration is not valid");
    check_refused("<?xml version=\"1.0\" version=\"1.0\"?><a/>", "the XML declaration is not valid");
    check_refused("<?xml version=\"1.0\" standalone=\"2\"?><a/>", "the XML declaration is not valid");
    check_refused("<?xml ?><a/>", "the XML declaration is not valid");
    check_refused("<?xml version=\"1.0\"", "the file ends too early");
    check_refused("<a b=\"\xFF\"/>", "not valid UTF-8 (is this UTF-16?)");
    check_refused("<a>\n<b c=\"\xC0\x80\"/></a>", "not valid UTF-8 (is this UTF-16?)", 2);
    check_refused("<a b=\"\x01\"/>", "a control character is not allowed (found \"U+0001\")");
    check_refused(std::string_view("<a b=\"x\0y\"/>", 12), "not valid UTF-8");
    check_refused("\xFF\xFE<\0a\0/\0>\0", "not valid UTF-8 (is this UTF-16?)");
}

TEST_CASE("references outside the five names and the permitted characters are refused", "[bad-input]") {
    for (const char* value : {"&undefined;", "&", "& b", "&#0;", "&#1;", "&#xD800;", "&#x110000;", "&#xFFFFFFFFFF;",
                              "&#;", "&#x;", "&#-1;", "&lt", "&amp;&b;"}) {
        check_refused(std::string("<a b=\"") + value + "\"/>", "does not begin a known reference");
    }
}

TEST_CASE("broken tags and attributes are refused where they break", "[bad-input]") {
    check_refused("<a b=\"1\"c=\"2\"/>", "a blank is missing");
    check_refused("<a b=\"<\"/>", "\"<\" is not allowed in a value");
    check_refused("<a b=1/>", "a value is not in quotes");
    check_refused("<a b/>", "an attribute has no value");
    check_refused("<a b=\"1\" b=\"2\"/>", "an attribute is given twice");
    check_refused("<a =\"1\"/>", "a name is missing or not valid");
    check_refused("<a b=\"1", "ends too early");
    check_refused("<a b=\"two\nlines\"/>", "line break");
    check_refused("<a b=\"a\ttab\"/>", "tab");
    check_refused("<a><b></a></b>", "<b> of line 1 is not closed");
    check_refused("<a>\n<b>\n</a>", "<b> of line 2 is not closed", 3);
    check_refused("</a>", "without its opening tag");
    check_refused("<a></a", "ends too early");
    check_refused("<a>< b/></a>", "a name is missing or not valid");
    check_refused("<a><!-- x -- y --></a>", "inside a comment");
    check_refused("<a><!-- x", "a comment is not closed");
    check_refused("<a>", "ends too early");
    check_refused("<a", "ends too early");
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

TEST_CASE("every text that does not belong is told of, up to what makes the rest unreadable", "[bad-input]") {
    CHECK(problems_of("<a>x<c/>y<d b=\"1&#10;2\">z</d></a>").size() == 3);
    CHECK(problems_of("<a>x<c b=\"\n\"/>y<d>z</e>w</a>").size() == 5);
    CHECK(problems_of("<a b=\"&\">x</a>").size() == 1);
    std::string many = "<a>";
    for (int index = 0; index < 100000; ++index) many += "x<b/>";
    CHECK(problems_of(many + "</a>").size() <= 20);
}

TEST_CASE("as much as a file may hold of one fault is refused soon", "[bad-input]") {
    const auto many = [](const std::string& one) {
        std::string text = "<a>";
        while (text.size() + one.size() + 4 < xml::max_document_bytes) text += one;
        return text + "</a>";
    };
    std::string wide = "<a";
    for (int index = 0; wide.size() + 16 < xml::max_document_bytes; ++index)
        wide += " b" + std::to_string(index) + "=''";
    for (const std::string& text : {many("&"), many("&lt;"), many("&x;"), many("<b c=1/>"), many("<!---->"), many("< "),
                                    many("<b>"), many("]]>"), many("<b c=''c=''/>"), wide + "/>"}) {
        const std::clock_t began = std::clock();  // of the processor, which others may keep busy
        (void)problems_of(text);
        INFO(text.substr(0, 40));
        CHECK(std::clock() - began < 5 * CLOCKS_PER_SEC);
    }
}

TEST_CASE("documents are read in several threads at once", "[unit]") {
    std::vector<std::thread> threads;
    std::atomic<int> right{0};
    for (int thread = 0; thread < 4; ++thread) {
        threads.emplace_back([&right] {
            for (int count = 0; count < 100; ++count) {
                const bool sound = problems_of(test::plain_detail()).empty();
                const model::Problems problems = problems_of("<a>\n<b></a>");
                if (sound && problems.size() == 1 && problems.front().line == 2) ++right;
            }
        });
    }
    for (std::thread& thread : threads) thread.join();
    CHECK(right == 400);
}
