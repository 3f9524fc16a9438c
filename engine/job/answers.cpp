#include "job/answers.h"

#include <algorithm>

namespace toehold::job {
namespace {

using format::phrase;
using format::verbatim;
using model::BuildingCode;
using model::Occupancy;

/// `IRC-2021`, as the file's basis has it.
std::string word_for(BuildingCode code) {
    std::string word = model::edition(code);
    std::replace(word.begin(), word.end(), ' ', '-');
    return word;
}

/// What lies flat under a plate and is walked on; the catalog holds shims and packing beside it, by their ids.
bool is_boards(const catalog::DeckingMaterial& material) {
    return material.kind != catalog::DeckingKind::metal && !material.id.starts_with("shim-") &&
           !material.id.starts_with("packing-");
}

}  // namespace

const std::vector<Answer<Occupancy>>& occupancy_answers() {
    static const std::vector<Answer<Occupancy>> answers = {
        {"dwelling", Occupancy::one_and_two_family, phrase("one- or two-family dwelling")},
        {"public", Occupancy::other, phrase("any other building: apartments, shops, a public walk")},
        {"limited", Occupancy::limited,
         phrase("factory, storage or the like, not open to the public, fewer than 50 people")}};
    return answers;
}

const std::vector<Answer<Place>>& place_answers() {
    static const std::vector<Answer<Place>> answers = {
        {"between-joists", Place::between_joists, phrase("between two joists, a little behind the rim")},
        {"over-a-joist", Place::over_a_joist, phrase("over a joist, a little behind the rim")},
        {"beside-the-rim", Place::beside_the_rim, phrase("between two joists, right beside the rim")},
        {"corner", Place::corner, phrase("at a corner, beside the rim and a doubled edge joist")},
        {"cantilever", Place::cantilever, phrase("at the end of joists that reach past their beam")},
        {"deck-side", Place::deck_side,
         phrase("not on top of the deck but on its side: bolted to the outside of the rim")}};
    return answers;
}

const std::vector<Answer<BuildingCode>>& code_answers() {
    static const std::vector<Answer<BuildingCode>> answers = [] {
        std::vector<Answer<BuildingCode>> all;
        for (const BuildingCode code : {BuildingCode::irc_2018, BuildingCode::irc_2021, BuildingCode::irc_2024,
                                        BuildingCode::ibc_2018, BuildingCode::ibc_2021, BuildingCode::ibc_2024}) {
            all.push_back({word_for(code), code, verbatim(model::edition(code))});
        }
        return all;
    }();
    return answers;
}

const std::vector<Answer<bool>>& yes_no_answers() {
    static const std::vector<Answer<bool>> answers = {{"yes", true, phrase("yes")}, {"no", false, phrase("no")}};
    return answers;
}

std::vector<Choice> post_choices() {
    return {{"2x2x3/16 steel", phrase("2 in square steel tube, 3/16 in wall")},
            {"2 1/2x2 1/2x3/16 steel", phrase("2 1/2 in square steel tube, 3/16 in wall")},
            {"round 1.9x0.145 steel", phrase("1 1/2 in steel pipe, 1.9 in outside")},
            {"2x2x3/16 stainless", phrase("2 in square stainless tube, 3/16 in wall")},
            {"2 1/2x2 1/2x1/4 aluminum", phrase("2 1/2 in square aluminum tube, 1/4 in wall")},
            {"4x4 wood", phrase("4x4 wood post; on top of the deck in a steel shoe")},
            {"6x6 wood", phrase("6x6 wood post; on top of the deck in a steel shoe")}};
}

std::vector<Choice> decking_choices(const catalog::Catalog& catalog) {
    std::vector<Choice> choices;
    for (const catalog::DeckingMaterial& material : catalog.decking)
        if (is_boards(material)) choices.push_back({material.id, verbatim(material.name)});
    return choices;
}

std::vector<Choice> species_choices(const catalog::Catalog& catalog) {
    std::vector<Choice> choices;
    choices.reserve(catalog.species.size());
    for (const catalog::Species& species : catalog.species) choices.push_back({species.id, verbatim(species.name)});
    return choices;
}

std::vector<Choice> grade_choices(const catalog::Catalog& catalog) {
    std::vector<Choice> choices;
    for (const catalog::LumberGrade& grade : catalog.grades) {
        const bool known = std::any_of(choices.begin(), choices.end(),
                                       [&grade](const Choice& choice) { return choice.answer == grade.id; });
        if (!known) choices.push_back({grade.id, verbatim(grade.name)});
    }
    return choices;
}

std::vector<Choice> plain_choices(const std::vector<std::string>& answers) {
    std::vector<Choice> choices;
    choices.reserve(answers.size());
    for (const std::string& answer : answers) choices.push_back({answer, verbatim(answer)});
    return choices;
}

}  // namespace toehold::job
