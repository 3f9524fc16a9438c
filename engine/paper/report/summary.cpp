// The result on half a page, for who reads no further.
#include "format/figures.h"
#include "paper/report/described.h"
#include "paper/report/results.h"
#include "paper/report/sections.h"
#include "review/verdict.h"

#include <fmt/format.h>

#include <algorithm>

namespace toehold::paper::report {
namespace {

using checks::Status;
using units::System;

std::string counts(const review::Review& review) {
    std::vector<std::string> parts;
    const auto add = [&](Status status, const char* one, const char* several) {
        const std::size_t count = count_of(review, status);
        if (count > 0) parts.push_back(counted(count, one, several));
    };
    add(Status::holds, "holds", "hold");
    add(Status::fails, "fails", "fail");
    add(Status::no_path, "has nothing there to resist it", "have nothing there to resist them");
    add(Status::missing_evidence, "lacks evidence", "lack evidence");
    std::string words = fmt::format("{} of {}: {}.", counted(review.checks.size(), "result", "results"),
                                    counted(results_by_check(review).size(), "check", "checks"), listed(parts));
    const std::size_t findings = review.findings.size();
    words += findings == 0 ? " No finding." : " " + counted(findings, "finding", "findings") + ", see section 7.";
    return words;
}

/// The largest pull beside what the hand calculation to the plate's edge would have given.
std::string pull(const review::Review& review, System system) {
    const auto& anchors = review.demand->anchors;
    if (anchors.empty()) return "No anchor is described.";
    const auto worst = std::max_element(anchors.begin(), anchors.end(),
                                        [](const auto& a, const auto& b) { return a.tension_lb < b.tension_lb; });
    const demand::State& state = review.demand->states.at(worst->state);
    const demand::LoadCase& load = review.demand->cases.at(state.load_case);
    return fmt::format(
        "Largest pull on an anchor: {} on anchor {}, under a push of {} at {} above the plate's underside towards {} "
        "deg. The hand calculation with the arm to the plate's edge gives {}.",
        figure(worst->tension_lb, "lb", system),
        review.resolved.anchors.at(static_cast<std::size_t>(worst - anchors.begin())).id,
        figure(load.push_lb, "lb", system), length(load.height_in, system),
        format::degrees_text(format::degrees(worst->direction_rad)), figure(worst->hand_edge_lb, "lb", system));
}

/// Members that anchors stand in, and those left without.
std::string seats(const review::Review& review) {
    std::vector<std::string> members, without;
    for (const catalog::Anchor& anchor : review.resolved.anchors) {
        if (!anchor.seat) {
            without.push_back(anchor.id);
            continue;
        }
        const std::string name = model::subject(model::member(review.resolved.detail.framing, anchor.seat->member));
        if (std::find(members.begin(), members.end(), name) == members.end()) members.push_back(name);
    }
    std::string words = members.empty() ? "No anchor stands over framing" : "They stand in " + listed(members);
    if (!without.empty() && !members.empty())
        words += "; " + listed(without) + (without.size() == 1 ? " stands" : " stand") + " over no framing";
    return words + ".";
}

std::string anchors_words(const review::Review& review) {
    std::vector<Alike> kinds;
    for (const catalog::Anchor& anchor : review.resolved.anchors) {
        const auto same =
            std::find_if(kinds.begin(), kinds.end(), [&](const Alike& a) { return a.words == anchor.name; });
        if (same == kinds.end()) {
            kinds.push_back({anchor.name, {anchor.id}});
        } else {
            same->ids.push_back(anchor.id);
        }
    }
    std::vector<std::string> words;
    words.reserve(kinds.size());
    for (const Alike& kind : kinds) words.push_back(fmt::format("{} ({})", kind.words, listed(kind.ids)));
    return listed(words);
}

std::string supports_words(const model::Framing& framing) {
    std::vector<std::string> names;
    for (const model::JoistSupport& support : framing.supports)
        names.push_back((support.kind == model::JoistSupport::Kind::ledger ? "ledger " : "beam ") + support.id);
    for (const model::Rim& rim : framing.rims) names.push_back("rim " + rim.id);
    return names.empty() ? "what holds the joists is not described" : "the joists by " + listed(names);
}

std::string what_carries(const review::Review& review, System system) {
    const model::BaseDetail& detail = review.resolved.detail;
    std::string words =
        fmt::format("What carries: post, {}; weld, {}; plate, {} thick; anchors, {}. {}",
                    post_words(review.resolved, system), weld_words(review.resolved, system),
                    length(on_deck(detail).plate.thickness_in, system), anchors_words(review), seats(review));
    std::vector<std::string> blocks;
    for (const model::Block& block : detail.framing.blocks) blocks.push_back(block.id);
    if (!blocks.empty()) {
        words += fmt::format(" {} {} held at {} ends, {}.", blocks.size() == 1 ? "Block" : "Blocks",
                             listed(blocks) + (blocks.size() == 1 ? " is" : " are"),
                             blocks.size() == 1 ? "its" : "their", supports_words(detail.framing));
    }
    return words;
}

Table worst_rows(const Source& source) {
    constexpr std::size_t most_rows = 4;
    std::vector<CheckResults> nearest = results_by_check(source.review);
    std::erase_if(nearest, [](const CheckResults& check) {
        // A least distance often stands exactly at its limit.
        return review::is_dimension(check.worst()) && check.worst().status == Status::holds;
    });
    if (nearest.size() > most_rows) nearest.erase(nearest.begin() + most_rows, nearest.end());
    return results_table("subject", nearest, source.issue.system);
}

}  // namespace

void add_summary(Blocks& blocks, const Source& source) {
    const review::Review& review = source.review;
    blocks.emplace_back(Heading{1, "1  Summary", "summary"});
    if (!review.demand) {
        blocks.emplace_back(paragraph(sentence("No demand was found: " + review.no_demand)));
    } else {
        blocks.emplace_back(paragraph(pull(review, source.issue.system)));
    }
    blocks.emplace_back(paragraph(what_carries(review, source.issue.system)));
    if (review.checks.empty()) {
        blocks.emplace_back(paragraph("No check could be made."));
        return;
    }
    blocks.emplace_back(
        paragraph(counts(review) + " Nearest to their limit or beyond it (D/C: demand over capacity):"));
    blocks.emplace_back(worst_rows(source));
}

}  // namespace toehold::paper::report
