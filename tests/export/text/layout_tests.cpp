#include "export/text/columns.h"
#include "export/text/table.h"
#include "format/figures.h"
#include "support/compare.h"

#include <catch2/catch.hpp>

#include <limits>
#include <numbers>

using namespace toehold::exporting;
using namespace toehold::format;
using toehold::units::System;

TEST_CASE("figures have four significant digits and never an exponent in the usual range", "[unit]") {
    struct Row {
        double value;
        const char* text;
    };
    const Row rows[] = {{0.0, "0"},         {-0.0, "0"},          {1873.4, "1873"},   {245.67, "245.7"},
                        {36.0, "36"},       {0.4375, "0.4375"},   {0.0123, "0.0123"}, {999.96, "1000"},
                        {-2.5, "-2.5"},     {123456.0, "123456"}, {1e7, "1.00e+07"},  {5e-5, "5.00e-05"},
                        {28000.0, "28000"}, {1.0 / 3.0, "0.3333"}};
    for (const Row& row : rows) CHECK(number_text(row.value) == row.text);
    CHECK(number_text(std::numeric_limits<double>::infinity()) == "-");
    CHECK(number_text(std::numeric_limits<double>::quiet_NaN()) == "-");
}

TEST_CASE("a ratio never reads as 1.00 unless it is 1", "[unit]") {
    CHECK(ratio_text(0.456) == "0.46");
    CHECK(ratio_text(2.314) == "2.31");
    CHECK(ratio_text(1.0) == "1.00");
    CHECK(ratio_text(1.004) == "1.004");
    CHECK(ratio_text(0.9996) == "0.9996");
    CHECK(ratio_text(1.0000001) == ">1");
    CHECK(ratio_text(0.9999999) == "<1");
    CHECK(ratio_text(0.0) == "0.00");
    CHECK(ratio_text(12345.6) == "12346");
    CHECK(ratio_text(std::numeric_limits<double>::infinity()) == "-");
}

TEST_CASE("units without a counterpart stay as they are", "[unit]") {
    CHECK(figure_text(3.0, "furlong", System::si) == "3 furlong");
    CHECK(figure_text(3.0, "", System::si) == "3");
    CHECK(figure_text(1.0, "in", System::si) == "25.4 mm");
    CHECK(figure_text(1.0, "in", System::us) == "1 in");
}

TEST_CASE("directions read from 0 up to 360 degrees", "[unit]") {
    CHECK(degrees_text(90.0) == "90");
    CHECK(degrees_text(-90.0) == "270");
    CHECK(degrees_text(360.0) == "0");
    CHECK(degrees_text(359.99) == "0");
    CHECK(degrees_text(22.5) == "22.5");
    CHECK(degrees(std::numbers::pi / 6.0) == 30.0);
    CHECK(degrees(-std::numbers::pi) == -180.0);
}

TEST_CASE("columns count what a terminal shows", "[unit]") {
    CHECK(columns("abc") == 3);
    CHECK(columns("\u00E9t\u00E9") == 3);
    CHECK(columns("e\u0301") == 1);
    CHECK(columns("\u6F22\u5B57") == 4);
}

TEST_CASE("wrapping loses no word and keeps their order", "[property]") {
    const std::string text = "one two three four five six seven eight nine ten eleven twelve thirteen";
    for (std::size_t width = 8; width < 80; ++width) {
        std::string joined;
        for (const std::string& line : wrapped(text, width)) {
            CHECK(columns(line) <= width);
            joined += (joined.empty() ? "" : " ") + line;
        }
        CHECK(joined == text);
    }
    CHECK(wrapped("", 10) == std::vector<std::string>{""});
    CHECK(wrapped("abcdef", 4) == std::vector<std::string>{"abcd", "ef"});
    CHECK(wrapped("ab cdefgh", 4) == std::vector<std::string>{"ab", "cdef", "gh"});
}

TEST_CASE("a table lines up its columns and never breaks a number", "[unit]") {
    CHECK(table({{"name"}, {"lb", Align::right}}, {{{"A", "12"}, {}}, {{"BBBBB", "3"}, {"note"}}}) ==
          "  name   lb\n"
          "  ---------\n"
          "  A      12\n"
          "  BBBBB   3\n"
          "    note\n");
    const std::string number(120, '7');
    const std::string text = table({{"n", Align::right}, {"name"}}, {{{number, "A"}, {}}});
    CHECK(text.find('7') == std::string::npos);
    CHECK(text.find("###") != std::string::npos);
}
