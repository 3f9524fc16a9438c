// Sentences as values: what a reader sees of them in each language and system of units.
#include "format/phrase.h"

#include "format/catalogue.h"

#include <catch2/catch.hpp>

using toehold::format::Catalogue;
using toehold::format::Citation;
using toehold::format::citations;
using toehold::format::Dimension;
using toehold::format::english;
using toehold::format::Listed;
using toehold::format::Locale;
using toehold::format::phrase;
using toehold::format::Phrase;
using toehold::format::Quantity;
using toehold::format::text;
using toehold::format::verbatim;
using toehold::units::System;

namespace {

Locale french() {
    return {System::si, std::make_shared<const Catalogue>(
                            std::map<std::string, std::string, std::less<>>{{"{} exceeds {}.", "{} dépasse {}."},
                                                                            {"anchor {}", "ancrage {}"},
                                                                            {"{} at {}", "{1} porte {0}"},
                                                                            {"{} and {}", "{} et {}"},
                                                                            {"{} screws", "{} vis {}"},
                                                                            {"given", "donné"}})};
}

}  // namespace

TEST_CASE("A phrase is filled with its arguments", "[unit]") {
    CHECK(english(phrase("Anchor {}: {} of {:.2f} at {}", "A", 3, 0.5, phrase("joist {}", "J1"))) ==
          "Anchor A: 3 of 0.50 at joist J1");
    CHECK(english(Phrase()).empty());
    CHECK(english(phrase("100 % {} of it")) == "100 % {} of it");  // without arguments nothing is a field
    CHECK(english(verbatim("a {hole} called {}")) == "a {hole} called {}");
}

TEST_CASE("A quantity is shown in the reader's units", "[unit]") {
    const Phrase said = phrase("{} exceeds {}.", Quantity{1000.0, "lb"}, Quantity{2.0, "in"});
    CHECK(english(said) == "1000 lb exceeds 2 in.");
    // 1 lb = 4.4482216152605 N and 1 in = 25.4 mm exactly: NIST SP 811 (2008), Appendix B.
    CHECK(text(said, {System::si, nullptr}) == "4448 N exceeds 50.8 mm.");
    const Phrase cut = phrase("{}", Dimension{3.375});
    CHECK(english(cut) == "3 3/8 in");
    CHECK(text(cut, {System::si, nullptr}) == "85.5 mm");
}

TEST_CASE("A phrase is translated with what fills it, in the translation's own order", "[unit]") {
    const Locale locale = french();
    CHECK(text(phrase("{} exceeds {}.", phrase("anchor {}", "A"), Quantity{1.0, "psi"}), locale) ==
          "ancrage A dépasse 0.006895 MPa.");
    CHECK(text(phrase("{} at {}", "J1", "S1"), locale) == "S1 porte J1");
    CHECK(text(std::string_view("given"), locale) == "donné");
    CHECK(text(std::string_view("NDS 2018 12.2"), locale) == "NDS 2018 12.2");
    CHECK(text(phrase("{}", Listed{{verbatim("A"), verbatim("B"), verbatim("C")}}), locale) == "A, B et C");
    CHECK(english(phrase("{}", Listed{{verbatim("A")}})) == "A");
}

TEST_CASE("A citation is shown as it is, and gathered from the phrases it stands in", "[unit]") {
    const Phrase slip = phrase("{} screws", Citation{"given"});
    CHECK(text(slip, {System::us, std::make_shared<const Catalogue>(std::map<std::string, std::string, std::less<>>{
                                      {"given", "donné"}, {"{} screws", "vis : {}"}})}) == "vis : given");
    const Phrase within = phrase("{}; {}", "NDS 2018 1.1", phrase("by {}", Citation{"NDS 2018 11.3.6"}));
    const Phrase all = phrase("{} and {} of {}", Listed{{verbatim("A"), phrase("{}", Citation{"ASCE 7-16 4.5.1"})}},
                              within, Citation{"IRC 2021 R301.5"});
    CHECK(english(all) == "A and ASCE 7-16 4.5.1 and NDS 2018 1.1; by NDS 2018 11.3.6 of IRC 2021 R301.5");
    CHECK(citations(all) == std::vector<std::string>{"ASCE 7-16 4.5.1", "NDS 2018 11.3.6", "IRC 2021 R301.5"});
    CHECK(citations(phrase("NDS 2018 11.3.6")).empty());
}

TEST_CASE("A translation that does not fit its arguments is passed over", "[unit]") {
    CHECK(text(phrase("{} screws", 4), french()) == "4 screws");
    CHECK(text(phrase("not in the catalogue {}", 1), french()) == "not in the catalogue 1");
}
