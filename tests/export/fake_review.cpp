#include "export/fake_review.h"

#include "support/example.h"

#include <limits>
#include <numbers>

namespace toehold::test {
namespace {

using checks::CheckResult;
using checks::Severity;
using checks::Status;

CheckResult withdrawal(const std::string& anchor, double demand_lb, Status status) {
    CheckResult result;
    result.id = "anchor-withdrawal";
    result.title = "Withdrawal of the anchor's thread";
    result.subject = "anchor " + anchor;
    result.clause = "NDS 2018 12.2.1";
    result.demand = demand_lb;
    result.capacity = 1000.0;
    result.unit = "lb";
    result.ratio = demand_lb / 1000.0;
    result.status = status;
    result.direction_deg = 90.0;
    result.link = checks::Link{"anchor " + anchor, "block B1", "lag screw threads"};
    result.steps = {{"p_t", "thread in the block", "given", 3.25, "in", "input"},
                    {"W'", "withdrawal per inch", "W C_D C_M", 307.7, "lb/in", "NDS 2018 Table 11.3.1"},
                    {"Z_w'", "withdrawal of the anchor", "W' p_t", 1000.0, "lb", "NDS 2018 12.2.1"}};
    return result;
}

CheckResult without_path() {
    CheckResult result = withdrawal("A", 800.0, Status::no_path);
    result.id = "block-end";
    result.title = "Connection of the block's end";
    result.subject = "block B1, end at joist J1";
    result.clause = "common practice";
    result.capacity = 0.0;
    result.ratio = std::numeric_limits<double>::infinity();
    result.link = checks::Link{"block B1", "joist J1", "nothing described"};
    result.direction_deg = {};
    return result;
}

CheckResult without_evidence() {
    CheckResult result = without_path();
    result.id = "shoe-moment";
    result.title = "Moment from post to plate";
    result.subject = "shoe";
    result.status = Status::missing_evidence;
    result.note = "the file gives no allowable moment of the shoe";
    result.link = {};
    result.steps.clear();
    return result;
}

review::PathLink path_link(const CheckResult& result) {
    return {*result.link, result.id, result.demand, result.capacity, result.unit, result.ratio, result.status};
}

demand::Demand demand_on(const catalog::Resolved& resolved) {
    demand::Demand demand = example_demand(resolved, {100.0, 0.0, 50.0}, {0.0, 3000.0});
    const double used_lb[] = {1873.0, 1800.0, 12.0, 0.0};
    for (std::size_t index = 0; index < demand.anchors.size(); ++index) {
        demand::AnchorEnvelope& envelope = demand.anchors[index];
        envelope.tension_lb = used_lb[index];
        envelope.tension_low_lb = 0.75 * used_lb[index];
        envelope.rigid_tension_lb = 0.9 * used_lb[index];
        envelope.proof_tension_lb = 2.5 * used_lb[index];
        envelope.hand_edge_lb = index < 2 ? 1510.0 : 0.0;
        envelope.hand_anchor_lb = index < 2 ? 1800.0 : 0.0;
        envelope.stiffness_lb_per_in = 22000.0;
        envelope.stiffness_source = "common practice";
        envelope.direction_rad = std::numbers::pi / 12.0;
    }
    demand.scenarios = {{1.0, 1.0, false}, {0.5, 2.0, false}};
    demand.peak_bearing_psi = 600.0;
    demand.proof = {1e-12, 2e-12, 0.0, 48};
    return demand;
}

}  // namespace

review::Review fake_review() {
    review::Review review;
    review.resolved = example_resolved();
    review.detail = review.resolved.detail.name;
    review.input_sha256 = std::string(64, 'a');
    review.verdict = review::Verdict::inadequate;
    review.demand = demand_on(review.resolved);
    review.checks = {without_path(), withdrawal("A", 1873.0, Status::fails), withdrawal("B", 1800.0, Status::fails),
                     without_evidence(), withdrawal("C", 12.0, Status::holds)};
    const CheckResult& worst = review.checks.front();
    review.governing = {worst.id,     worst.title,  worst.subject,  worst.ratio, worst.direction_deg, worst.part,
                        worst.status, worst.demand, worst.capacity, worst.unit,  worst.link};
    review.findings = {{"decking-bearing", Severity::fails, "decking", "common practice", "the decking may not bear"},
                       {"corrosion", Severity::caution, "anchor A", "NDS 2018 commentary", "say how it is protected"}};
    review.load_path = {path_link(review.checks[1]), path_link(review.checks[4]), path_link(review.checks[0])};
    review::OtherChoice dry;
    dry.choice = format::phrase("dry in service");
    dry.ratio_before = 1.87;
    dry.ratio_after = 1.31;
    dry.title = worst.title;
    dry.subject = worst.subject;
    dry.failing_before = 3;
    dry.failing_after = 2;
    review.assumptions = {{format::phrase("Lumber is wet in service."), dry}, {format::phrase("Blocks are tight.")}};
    review.facts.counts = review::counts(review.checks, review.findings);
    review.facts.first_cause = review::first_cause(review.checks);
    review.facts.not_specified = review::not_specified(review.checks);
    review.facts.finding = review.findings.front().message;
    review.facts.largest_tension = review::largest_tension(review.resolved, *review.demand);
    review.cautions = {format::phrase("Guards are life safety.")};
    return review;
}

review::Review fake_review_without_demand() {
    review::Review review = fake_review();
    review.demand.reset();
    review.no_demand = "the plate turns over at 45 degrees";
    review.checks.clear();
    review.load_path.clear();
    review.governing = {};
    review.facts = {};
    return review;
}

review::Review fake_review_saying(const std::string& text) {
    review::Review review = fake_review();
    review.detail = review.governing.title = review.governing.subject = text;
    for (catalog::Anchor& anchor : review.resolved.anchors) anchor.id = anchor.name = text;
    on_deck(review.resolved.detail).plate.id = on_deck(review.resolved.detail).plate.metal =
        review.resolved.detail.note = text;
    for (CheckResult& result : review.checks) {
        result.title = result.subject = result.clause = result.unit = result.note = text;
        if (result.link) result.link = checks::Link{text, text, text};
        for (checks::Step& step : result.steps) {
            step.symbol = step.meaning = step.formula = step.unit = step.clause = text;
        }
    }
    for (checks::Finding& finding : review.findings) finding.subject = finding.clause = finding.message = text;
    for (review::PathLink& link : review.load_path) link.link = {text, text, text};
    for (review::Assumption& assumption : review.assumptions) assumption.text = text;
    for (format::Phrase& caution : review.cautions) caution = text;
    for (demand::LoadCase& load : review.demand->cases) load.name = load.source = text;
    for (demand::Support& support : review.demand->supports) support.id = support.stiffness_source = text;
    for (demand::AnchorEnvelope& envelope : review.demand->anchors) envelope.stiffness_source = text;
    return review;
}

}  // namespace toehold::test
