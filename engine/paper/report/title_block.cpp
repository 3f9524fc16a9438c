// The first page: what was reviewed, by what, and the verdict.
#include "format/figures.h"
#include "paper/report/sections.h"
#include "paper/report/standards.h"
#include "wording/status.h"

#include <algorithm>

namespace toehold::paper::report {
namespace {

using model::Basis;

std::string moisture_words(const Basis& basis) {
    switch (model::moisture(basis)) {
        case model::Moisture::wet:
            return "wet in service";
        case model::Moisture::dry:
            return "dry in service";
        case model::Moisture::dried_in_service:
            break;
    }
    return "built wet, dry in service";
}

std::string temperature_words(const Basis& basis, units::System system) {
    const bool si = system == units::System::si;
    switch (model::temperature(basis)) {
        case model::Temperature::to_100F:
            return si ? "up to 38 °C" : "up to 100 °F";
        case model::Temperature::to_125F:
            return si ? "up to 52 °C" : "up to 125 °F";
        case model::Temperature::to_150F:
            break;
    }
    return si ? "up to 66 °C" : "up to 150 °F";
}

std::string method_words(const Basis& basis) {
    return basis.method == model::Method::asd
               ? "ASD, load duration factor " + format::number_text(model::load_duration(basis))
               : "LRFD, time effect factor " + format::number_text(model::time_effect(basis));
}

std::string basis_words(const Basis& basis, units::System system) {
    const bool rigid = model::plate_behaviour(basis) == model::PlateBehaviour::rigid;
    const bool gap = model::decking_in_shear(basis) == model::DeckingInShear::gap;
    return moisture_words(basis) + "; " + temperature_words(basis, system) + "; lumber " +
           (model::incised(basis) ? "incised" : "not incised") + "; plate " +
           (rigid ? "taken as rigid" : "bends on its bed") + "; decking " +
           (gap ? "an empty gap for shear" : "counts as wood for shear");
}

bool is_code(const Standard& standard) {
    return standard.name.starts_with("IBC") || standard.name.starts_with("IRC") || standard.name.starts_with("ASCE");
}

/// Names with editions, the codes alone or the others alone.
std::string names(const std::vector<Standard>& standards, bool codes) {
    std::string words;
    for (const Standard& standard : standards) {
        if (standard.of_a_product || is_code(standard) != codes) continue;
        words += (words.empty() ? "" : ", ") + std::string(standard.name);
    }
    return words.empty() ? "none named" : words;
}

std::string code_chosen(const Basis& basis) {
    return model::building_code(basis) == model::BuildingCode::irc_2021 ? "IRC 2021" : "IBC 2021";
}

/// The hash stands on a row of its own: whole, so that it can be searched for.
Facts facts(const Source& source) {
    const Basis& basis = source.review.resolved.detail.basis;
    const std::vector<Standard> standards = standards_used(source.review);
    const std::string units = source.issue.system == units::System::us ? "in, lb, psi" : "mm, N, MPa";
    const std::string project = project_of(source.issue, source.review.resolved.detail);
    Facts facts;
    facts.columns = 3;
    facts.facts = {{"DETAIL", source.review.detail}, {"FILE", source.issue.file}};
    if (project.empty()) {
        facts.facts.push_back({"PREPARED BY", ""});
    } else {
        facts.facts.insert(facts.facts.begin(), {"PROJECT", project});
    }
    facts.facts.push_back({"PROGRAM AND UNITS", source.issue.program + "; " + units});
    facts.facts.push_back({"DATE", source.issue.date});
    facts.facts.push_back({"CHECKED BY", ""});
    facts.facts.push_back({"METHOD AND BASIS", method_words(basis) + "; " + basis_words(basis, source.issue.system)});
    facts.facts.push_back({"CODE", code_chosen(basis) + "; named here: " + names(standards, true)});
    facts.facts.push_back({"STANDARDS", names(standards, false)});
    facts.facts.push_back({"SHA-256 OF THE FILE", source.review.input_sha256});
    return facts;
}

std::string governing_sentence(const review::Review& review, units::System system) {
    const review::Governing& governing = review.governing;
    if (governing.check.empty()) return {};
    std::string words = "Governs: " + governing.title + ", " + governing.subject;
    const auto result =
        std::find_if(review.checks.begin(), review.checks.end(), [&governing](const checks::CheckResult& one) {
            return one.id == governing.check && one.subject == governing.subject;
        });
    if (result != review.checks.end()) {
        const Measure of = measure(*result);
        words += ", demand " + figure(of.demand, of.unit, system);
        if (of.status != checks::Status::missing_evidence)
            words += ", capacity " + figure(of.capacity, of.unit, system) + ": D/C " + format::ratio_text(of.ratio);
    }
    if (governing.direction_deg) words += ", push towards " + format::degrees_text(*governing.direction_deg) + " deg";
    return words + ".";
}

}  // namespace

void add_title_block(Blocks& blocks, const Source& source) {
    const review::Review& review = source.review;
    Paragraph title = paragraph("Calculation of a guard post's base");
    title.size = drawing::TextSize::title;
    title.bold = true;
    blocks.emplace_back(title);
    blocks.emplace_back(facts(source));
    if (!review.resolved.detail.note.empty())
        blocks.emplace_back(paragraph("Note in the file: " + review.resolved.detail.note));
    Verdict verdict{std::string(wording::word(review.verdict)), {sentence(review.reason)}, frame_of(review.verdict)};
    const std::string governs = governing_sentence(review, source.issue.system);
    if (!governs.empty()) verdict.sentences.push_back(governs);
    blocks.emplace_back(verdict);
    Paragraph contents = paragraph("Contents");
    contents.size = drawing::TextSize::normal;
    contents.bold = true;
    blocks.emplace_back(contents);
    blocks.emplace_back(Contents{1});
}

}  // namespace toehold::paper::report
