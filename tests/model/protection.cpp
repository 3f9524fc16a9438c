// What the words of a corrosion protection say: each as it is met on drawings.
#include "model/protection.h"

#include <catch2/catch.hpp>

using toehold::model::Protection;
using toehold::model::protection;

namespace {

void check_all(std::initializer_list<const char*> texts, Protection expected) {
    for (const char* text : texts) {
        INFO(text);
        CHECK(protection(text) == expected);
    }
}

}  // namespace

TEST_CASE("Sufficient protections are known by their words and their standards", "[unit]") {
    check_all({"hot-dip galvanized, ASTM A153", "Hot dipped galvanized", "HDG", "ASTM A153/A153M", "galvanisé à chaud",
               "hot-dip galvanized with plain washers", "hot-dip galvanized or stainless"},
              Protection::hot_dip_galvanized);
    check_all({"stainless steel", "Type 316", "acier inoxydable", "inox A4", "silicon bronze"}, Protection::stainless);
    check_all({"mechanically galvanized, ASTM B695 class 55", "B695"}, Protection::mechanically_galvanized);
    check_all({"polymer coat, evaluation report 12", "ESR-1234", "zinc plated and sealed, see report 7"},
              Protection::by_report);
}

TEST_CASE("Thin plating and plain steel are known as such", "[unit]") {
    check_all({"zinc plated", "ASTM B633", "F1941", "electrogalvanized", "zingué", "yellow zinc plating"},
              Protection::plated);
    check_all({"none", "None.", "uncoated", "plain", "black steel", "none, report to follow"}, Protection::none);
}

TEST_CASE("Words that say nothing, deny something or contradict each other are not guessed at", "[bad-input]") {
    check_all({"", "  ", "--"}, Protection::not_stated);
    check_all({"galvanized", "zinc", "as usual", "not hot-dip galvanized", "hot-dip galvanized or zinc plated",
               "stainless or none"},
              Protection::unknown);
}
