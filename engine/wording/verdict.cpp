#include "wording/verdict.h"

#include "format/figures.h"
#include "model/mount_words.h"
#include "review/comparison.h"
#include "review/review.h"
#include "wording/status.h"

#include <cmath>

namespace toehold::wording {
namespace {

using format::Phrase;
using format::phrase;
using format::Quantity;
using review::Facts;
using review::Verdict;

/// `Anchor seating, anchor A: no load path`
Phrase named(const review::CheckFact& fact) {
    return phrase("{}: {}", result(fact.title, fact.part), ratio(fact.status, fact.ratio));
}

Phrase failing_checks(const Facts& facts) {
    const review::FirstCause& cause = *facts.first_cause;
    const std::size_t count = facts.counts.failing();
    if (count > 1) return phrase("{} checks fail. The first cause: {}.", count, named(cause));
    return phrase("1 check fails: {}.", named(cause));
}

/// Behind a finding that comes first.
Phrase checks_fail_too(const Facts& facts) {
    const std::size_t count = facts.counts.failing();
    if (count > 1) return phrase("{} checks fail, first {}.", count, named(*facts.first_cause));
    return phrase("1 check fails: {}.", named(*facts.first_cause));
}

Phrase inadequate(const Facts& facts) {
    if (facts.first_finding && facts.first_cause)
        return phrase("The first cause: {} Also: {}", facts.first_finding->message, checks_fail_too(facts));
    Phrase reason;
    if (facts.first_cause) {
        reason = failing_checks(facts);
        if (!facts.first_cause->note.empty()) reason = phrase("{} {}", reason, facts.first_cause->note);
    }
    if (facts.counts.findings_fail == 0) return reason;
    return reason.empty() ? facts.finding : phrase("{} Also: {}", reason, facts.finding);
}

Phrase incomplete(const Facts& facts) {
    if (const auto& lacks = facts.not_specified) {
        const Phrase what = result(lacks->title, lacks->part);
        return lacks->note.empty() ? phrase("Not specified: what {} needs.", what)
                                   : phrase("Not specified: {}. {}", what, lacks->note);
    }
    return facts.finding.empty() ? phrase("No check could be made.") : facts.finding;
}

Phrase reason(Verdict verdict, const Facts& facts, const review::Governing& governs) {
    switch (verdict) {
        case Verdict::inadequate:
            return inadequate(facts);
        case Verdict::incomplete:
            return incomplete(facts);
        case Verdict::adequate:
            break;
    }
    return phrase("All checks pass. Nearest its limit: {}.", governing(governs));
}

}  // namespace

Phrase verdict_reason(const review::Review& review) { return reason(review.verdict, review.facts, review.governing); }
Phrase verdict_reason(const review::Side& side) { return reason(side.verdict, side.facts, side.governing); }

Phrase cause(const review::Review& review) {
    const Facts& facts = review.facts;
    if (review.verdict == Verdict::adequate) return result(review.governing.title, review.governing.part);
    if (facts.first_finding && facts.first_cause)
        return phrase("{} Also: {}", facts.first_finding->message,
                      result(facts.first_cause->title, facts.first_cause->part));
    if (facts.first_cause) {
        Phrase first = result(facts.first_cause->title, facts.first_cause->part);
        return facts.counts.findings_fail == 0 ? first : phrase("{}. Also: {}", std::move(first), facts.finding);
    }
    if (facts.counts.findings_fail > 0) return facts.finding;
    if (facts.not_specified)
        return phrase("not specified: what {} needs", result(facts.not_specified->title, facts.not_specified->part));
    return facts.finding.empty() ? phrase("no check could be made") : facts.finding;
}

Phrase governing(const review::Governing& governing) {
    if (governing.check.empty()) return {};
    return phrase("{}: {}", result(governing.title, governing.part), ratio(governing.status, governing.ratio));
}

std::vector<Phrase> governing_items(const review::Governing& governing) {
    std::vector<Phrase> items;
    if (governing.check.empty()) return items;
    if (governing.link) {
        items.push_back(phrase("from {} to {} by {}", model::part_name(governing.link->from),
                               model::part_name(governing.link->to), governing.link->by));
    }
    if (!governing.unit.empty()) {
        const Quantity demand{governing.demand, governing.unit}, capacity{governing.capacity, governing.unit};
        items.push_back(governing.status == checks::Status::missing_evidence
                            ? phrase("demand {}, capacity not specified", demand)
                            : phrase("demand {}, capacity {}", demand, capacity));
    }
    if (governing.direction_deg) {
        items.push_back(phrase("push toward {} deg", format::degrees_text(*governing.direction_deg)));
    }
    return items;
}

Phrase shortfall(const Facts& facts) {
    if (!facts.shortfall) return {};
    const Quantity lacking{facts.shortfall->lacking(), facts.shortfall->unit};
    const std::optional<double> factor = facts.shortfall->factor();
    if (!factor) return phrase("Capacity required: {}. Provided: none.", lacking);
    return phrase("Capacity is short by {}: it must be {} times as large.", lacking, format::ratio_text(*factor));
}

std::vector<Phrase> count_items(const review::Counts& counts) {
    std::vector<Phrase> items;
    const auto add = [&items](std::size_t count, Phrase one, Phrase several) {
        if (count > 0) items.push_back(count == 1 ? std::move(one) : std::move(several));
    };
    add(counts.pass, phrase("1 passes"), phrase("{} pass", counts.pass));
    add(counts.fail, phrase("1 fails"), phrase("{} fail", counts.fail));
    add(counts.no_path, phrase("1 has no load path"), phrase("{} have no load path", counts.no_path));
    add(counts.not_specified, phrase("1 is not specified"), phrase("{} are not specified", counts.not_specified));
    return items;
}

Phrase no_demand(const review::Review& review) {
    if (review.demand) return {};
    return phrase("No demand was found: {}.", review.no_demand);
}

Phrase largest_tension(const review::Review& review) {
    if (!review.facts.largest_tension) return {};
    const review::LargestTension& largest = *review.facts.largest_tension;
    const model::MountWords words = model::mount_words(review.resolved.detail);
    return phrase(
        "Largest tension: {} on {}, from a push of {} at {} above {} toward {} deg. The hand calculation with {} gives "
        "{}.",
        Quantity{largest.tension_lb, "lb"}, model::part_name(largest.part), Quantity{largest.push_lb, "lb"},
        format::Dimension{largest.height_in}, words.datum, format::degrees_text(format::degrees(largest.direction_rad)),
        words.hand_arm, Quantity{largest.hand_edge_lb, "lb"});
}

Phrase framing_flexibility(const Facts& facts) {
    constexpr double worth_saying = 0.05, in_percent = 100.0;
    if (!facts.framing_change || std::abs(*facts.framing_change) <= worth_saying) return {};
    const long long percent = std::llround(in_percent * std::abs(*facts.framing_change));
    return *facts.framing_change > 0.0 ? phrase("Framing flexibility raises the largest tension {}%.", percent)
                                       : phrase("Framing flexibility lowers the largest tension {}%.", percent);
}

}  // namespace toehold::wording
