#include "xml/document/characters.h"

#include <catch2/catch.hpp>

using namespace toehold::xml;

TEST_CASE("UTF-8 in shortest form is read, anything else is not", "[unit]") {
    // Byte sequences: RFC 3629, section 7 (examples) and section 10 (overlong forms).
    CHECK(first_character("A\u00e9")->code_point == 'A');
    CHECK(first_character("\xE2\x89\xA2")->code_point == 0x2262);
    CHECK(first_character("\xF0\xA3\x8E\xB4")->code_point == 0x233B4);
    CHECK(first_character("\xF0\xA3\x8E\xB4")->bytes == 4);
    CHECK_FALSE(first_character("\xC0\x80"));          // overlong NUL
    CHECK_FALSE(first_character("\xE0\x80\xAF"));      // overlong slash
    CHECK_FALSE(first_character("\xF0\x80\x80\xAF"));  // overlong slash
    CHECK_FALSE(first_character("\xF4\x90\x80\x80"));  // above U+10FFFF
    CHECK_FALSE(first_character("\x80"));              // continuation alone
    CHECK_FALSE(first_character("\xC3"));              // cut short
    CHECK_FALSE(first_character("\xC3\x28"));          // continuation missing
    CHECK_FALSE(first_character(""));
}

TEST_CASE("the characters XML 1.0 permits", "[published]") {
    // XML 1.0, fifth edition, production [2] Char.
    for (const std::uint32_t good : {0x9U, 0xAU, 0xDU, 0x20U, 0xD7FFU, 0xE000U, 0xFFFDU, 0x10000U, 0x10FFFFU}) {
        CHECK(is_xml_character(good));
    }
    for (const std::uint32_t bad :
         {0x0U, 0x1U, 0x8U, 0xBU, 0xCU, 0x1FU, 0xD800U, 0xDFFFU, 0xFFFEU, 0xFFFFU, 0x110000U}) {
        CHECK_FALSE(is_xml_character(bad));
    }
}

TEST_CASE("the first bad byte is found and cleaning removes it", "[unit]") {
    CHECK_FALSE(first_bad_byte("plain \u00b0 text\n"));
    CHECK(first_bad_byte("ab\x01") == 2);
    CHECK(first_bad_byte(std::string_view("a\0b", 3)) == 1);
    CHECK(first_bad_byte("\xED\xA0\x80") == 0);  // a surrogate in UTF-8
    CHECK(cleaned("a\x01"
                  "b\xFF") == "a\uFFFDb\uFFFD");
    CHECK(cleaned("") == "");
}

TEST_CASE("an excerpt is one line of valid UTF-8, cut between characters", "[unit]") {
    CHECK(excerpt("two\nlines") == "two lines");
    for (std::size_t lead = 0; lead < 4; ++lead) {
        std::string text(lead, 'x');
        for (int count = 0; count < 100; ++count) text += "\u00e9\U000233B4";
        const std::string cut = excerpt(text);
        CHECK(cut.size() <= 63);
        CHECK(cut.ends_with("..."));
        CHECK_FALSE(first_bad_byte(cut));
        CHECK(cut.find("\uFFFD") == std::string::npos);
    }
}
