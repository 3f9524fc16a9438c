#include "paper/proof/test_sheet.h"

#include "catalog/resolve.h"
#include "format/figures.h"
#include "paper/issue.h"
#include "paper/proof/load_steps.h"
#include "paper/report/blocks.h"
#include "paper/words.h"
#include "resistance/ultimate/load_test.h"
#include "resistance/ultimate/protocol.h"
#include "study/proof_load/movement.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toehold::paper {
namespace proof {
namespace {

namespace ultimate = resistance::ultimate;
using drawing::Across;
using format::Citation;
using format::Phrase;
using format::phrase;
using format::Quantity;
using report::Blocks;
using report::words_cell;
using ultimate::Action;

/// What every part of the sheet is written from.
struct Source {
    const TestedGuard& guard;
    const Issue& issue;
    double design_lb = 0.0;

    [[nodiscard]] const model::BaseDetail& detail() const { return guard.resolved.detail; }
    [[nodiscard]] std::string text(const Phrase& words) const { return written(words, issue.locale); }
    [[nodiscard]] std::string load(double lb) const {
        return format::figure_text(std::round(lb), "lb", issue.locale.system);
    }
    /// To 0.01 in or 0.1 mm: no gauge on a deck reads more.
    [[nodiscard]] std::string movement(double in) const {
        const units::System system = issue.locale.system;
        const double shown = format::in_system(in, "in", system).value;
        return system == units::System::us ? fmt::format("{:.2f}", shown) : fmt::format("{:.1f}", shown);
    }
};

Facts facts(const Source& source) {
    const model::BuildingCode code = model::building_code(source.detail().basis);
    Facts facts;
    const auto add = [&](const Phrase& label, std::string words) {
        facts.facts.push_back({source.text(label), std::move(words)});
    };
    add(phrase("DETAIL"), source.detail().name);
    add(phrase("PROJECT"), project_of(source.issue, source.detail()));
    add(phrase("GUARD HEIGHT"), source.text(phrase("{}", format::Dimension{source.detail().guard.height_in})));
    add(phrase("CODE"), model::clause(code, model::Provision::load_test));
    add(phrase("DESIGN LOAD"), source.load(source.design_lb));
    add(phrase("HELD / CARRIED"), source.load(ultimate::held_over_design * source.design_lb) + " / " +
                                      source.load(ultimate::reload_lb(source.design_lb)));
    add(phrase("POST TESTED"), "");
    add(phrase("DATE AND WEATHER"), "");
    add(phrase("TESTED BY"), "");
    add(phrase("MOISTURE OF THE WOOD, %"), "");
    return facts;
}

void add_before(Blocks& blocks, const Source& source) {
    blocks.emplace_back(report::section(1, phrase("Before the test"), "before", source.issue.locale));
    const std::vector<Phrase> all = {
        phrase("Test the base as built, decking and all. Take off a rail that would carry part of the push to other "
               "posts, or say below that it stayed."),
        phrase("Push or pull level and square to the rail, outward, at the top of the guard: {} above the walking "
               "surface. Measure the movement at the same height from something that the deck does not carry.",
               format::Dimension{source.detail().guard.height_in}),
        phrase("Nobody stands on the deck beside the post, under it or in the line of the pull. Tie the post so that "
               "it cannot fall."),
        phrase("Look at the base after each load: anchors that rise, wood that splits, a plate that stays bent, welds "
               "that crack. Stop at the first.")};
    for (std::size_t index = 0; index < all.size(); ++index)
        blocks.emplace_back(report::item(std::to_string(index + 1) + ".", source.text(all[index])));
}

Phrase duration(double seconds) {
    constexpr double minute = 60.0, hour = 3600.0;
    if (seconds >= hour) return phrase("{:.0f} h", seconds / hour);
    if (seconds > minute) return phrase("{:.0f} min", seconds / minute);
    return phrase("{:.0f} s", seconds);
}

Phrase time_of(const ultimate::ProtocolStep& step) {
    if (step.most_seconds > 0.0) return phrase("within {}", duration(step.most_seconds));
    if (step.least_seconds > 0.0) return phrase("at least {}", duration(step.least_seconds));
    return {};
}

Phrase what_to_do(const ultimate::ProtocolStep& step) {
    switch (step.action) {
        case Action::take_zero:
            return phrase("Zero the gauges without load.");
        case Action::apply:
            return phrase("Bring the load up.");
        case Action::hold:
            return phrase("Leave it on. Read the movement at the start and at the end.");
        case Action::release:
            return phrase("Take it off. Read the movement left.");
        case Action::wait_recovery:
            return phrase("Wait and read again: at least {:.0f}% of the largest movement must be gone.",
                          100.0 * step.least_recovered);
        case Action::reload:
            return phrase("Load again until it breaks or carries this load.");
        case Action::find_allowable:
            break;
    }
    return phrase(
        "Usable load: the least of the load at the movement limit, the breaking load over 2.5 and the largest "
        "load over 2.5.");
}

/// The code's clause is of the edition in force, the other's its own.
std::string clause_of(const Source& source, const ultimate::Protocol& protocol) {
    if (protocol.procedure != ultimate::Procedure::building_code) return std::string(protocol.steps.front().clause);
    return model::clause(model::building_code(source.detail().basis), model::Provision::load_test);
}

void add_protocol(Blocks& blocks, const Source& source, const ultimate::Protocol& protocol) {
    blocks.emplace_back(report::paragraph(source.text(phrase("By {}.", Citation{clause_of(source, protocol)}))));
    Table table;
    table.size = drawing::TextSize::small;
    table.columns = {{"", 0.05},
                     {source.text(phrase("step")), 0.55},
                     {source.text(phrase("load")), 0.12, Across::right},
                     {source.text(phrase("time")), 0.16},
                     {source.text(phrase("done")), 0.12}};
    for (std::size_t index = 0; index < protocol.steps.size(); ++index) {
        const ultimate::ProtocolStep& step = protocol.steps[index];
        const Phrase time = time_of(step);
        table.rows.push_back(
            {words_cell(std::to_string(index + 1)), words_cell(source.text(what_to_do(step))),
             words_cell(step.times_design > 0.0 ? source.load(step.times_design * source.design_lb) : ""),
             words_cell(time.empty() ? "" : source.text(time))});
    }
    blocks.emplace_back(std::move(table));
}

/// What the guard should move, from the stiff to the soft end of what is computed.
std::string computed_cell(const Source& source, double load_lb) {
    const study::ComputedMovement* const computed = source.guard.computed;
    if (computed == nullptr) return "-";
    return source.movement(load_lb * computed->stiff.total()) + " – " +
           source.movement(load_lb * computed->soft.total());
}

void add_readings(Blocks& blocks, const Source& source) {
    blocks.emplace_back(Room{});
    blocks.emplace_back(report::section(3, phrase("Readings"), "readings", source.issue.locale));
    Table table;
    table.size = drawing::TextSize::normal;
    const char* const unit = source.issue.locale.system == units::System::us ? "in" : "mm";
    table.columns = {{source.text(phrase("load")), 0.24},
                     {source.text(phrase("computed, {}", unit)), 0.18},
                     {source.text(phrase("time")), 0.12},
                     {source.text(phrase("push read")), 0.14},
                     {source.text(phrase("movement read, {}", unit)), 0.16},
                     {source.text(phrase("what was seen")), 0.16}};
    const auto add = [&](std::string what, std::string computed) {
        // Room to write: a second line that is empty.
        table.rows.push_back({words_cell(std::move(what) + "\n\u00a0"), words_cell(std::move(computed))});
    };
    const double held_lb = ultimate::held_over_design * source.design_lb;
    for (const double load : up_to_the_hold_lb(source.design_lb)) add(source.load(load), computed_cell(source, load));
    add(source.text(phrase("{}, after 24 h", Quantity{held_lb, "lb"})), "");
    add(source.text(phrase("load off")), "");
    add(source.text(phrase("load off, 24 h later")), "");
    add(source.load(ultimate::reload_lb(source.design_lb)),
        computed_cell(source, ultimate::reload_lb(source.design_lb)));
    add(source.text(phrase("broke at")), "");
    blocks.emplace_back(std::move(table));
}

void add_result(Blocks& blocks, const Source& source) {
    blocks.emplace_back(report::section(4, phrase("Result"), "result", source.issue.locale));
    Facts facts;
    facts.columns = 4;
    for (const Phrase& label : {phrase("LARGEST MOVEMENT"), phrase("LEFT AFTER 24 H"),
                                phrase("RECOVERED (75% OR MORE)"), phrase("USABLE LOAD")})
        facts.facts.push_back({source.text(label), ""});
    blocks.emplace_back(std::move(facts));
    const std::vector<Phrase> notes = {
        phrase("Recovered: 1 less what is left over the largest movement. The computed range is from the stiffest to "
               "the softest base, framing and post, without play; it holds for minutes, not for the day's hold."),
        phrase("Whether the readings agree with the computed guard, and what stiffness they imply: toehold proof {} "
               "--measured \"50 lb=0.21 in, 100 lb=0.43 in\".",
               source.issue.file.empty() ? "FILE" : source.issue.file)};
    for (const Phrase& note : notes) blocks.emplace_back(report::fine_print(source.text(note)));
}

}  // namespace
}  // namespace proof

Document test_sheet(const TestedGuard& guard, const Issue& issue) {
    using format::phrase;
    namespace ultimate = resistance::ultimate;
    const proof::Source source{guard, issue, proof::design_load_lb(guard.resolved.detail)};
    Document document = report::titled(issue, phrase("Load test of a guard post"), guard.resolved.detail.name);
    report::Blocks& blocks = document.blocks;
    blocks.emplace_back(report::title(source.text(phrase("Load test of a guard post")), drawing::TextSize::title));
    blocks.emplace_back(proof::facts(source));
    proof::add_before(blocks, source);
    blocks.emplace_back(report::section(2, phrase("Steps"), "steps", issue.locale));
    proof::add_protocol(blocks, source, ultimate::protocols()[0]);
    blocks.emplace_back(report::title(
        source.text(phrase("Or, where it is accepted instead, the short procedure of acceptance criteria")),
        drawing::TextSize::small));
    proof::add_protocol(blocks, source, ultimate::protocols()[1]);
    proof::add_readings(blocks, source);
    proof::add_result(blocks, source);
    blocks.emplace_back(report::fine_print("SHA-256 " + guard.input_sha256));
    return document;
}

}  // namespace toehold::paper
