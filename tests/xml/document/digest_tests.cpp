#include "xml/document/file.h"
#include "xml/samples.h"

#include <catch2/catch.hpp>

using namespace toehold;

TEST_CASE("SHA-256 gives the digests published for its examples", "[published]") {
    // NIST, Examples with Intermediate Values for FIPS 180-4: SHA-256 of one and of two blocks; and of no message.
    CHECK(xml::sha256("abc") == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    CHECK(xml::sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq") ==
          "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    CHECK(xml::sha256("") == "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
}

TEST_CASE("a detail's digest is that of its file, as another program finds it", "[process]") {
    const std::filesystem::path file = test::good_file("wood-post-in-shoe.xml");
    std::string output;
    REQUIRE(test::run("sha256sum " + file.string(), &output) == 0);
    CHECK(xml::read_detail(file).sha256 == output.substr(0, 64));
    // Also of a file that is no good, so that a report can say which bytes were refused.
    CHECK(xml::read_detail(test::bad_file("truncated.xml")).sha256.size() == 64);
}
