// Under a locale with a decimal comma, a reader that trusts the C library turns 1.5 in into 1 in without an error.
#include "support/random/detail.h"
#include "xml/samples.h"

#include <catch2/catch.hpp>
#include <clocale>
#include <cstdlib>
#include <locale>

using namespace toehold;

namespace {

/// The name of an installed locale with a decimal comma, or of one made for this test; empty when there is none.
std::string comma_locale(const test::TemporaryFolder& folder) {
    const std::vector<std::string> installed{"de_DE.UTF-8", "de_DE.utf8", "fr_FR.UTF-8", "es_ES.UTF-8", "pl_PL.UTF-8"};
    for (const std::string& name : installed) {
        if (std::setlocale(LC_ALL, name.c_str()) != nullptr) return name;
    }
    const std::string made = (folder.path() / "comma.UTF-8").string();
    if (!test::has_program("localedef")) return {};
    test::run("localedef --no-archive -c -i de_DE -f UTF-8 " + made);
    ::setenv("LOCPATH", folder.path().c_str(), 1);
    const bool found = std::setlocale(LC_ALL, "comma.UTF-8") != nullptr;
    ::unsetenv("LOCPATH");
    return found ? "comma.UTF-8" : "";
}

/// Restores the plain locale.
struct PlainLocaleAfterwards {
    PlainLocaleAfterwards() = default;
    PlainLocaleAfterwards(const PlainLocaleAfterwards&) = delete;
    PlainLocaleAfterwards& operator=(const PlainLocaleAfterwards&) = delete;
    ~PlainLocaleAfterwards() {
        std::setlocale(LC_ALL, "C");
        std::locale::global(std::locale::classic());
    }
};

/// For C++ streams: a comma for the point and points between thousands.
struct Comma : std::numpunct<char> {
    char do_decimal_point() const override { return ','; }
    char do_thousands_sep() const override { return '.'; }
    std::string do_grouping() const override { return "\3"; }
};

}  // namespace

TEST_CASE("a decimal comma of the locale changes nothing that is read or written", "[bad-input]") {
    const model::BaseDetail detail = test::random_detail(11);
    const std::string text = xml::write_detail(detail);
    const model::Problems problems = xml::read_detail(test::bad_file("decimal-comma.xml")).problems;
    const test::TemporaryFolder folder;
    const PlainLocaleAfterwards afterwards;
    if (comma_locale(folder).empty()) {
        WARN("the C library's part is not tried: no locale with a decimal comma can be had here");
    } else {
        REQUIRE(std::string(std::localeconv()->decimal_point) == ",");
    }
    std::locale::global(std::locale(std::locale(), new Comma));
    CHECK(xml::write_detail(detail) == text);
    const xml::DetailRead read = xml::read_detail_text(text, "f");
    REQUIRE(read.detail);
    CHECK(*read.detail == detail);
    CHECK(xml::read_detail(test::bad_file("decimal-comma.xml")).problems == problems);
}
