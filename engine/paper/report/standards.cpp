#include "paper/report/standards.h"

#include "review/review.h"

#include <algorithm>
#include <utility>

namespace toehold::paper::report {

// Titles shortened from those the issuing bodies print, from memory; editions are those of the clauses in the engine.
const std::vector<Standard>& known_standards() {
    using format::phrase;
    using Kind = Standard::Kind;
    static const std::vector<Standard> all = {
        {"IBC 2018", "International Building Code, ICC, 2018", phrase("load on the guard"), Kind::code},
        {"IBC 2021", "International Building Code, ICC, 2021", phrase("load on the guard"), Kind::code},
        {"IBC 2024", "International Building Code, ICC, 2024", phrase("load on the guard"), Kind::code},
        {"IRC 2018", "International Residential Code, ICC, 2018", phrase("load on the guard, decks"), Kind::code},
        {"IRC 2021", "International Residential Code, ICC, 2021", phrase("load on the guard, decks"), Kind::code},
        {"IRC 2024", "International Residential Code, ICC, 2024", phrase("load on the guard, decks"), Kind::code},
        {"ASCE 7-16", "Minimum Design Loads for Buildings and Other Structures, ASCE, 2016",
         phrase("loads, load factors"), Kind::code},
        {"ASCE 7-22", "Minimum Design Loads for Buildings and Other Structures, ASCE, 2022",
         phrase("loads, load factors"), Kind::code},
        {"NDS 2018", "National Design Specification for Wood Construction, AWC, 2018", phrase("wood, its connections")},
        {"NDS Supplement 2018", "Design Values for Wood Construction, AWC, 2018", phrase("reference values of lumber")},
        {"AWC TR12", "General Dowel Equations for Lateral Connection Values, AWC", phrase("lateral values over a gap")},
        {"Wood Handbook 2010", "Wood as an Engineering Material, Forest Products Laboratory, 2010",
         phrase("wood in torsion")},
        {"DIN EN 1995-1-1/NA", "Design of timber structures, German National Annex to Part 1-1, DIN",
         phrase("wood in torsion")},
        {"AISC 360-16", "Specification for Structural Steel Buildings, AISC, 2016",
         phrase("post, plate, weld, anchors")},
        {"Aluminum Design Manual 2020", "Aluminum Design Manual, The Aluminum Association, 2020",
         phrase("post, plate, weld")},
        {"EN 1993-1-8", "Design of steel structures, Part 1-8: Design of joints, CEN",
         phrase("bearing under a washer")},
        {"ASTM E985", "Permanent Metal Railing Systems and Rails for Buildings, ASTM",
         phrase("movement of the top of the guard")},
        {"ASTM D7147", "Testing and Establishing Allowable Loads of Joist Hangers, ASTM",
         phrase("stiffness of connectors")},
        {"ASTM D7032", "Performance Ratings for Wood-Plastic Composite Deck Boards, ASTM",
         phrase("boards not of wood")},
        {"ASTM A36", "Carbon Structural Steel, ASTM", phrase("strength of plate"), Kind::product},
        {"ASTM A500", "Cold-Formed Carbon Steel Structural Tubing, ASTM", phrase("strength of tube"), Kind::product},
        {"ASTM A307", "Carbon Steel Bolts, Studs, and Threaded Rod, ASTM", phrase("strength of bolts and lag screws"),
         Kind::product},
        {"SAE J429", "Requirements for Externally Threaded Fasteners, SAE", phrase("strength of lag screws"),
         Kind::product},
        {"AWS A5", "Filler metal specifications, AWS", phrase("strength of filler"), Kind::product},
        {"ASTM A153", "Zinc Coating (Hot-Dip) on Iron and Steel Hardware, ASTM", phrase("protection against corrosion"),
         Kind::product}};
    return all;
}

namespace {

std::string_view trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(' ');
    return first == std::string_view::npos ? std::string_view() : text.substr(first);
}

/// Every clause and every citation of the review.
std::vector<std::string> cited(const review::Review& review) {
    std::vector<std::string> all;
    const auto add = [&all](const format::Phrase& words) {
        for (std::string& citation : format::citations(words)) all.push_back(std::move(citation));
    };
    for (const checks::CheckResult& result : review.checks) {
        all.push_back(result.clause);
        for (const checks::Step& step : result.steps) all.push_back(step.clause);
    }
    for (const checks::Finding& finding : review.findings) all.push_back(finding.clause);
    for (const review::Assumption& assumption : review.assumptions) add(assumption.text);
    if (!review.demand) return all;
    for (const demand::LoadCase& load : review.demand->cases) add(load.source);
    for (const demand::Support& support : review.demand->supports) add(support.stiffness_source);
    for (const demand::AnchorEnvelope& anchor : review.demand->anchors) add(anchor.stiffness_source);
    if (review.demand->framing) {
        for (const demand::MemberSupport& one : review.demand->framing->supports) add(one.stiffness.source);
    }
    return all;
}

}  // namespace

bool cites(std::string_view citation, const Standard& standard) {
    while (!citation.empty()) {
        const std::size_t end = std::min(citation.find(';'), citation.size());
        const std::string_view one = trimmed(citation.substr(0, end));
        if (one.starts_with(standard.name)) return true;
        citation.remove_prefix(std::min(end + 1, citation.size()));
    }
    return false;
}

std::vector<Standard> standards_used(const review::Review& review) {
    const std::vector<std::string> citations = cited(review);
    std::vector<Standard> used;
    for (const Standard& standard : known_standards()) {
        const bool named = std::any_of(citations.begin(), citations.end(),
                                       [&standard](const std::string& citation) { return cites(citation, standard); });
        if (named) used.push_back(standard);
    }
    return used;
}

}  // namespace toehold::paper::report
