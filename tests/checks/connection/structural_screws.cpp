// Structural screws in end grain by the values of their report, and what the findings say of them.
#include "checks/connection/end_example.h"

#include "support/compare.h"

#include <algorithm>

using namespace toehold;
using checks::CheckResult;
using checks::Severity;
using checks::Status;
using test::block_support;
using test::end_result;
using test::step_value;

namespace {

/// Four 1/4 x 4 1/2 in screws, 4 in between the outermost; one has 220 lb across and 180 lb out of the end grain.
model::EndGrainFasteners four_screws() {
    model::EndGrainFasteners screws{model::EndGrainFasteners::Kind::structural_screw, 0.25, 4.5, 4, 4.0};
    screws.reported = {220.0, 180.0, "invented report", "C_D 1.6, dry"};
    return screws;
}

CheckResult of(const model::EndGrainFasteners& screws, const demand::SupportReaction& forces) {
    return end_result(test::example_resolved(), block_support(screws), forces);
}

}  // namespace

TEST_CASE("each screw takes its share of the force and the outermost the couple", "[closed-form]") {
    // 4 in a line, 4/3 in apart: sum r^2 = 2 (2^2 + (2/3)^2) = 8.889 in2, r_max/sum = 0.225/in.
    // Across: 400/4 + 200 x 0.225 = 145 lb of 220.
    const CheckResult across = of(four_screws(), {400.0, 0.0, 0.0, 200.0, 0.0});
    CHECK_CLOSE(across.demand, 145.0, 1e-9, 0.0);
    CHECK_CLOSE(across.ratio, 145.0 / 220.0, 1e-9, 0.0);
    CHECK(across.clause == "report: invented report");
    CHECK(test::says(across.note, "C_D 1.6, dry"));
    // Out: 200/4 + 100 x 0.225 = 72.5 lb of 180.
    const CheckResult out = of(four_screws(), {0.0, 0.0, 200.0, 0.0, 100.0});
    CHECK_CLOSE(out.demand, 72.5, 1e-9, 0.0);
    CHECK_CLOSE(out.ratio, 72.5 / 180.0, 1e-9, 0.0);
    // Both: added, as for any connection.
    CHECK_CLOSE(of(four_screws(), {400.0, 0.0, 200.0, 200.0, 100.0}).ratio, 145.0 / 220.0 + 72.5 / 180.0, 1e-9, 0.0);
}

TEST_CASE("screws of 1/4 in without a report's values end in a sentence, with them in a number", "[unit]") {
    // 0.5.0 knew no way to describe them.
    model::EndGrainFasteners plain{model::EndGrainFasteners::Kind::wood_screw, 0.25, 4.5, 4, 4.0};
    CHECK(of(plain, {400.0, 0.0, 0.0, 0.0, 0.0}).status == Status::missing_evidence);
    CHECK(of(four_screws(), {400.0, 0.0, 0.0, 0.0, 0.0}).status == Status::holds);
    model::EndGrainFasteners lateral_only = four_screws();
    lateral_only.reported.withdrawal_lb = 0.0;
    const CheckResult drawn = of(lateral_only, {0.0, 0.0, 200.0, 0.0, 0.0});
    CHECK(drawn.status == Status::no_path);
    CHECK(test::says(drawn.note, "withdrawal"));
    model::EndGrainFasteners one = four_screws();
    one.count = 1;
    one.spread_in = 0.0;
    CHECK(of(one, {0.0, 0.0, 0.0, 100.0, 0.0}).status == Status::no_path);
}

TEST_CASE("screws spread wider than the member miss it", "[bad-input]") {
    model::EndGrainFasteners wide = four_screws();
    wide.spread_in = 6.0;  // the block is 5 1/2 in deep
    CHECK(of(wide, {100.0, 0.0, 0.0, 0.0, 0.0}).status == Status::missing_evidence);
}

TEST_CASE("withdrawal from end grain by a report is said, and does not turn the verdict", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    for (model::Block& block : resolved.detail.framing.blocks) {
        block.from_end.connection = four_screws();
        block.to_end.connection = four_screws();
    }
    const auto count = [&](Severity severity) {
        const auto findings = test::run_finding("end-grain-withdrawal", resolved);
        return std::count_if(findings.begin(), findings.end(),
                             [&](const checks::Finding& finding) { return finding.severity == severity; });
    };
    CHECK(count(Severity::fails) == 0);
    CHECK(count(Severity::caution) == 2);
    // Without a withdrawal value they are end grain alone, as nails are.
    model::EndGrainFasteners lateral_only = four_screws();
    lateral_only.reported.withdrawal_lb = 0.0;
    for (model::Block& block : resolved.detail.framing.blocks) {
        block.from_end.connection = lateral_only;
        block.to_end.connection = lateral_only;
    }
    CHECK(count(Severity::fails) == 1);
}
