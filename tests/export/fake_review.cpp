#include "export/fake_review.h"

#include "support/example.h"

#include <limits>
#include <numbers>

namespace toehold::test {
namespace {

using checks::CheckResult;
using checks::Severity;
using checks::Status;

const model::PartId block{model::PartKind::block, "B1"}, joist{model::PartKind::joist, "J1"};

checks::Link link_between(const model::PartId& from, const model::PartId& to, const format::Phrase& by) {
    checks::Link link;
    link.from = from;
    link.to = to;
    link.by = by;
    return link;
}

checks::Finding finding(const std::string& id, Severity severity, const model::PartId& part, const std::string& clause,
                        const format::Phrase& message) {
    checks::Finding made;
    made.id = id;
    made.severity = severity;
    made.part = part;
    made.clause = clause;
    made.message = message;
    return made;
}

CheckResult withdrawal(const std::string& anchor, double demand_lb, Status status) {
    CheckResult result;
    result.id = "anchor-withdrawal";
    result.title = format::phrase("Withdrawal of the anchor's thread");
    result.part = model::anchor_part(anchor);
    result.clause = "NDS 2018 12.2.1";
    result.demand = demand_lb;
    result.capacity = 1000.0;
    result.unit = "lb";
    result.ratio = demand_lb / 1000.0;
    result.status = status;
    result.direction_deg = 90.0;
    result.link = link_between(result.part, block, format::phrase("lag screw threads"));
    result.steps = {{"p_t", format::phrase("thread in the block"), "given", 3.25, "in", "input"},
                    {"W'", format::phrase("withdrawal per inch"), "W C_D C_M", 307.7, "lb/in", "NDS 2018 Table 11.3.1"},
                    {"Z_w'", format::phrase("withdrawal of the anchor"), "W' p_t", 1000.0, "lb", "NDS 2018 12.2.1"}};
    return result;
}

CheckResult without_path() {
    CheckResult result = withdrawal("A", 800.0, Status::no_path);
    result.id = "block-end";
    result.title = format::phrase("Connection of the block's end");
    result.part = model::held_at(block, joist);
    result.clause = "common practice";
    result.capacity = 0.0;
    result.ratio = std::numeric_limits<double>::infinity();
    result.link = link_between(block, joist, format::phrase("nothing described"));
    result.direction_deg = {};
    return result;
}

CheckResult without_evidence() {
    CheckResult result = without_path();
    result.id = "shoe-moment";
    result.title = format::phrase("Moment from post to plate");
    result.part = {model::PartKind::shoe};
    result.status = Status::missing_evidence;
    result.note = format::phrase("the file gives no allowable moment of the shoe");
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
        envelope.stiffness_source = format::phrase("common practice");
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
    review.governing.check = worst.id;
    review.governing.title = worst.title;
    review.governing.part = worst.part;
    review.governing.ratio = worst.ratio;
    review.governing.status = worst.status;
    review.governing.demand = worst.demand;
    review.governing.capacity = worst.capacity;
    review.governing.unit = worst.unit;
    review.governing.link = worst.link;
    review.findings = {finding("decking-bearing", Severity::fails, {model::PartKind::decking}, "common practice",
                               format::phrase("the decking may not bear")),
                       finding("corrosion", Severity::caution, model::anchor_part("A"), "NDS 2018 commentary",
                               format::phrase("say how it is protected"))};
    review.load_path = {path_link(review.checks[1]), path_link(review.checks[4]), path_link(review.checks[0])};
    review::OtherChoice dry;
    dry.choice = format::phrase("dry in service");
    dry.ratio_before = 1.87;
    dry.ratio_after = 1.31;
    dry.title = worst.title;
    dry.part = worst.part;
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
    review.no_demand = format::phrase("the plate turns over at 45 degrees");
    review.checks.clear();
    review.load_path.clear();
    review.governing = {};
    review.facts = {};
    return review;
}

review::Review fake_review_saying(const std::string& text) {
    review::Review review = fake_review();
    const format::Phrase said = format::verbatim(text);
    const model::PartId part{model::PartKind::plug_in, text};
    review.detail = text;
    review.governing.title = said;
    review.governing.part = part;
    for (catalog::Anchor& anchor : review.resolved.anchors) anchor.id = anchor.name = text;
    on_deck(review.resolved.detail).plate.id = on_deck(review.resolved.detail).plate.metal =
        review.resolved.detail.note = text;
    for (CheckResult& result : review.checks) {
        result.clause = result.unit = text;
        result.title = result.note = said;
        result.part = part;
        if (result.link) result.link = link_between(part, part, said);
        for (checks::Step& step : result.steps) {
            step.symbol = step.formula = step.unit = step.clause = text;
            step.meaning = said;
        }
    }
    for (checks::Finding& one : review.findings) one = finding(one.id, one.severity, part, text, said);
    for (review::PathLink& link : review.load_path) link.link = link_between(part, part, said);
    for (review::Assumption& assumption : review.assumptions) assumption.text = said;
    for (format::Phrase& caution : review.cautions) caution = said;
    for (demand::LoadCase& load : review.demand->cases) load.name = load.source = said;
    for (demand::Support& support : review.demand->supports) {
        support.part = part;
        support.stiffness_source = said;
    }
    for (demand::AnchorEnvelope& envelope : review.demand->anchors) envelope.stiffness_source = said;
    return review;
}

}  // namespace toehold::test
