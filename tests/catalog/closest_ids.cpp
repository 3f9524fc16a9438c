// Ids that come nearest to one that is not known.
#include "catalog/closest_ids.h"

#include "support/shipped.h"

#include <catch2/catch.hpp>

using namespace toehold;
using catalog::closest_ids;
using catalog::edit_distance;
using Ids = std::vector<std::string>;

TEST_CASE("The edit distance counts letters put in, taken out and changed", "[catalog][unit]") {
    // The textbook pairs of Levenshtein's distance.
    CHECK(edit_distance("kitten", "sitting") == 3);
    CHECK(edit_distance("flaw", "lawn") == 2);
    CHECK(edit_distance("saturday", "sunday") == 3);
    CHECK(edit_distance("", "abc") == 3);
    CHECK(edit_distance("abc", "") == 3);
    CHECK(edit_distance("abc", "abc") == 0);
}

TEST_CASE("Capitals are no distance", "[catalog][unit]") { CHECK(edit_distance("LAG-3/8", "lag-3/8") == 0); }

TEST_CASE("The edit distance is the same both ways and keeps the triangle", "[catalog][property]") {
    const Ids words = catalog::ids_of(test::shipped_catalog().metals);
    for (const std::string& a : words) {
        for (const std::string& b : words) {
            CHECK(edit_distance(a, b) == edit_distance(b, a));
            CHECK(edit_distance(a, b) <= edit_distance(a, words.front()) + edit_distance(words.front(), b));
        }
    }
}

TEST_CASE("An id as long as a file is compared by its beginning", "[catalog][bad-input]") {
    CHECK(edit_distance(std::string(4000000, 'x'), std::string(4000000, 'y')) == 64);
}

TEST_CASE("The nearest ids come first, equally near ones by the alphabet, each once", "[catalog][unit]") {
    const Ids known{"steel-a36", "steel-a53-b", "e70", "steel-a36", "steel-a35"};
    CHECK(closest_ids("steel-a3", known, 2) == Ids{"steel-a35", "steel-a36"});
    CHECK(closest_ids("steel-a36", known, 10) == Ids{"steel-a36", "steel-a35", "steel-a53-b", "e70"});
    CHECK(closest_ids("anything", {}).empty());
}

TEST_CASE("A slip of the pen finds the shipped row that was meant", "[catalog][unit]") {
    const catalog::Catalog& all = test::shipped_catalog();
    CHECK(closest_ids("lag-38", catalog::ids_of(all.lag_screws)).front() == "lag-3/8");
    CHECK(closest_ids("southernpine", catalog::ids_of(all.species)).front() == "southern-pine");
    CHECK(closest_ids("A36", catalog::ids_of(all.metals)).front() == "steel-a36");
    CHECK(closest_ids("bolt-1/2in", catalog::ids_of(all.bolts)).front() == "bolt-1/2");
    CHECK(closest_ids("lag", catalog::ids_of(all.lag_screws)).size() == 5);
}
