#include "paper/report/standards.h"

#include "review/review.h"

#include <algorithm>
#include <set>

namespace toehold::paper::report {

// Titles shortened from those the issuing bodies print, from memory; editions are those of the clauses in the engine.
const std::vector<Standard>& known_standards() {
    using format::phrase;
    static const std::vector<Standard> all = {
        {"IBC 2021", "International Building Code, ICC, 2021", phrase("load on the guard")},
        {"IRC 2021", "International Residential Code, ICC, 2021", phrase("load on the guard, decks")},
        {"ASCE 7-16", "Minimum Design Loads for Buildings and Other Structures, ASCE, 2016",
         phrase("loads, load factors")},
        {"NDS 2018", "National Design Specification for Wood Construction, AWC, 2018", phrase("wood, its connections")},
        {"NDS Supplement 2018", "Design Values for Wood Construction, AWC, 2018", phrase("reference values of lumber")},
        {"AWC TR12", "General Dowel Equations for Lateral Connection Values, AWC", phrase("lateral values over a gap")},
        {"Wood Handbook 2010", "Wood as an Engineering Material, Forest Products Laboratory, 2010",
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
        {"ASTM A36", "Carbon Structural Steel, ASTM", phrase("strength of plate"), true},
        {"ASTM A500", "Cold-Formed Carbon Steel Structural Tubing, ASTM", phrase("strength of tube"), true},
        {"ASTM A307", "Carbon Steel Bolts, Studs, and Threaded Rod, ASTM", phrase("strength of bolts and lag screws"),
         true},
        {"SAE J429", "Requirements for Externally Threaded Fasteners, SAE", phrase("strength of lag screws"), true},
        {"AWS A5", "Filler metal specifications, AWS", phrase("strength of filler"), true},
        {"ASTM A153", "Zinc Coating (Hot-Dip) on Iron and Steel Hardware, ASTM", phrase("protection against corrosion"),
         true}};
    return all;
}

std::vector<std::string> clauses_named(const review::Review& review) {
    std::set<std::string> all;
    for (const checks::CheckResult& result : review.checks) {
        all.insert(result.clause);
        for (const checks::Step& step : result.steps) all.insert(step.clause);
    }
    for (const checks::Finding& finding : review.findings) all.insert(finding.clause);
    for (const review::Assumption& assumption : review.assumptions) all.insert(format::english(assumption.text));
    const auto add = [&all](const format::Phrase& source) { all.insert(format::english(source)); };
    if (review.demand) {
        for (const demand::LoadCase& load : review.demand->cases) add(load.source);
        for (const demand::Support& support : review.demand->supports) add(support.stiffness_source);
        for (const demand::AnchorEnvelope& anchor : review.demand->anchors) add(anchor.stiffness_source);
        if (review.demand->framing) {
            for (const demand::MemberSupport& one : review.demand->framing->supports) add(one.stiffness.source);
        }
    }
    all.erase("");
    return {all.begin(), all.end()};
}

std::vector<Standard> standards_used(const review::Review& review) {
    const std::vector<std::string> clauses = clauses_named(review);
    std::vector<Standard> used;
    for (const Standard& standard : known_standards()) {
        const bool named = std::any_of(clauses.begin(), clauses.end(), [&standard](const std::string& clause) {
            return clause.find(standard.name) != std::string::npos;
        });
        if (named) used.push_back(standard);
    }
    return used;
}

}  // namespace toehold::paper::report
