// Quantities as fields show them, against the trade's way of writing them.
#include "editing/fields.h"
#include "support/compare.h"

#include <clocale>

using namespace toehold;
using editing::shown;
using editing::typed;
using units::Kind;
using units::System;

TEST_CASE("Lengths are shown as they were typed", "[unit]") {
    CHECK(shown(3.375, Kind::length, System::us) == "3 3/8 in");
    CHECK(shown(-7.25, Kind::length, System::us) == "-7 1/4 in");
    CHECK(shown(1.0 / 32.0, Kind::length, System::us) == "1/32 in");
    CHECK(shown(0.0, Kind::length, System::us) == "0 in");
    CHECK(shown(42.0, Kind::length, System::us) == "42 in");
    CHECK(shown(86.0 / 25.4, Kind::length, System::us) == "86 mm");
    CHECK(shown(-86.5 / 25.4, Kind::length, System::us) == "-86.5 mm");
    CHECK(shown(0.216, Kind::length, System::us) == "0.216 in");
    CHECK(shown(86.0 / 25.4, Kind::length, System::si) == "86 mm");
    CHECK(shown(5.0, Kind::length, System::si) == "127 mm");
    CHECK(shown(3.375, Kind::length, System::si) == "3 3/8 in");
    CHECK(shown(0.216, Kind::length, System::si) == "5.4864 mm");
    CHECK(shown(-0.0, Kind::length, System::us) == "0 in");
    CHECK(shown(-0.0, Kind::length, System::si) == "0 mm");
}

TEST_CASE("Other quantities carry their unit and no idle zeros", "[unit]") {
    CHECK(shown(200.0, Kind::force, System::us) == "200 lb");
    CHECK(shown(200.0, Kind::force, System::si) == "889.6443 N");  // 200 x 4.4482216152605
    CHECK(shown(8400.0, Kind::moment, System::us) == "8400 lb-in");
    CHECK(shown(45.0, Kind::angle, System::si) == "45 deg");
    CHECK(shown(25000.0, Kind::bed_stiffness, System::us) == "25000 psi/in");
    CHECK(shown(0.000012345, Kind::length, System::us) == "0.000012345 in");
}

TEST_CASE("Text without a unit counts in the reader's", "[unit]") {
    CHECK(typed("3 3/8", Kind::length, System::us) == 3.375);
    CHECK(typed("3-3/8\"", Kind::length, System::us) == 3.375);
    CHECK(typed("3'-0\"", Kind::length, System::si) == 36.0);
    CHECK(typed("86 mm", Kind::length, System::us) == 86.0 / 25.4);
    CHECK(typed("86", Kind::length, System::si) == 86.0 / 25.4);
    CHECK(typed(" 86 ", Kind::length, System::us) == 86.0);
    CHECK(typed("-1.5", Kind::length, System::us) == -1.5);
    CHECK(typed("200", Kind::force, System::us) == 200.0);
    CHECK(typed("45", Kind::angle, System::us) == 45.0);
    for (const char* const text : {"", " ", "3 3/8 mm", "1,5", "in", "1 2 3", "nan", "1e400", "5/4"}) {
        INFO(text);
        CHECK_FALSE(typed(text, Kind::length, System::us));
    }
    CHECK_FALSE(typed("3 3/8", Kind::length, System::si));
}

TEST_CASE("What is shown of a fraction or a half millimeter is typed back to the same length", "[property]") {
    for (const System system : {System::us, System::si}) {
        for (int count = -4000; count <= 4000; count += 7) {
            for (const double length : {count / 32.0, 0.5 * count / 25.4}) {
                const std::string text = shown(length, Kind::length, system);
                const std::optional<double> back = typed(text, Kind::length, system);
                INFO(text);
                REQUIRE(back);
                CHECK_CLOSE(*back, length, 0.0, 1e-9);
            }
        }
    }
}

TEST_CASE("What is shown of any other value is typed back to within its digits", "[property]") {
    double value = 1.2345678e-4;
    for (int turn = 0; turn < 60; ++turn, value *= -1.37) {
        for (const Kind kind : {Kind::length, Kind::force, Kind::stress, Kind::moment, Kind::force_per_length,
                                Kind::bed_stiffness, Kind::angle}) {
            for (const System system : {System::us, System::si}) {
                const std::optional<double> back = typed(shown(value, kind, system), kind, system);
                INFO(shown(value, kind, system));
                REQUIRE(back);
                CHECK_CLOSE(*back, value, 1e-6, 0.0);
            }
        }
    }
}

TEST_CASE("A locale with a decimal comma changes nothing", "[unit]") {
    const std::string before = std::setlocale(LC_ALL, nullptr);
    if (std::setlocale(LC_ALL, "de_DE.UTF-8") == nullptr) return;
    CHECK(shown(0.216, Kind::length, System::us) == "0.216 in");
    CHECK(typed("0.216", Kind::length, System::us) == 0.216);
    std::setlocale(LC_ALL, before.c_str());
}
