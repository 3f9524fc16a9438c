// The command that foretells a load test of a base detail, writes the test's sheet, and compares what was measured.
#include "cli/commands.h"
#include "cli/console.h"
#include "cli/opened_detail.h"
#include "cli/proof/command.h"
#include "export/json/proof_json.h"
#include "export/text/proof_text.h"
#include "paper/document.h"
#include "paper/proof/test_sheet.h"
#include "study/proof_load/movement.h"
#include "study/proof_load/proof_load.h"
#include "study/proof_load/readings.h"
#include "wording/proof_load.h"

#include <charconv>
#include <filesystem>
#include <limits>
#include <optional>

namespace toehold::cli {
namespace {

using format::Locale;
using format::Phrase;
using format::phrase;

/// A whole number of digits alone, within these limits.
std::optional<std::uint64_t> whole_number(const std::string& text, std::uint64_t least, std::uint64_t most) {
    std::uint64_t value = 0;
    const char* const end = text.data() + text.size();
    const auto [stopped, error] = std::from_chars(text.data(), end, value);
    if (text.empty() || error != std::errc{} || stopped != end || value < least || value > most) return std::nullopt;
    return value;
}

/// Absent, with the reason said.
std::optional<mechanics::Drawing> drawing_of(const ProofCommand& command, const Locale& locale) {
    const auto samples = whole_number(command.samples, 1, mechanics::most_samples);
    if (!samples) {
        complain(phrase("--samples takes a whole number from 1 to {}, not \"{}\"",
                        static_cast<long long>(mechanics::most_samples), command.samples),
                 locale);
        return std::nullopt;
    }
    const auto seed = whole_number(command.seed, 0, std::numeric_limits<std::uint64_t>::max());
    if (!seed) {
        complain(phrase("--seed takes a whole number from 0 to {}, not \"{}\"",
                        std::to_string(std::numeric_limits<std::uint64_t>::max()), command.seed),
                 locale);
        return std::nullopt;
    }
    return mechanics::Drawing{*samples, *seed};
}

/// What was measured, fitted; absent, with the reason said, where it cannot be read.
std::optional<study::Measured> measured_in(const ProofCommand& command, const Locale& locale) {
    study::ReadingsRead read = study::read_readings(command.measured);
    if (!read.readings) {
        complain(phrase("--measured: {}", read.refusal), locale);
        return std::nullopt;
    }
    study::MeasuredOutcome fitted = study::fit(std::move(*read.readings));
    if (!fitted.measured) complain(phrase("--measured: {}", fitted.failure), locale);
    return std::move(fitted.measured);
}

ExitStatus write_sheet(const ProofCommand& command, const OpenedDetail& opened, const Locale& spoken) {
    const Locale locale{command.wishes.system, spoken.catalogue};
    std::string output = command.wishes.output;
    if (output.empty()) {
        const std::string stem = std::filesystem::path(name_on_paper(command.file)).stem().string();
        output = (stem.empty() || stem == "-" ? "detail" : stem) + "-load-test.pdf";
    }
    const study::ComputedMovementOutcome computed = study::computed_movement(opened.resolved);
    const paper::TestedGuard guard{opened.resolved, opened.sha256, computed.movement ? &*computed.movement : nullptr};
    const std::string bytes =
        paper::pdf(paper::lay_out(paper::test_sheet(guard, issue_of(command.wishes, command.file, spoken))));
    return write_paper(output, bytes, locale) ? ExitStatus::adequate : ExitStatus::internal_fault;
}

/// What is wrong with the command line itself; empty: nothing.
Phrase whats_wrong(const ProofCommand& command) {
    const std::string& output = command.wishes.output;
    if (!command.sheet && !output.empty()) return phrase("-o is the file of the sheet; add --sheet");
    if (command.sheet && !output.empty() && ending_of(output) != "pdf")
        return phrase("the sheet of a load test is written as .pdf, not as \"{}\"", output);
    return {};
}

struct Answer {
    study::ProofLoad proof;
    std::optional<study::ComputedMovement> computed;
    std::optional<study::Compared> compared;
};

void print_answer(const ProofCommand& command, const OpenedDetail& opened, const Answer& answer, const Locale& locale) {
    const std::string& detail = opened.resolved.detail.name;
    const bool measured = answer.compared.has_value();
    if (command.json) {
        print(exporting::proof_json({answer.proof, detail, opened.sha256, measured ? &*answer.computed : nullptr,
                                     measured ? &*answer.compared : nullptr}));
        return;
    }
    print(exporting::proof_text(answer.proof, detail, locale));
    if (measured) print(exporting::measured_text(*answer.computed, *answer.compared, locale));
    if (command.tests) print(exporting::sentences_text(wording::published_tests(), locale));
}

ExitStatus refuse(const ProofCommand& command, const Phrase& why, const Locale& locale) {
    complain(phrase("{}: {}", command.file, why), locale);
    return ExitStatus::not_adequate;
}

}  // namespace

ExitStatus run(const ProofCommand& command, const Locale& spoken) {
    const Locale locale{command.wishes.system, spoken.catalogue};
    if (const Phrase wrong = whats_wrong(command); !wrong.empty()) {
        complain(wrong, locale);
        return ExitStatus::unusable_input;
    }
    const std::optional<mechanics::Drawing> drawing = drawing_of(command, locale);
    if (!drawing) return ExitStatus::unusable_input;
    std::optional<study::Measured> measured;
    if (!command.measured.empty() && !(measured = measured_in(command, locale))) return ExitStatus::unusable_input;
    const std::optional<OpenedDetail> opened = open_detail(command.file, command.data, command.plugins, locale);
    if (!opened) return ExitStatus::unusable_input;
    if (command.sheet) return write_sheet(command, *opened, spoken);
    study::ProofLoadOutcome found = study::proof_load(opened->resolved, *drawing);
    if (!found.proof) return refuse(command, found.failure, locale);
    Answer answer{std::move(*found.proof), {}, {}};
    if (measured) {
        study::ComputedMovementOutcome computed = study::computed_movement(opened->resolved);
        if (!computed.movement) return refuse(command, computed.failure, locale);
        answer.compared = study::compare(*computed.movement, std::move(*measured));
        answer.computed = std::move(computed.movement);
    }
    print_answer(command, *opened, answer, locale);
    return ExitStatus::adequate;
}

}  // namespace toehold::cli
