// Results that come to the same are one group.
#include "review/groups.h"

#include "model/part.h"

#include <catch2/catch.hpp>

#include <limits>

using namespace toehold;
using checks::CheckResult;
using checks::Status;

namespace {

CheckResult result(const char* check, const char* anchor, double ratio, Status status) {
    CheckResult one;
    one.id = check;
    one.title = format::verbatim(check);
    one.part = model::anchor_part(anchor);
    one.ratio = ratio;
    one.status = status;
    return one;
}

using Places = std::vector<std::size_t>;

}  // namespace

TEST_CASE("anchors within 1 % of the worst are one group, the others begin another", "[unit]") {
    const std::vector<CheckResult> results = {
        result("a", "A", 0.810, Status::holds), result("a", "B", 0.805, Status::holds),
        result("a", "C", 0.800, Status::holds), result("b", "A", 0.800, Status::holds),
        result("a", "D", 0.795, Status::holds)};
    const std::vector<review::Group> groups = review::grouped(results);
    REQUIRE(groups.size() == 3);
    CHECK(groups[0].results == Places{0, 1});  // 0.800 is 1.2 % under 0.810
    CHECK(groups[1].results == Places{2, 4});
    CHECK(groups[2].results == Places{3});
    CHECK(review::grouped(results, {1, 4})[0].results == Places{1});
}

TEST_CASE("a failure, a pass and no load path are never one group, nor parts of different kinds", "[unit]") {
    const double none = std::numeric_limits<double>::infinity();
    CHECK_FALSE(review::alike(result("a", "A", 1.001, Status::fails), result("a", "B", 0.999, Status::holds)));
    CHECK(review::alike(result("a", "A", none, Status::no_path), result("a", "B", none, Status::no_path)));
    CHECK_FALSE(review::alike(result("a", "A", none, Status::no_path), result("a", "B", 9.0, Status::no_path)));
    CheckResult hole = result("a", "B", 0.5, Status::holds);
    hole.part = model::hole_part("B");
    CHECK_FALSE(review::alike(result("a", "A", 0.5, Status::holds), hole));
}
