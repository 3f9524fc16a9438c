#include "support/compare.h"
#include "units/quantity.h"

#include <bit>
#include <catch2/catch.hpp>
#include <clocale>
#include <cmath>
#include <cstdint>
#include <limits>
#include <locale>
#include <random>
#include <stdexcept>

using namespace toehold::units;

namespace {

constexpr Kind kinds[] = {Kind::length,           Kind::force,         Kind::stress, Kind::moment,
                          Kind::force_per_length, Kind::bed_stiffness, Kind::angle};

bool reads_back(double value, Kind kind) {
    const Parsed parsed = parse(exact(value, kind), kind);
    return parsed.value && std::bit_cast<std::uint64_t>(*parsed.value) == std::bit_cast<std::uint64_t>(value);
}

}  // namespace

TEST_CASE("exact text names the engine's unit with the fewest digits", "[unit]") {
    CHECK(exact(36.0, Kind::length) == "36 in");
    CHECK(exact(0.1, Kind::length) == "0.1 in");
    CHECK(exact(200.0, Kind::force) == "200 lbf");
    CHECK(exact(900.0, Kind::stress) == "900 psi");
    CHECK(exact(8400.0, Kind::moment) == "8400 lb-in");
    CHECK(exact(246.5, Kind::force_per_length) == "246.5 lb/in");
    CHECK(exact(25000.0, Kind::bed_stiffness) == "25000 psi/in");
    CHECK(exact(-45.0, Kind::angle) == "-45 deg");
}

TEST_CASE("exact text reads back to the same double", "[property]") {
    std::mt19937_64 random(20240611);
    for (const Kind kind : kinds) {
        for (const double value :
             {0.0, -0.0, 1.0 / 3.0, 0.1 + 0.2, 5e-324, -5e-324, 2.2250738585072014e-308,
              std::numeric_limits<double>::max(), std::numeric_limits<double>::lowest(), 1e22, 1e23}) {
            INFO(value);
            CHECK(reads_back(value, kind));
        }
        int wrong = 0;
        for (int trial = 0; trial < 20000; ++trial) {
            const double value = std::bit_cast<double>(random());
            if (std::isfinite(value) && !reads_back(value, kind)) ++wrong;
        }
        CHECK(wrong == 0);
    }
}

TEST_CASE("a value that is not finite is never written to a file", "[bad-input]") {
    for (const Kind kind : kinds) {
        CHECK_THROWS_AS(exact(std::numeric_limits<double>::infinity(), kind), std::invalid_argument);
        CHECK_THROWS_AS(exact(std::numeric_limits<double>::quiet_NaN(), kind), std::invalid_argument);
    }
}

TEST_CASE("displayed values are rounded in the chosen system", "[unit]") {
    CHECK(display(3.375, Kind::length, System::us, 2) == "3.38 in");
    CHECK(display(1.0, Kind::length, System::si, 1) == "25.4 mm");
    CHECK(display(200.0, Kind::force, System::us, 0) == "200 lb");
    CHECK(display(200.0, Kind::force, System::si, 0) == "890 N");       // 889.64
    CHECK(display(1000.0, Kind::stress, System::si, 2) == "6.89 MPa");  // 6.894757
    CHECK(display(8400.0, Kind::moment, System::si, 0) == "949 N-m");   // 949.07
    CHECK(display(1000.0, Kind::force_per_length, System::si, 1) == "175.1 N/mm");
    CHECK(display(25400.0, Kind::bed_stiffness, System::si, 2) == "6.89 MPa/mm");
    CHECK(display(90.0, Kind::angle, System::si, 0) == "90 deg");
}

TEST_CASE("a displayed value never says minus nothing, nor a number where there is none", "[unit]") {
    CHECK(display(-0.001, Kind::length, System::us, 2) == "0.00 in");
    CHECK(display(-0.0, Kind::force, System::us, 0) == "0 lb");
    CHECK(display(-0.01, Kind::length, System::us, 2) == "-0.01 in");
    CHECK(display(std::numeric_limits<double>::infinity(), Kind::force, System::us, 0) == "no limit");
    CHECK(display(std::numeric_limits<double>::quiet_NaN(), Kind::force, System::us, 0) == "not known");
}

TEST_CASE("lengths near a sixteenth show as a fraction, others as decimals", "[unit]") {
    CHECK(fraction_in(0.0) == "0 in");
    CHECK(fraction_in(36.0) == "36 in");
    CHECK(fraction_in(3.375) == "3 3/8 in");
    CHECK(fraction_in(0.4375) == "7/16 in");
    CHECK(fraction_in(0.5) == "1/2 in");
    CHECK(fraction_in(-1.875) == "-1 7/8 in");
    CHECK(fraction_in(0.9999) == "1 in");
    CHECK(fraction_in(2.3126) == "2 5/16 in");  // 2.3125
    CHECK(fraction_in(2.3) == "2.3 in");
    CHECK(fraction_in(0.09375) == "3/32 in");
    CHECK(fraction_in(1.40625) == "1 13/32 in");
    CHECK(fraction_in(0.148) == "0.148 in");
    CHECK(fraction_in(-0.0004) == "0 in");
    CHECK(fraction_in(1e7) == "10000000 in");
    CHECK(fraction_in(std::numeric_limits<double>::quiet_NaN()) == "not known");
    CHECK(bare_fraction(3.375) == "3 3/8");
    CHECK(bare_fraction(2.3) == "2.3");
    CHECK(bare_fraction(std::numeric_limits<double>::quiet_NaN()) == "not known");
}

TEST_CASE("a fraction reads back to the length it stands for", "[property]") {
    for (int sixteenths = -400; sixteenths <= 400; ++sixteenths) {
        const double length_in = sixteenths / 16.0;
        const Parsed parsed = parse(fraction_in(length_in), Kind::length);
        REQUIRE(parsed.value);
        CHECK(*parsed.value == length_in);
    }
}

TEST_CASE("numbers keep their point where the locale writes a comma", "[property]") {
    struct Comma : std::numpunct<char> {
        char do_decimal_point() const override { return ','; }
        char do_thousands_sep() const override { return '.'; }
        std::string do_grouping() const override { return "\3"; }
    };
    const std::locale before = std::locale::global(std::locale(std::locale::classic(), new Comma));
    const std::string before_in_c = std::setlocale(LC_ALL, nullptr);
    // Only where one is installed; the C++ locale above bites everywhere.
    for (const char* name : {"de_DE.UTF-8", "fr_FR.UTF-8"}) std::setlocale(LC_ALL, name);
    CHECK(parse("1.5 in", Kind::length).value == 1.5);
    CHECK_FALSE(parse("1,5 in", Kind::length).value);
    CHECK(exact(1234.5, Kind::length) == "1234.5 in");
    CHECK(display(1234.5, Kind::length, System::us, 1) == "1234.5 in");
    CHECK(fraction_in(2.3) == "2.3 in");
    std::setlocale(LC_ALL, before_in_c.c_str());
    std::locale::global(before);
}
