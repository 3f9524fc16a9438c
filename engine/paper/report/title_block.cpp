// The first page: what was reviewed, by what, and the verdict.
#include "format/figures.h"
#include "paper/report/sections.h"
#include "paper/report/standards.h"
#include "review/review.h"
#include "wording/status.h"
#include "wording/verdict.h"

namespace toehold::paper::report {
namespace {

using format::Phrase;
using format::phrase;
using model::Basis;

Phrase moisture_words(const Basis& basis) {
    switch (model::moisture(basis)) {
        case model::Moisture::wet:
            return phrase("wet in service");
        case model::Moisture::dry:
            return phrase("dry in service");
        case model::Moisture::dried_in_service:
            break;
    }
    return phrase("built wet, dry in service");
}

Phrase temperature_words(const Basis& basis, units::System system) {
    const bool si = system == units::System::si;
    switch (model::temperature(basis)) {
        case model::Temperature::to_100F:
            return si ? phrase("up to {} °C", 38) : phrase("up to {} °F", 100);
        case model::Temperature::to_125F:
            return si ? phrase("up to {} °C", 52) : phrase("up to {} °F", 125);
        case model::Temperature::to_150F:
            break;
    }
    return si ? phrase("up to {} °C", 66) : phrase("up to {} °F", 150);
}

Phrase method_words(const Basis& basis) {
    return basis.method == model::Method::asd
               ? phrase("ASD, load duration factor {}", format::number_text(model::load_duration(basis)))
               : phrase("LRFD, time effect factor {}", format::number_text(model::time_effect(basis)));
}

Phrase incising_words(const Basis& basis) {
    if (!basis.incised) return phrase("lumber incised by species and treatment");
    return *basis.incised ? phrase("lumber incised") : phrase("lumber not incised");
}

Phrase basis_words(const Basis& basis, bool plates, units::System system) {
    if (!plates)
        return phrase("{}; {}; {}; {}; post as a beam on one-way bearing", method_words(basis), moisture_words(basis),
                      temperature_words(basis, system), incising_words(basis));
    const bool rigid = model::plate_behaviour(basis) == model::PlateBehaviour::rigid;
    const bool gap = model::decking_in_shear(basis) == model::DeckingInShear::gap;
    return phrase("{}; {}; {}; {}; {}; {}", method_words(basis), moisture_words(basis),
                  temperature_words(basis, system), incising_words(basis),
                  rigid ? phrase("plate assumed rigid") : phrase("flexible plate on its bed"),
                  gap ? phrase("decking is an empty gap for shear") : phrase("decking counts as wood for shear"));
}

/// Names with editions.
Phrase names(const std::vector<Standard>& standards, Standard::Kind kind) {
    std::string words;
    for (const Standard& standard : standards) {
        if (standard.kind != kind) continue;
        words += (words.empty() ? "" : ", ") + std::string(standard.name);
    }
    return words.empty() ? phrase("none named") : format::verbatim(words);
}

std::string code_chosen(const Basis& basis) { return model::edition(model::building_code(basis)); }

}  // namespace

std::vector<Facts::Fact> basis_facts(const Basis& basis, const std::vector<Standard>& standards,
                                     const format::Locale& locale, bool plates) {
    const auto fact = [&locale](const Phrase& label, const Phrase& words) {
        return Facts::Fact{written(label, locale), written(words, locale)};
    };
    return {
        fact(phrase("METHOD AND BASIS"), basis_words(basis, plates, locale.system)),
        fact(phrase("CODE"), phrase("{}; named here: {}", code_chosen(basis), names(standards, Standard::Kind::code))),
        fact(phrase("STANDARDS"), names(standards, Standard::Kind::design))};
}

namespace {

/// The hash stands on a row of its own: whole, so that it can be searched for.
Facts facts(const Source& source) {
    const Basis& basis = source.review.resolved.detail.basis;
    const std::vector<Standard> standards = standards_used(source.review);
    const bool plates = kind(source.review.resolved.detail.mount) == model::MountKind::plate_on_deck;
    const units::System system = source.locale().system;
    const std::string units = system == units::System::us ? "in, lb, psi" : "mm, N, MPa";
    const std::string project = project_of(source.issue, source.review.resolved.detail);
    Facts facts;
    facts.columns = 3;
    const auto add = [&](const Phrase& label, std::string words) {
        facts.facts.push_back({source.text(label), std::move(words)});
    };
    if (!project.empty()) add(phrase("PROJECT"), project);
    add(phrase("DETAIL"), source.review.detail);
    add(phrase("FILE"), source.issue.file);
    if (project.empty()) add(phrase("PREPARED BY"), "");
    add(phrase("PROGRAM AND UNITS"), source.issue.program + "; " + units);
    add(phrase("DATE"), source.issue.date);
    add(phrase("CHECKED BY"), "");
    for (Facts::Fact& fact : basis_facts(basis, standards, source.locale(), plates))
        facts.facts.push_back(std::move(fact));
    add(phrase("SHA-256 OF THE FILE"), source.review.input_sha256);
    return facts;
}

/// Empty: no check was made.
Phrase governing_sentence(const review::Review& review) {
    Phrase governs = wording::governing(review.governing);
    if (governs.empty()) return {};
    for (Phrase& item : wording::governing_items(review.governing))
        governs = phrase("{}; {}", std::move(governs), std::move(item));
    return phrase("Governs: {}.", std::move(governs));
}

}  // namespace

void add_title_block(Blocks& blocks, const Source& source) {
    const review::Review& review = source.review;
    blocks.emplace_back(title(source.text(phrase("Calculation of a guard post base")), drawing::TextSize::title));
    blocks.emplace_back(facts(source));
    if (!review.resolved.detail.note.empty())
        blocks.emplace_back(paragraph(source.text(phrase("Note in the file: {}", review.resolved.detail.note))));
    Verdict verdict{source.text(wording::word(review.verdict)),
                    {source.text(wording::verdict_reason(review))},
                    frame_of(review.verdict)};
    if (const Phrase governs = governing_sentence(review); !governs.empty())
        verdict.sentences.push_back(source.text(governs));
    blocks.emplace_back(verdict);
    blocks.emplace_back(title(source.text(phrase("Contents")), drawing::TextSize::normal));
    blocks.emplace_back(Contents{1});
}

}  // namespace toehold::paper::report
