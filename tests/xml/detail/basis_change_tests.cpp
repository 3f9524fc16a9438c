// Attributes of the basis set one by one.
#include "xml/detail/basis.h"
#include "xml/samples.h"

#include <catch2/catch.hpp>

using namespace toehold;

namespace {

void check_refused(const std::vector<xml::BasisSetting>& settings, const std::string& words) {
    const xml::BasisRead read = xml::change_basis({}, settings);
    INFO(test::sentences(read.problems));
    CHECK_FALSE(read.basis);
    CHECK(test::tells(read.problems, words));
}

}  // namespace

TEST_CASE("what is set is read as the file's own, and the rest stays", "[unit]") {
    model::Basis basis;
    basis.incised = false;
    basis.stiffness = model::FixedStiffness{1.0, 2.0, "why"};
    const xml::BasisRead read = xml::change_basis(basis, {{"method", "LRFD"}, {"time-effect", "1"}});
    REQUIRE(read.basis);
    model::Basis expected = basis;
    expected.method = model::Method::lrfd;
    expected.time_effect = 1.0;
    CHECK(*read.basis == expected);
    const xml::BasisRead left_out = xml::change_basis(basis, {{"incised", ""}});
    REQUIRE(left_out.basis);
    CHECK_FALSE(left_out.basis->incised);
    CHECK(*xml::change_basis(basis, {}).basis == basis);
}

TEST_CASE("a word the reader does not take gets the reader's own sentence", "[bad-input]") {
    check_refused({{"method", "lrfd"}},
                  "basis: method is none of the accepted words (found \"lrfd\"; accepted: ASD, LRFD)");
    check_refused({{"load-duration", "long"}}, "load-duration is not a number");
    check_refused({{"moistness", "wet"}}, "<basis> has no attribute of this name (found \"moistness\"; accepted: ");
    for (const char* name : {"", "a b", "x=\"1\" y", "<", "Method", "-method"}) {
        check_refused({{name, "wet"}}, "no attribute of this name");
    }
    check_refused({{"moisture", "wet"}, {"moisture", "dry"}}, "set twice");
    check_refused({{"moisture", "\"/><x y=\""}}, "none of the accepted words");
}
