#include "review/assumptions.h"

#include "catalog/resolve.h"
#include "model/mount_words.h"
#include "review/run_checks.h"
#include "review/verdict.h"

#include <cmath>
#include <functional>
#include <set>
#include <string>
#include <utility>

namespace toehold::review {
namespace {

using format::Citation;
using format::phrase;

using BasisChange = std::function<void(model::Basis&)>;

/// The worst strength that has a finite ratio: the one a factor can move.
const checks::CheckResult* worst_with_ratio(const std::vector<checks::CheckResult>& results) {
    const checks::CheckResult* worst = nullptr;
    for (const checks::CheckResult& result : results) {
        const bool counts =
            result.status != checks::Status::missing_evidence && std::isfinite(result.ratio) && !is_dimension(result);
        if (counts && (worst == nullptr || result.ratio > worst->ratio)) worst = &result;
    }
    return worst;
}

class Alternatives {
  public:
    Alternatives(const Review& evaluated, CheckRuns& runs, const Stop& stop)
        : resolved_(evaluated.resolved),
          demand_(*evaluated.demand),
          results_(evaluated.checks),
          runs_(runs),
          stop_(stop) {}

    /// What the change would give.
    [[nodiscard]] std::optional<OtherChoice> with(const format::Phrase& choice, const BasisChange& change) const {
        if (stop_ && stop_()) return std::nullopt;
        catalog::Resolved changed = resolved_;
        change(changed.detail.basis);
        const std::vector<checks::CheckResult> others = runs_.run(changed, demand_);
        OtherChoice other;
        other.choice = choice;
        other.failing_before = counts(results_, {}).failing();
        other.failing_after = counts(others, {}).failing();
        const checks::CheckResult* before = worst_with_ratio(results_);
        const checks::CheckResult* after = worst_with_ratio(others);
        if (before == nullptr || after == nullptr) return other;
        other.ratio_before = before->ratio;
        other.ratio_after = after->ratio;
        other.title = after->title;
        other.part = after->part;
        return other;
    }

  private:
    const catalog::Resolved& resolved_;
    const demand::Demand& demand_;
    const std::vector<checks::CheckResult>& results_;
    CheckRuns& runs_;
    const Stop& stop_;
};

std::vector<const catalog::MemberMaterial*> framing_wood(const catalog::Resolved& resolved) {
    std::vector<const catalog::MemberMaterial*> wood;
    for (const catalog::MemberMaterial& block : resolved.blocks) wood.push_back(&block);
    if (resolved.joists) wood.push_back(&*resolved.joists);
    for (const catalog::MemberMaterial& rim : resolved.rims) wood.push_back(&rim);
    return wood;
}

/// The species of sawn lumber that is taken as incised, or as not, for this reason; each once.
format::Listed species_where(const catalog::Resolved& resolved, catalog::IncisedBy by) {
    format::Listed names;
    std::set<std::string> seen;
    const auto add = [&](const catalog::Species& species, const catalog::LumberGrade& grade) {
        if (grade.engineered || grade.incising != by || !seen.insert(species.id).second) return;
        names.items.push_back(format::verbatim(species.name));
    };
    for (const catalog::MemberMaterial* wood : framing_wood(resolved)) add(wood->species, wood->grade);
    if (resolved.post_species && resolved.post_grade) add(*resolved.post_species, *resolved.post_grade);
    return names;
}

void add_incising(std::vector<Assumption>& all, const catalog::Resolved& resolved, const Alternatives& alternatives) {
    if (resolved.detail.basis.incised) return;
    format::Listed incised = species_where(resolved, catalog::IncisedBy::assumed);
    if (!incised.items.empty()) {
        all.push_back({phrase("Assumed incised for its treatment: {}. Not specified in the file ({}).",
                              std::move(incised), Citation{"NDS 2018 4.3.8"}),
                       alternatives.with(phrase("not incised"), [](model::Basis& b) { b.incised = false; })});
    }
    format::Listed plain = species_where(resolved, catalog::IncisedBy::species_needs_none);
    if (!plain.items.empty()) {
        all.push_back({phrase("Assumed treated without incising, which it does not need: {}. Not specified in the "
                              "file ({}).",
                              std::move(plain), Citation{"NDS 2018 4.3.8"}),
                       alternatives.with(phrase("incised"), [](model::Basis& b) { b.incised = true; })});
    }
}

/// Where practice reads the strength of wood in more than one way.
void add_wood_readings(std::vector<Assumption>& all, const catalog::Resolved& resolved,
                       const Alternatives& alternatives) {
    const model::Basis& basis = resolved.detail.basis;
    if (!basis.torsion) {
        all.push_back({phrase("Torsion and shear of the framing are held together by tau/F_v' + (f_v/F_v')^2; the "
                              "standard has no clause for torsion of sawn lumber."),
                       alternatives.with(phrase("f_v/F_v' + tau/(2/3 F_v'), the harshest form"), [](model::Basis& b) {
                           b.torsion = model::TorsionWithShear::linear_two_thirds;
                       })});
    }
    if (!basis.bearing) {
        model::MountWords words = model::mount_words(resolved.detail);
        all.push_back({std::move(words.bearing),
                       alternatives.with(words.peak, [](model::Basis& b) { b.bearing = model::BearingStress::peak; })});
    }
}

/// Whether the post, or a stub at its foot, is of this kind of metal.
bool post_of(const catalog::Resolved& resolved, catalog::MetalKind kind) {
    if (std::holds_alternative<model::WoodPost>(resolved.detail.post)) return false;
    return resolved.post_metal.kind == kind || foot_metal(resolved).kind == kind;
}

/// Where standards read the bending of a metal post in more than one way.
void add_metal_readings(std::vector<Assumption>& all, const catalog::Resolved& resolved,
                        const Alternatives& alternatives) {
    const model::Basis& basis = resolved.detail.basis;
    const bool round = model::shaft(resolved.detail.post).round;
    if (!basis.tube_diagonal && !round && post_of(resolved, catalog::MetalKind::carbon_steel)) {
        all.push_back({phrase("A compact steel post bent between its axes has its plastic moment about that axis ({}).",
                              Citation{"AISC 360-16 F7, F11"}),
                       alternatives.with(phrase("the linear sum of both axes ({})", Citation{"AISC 360-16 H1.1"}),
                                         [](model::Basis& b) { b.tube_diagonal = model::TubeDiagonal::linear; })});
    }
    if (!basis.stainless_bending && post_of(resolved, catalog::MetalKind::stainless_steel)) {
        all.push_back({phrase("A compact stainless post has its plastic moment ({}).", Citation{"AISC 370-21 F"}),
                       alternatives.with(phrase("no more than first yield"), [](model::Basis& b) {
                           b.stainless_bending = model::StainlessBending::first_yield;
                       })});
    }
}

void add_strength_choices(std::vector<Assumption>& all, const catalog::Resolved& resolved,
                          const Alternatives& alternatives) {
    using model::Basis;
    const Basis& basis = resolved.detail.basis;
    if (basis.method == model::Method::asd && !basis.load_duration) {
        all.push_back(
            {phrase("Assumed load duration factor C_D = 1.0 for wood; not specified in the file. The code does "
                    "not settle the duration of a guard's load ({}).",
                    Citation{"NDS 2018 2.3.2"}),
             alternatives.with(phrase("C_D = 1.6 (ten-minute load)"), [](Basis& b) { b.load_duration = 1.6; })});
    }
    if (basis.method == model::Method::lrfd && !basis.time_effect) {
        // No other choice stands beside it: storage's 0.7 is less, and 1.25 is for impact only (both read in a public
        // copy of the table) and not for connections or treated lumber (its note, from memory, to be confirmed).
        all.push_back(
            {phrase("Assumed time effect factor lambda = 0.8 for wood; not specified in the file ({}). The "
                    "table's other factors beside a live load are 0.7 for storage and 1.25 for impact, which "
                    "is not for connections.",
                    Citation{"NDS 2018 Table N3"})});
    }
    if (!basis.moisture) {
        all.push_back(
            {phrase("Assumed wet in service (over 19%); not specified in the file ({}).",
                    Citation{"NDS 2018 4.3.3, 11.3.3"}),
             alternatives.with(phrase("dry in service"), [](Basis& b) { b.moisture = model::Moisture::dry; })});
    }
    add_incising(all, resolved, alternatives);
    if (!basis.decking_in_shear) {
        model::MountWords words = model::mount_words(resolved.detail);
        all.push_back({std::move(words.gap), alternatives.with(words.no_gap, [](Basis& b) {
                           b.decking_in_shear = model::DeckingInShear::bearing;
                       })});
    }
    add_wood_readings(all, resolved, alternatives);
    add_metal_readings(all, resolved, alternatives);
    if (!basis.temperature) {
        all.push_back({phrase("Assumed wood stays at or below {} in service ({}).", format::verbatim("100 °F (38 °C)"),
                              Citation{"NDS 2018 2.3.3, 11.3.4"})});
    }
}

}  // namespace

std::vector<Assumption> assumptions(const Review& evaluated, CheckRuns& runs, const Stop& stop) {
    const model::BaseDetail& detail = evaluated.resolved.detail;
    std::vector<Assumption> all;
    const model::BuildingCode code = model::building_code(detail.basis);
    all.push_back(
        {phrase("The infill's load of {} on {} is no case: it is a quarter of the concentrated load, stands no "
                "higher and does not act with it, so that the base never meets more of it ({}).",
                format::Quantity{50.0, "lb"}, format::Quantity{1.0, "ft2"},
                Citation{model::clause(code, model::Provision::infill_load)})});
    add_strength_choices(all, evaluated.resolved, Alternatives(evaluated, runs, stop));
    if (!detail.basis.code) {
        all.push_back({phrase("Assumed {} for what the guard must satisfy; the file names no building code.",
                              Citation{model::edition(code)})});
    }
    for (const format::Phrase& text : evaluated.demand->assumptions) all.push_back({text});
    all.push_back({phrase("Assumed the tops of the blocks are tight against the underside of what lies on them.")});
    return all;
}

std::vector<format::Phrase> cautions() {
    return {
        phrase("Toehold is a design aid. Guards are life safety: a person falls when one fails."),
        phrase("Local code and the authority having jurisdiction govern. Where the law asks for a sealed design, a "
               "licensed design professional must take responsibility for it."),
        phrase("Results are for the detail as described: sound lumber of the specified species and grade, pilot holes "
               "and fasteners to the standards, and work built as drawn."),
        phrase("Confirm values marked as assumptions in the catalogs before relying on them.")};
}

}  // namespace toehold::review
