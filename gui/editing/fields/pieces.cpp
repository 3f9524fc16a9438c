#include "editing/fields/pieces.h"

#include "editing/fields/choices.h"
#include "editing/words.h"
#include "model/member.h"

namespace toehold::editing {

std::vector<std::string> framing_ids(const model::Framing& framing, const std::string& except) {
    std::vector<std::string> ids;
    for (const model::Member& member : model::members(framing)) ids.push_back(member.id);
    for (const model::JoistSupport& support : framing.supports) ids.push_back(support.id);
    std::erase(ids, except);
    return ids;
}

void follow_id(model::Framing& framing, const std::string& old, const std::string& fresh) {
    for (model::Block& block : framing.blocks) {
        if (block.from_end.joist == old) block.from_end.joist = fresh;
        if (block.to_end.joist == old) block.to_end.joist = fresh;
    }
}

void member_id(Form& form, model::Framing& framing, std::string& id) {
    form.id({"id", TOEHOLD_MARK("Id"),
             TOEHOLD_MARK("A short name, unlike that of any other joist, rim, support or block.")},
            id, framing_ids(framing, id), [&framing, &id](const std::string& old) { follow_id(framing, old, id); });
}

void piece_fields(Form& form, const Piece& piece) {
    form.length({"width", TOEHOLD_MARK("Width"), TOEHOLD_MARK("Actual, in plan, of one piece.")}, piece.width_in);
    form.length({"depth", TOEHOLD_MARK("Depth"), TOEHOLD_MARK("Actual, upright.")}, piece.depth_in);
    form.pick({"species", TOEHOLD_MARK("Species"), TOEHOLD_MARK("Species of the wood.")}, piece.species,
              row_choices(form.catalog().species));
    form.pick({"grade", TOEHOLD_MARK("Grade"), TOEHOLD_MARK("Grade of the wood, of those known for the species.")},
              piece.grade, grade_choices(form.catalog(), piece.species));
}

void plies_field(Form& form, int& plies) {
    form.count({"plies", TOEHOLD_MARK("Pieces"), TOEHOLD_MARK("Side by side and nailed together, 1 to 4.")}, plies,
               {1, 4});
}

Timber start_timber(const model::Framing& framing, const catalog::Catalog& catalog) {
    if (framing.joists) {
        return {framing.joists->width_in, framing.joists->depth_in, framing.joists->species, framing.joists->grade};
    }
    if (!framing.blocks.empty()) return {1.5, 9.25, framing.blocks.front().species, framing.blocks.front().grade};
    Timber timber;
    timber.species = id_or_first(catalog.species, "southern-pine");
    const std::vector<Choice> grades = grade_choices(catalog, timber.species);
    timber.grade = grades.empty() ? "no-2" : grades.front().value;
    return timber;
}

}  // namespace toehold::editing
